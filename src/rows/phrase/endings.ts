import type { Reader } from '../reader.ts'
import { attempt, textAt } from '../reader.ts'
import type { Step, StepOf } from '../step.ts'
import { takePattern } from './pattern.ts'
import { isMark } from './repeat.ts'

/** How a repetition ends: at a mark, with other words in place of its last step, or without its last steps. */
export type Ending =
  | { readonly kind: 'at mark'; readonly name: string }
  /** `sure`: the words say that it stands in place of the last step. */
  | { readonly kind: 'with'; readonly steps: readonly Step[]; readonly sure: boolean }
  | { readonly kind: 'without'; readonly count: number }

const rep = '(?:rep|repeat|repetition|time|pattern|rnd|round)'
const lastRep = `(?:the )?(?:very )?(?:last|final) ${rep}`
const atMark = new RegExp(
  `^(?:[,;] )?(?:and )?(?:ending|end|stopping|stop)(?: ${lastRep}| (?:the )?last| ${rep})? (?:at|with)(?: the)?(?: first)?(?= (?:\\*\\*?|†|‡|\\+))`,
)
/** `, ending last rep with`, `, on last rep work` */
const inPlace = new RegExp(
  `^(?:[,;.] )?(?:and )?(?:(?:ending|end|finishing) ${lastRep}(?: (?:with|in|by))?|(?:on|in|at|for) ${lastRep}[,:]?(?: (?:work|make|end with|ending with))?)(?= )`,
)
/** `, working only 3 tr into last dc at end of last rep` */
const only = /^(?:[,;] )?(?:working|work|making|make)(?: only)?(?= )/
const atEnd = new RegExp(`^(?:at|on|in|for)(?: the)?(?: end of)? ${lastRep}`)
const ending = /^(?:[,;] )?(?:and )?(?:ending|end|finishing) (?:with|in|by)(?: working)?(?= )/
const omitting =
  /^(?:[,;] )?(?:but )?(?:omitting|omit|leaving off|leave off|leaving out)(?: the)?(?: final| last)?(?= )/

function clauseEnd(reader: Reader): number {
  let end = reader.at
  while (end < reader.end && !/^[,;.]$/.test(reader.words[end]?.text ?? '')) end += 1
  return end
}

/** The steps of the clause ahead, up to `stop` where those words stand in it. */
function clauseSteps(reader: Reader): readonly Step[] | null {
  const end = clauseEnd(reader)
  const from = reader.at
  for (let at = from; at <= end; at += 1) {
    if (at < end && !/^(?:at|on|in|for)$/.test(reader.words[at]?.text ?? '')) continue
    reader.at = at
    const tail = at === end || takePattern(reader, atEnd) !== null
    const after = reader.at
    reader.at = from
    if (!tail) continue
    const steps = reader.sequence(reader, at)
    if (steps === null || steps.length === 0) return null
    reader.at = after
    return steps
  }
  return null
}

function stopsAtMark(reader: Reader): Ending | null {
  if (takePattern(reader, atMark) === null) return null
  const name = textAt(reader)
  if (!isMark(name)) return null
  reader.at += 1
  return { kind: 'at mark', name }
}

function withSteps(reader: Reader, sure: boolean): Ending | null {
  const steps = clauseSteps(reader)
  return steps === null ? null : { kind: 'with', steps, sure }
}

function replaced(reader: Reader): Ending | null {
  if (takePattern(reader, inPlace) !== null) return withSteps(reader, true)
  if (takePattern(reader, only) === null) return null
  const from = reader.at
  const end = clauseEnd(reader)
  const said = reader.words.slice(from, end).some((word, at) => word.text === 'last' && isRep(reader, from + at + 1))
  return said ? withSteps(reader, true) : null
}

function isRep(reader: Reader, at: number): boolean {
  return new RegExp(`^${rep}$`).test(reader.words[at]?.text ?? '')
}

const mostItems = 8

/** Where the words of an ending may be over, the last first: a chain before the turn is the next row's. */
function endingEnds(reader: Reader): readonly number[] {
  const ends: number[] = []
  let end = reader.at
  for (; end < reader.end && !/^[;.*]$/.test(reader.words[end]?.text ?? ''); end += 1) {
    if (reader.words[end]?.text === ',' || reader.words[end]?.text === 'and') ends.push(end)
  }
  return [...ends, end].slice(0, mostItems).reverse()
}

function isOfEnding(step: Step): boolean {
  return !/^(?:join|turn|fastenOff|slip|remark)$/.test(step.kind)
}

/** `, ending with sc in 3rd ch of beg ch-4` */
function added(reader: Reader): Ending | null {
  if (takePattern(reader, ending) === null) return null
  const from = reader.at
  for (const end of endingEnds(reader)) {
    reader.at = from
    const steps = reader.sequence(reader, end)
    if (steps !== null && steps.length > 0 && steps.every(isOfEnding)) return { kind: 'with', steps, sure: false }
  }
  return null
}

