import { forSize } from '../count.ts'
import type { StepOf, Where } from '../step.ts'
import { settleSkippedChains } from './opening.ts'
import type { Stop, Work } from './state.ts'

/** Whether chains are skipped at the beginning of a foundation, as in `miss 3 ch, 1 tr in each ch`. */
export function skipsFoundation(work: Work, where: Where): where is Where & { kind: 'next' | 'first' } {
  if (where.kind !== 'next' && where.kind !== 'first') return false
  const { below, cursor, opening, made } = work
  const begins = below?.foundation === true && !below.circular && cursor === 0
  if (!begins || opening !== null || made.places.length > 0 || below === null) return false
  const skipped = forSize(where.count, work.size)
  return skipped > 0 && skipped < below.places.length
}

/** Chains skipped before the first stitch may stand for one, as those do that are counted from the hook. */
export function skipFoundation(work: Work, { where, at, counting }: StepOf<'skip'>): Stop | null {
  const skipped = 'count' in where ? forSize(where.count, work.size) : 0
  work.last = skipped - 1
  const stop = settleSkippedChains(work, { at, chains: skipped, counting: counting ?? null }, work.rowStitch, false)
  work.cursor = skipped
  work.begunAt = skipped
  return stop
}

/** `a treble in the 4th stitch` as the first words on a chain: counted from the hook. */
export function opensFoundation({ below, cursor, made, opening, skipped }: Work): boolean {
  const untouched = cursor === 0 && made.places.length === 0 && opening === null && skipped < 1
  return untouched && below?.foundation === true && !below.circular
}
