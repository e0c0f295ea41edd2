import type { Span } from '../../diagnostic/index.ts'
import { rotated } from '../fabric.ts'
import type { Target } from '../step.ts'
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
