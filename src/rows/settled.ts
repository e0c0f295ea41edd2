import type { Counting, Step, StepOf } from './step.ts'

/*
 * What is said at one place of a row and belongs to another.
 */

/** A remark on the skipped chains may stand at the end of the row; it belongs to where they are skipped. */
export function withCounting(steps: readonly Step[]): readonly Step[] {
  const remark = steps.find((step) => step.kind === 'remark' && step.counting !== null)
  if (remark?.kind !== 'remark' || remark.counting === null) return steps
  const { counting } = remark
  const opening = steps.findIndex(
    (step) => step.kind === 'chain' || (step.kind === 'work' && step.where.kind === 'fromHook'),
  )
  const hook = steps.findIndex((step) => step.kind === 'work' && step.where.kind === 'fromHook')
  const index = hook >= 0 ? hook : opening
  return steps.map((step, at) => (at === index ? counted(step, counting) : step))
}

function counted(step: Step, counting: Counting): Step {
  if (step.kind === 'chain') return step.counting === null ? { ...step, counting } : step
  if (step.kind === 'work' && step.where.kind === 'fromHook' && step.where.counting === null) {
    return { ...step, where: { ...step.where, counting } }
  }
  return step
}

const leads = new Set<Step['kind']>(['chain', 'turn', 'remark'])

/** One stitch skipped and the next taken, then all the others: `miss 1, 1 tr in each to the end`. */
function skipsOneThenAll(skip: Step | undefined, all: Step | undefined): skip is StepOf<'skip'> {
  if (skip?.kind !== 'skip' || skip.where.kind !== 'next' || !skip.where.of.every((accept) => accept.kind !== 'space'))
    return false
  return goesIntoAll(all) && skip.where.count.every((count) => count === 1 || count === null)
}

/** `1 tr in each tr to end`, and the same as a repeat: `*1 tr in next tr; rep from * to end` */
function goesIntoAll(step: Step | undefined): boolean {
  if (step?.kind === 'repeat')
    return step.times.kind === 'until' && step.times.until.kind === 'end' && isNextOne(step.body)
  const where = step?.kind === 'sweep' ? step.works[0]?.where : step?.kind === 'work' ? step.where : undefined
  return where?.kind === 'each' && where.until.kind === 'end' && where.interval === undefined
}

function isNextOne([step, ...others]: readonly Step[]): boolean {
  if (step?.kind !== 'work' || others.length > 0 || step.where.kind !== 'next') return false
  return step.where.count.every((count) => count === 1 || count === null)
}

/** The stitch missed after an opening chain is the one that the chain stands for, as a rule. */
export function withFirstSkip(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex((step) => !leads.has(step.kind))
  const skip = steps[at]
  if (!skipsOneThenAll(skip, steps[at + 1]) || !('count' in skip.where && 'of' in skip.where)) return steps
  const { count, of } = skip.where
  const first: Step = { ...skip, where: { kind: 'first', count, of } }
  return steps.with(at, { kind: 'either', options: [[first], [skip]], about: 'first skip', at: skip.at })
}

function isInMagicRing(step: Step): boolean {
  if (step.kind === 'ring') return step.all === true
  if (step.kind === 'repeat' || step.kind === 'sequence') return step.body.some(isInMagicRing)
  return step.kind === 'work' && step.where.kind === 'ring' && step.where.magic
}

/** `Ch 3, 11 dc in magic ring`: the ring is there before the chain, though it is named after it. */
export function withRing(steps: readonly Step[]): readonly Step[] {
  const opening = steps.find((step) => step.kind !== 'remark')
  const at = opening?.kind === 'chain' ? steps.findIndex(isInMagicRing) : -1
  // `ch 6, join in a ring; in the ring work 12 dc`
  const joined = steps.slice(0, at).some((step) => step.kind === 'join' || step.kind === 'ring')
  const ring = joined ? undefined : steps[at]
  return ring === undefined ? steps : [{ kind: 'ring', at: ring.at }, ...steps]
}

const quietAfter = new Set<Step['kind']>(['remark', 'chain'])

function leavesSome(step: Step): boolean {
  if (step.kind === 'repeat' || step.kind === 'repeatAll')
    return step.times.kind === 'until' && step.times.until.kind === 'leaving'
  if (step.kind === 'sweep') return step.works.some(({ where }) => where.until.kind === 'leaving')
  if (step.kind !== 'work' && step.kind !== 'together') return false
  return step.where.kind === 'each' && step.where.until.kind === 'leaving'
}

/** `sc in each st to last 4 sts, turn`: the words say that these are left. */
export function withLeft(steps: readonly Step[]): readonly Step[] {
  const turn = steps.findLastIndex((step) => (step.kind === 'turn' && step.turns) || step.kind === 'fastenOff')
  let before = turn - 1
  while (before > 0 && quietAfter.has(steps[before]?.kind ?? 'turn')) before -= 1
  const step = steps[before]
  return step !== undefined && leavesSome(step) ? steps.toSpliced(before + 1, 0, { kind: 'leave', at: step.at }) : steps
}

/** `Ch 4, 2 dc in first ch`: the chain that was made first lies farthest from the hook. */
export function withFirstChain(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex((step) => step.kind !== 'remark')
  const chain = steps[at]
  const into = steps[at + 1]
  if (chain?.kind !== 'chain' || into?.kind !== 'work' || into.where.kind !== 'first') return steps
  const single = into.where.count.every((count) => count === 1 || count === null)
  const chains = chain.count.every((count) => count === null || count > 2)
  if (!single || !chains || !into.where.of.every((accept) => accept.kind === 'chain')) return steps
  const where = { kind: 'fromHook', nth: chain.count, counting: chain.counting, said: true } as const
  return steps.with(at + 1, { ...into, where })
}
