import { everySize } from '../count.ts'
import type { Reader } from '../reader.ts'
import { atClauseEnd, attempt, peek, spanSince, take, takeAll, textAt } from '../reader.ts'
import type { Step, StepOf, Times } from '../step.ts'
import { inAll } from './bracket.ts'
import { ended, readEnding } from './endings.ts'
import { readTimes, readUntilMade } from './times.ts'

/** A star or dagger in the words, and how many steps stood before it. */
export interface Mark {
  readonly name: string
  readonly step: number
  /** Where a paired star closes the body; null while it is open. */
  close: number | null
}

export function isMark(text: string): boolean {
  return text === '*' || text === '**' || text === '†' || text === '‡' || text === '+'
}

function markName(reader: Reader): string | null {
  take(reader, 'the', 'first')
  const text = textAt(reader)
  if (!isMark(text)) return null
  reader.at += 1
  if (textAt(reader) === 's' && peek(reader)?.glued) reader.at += 1
  return text
}

function lastOf(marks: readonly Mark[], name: string): number {
  for (let index = marks.length - 1; index >= 0; index -= 1) if (marks[index]?.name === name) return index
  return -1
}

/** Within a repeat `in each ch-2 sp` is the one that comes next: the repeat itself goes on to the others. */
function oneEach(step: Step, sizes: number): Step {
  if (step.kind === 'either') {
    return { ...step, options: step.options.map((option) => option.map((each) => oneEach(each, sizes))) }
  }
  if (step.kind !== 'work' || step.where.kind !== 'each' || step.where.until.kind !== 'end') return step
  const { of } = step.where
  const spaces = of.every((accepts) => /^(?:space|corner|gap)$/.test(accepts.kind))
  return spaces ? { ...step, where: { kind: 'next', count: everySize(1, sizes), of } } : step
}

function bodyOf(reader: Reader, steps: readonly Step[]): readonly Step[] {
  return steps.length > 1 ? steps.map((step) => oneEach(step, reader.vocabulary.sizes)) : steps
}

/** Whether the number just read stands behind a cross: `x 3`. */
function isCrossed(reader: Reader): boolean {
  return reader.words[reader.at - 2]?.text === 'x'
}

function times(reader: Reader): Times {
  const made = attempt(reader, readUntilMade)
  if (made !== null) return made
  const found = attempt(reader, (inner) => readTimes(inner, false)) ?? { kind: 'until', until: { kind: 'end' } }
  // `rep from * x 3` leaves open whether the first time is counted.
  const crossed =
    found.kind === 'exactly' && !/^(?:all|total|altogether)$/.test(reader.words[reader.at - 1]?.text ?? '')
  return crossed && isCrossed(reader) ? { kind: 'said', count: found.count } : found
}

export interface Repeated {
  /** Steps from this index on are the body of `step`. */
  readonly from: number
  readonly step: Step
}

/** The name of a mark that stands nowhere before. */
export interface MissingMark {
  readonly missing: string
}

function fromMark(reader: Reader, start: number, steps: readonly Step[], marks: Mark[]): Repeated | MissingMark | null {
  const said = markName(reader)
  if (said === null) return null
  // `between **` may mean the pair of stars.
  const name = said === '**' && lastOf(marks, said) < 0 ? '*' : said
  // `rep from * to *`; in `rep from * to last 2 sts` the words belong to the extent.
  const to = attempt(reader, (inner) => (take(inner, 'to', 'and') ? markName(inner) : null))
  const last = lastOf(marks, name)
  const first = to === name ? lastOf(marks.slice(0, last), name) : -1
  const [opening, closing] = [marks[first], marks[last]]
  if (opening !== undefined && closing !== undefined) opening.close = closing.step
  return repeatFrom(reader, start, steps, marks, opening === undefined ? last : first) ?? { missing: name }
}

function afterwards(
  reader: Reader,
  start: number,
  steps: readonly Step[],
  marks: Mark[],
  index: number,
  said: Times,
): Repeated | null {
  const mark = marks[index]
  if (mark === undefined) return null
  const body = bodyOf(reader, steps.slice(mark.step, mark.close ?? steps.length))
  const times: Times = said.kind === 'until' ? said : { kind: 'exactly', count: said.count }
  const step: Step = { kind: 'repeat', body, stop: null, ending: null, times, at: spanSince(reader, start) }
  return { from: steps.length, step }
}

