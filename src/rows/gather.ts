import { cover } from '../diagnostic/index.ts'
import { isPlaceless, partsOf } from './phrase/parts.ts'
import type { Part, Step, StepOf, Sweeping, Target, Where } from './step.ts'

/*
 * What items of a row mean together: a comma list that goes into the place of its last item, and places of two kinds
 * that are taken as they come.
 */

function isSinglePlace(where: Where): boolean {
  if (where.kind === 'same' || where.kind === 'ring' || where.kind === 'fromHook') return true
  const single = where.kind === 'next' || where.kind === 'last' || where.kind === 'first'
  return single && !isPlaceless(where) && where.count.every((count) => count === null || count === 1)
}

/** `2 dc, ch 2, 2 dc in corner`: where the list without places before a placed step begins; -1 for none. */
function listBefore(steps: readonly Step[], from: number, last: Part): number {
  let start = steps.length
  for (let index = steps.length - 1; index >= from; index -= 1) {
    const step = steps[index]
    const closed = last.kind === 'together' && step?.kind === 'together'
    const placeless = step?.kind === 'chain' || ((step?.kind === 'work' || closed) && isPlaceless(step.where))
    if (!placeless) break
    if (step.kind !== 'chain') start = index
  }
  return start === steps.length ? -1 : start
}

function goesIntoStitch(where: Where): boolean {
  const single = where.kind === 'next' || where.kind === 'each'
  return single && where.of.every((accepts) => accepts.kind === 'stitch' || accepts.kind === 'named')
}

/** `1 dc, 3 tr, 1 dc in every loop`: a group that a space takes. */
function isScallop(where: Where): boolean {
  return (where.kind === 'each' || where.kind === 'next') && isBetweenStitches(where.of)
}

/** `2 tr, 2 ch, 2 tr, all in the same loop`: in one loop, where no words before have been in one. */
function allTogether(where: Where, before: Step | undefined, part: Part): Where {
  if (where.kind !== 'same' || where.noun === undefined || where.start) return where
  const stands =
    before?.kind === 'slip' || before?.kind === 'work' || before?.kind === 'join' || before?.kind === 'chain'
  if (stands || part.kind === 'picot') return where
  return { kind: 'next', count: part.count.map(() => 1), of: where.noun }
}

/** `2 sc, picot in next sp` */
function isPicot(part: Part): boolean {
  if (part.kind !== 'special') return part.kind === 'picot'
  const { makes } = part.special
  return Array.isArray(makes) && makes.every((each) => each.kind === 'picot')
}

/** The last item of a comma list may bring the place for the whole list. */
export function asGroup(steps: Step[], added: readonly Step[], from: number, all: boolean): readonly Step[] {
  const [placed, ...others] = added
  if (placed?.kind !== 'work' || others.length > 0) return added
  if (!(isSinglePlace(placed.where) || placed.where.kind === 'each')) return added
  const [part] = placed.parts
  const start = part === undefined ? -1 : listBefore(steps, from, part)
  if (part === undefined || start < 0) return added
  const list = steps.slice(start)
  const parts = partsOf(list)
  const spaced = list.some((step) => step.kind === 'chain')
  if (parts === null || !(spaced || all || isScallop(placed.where))) return added
  steps.splice(start)
  const at = cover(list[0]?.at ?? placed.at, placed.at)
  const where = all ? allTogether(placed.where, steps.at(-1), part) : placed.where
  const whole: Step = { kind: 'work', parts: [...parts, ...placed.parts], where, at }
  if (all) return [whole]
  // A space or corner takes the whole list as a rule, a stitch only the last item.
  const apart = [...list, placed]
  const single = list.length === 1 && !spaced && !isPicot(part)
  const options = goesIntoStitch(placed.where) || single ? [apart, [whole]] : [[whole], apart]
  return [{ kind: 'either', options, about: 'list', at }]
}

function isSweeping(step: Step | undefined): step is StepOf<'work'> & { where: Where & { kind: 'each' } } {
  return step?.kind === 'work' && step.where.kind === 'each'
}

