import type { Span } from '../../diagnostic/index.ts'
import { rotated } from '../fabric.ts'
import type { Target } from '../step.ts'
import { nextMeant } from './place.ts'
import type { Work } from './state.ts'

/** `ss to the loop, 7 ch, 1 dc in the next loop`: nothing has gone into the first loop yet, it comes last. */
export function leaveSlipped(work: Work, of: Target): void {
  const { below, slips, stitches, last, cursor } = work
  const first = work.kinds.list[below?.places[0] ?? -1]
  const begins = below?.circular === true && slips > 0 && stitches === 0 && last === 0 && cursor === 1
  if (!begins || first?.what !== 'space' || !of.every((accept) => accept.kind === 'space')) return
  work.below = rotated(below, 1)
  work.cursor = 0
  work.last = -1
}

/** `5 tr in the first loop, 1 dc in the next`: what the place before was, where it was no stitch. */
export function nounBefore(work: Work, at: Span): Target | null {
  const { lastTarget } = work
  const named = lastTarget?.every((accept) => /^(?:space|gap|run|middle)$/.test(accept.kind)) ?? false
  return named && work.choose(`noun ${at.start}`, 2) === 0 ? lastTarget : null
}

/** A round that begins in a space further on: the stitches before it come last. */
export function beginAtSpace(work: Work, of: Target): void {
  const { below, made, cursor, last, slips, passed } = work
  const begins = made.places.length === 0 && cursor === 0 && last < 0 && slips === 0 && passed === 0
  if (!begins || below?.circular !== true || below.foundation || !of.every((accept) => accept.kind === 'space')) return
  const by = nextMeant(work, of)
  if (by < 1) return
  work.below = rotated(below, by)
  work.passed = by
}

/** `under the chain`, `in the loop`: of a chain that has been joined the ring; in a repeat perhaps each of its loops. */
export function meansRing(work: Work, at: Span): boolean {
  if (work.below?.ring !== true) return false
  return work.loops === 0 || work.choose(`ring ${at.start}`, 2) === 1
}

/** `ss in next 3 ch, 1 dc in same loop`: the loop is used as a whole after that. */
export function pastHalfUsed(work: Work, noun: Target | undefined): void {
  const isSpace = noun?.every((accept) => accept.kind === 'space') === true
  if (!isSpace || work.sub === 0 || work.cursor !== work.last) return
  work.cursor += 1
  work.sub = 0
}
