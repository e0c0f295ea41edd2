import type { Accepts, Where } from '../step.ts'
import type { Work } from './state.ts'

/** Whether a stitch without a place goes into the ring: as all do that follow one which says so, and where the words leave it open. */
export function goesIntoRing(work: Work, { of }: Where & { kind: 'next' }): boolean {
  const { below } = work
  if (below?.ring !== true) return false
  if (below.places.length === 0) return true
  if (!of.every((accept) => accept.kind === 'stitch' && !accept.said)) return false
  if (!work.intoRing && work.cursor <= 1) work.intoRing = work.choose('into ring', 2) === 1
  return work.intoRing
}

/** `under the chain`, `in the loop`: of a chain that has been joined, the ring. */
export function isAnySpace(accept: Accepts): boolean {
  return accept.kind === 'space' && accept.chains === null
}

/** A ring, also `6 sc in a loop` before there is anything else to go into. */
export function isRing(where: Where): boolean {
  return where.kind === 'ring' || (where.kind === 'next' && where.bare === true && where.of.every(isAnySpace))
}
