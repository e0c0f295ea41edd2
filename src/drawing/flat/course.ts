import type { Part } from './parts.ts'
import { leastStep, stepsAt } from './steps.ts'

/**
 * How the width of a part goes, row by row. Steps at an edge, as for an armhole, cut it into stretches; within a stretch
 * the width turns where it stops growing or shrinking.
 */
export interface Course {
  readonly widths: readonly number[]
  readonly stretches: readonly Stretch[]
}

export interface Stretch {
  /** Its rows: the first, and the one after the last. */
  readonly start: number
  readonly end: number
  /** Rows in which the width is told: the first, each turn, and where it has arrived. */
  readonly turns: readonly number[]
}

/** Less than this part of the width is not told as a width of its own. */
const leastShare = 0.04
/** Stretches shorter than this part of the rows belong to the shaping between two others. */
const shortShare = 0.08

function cutAtSteps(part: Part): readonly (readonly [start: number, end: number])[] {
  const count = part.rows.length
  const steps = new Set([...stepsAt(part.rows, 'left'), ...stepsAt(part.rows, 'right')])
  const cuts = [0, ...[...steps].sort((a, b) => a - b), count]
  const all = cuts.slice(1).map((end, index) => [cuts[index] ?? 0, end] as const)
  const long = all.filter(([start, end]) => end - start >= Math.max(3, count * shortShare))
  return long.length === 0 ? [[0, count]] : long
}

/** The first row, the first one of each extreme, and the first that is as wide as what comes last. */
export function turnsOf(widths: readonly number[], start: number, end: number, slack: number): readonly number[] {
  const turns = [start]
  let [direction, most] = [0, start]
  for (let at = start; at < end; at += 1) {
    const grown = (widths[at] ?? 0) - (widths[most] ?? 0)
    if (direction === 0) {
      if (Math.abs(grown) > slack) [direction, most] = [Math.sign(grown), at]
    } else if (grown * direction > 0) most = at
    else if (-grown * direction > slack) {
      turns.push(most)
      ;[direction, most] = [-direction, at]
    }
  }
  return direction === 0 ? turns : [...turns, most]
}

export function courseOf(part: Part): Course {
  const widths = part.rows.map(({ left, right }) => right - left)
  const slack = Math.max(leastStep, Math.max(...widths) * leastShare)
  const stretches = cutAtSteps(part).map(([start, end]) => ({ start, end, turns: turnsOf(widths, start, end, slack) }))
  return { widths, stretches }
}

/** The last row before the width leaves what it is in row `at`. */
export function lastAlike(widths: readonly number[], at: number): number {
  let last = at
  while (last + 1 < widths.length && widths[last + 1] === widths[at]) last += 1
  return last
}
