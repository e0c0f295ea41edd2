import type { Leg, Passage, Planned, Schedule } from './schedule.ts'
import { evenRows, planned, refused } from './schedule.ts'

/** How a tapered piece is worked. */
export interface Manner {
  readonly oneEnd: boolean
  /** Rounds do not turn: there is no side to keep to. */
  readonly unit: Schedule['unit']
  /** Whether rows of either side may be shaped, where the fabric turns. */
  readonly eitherSide: boolean
}

/**
 * Shaped rows spread over all rows there are: intervals of two neighbouring lengths, the shorter ones first, so that
 * the last shaped row is the last row. Where the fabric turns, intervals are even, so that every shaped row has the
 * same side facing, unless there are more shaped rows than that leaves room for; an odd row is then left over.
 *
 * Source: common practice; tests/external/shaping.test.ts has published examples.
 */
export function taper(from: number, to: number, rows: number, manner: Manner): Planned<Schedule> {
  const slope = slopeOver(from, to, rows, manner)
  return slope.plan === null ? slope : planned({ unit: manner.unit, passages: slope.plan })
}

/** The passages of a taper. */
export function slopeOver(from: number, to: number, rows: number, manner: Manner): Planned<readonly Passage[]> {
  if (from === to) return planned(evenRows(rows))
  const atOnce = manner.oneEnd ? 1 : 2
  const difference = Math.abs(to - from)
  if (difference % atOnce !== 0) return refused({ kind: 'odd', from, to })
  const there = Math.min(from, to)
  if (there < atOnce) return refused({ kind: 'stitches', needed: atOnce, there })
  const shaped = difference / atOnce
  if (shaped > rows) return refused({ kind: 'rows', shaped, rows })
  const { legs, left } = spreadRows(shaped, rows, stepOf(shaped, rows, manner))
  const change = to > from ? 'inc' : 'dec'
  return planned([{ kind: 'slope', change, edge: manner.oneEnd ? 'one end' : 'each end', legs }, ...evenRows(left)])
}

/** Rows from one place for shaping to the next. */
function stepOf(shaped: number, rows: number, { unit, eitherSide }: Manner): 1 | 2 {
  return unit === 'row' && !eitherSide && 2 * shaped <= rows ? 2 : 1
}

function spreadRows(shaped: number, rows: number, step: 1 | 2): { legs: readonly Leg[]; left: number } {
  const places = Math.floor(rows / step)
  const apart = Math.floor(places / shaped)
  const longer = places % shaped
  const legs = [
    { every: apart * step, times: shaped - longer },
    { every: (apart + 1) * step, times: longer },
  ]
  return { legs: legs.filter(({ times }) => times > 0), left: rows - places * step }
}
