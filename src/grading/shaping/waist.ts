import type { Planned, Schedule } from './schedule.ts'
import { planned, refused } from './schedule.ts'
import type { Manner } from './taper.ts'
import { slopeOver } from './taper.ts'

/**
 * In to the waist over the first half of the rows, and out again over the second. The plain rows before the first
 * increase are the waist itself.
 */
export function waist(
  from: number,
  narrow: number,
  to: number,
  rows: number,
  manner: Omit<Manner, 'oneEnd'>,
): Planned<Schedule> {
  if (narrow > from) return refused({ kind: 'direction', from, to: narrow })
  if (narrow > to) return refused({ kind: 'direction', from: to, to: narrow })
  const half = firstHalf(rows, manner)
  const both = { ...manner, oneEnd: false }
  const down = slopeOver(from, narrow, half, both)
  if (down.plan === null) return down
  const up = slopeOver(narrow, to, rows - half, both)
  return up.plan === null ? up : planned({ unit: manner.unit, passages: [...down.plan, ...up.plan] })
}

/** Where the fabric turns, an even number, so that both halves are shaped on the same side. */
function firstHalf(rows: number, { unit, eitherSide }: Omit<Manner, 'oneEnd'>): number {
  return unit === 'row' && !eitherSide ? 2 * Math.floor(rows / 4) : Math.floor(rows / 2)
}
