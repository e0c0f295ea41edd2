import type { Target } from '../step.ts'
import { advance, nextMeant } from './place.ts'
import type { Work } from './state.ts'

/*
 * The opening chain of the row below, where a row meets it: last in a flat row.
 */

const turningStitch: Target = [{ kind: 'stitch', said: true }]

/** `each st across, dc in top of tch`: the last place is left for the words that name it. */
export function withoutTurningChain(work: Work, end: number): number {
  const kind = work.kinds.list[work.below?.places[end - 1] ?? -1]
  const turning = kind?.what === 'turning' || (kind?.what === 'stitch' && kind.turning)
  return turning ? end - 1 : end
}

/** `1 dc in next ch` where only the turning chain is left: its top is a chain. */
export function intoTurning(work: Work, of: Target, asked: number): number {
  const left = work.kinds.list[work.below?.places[work.end - 1] ?? -1]
  const isLast = work.cursor === work.end - 1 && left?.what === 'stitch' && left.turning
  const asksChain = of.length === 1 && of[0]?.kind === 'chain'
  return asked === 1 && isLast && asksChain ? advance(work, turningStitch, 1) : 0
}

/** The place of the row below's opening chain, at or after the cursor; -1 when there is none. */
export function turningPlace(work: Work, space: boolean): number {
  const asSpace = space ? openingSpace(work) : -1
  if (asSpace >= 0) return asSpace
  for (let at = work.end - 1; at >= work.cursor; at -= 1) {
    const kind = work.kinds.list[work.below?.places[at] ?? -1]
    if (kind?.what === 'turning' || (kind?.what === 'stitch' && kind.turning)) return at
  }
  // `sc in the turning chain` of a mesh goes into the space that it is.
  return openingSpace(work)
}

/** The space that the opening chain of the row below made, at or after the cursor; -1 when there is none. */
function openingSpace(work: Work): number {
  for (let at = work.end - 1; at >= work.cursor; at -= 1) {
    const kind = work.kinds.list[work.below?.places[at] ?? -1]
    if (kind?.what === 'space' && kind.opening !== null) return at
  }
  return -1
}

/** `3rd of 5 ch` where a loop of 5 chains comes before the turning chain. */
export function loopBefore(work: Work, loop: number, turning: number): Target | null {
  const of: Target = [{ kind: 'space', chains: loop }]
  const next = nextMeant(work, of)
  const kind = work.kinds.list[work.below?.places[next] ?? -1]
  return next >= 0 && (turning < 0 || next < turning) && kind?.what === 'space' && kind.opening === null ? of : null
}
