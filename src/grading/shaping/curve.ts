import { shareOf } from '../../measure/index.ts'
import type { Edge, Planned, Run, Schedule } from './schedule.ts'
import { evenRows, planned, refused } from './schedule.ts'

/**
 * An armhole or neck in steps: so many stitches taken off in each row, most in the first, along a quarter of an
 * ellipse as wide as the stitches and as high as the rows. Every row takes off one at least; rows beyond the number of
 * stitches are plain ones at the end.
 *
 * Source: common practice.
 */
export function curve(stitches: number, rows: number, edge: Edge): Planned<Schedule> {
  const shaped = Math.min(stitches, rows)
  const further = ellipse(stitches - shaped, shaped)
  const runs = runsOf(further.map((more) => more + 1))
  return planned({ unit: 'row', passages: [{ kind: 'curve', edge, runs }, ...evenRows(rows - shaped)] })
}

/** A shoulder: as many stitches in each row as in the next, as near as whole numbers allow, the larger steps first. */
export function slant(stitches: number, rows: number): Planned<Schedule> {
  if (stitches < rows) return refused({ kind: 'stitches', needed: rows, there: stitches })
  const steps = Array.from({ length: rows }, (_, row) => shareOf(stitches, rows, row + 1))
  return planned({ unit: 'row', passages: [{ kind: 'curve', edge: 'armhole edge', runs: runsOf(falling(steps)) }] })
}

/** A total cut along a quarter of an ellipse, largest first. */
function ellipse(total: number, rows: number): readonly number[] {
  const reached = (row: number): number => {
    const below = rows - row
    return Math.round((total * integerRoot(rows * rows - below * below)) / (rows * rootScale))
  }
  return falling(Array.from({ length: rows }, (_, row) => reached(row + 1) - reached(row)))
}

const rootScale = 1000

/** A square root in thousandths, rounded down: the same on every machine. */
function integerRoot(square: number): number {
  return Math.floor(Math.sqrt(square * rootScale * rootScale))
}

function falling(steps: readonly number[]): readonly number[] {
  return steps.toSorted((a, b) => b - a)
}

function runsOf(steps: readonly number[]): readonly Run[] {
  const runs: { stitches: number; times: number }[] = []
  for (const stitches of steps) {
    const last = runs.at(-1)
    if (last?.stitches === stitches) last.times += 1
    else runs.push({ stitches, times: 1 })
  }
  return runs
}
