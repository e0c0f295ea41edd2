import type { Span } from '../../diagnostic/index.ts'
import type { Row } from '../fabric.ts'
import type { LoopCode } from '../past.ts'
import { untraced } from '../past.ts'
import type { Made, Stop, Work } from './state.ts'
import { mostStitches } from './state.ts'

/*
 * How places are laid on the row in the making, and taken off it.
 */

/**
 * Pushes places of one kind, by its number; null, or the stop when the row grows past all bounds.
 *
 * @param base the position in the row below that they go into, -1 for none
 */
export function push(work: Work, kind: number, count: number, group: number, at: Span, base: number): Stop | null {
  const { places, groups } = work.made
  if (places.length + count > mostStitches) return { why: 'too many', at, most: mostStitches }
  if (group >= 0) padded(work.made)
  for (let made = 0; made < count; made += 1) {
    places.push(kind)
    if (group >= 0) groups.push(group)
  }
  if (work.traces) trace(work, base)
  return null
}

/** The places just made go into `base`. */
function trace({ made, loop }: Work, base: number): void {
  while (made.bases.length < made.places.length) made.bases.push(base)
  if (loop !== 0) while (made.loops.length < made.places.length) made.loops.push(loop)
}

/** Before a step of another loop: what stands so far has its own. */
export function turnToLoop(work: Work, loop: LoopCode): void {
  if (work.loop === loop) return
  const { loops, places } = work.made
  if (loop !== 0) while (loops.length < places.length) loops.push(0)
  work.loop = loop
}

/** The groups of all places, also of those at the end that belong to none. */
export function padded({ places, groups }: Made): number[] {
  while (groups.length < places.length) groups.push(-1)
  return groups
}

/** A chain becomes a row of the fabric, for this row and later ones to work into. */
export function beginOn(work: Work, chain: Row): void {
  work.past = { last: { order: work.order, number: null, row: chain, trace: untraced }, before: work.past }
  work.order += 1
}

/** Takes places off the end. */
export function cutTo({ places, groups, bases, again, loops }: Made, length: number): void {
  places.length = length
  if (bases.length > length) bases.length = length
  if (groups.length > length) groups.length = length
  if (loops.length > length) loops.length = length
  while ((again.at(-1)?.made ?? -1) >= length) again.pop()
}
