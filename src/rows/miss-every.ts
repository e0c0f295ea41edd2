import { cover } from '../diagnostic/index.ts'
import type { Count } from './count.ts'
import { anyStitch } from './phrase/target.ts'
import type { Interval, Step, StepOf, Where } from './step.ts'
import type { Stitch } from './terms/stitch.ts'

type Each = Where & { readonly kind: 'each' }

function isEach(step: Step | undefined): step is StepOf<'work'> & { readonly where: Each } {
  return step?.kind === 'work' && step.where.kind === 'each' && step.where.interval === undefined
}

function less(count: Count): Count {
  return count.map((value) => (value === null ? null : value - 1))
}

/** One in each of the others, and the nth skipped, to the end; what is left after the last of these is worked. */
function others(work: StepOf<'work'>, { every }: Interval, until: Each['until'], at: Step['at']): readonly Step[] {
  const one = { ...work, where: { kind: 'next', count: less(every), of: anyStitch } } as const
  const skip = { kind: 'skip', where: { kind: 'next', count: every.map(() => 1), of: anyStitch }, at } as const
  const rest = { ...work, where: { kind: 'each', of: anyStitch, until } } as const
  return [{ kind: 'repeat', body: [one, skip], stop: null, ending: null, times: { kind: 'until', until }, at }, rest]
}

/**
 * Decreases that are told by what is missed.
 *
 *     1 dc in each, missing every 6th     decrease by missing every 6th stitch
 *
 * @param stitch what the others are worked in where the words before do not say
 */
export function withMissed(steps: readonly Step[], stitch: Stitch): readonly Step[] {
  const at = steps.findIndex((step) => step.kind === 'skip' && step.where.kind === 'each' && step.where.interval)
  const skip = steps[at]
  if (skip?.kind !== 'skip' || skip.where.kind !== 'each' || skip.where.interval === undefined) return steps
  const { interval, until } = skip.where
  const before = steps[at - 1]
  if (isEach(before)) {
    return steps.toSpliced(at - 1, 2, ...others(before, interval, until, cover(before.at, skip.at)))
  }
  const part = { kind: 'stitch', stitch, count: interval.every.map(() => 1) } as const
  const plain = { kind: 'work', parts: [part], where: skip.where, at: skip.at } as const
  return steps.toSpliced(at, 1, ...others(plain, interval, until, skip.at))
}
