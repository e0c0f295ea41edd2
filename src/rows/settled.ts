import type { Counting, Step } from './step.ts'

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

function isInMagicRing(step: Step): boolean {
  return step.kind === 'work' && step.where.kind === 'ring' && step.where.magic
}

/** `Ch 3, 11 dc in magic ring`: the ring is there before the chain, though it is named after it. */
export function withRing(steps: readonly Step[]): readonly Step[] {
  const opening = steps.find((step) => step.kind !== 'remark')
  const ring = opening?.kind === 'chain' ? steps.find(isInMagicRing) : undefined
  return ring === undefined ? steps : [{ kind: 'ring', at: ring.at }, ...steps]
}
