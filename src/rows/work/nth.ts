import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import type { Where } from '../step.ts'
import { advance, countMeant } from './place.ts'
import type { Stop, Work } from './state.ts'

/**
 * Moves on to just before the nth place, counted from where the row or this pass of a repeat began: after
 * `miss 2` the third is the next one. A number that lies behind is counted from here on.
 *
 * @returns a stop where there are not so many
 */
export function toNth(work: Work, { nth, of }: Where & { kind: 'nth' }, at: Span): Stop | null {
  const asked = forSize(nth, work.size)
  const used = countMeant(work, of, work.passStart, work.cursor)
  const ahead = asked > used ? asked - used : asked
  const there = advance(work, of, ahead - 1)
  work.into = []
  return there === ahead - 1 ? null : { why: 'too few', at, wanted: `${ahead} stitches`, there }
}