function repeatFrom(
  reader: Reader,
  start: number,
  steps: readonly Step[],
  marks: Mark[],
  index: number,
): Repeated | null {
  const mark = marks[index]
  if (mark === undefined) return null
  const said = times(reader)
  // `*…*, 5 sc; rep from * to * once`: what stands between the stars again, after what came since.
  if (mark.close !== null && mark.close < steps.length) return afterwards(reader, start, steps, marks, index, said)
  const ending = attempt(reader, readEnding)
  const stop = ending?.kind === 'at mark' ? marks[lastOf(marks, ending.name)] : undefined
  const body = bodyOf(reader, steps.slice(mark.step, mark.close ?? steps.length))
  marks.splice(index)
  const at = spanSince(reader, start)
  const step: StepOf<'repeat'> = { kind: 'repeat', body, stop: null, ending: null, times: said, at }
  if (ending === null) return { from: mark.step, step }
  const stopAt = stop === undefined || stop.step < mark.step ? null : stop.step - mark.step
  return { from: mark.step, step: ended(step, ending, stopAt) }
}

/**
 * `rep from *`, with the stars that it goes back to.
 *
 *     *sc in next st, ch 1, sk 1; rep from * 4 more times, ending last rep at **
 *                                 ^
 * @returns null when the words are no repeat of this kind
 */
export function readRepeat(reader: Reader, steps: readonly Step[], marks: Mark[]): Repeated | MissingMark | null {
  const start = reader.at
  if (!take(reader, 'rep', 'repeat', 'repeating')) return null
  take(reader, 'instructions', 'pattern', 'sequence', 'that', 'this', 'it', 'these', 'all')
  take(reader, 'steps', 'instructions', 'sequence')
  if (take(reader, 'from', 'bet', 'between') || isMark(textAt(reader))) return fromMark(reader, start, steps, marks)
  // `1 tr, 2 ch, miss 2; repeat.`: from the mark before it, or from where the row begins to be like itself.
  // A double star is where the last repeat ends, as a rule.
  const mark = Math.max(
    0,
    marks.findLastIndex((each) => each.name !== '**'),
  )
  if (steps.length > 0 && marks.length > 0) return repeatFrom(reader, start, steps, marks, mark)
  const said = times(reader)
  if (steps.length === 0 || !(said.kind !== 'until' || said.until.kind !== 'end' || atClauseEnd(reader))) return null
  return {
    from: 0,
    step: { kind: 'repeatAll', body: [...bodyOf(reader, steps)], times: said, at: spanSince(reader, start) },
  }
}

/** `*sc, inc*` with nothing after it: over and over as a rule, else once. */
function pairAlone(reader: Reader, start: number, steps: readonly Step[], marks: Mark[], mark: Mark): Repeated | null {
  const body = bodyOf(reader, steps.slice(mark.step))
  if (reader.at < reader.end && !/^[.;]$/.test(textAt(reader))) return null
  if (mark.step > 0 || body.length < 2) return null
  marks.splice(lastOf(marks, mark.name))
  return { from: mark.step, step: overAndOver(body, spanSince(reader, start)) }
}

/** Steps repeated to the end of the row, or, where that does not come out, worked once. */
export function overAndOver(body: readonly Step[], at: Step['at']): Step {
  const repeat: Step = {
    kind: 'repeat',
    body,
    stop: null,
    ending: null,
    times: { kind: 'until', until: { kind: 'end' } },
    at,
  }
  return { kind: 'either', options: [[repeat], body], about: 'over and over', at }
}

/**
 * The second of two paired stars.
 *
 *     *2 sc, inc* x 6
 *               ^
 * @returns null when the star opens something new
 */
export function readPairedStar(reader: Reader, steps: readonly Step[], marks: Mark[]): Repeated | 'closed' | null {
  const start = reader.at
  const name = textAt(reader)
  const mark = marks[lastOf(marks, name)]
  if (mark === undefined || mark.close !== null || mark.step === steps.length) return null
  reader.at += 1
  const said = attempt(reader, (inner) => readTimes(inner, true))
  if (said !== null) {
    marks.splice(lastOf(marks, name))
    const at = spanSince(reader, start)
    return {
      from: mark.step,
      step: {
        kind: 'repeat',
        body: bodyOf(reader, steps.slice(mark.step)),
        stop: null,
        ending: null,
        times: inAll(said),
        at,
      },
    }
  }
  const from = reader.at
  take(reader, ',', ';', '.', '-', '–')
  const repeats = take(reader, 'rep', 'repeat') || takeAll(reader, 'and', 'rep') || takeAll(reader, 'and', 'repeat')
  reader.at = from
  if (!repeats) return pairAlone(reader, start, steps, marks, mark)
  mark.close = steps.length
  return 'closed'
}