function isBetweenStitches(of: Target): boolean {
  return of.every((accepts) => /^(?:space|corner|gap)$/.test(accepts.kind))
}

/** Places that are told by what they are, whether they lie between stitches or are stitches themselves. */
function isApart(of: Target): boolean {
  return of.every((accepts) => accepts.kind !== 'stitch' && accepts.kind !== 'named')
}

/** `under each 5 ch; under each 3 ch` */
function areOfOtherChains(some: Target, others: Target): boolean {
  const chains = (of: Target): (number | null)[] =>
    of.map((accepts) => (accepts.kind === 'space' ? (accepts.chains ?? null) : null))
  const own = chains(some)
  return (
    [own, chains(others)].flat().every((each) => each !== null) && chains(others).every((each) => !own.includes(each))
  )
}

/** `in each loop; in the centre of every 3 dc`: places that are told apart, not the same ones twice. */
function areDifferent(first: Sweeping, of: Target): boolean {
  if (isApart(first.where.of) !== isApart(of)) return true
  return (
    areOfOtherChains(first.where.of, of) ||
    (isApart(of) &&
      first.where.of.every((accepts) => accepts.kind === 'space') &&
      of.every((accepts) => accepts.kind === 'run'))
  )
}

/** Whether a target means none of the places of those before it. */
function isOther(works: readonly Sweeping[], of: Target): boolean {
  const own = new Set(of.map((accepts) => JSON.stringify(accepts)))
  return works.every(({ where }) => where.of.every((accepts) => !own.has(JSON.stringify(accepts))))
}

/** `dc in each st across, 2 dc in last st`: the last is left for the words that name it. */
export function leaveLast(steps: Step[], from: number): void {
  const [each, last] = steps.slice(-2)
  if (steps.length - 2 < from || !isSweeping(each) || each.where.until.kind !== 'end') return
  if ((last?.kind !== 'work' && last?.kind !== 'together') || last.where.kind !== 'last') return
  if (!(goesIntoStitch(each.where) && goesIntoStitch({ ...last.where, kind: 'next' }))) return
  const { count, of } = last.where
  steps.splice(-2, 1, { ...each, where: { ...each.where, until: { kind: 'leaving', count, of } } })
}

/**
 * `sc in each st across, working 4 sc in ch-4 sp`, `9 tr under each loop, and 1 dc on the dc between`: after all places
 * of one kind the other is one of those passed.
 */
function inAll(step: Step | undefined, swept: Target): Step | undefined {
  if (step?.kind !== 'work' || step.where.kind !== 'next' || step.where.bare !== true) return step
  const { of } = step.where
  const spaces = of.every((accepts) => accepts.kind === 'space')
  const stitches = isBetweenStitches(swept) && of.every((accepts) => accepts.kind === 'named')
  return spaces || stitches ? { ...step, where: { kind: 'each', of, until: { kind: 'end' } } } : step
}

/** `sc in each dc, (sc, ch 2, sc) in each ch-2 sp around`: the places are taken as they come, not twice along the row. */
export function sweep(steps: Step[], from: number): void {
  const [first, written] = steps.slice(-2)
  const second = isSweeping(first) && first.where.until.kind === 'end' ? inAll(written, first.where.of) : written
  // Row ends lie along another edge, one after the other.
  if (isSweeping(second) && second.where.of.some((accept) => accept.kind === 'rowEnd')) return
  if (
    steps.length - 2 >= from &&
    first?.kind === 'sweep' &&
    isSweeping(second) &&
    isOther(first.works, second.where.of)
  ) {
    steps.splice(-2, 2, { ...first, works: [...first.works, second], at: cover(first.at, second.at) })
    return
  }
  if (steps.length - 2 < from || !isSweeping(first) || !isSweeping(second)) return
  if (first.where.until.kind !== 'end' || !areDifferent(first, second.where.of)) return
  steps.splice(-2, 2, { kind: 'sweep', works: [first, second], at: cover(first.at, second.at) })
}