/** `omitting last sc`, `omitting last 2 dc, ch 1`: as many steps as are named. */
function left(reader: Reader): Ending | null {
  if (takePattern(reader, omitting) === null) return null
  const outer = reader.end
  const joined = reader.words.findIndex(
    (word, at) => at > reader.at && word.text === 'and' && /^(?:end|join)/.test(reader.words[at + 1]?.text ?? ''),
  )
  if (joined > 0 && joined < outer) reader.end = joined
  const steps = clauseSteps(reader)
  reader.end = outer
  return steps === null ? null : { kind: 'without', count: Math.max(1, steps.length) }
}

/**
 * The words after a repetition that say how its last pass ends.
 *
 *     rep from * across, ending with dc in last st     rep from * around, omitting last sc
 *                      ^                                               ^
 */
export function readEnding(reader: Reader): Ending | null {
  return attempt(reader, stopsAtMark) ?? attempt(reader, replaced) ?? attempt(reader, left) ?? attempt(reader, added)
}

function isLike(first: Step, second: Step | undefined): boolean {
  if (first.kind !== 'chain' || second?.kind !== 'chain') return false
  return first.count.every((count, size) => count === second.count[size])
}

/**
 * What `ending with …` means, the likeliest first: words after the last repeat, in place of its last step or of its
 * last stitch; a chain, like the one where the last repeat ends.
 */
function endings(step: StepOf<'repeat'>, ending: readonly Step[]): readonly (readonly Step[])[] {
  const { body } = step
  const [first] = ending
  const like = first === undefined ? -1 : body.findLastIndex((each) => isLike(first, each))
  const last = body.findLastIndex((each) => each.kind === 'work')
  const after: readonly Step[] = [step, ...ending]
  const instead = (endingAt: number): readonly Step[] => [{ ...step, ending, endingAt }]
  const places = [body.length - 1, ...(last > 0 && last < body.length - 1 ? [last] : [])].filter(
    // A chain does not follow a chain.
    (at) => at !== like && !(first?.kind === 'chain' && body[at - 1]?.kind === 'chain'),
  )
  const others = places.map(instead)
  if (like < 0) return [after, ...others]
  return like === 0 ? [after, instead(0), ...others] : [instead(like), after, ...others]
}

function isSameWork(first: Step | undefined, second: Step): boolean {
  if (first?.kind !== 'work' || second.kind !== 'work') return false
  const [one, two] = [first.parts[0], second.parts[0]]
  return (
    one?.kind === 'stitch' &&
    two?.kind === 'stitch' &&
    one.stitch.base === two.stitch.base &&
    one.stitch.style === two.stitch.style
  )
}

/** One of the places of a group, or a space: the last stitch of a row does not go into another kind of place by itself. */
function isAmongOthers(step: Step | undefined): boolean {
  if (step?.kind !== 'work' || !('of' in step.where)) return false
  return step.where.of.every(
    (accept) =>
      /^(?:run|middle|space)$/.test(accept.kind) || (accept.kind === 'special' && accept.member !== undefined),
  )
}

/**
 * `*5 dc in next sc, sc in 3rd dc of next shell; rep from * to end, working last sc in top of ch-3`: the last stitch of
 * the last repeat, where the others go elsewhere than into the row's stitches one by one.
 */
export function endedByTail(steps: Step[]): void {
  const [repeat, tail] = steps.slice(-2)
  if (repeat?.kind !== 'repeat' || tail?.kind !== 'either' || tail.about !== 'tail') return
  if (repeat.ending !== null || repeat.stop !== null || repeat.times.kind !== 'until') return
  const [remark = [], instead = []] = tail.options
  const [last] = instead
  const ends = repeat.body.at(-1)
  if (last === undefined || instead.length > 1 || !isSameWork(ends, last) || !isAmongOthers(ends)) return
  const options = [[{ ...repeat, ending: instead }], [repeat, ...remark], [repeat, last]]
  steps.splice(-2, 2, { ...tail, options })
}

/** `ending last rep with sc in last ch`: in place of the last step, or from an earlier one on that is like it. */
function inPlaceOf(step: StepOf<'repeat'>, ending: readonly Step[]): Step {
  const like = step.body.flatMap((each, at) => (at < step.body.length - 1 && isSameWork(ending[0], each) ? [at] : []))
  const instead: Step = { ...step, ending }
  if (like.length === 0) return instead
  const options = [[instead], ...like.reverse().map((endingAt): readonly Step[] => [{ ...step, ending, endingAt }])]
  return { kind: 'either', options, about: 'ending', at: step.at }
}

/** The repetition with its ending; where the words leave open what they mean, by what comes out. */
export function ended(step: StepOf<'repeat'>, found: Ending, stop: number | null): Step {
  if (found.kind === 'at mark') return { ...step, stop }
  if (found.kind === 'without') return { ...step, stop: Math.max(0, step.body.length - found.count) }
  if (found.sure) return inPlaceOf(step, found.steps)
  return { kind: 'either', options: endings(step, found.steps), about: 'ending', at: step.at }
}
