import type { Point } from '../path.ts'
import type { Part } from './parts.ts'
import { simplified, usualTolerance } from './simplified.ts'
import { stepsAt } from './steps.ts'

type Edge = 'left' | 'right'

/** Goes up one edge of rows, from the lower corner of the first to the upper corner of the last. */
function edgeOf({ rows }: Part, edge: Edge): readonly Point[] {
  const stretches: Point[][] = [[]]
  const steps = stepsAt(rows, edge)
  rows.forEach((row, at) => {
    const before = rows[at - 1]
    if (before !== undefined && steps.has(at)) {
      stretches.at(-1)?.push({ x: before[edge], y: row.bottom })
      stretches.push([{ x: row[edge], y: row.bottom }])
    }
    stretches.at(-1)?.push({ x: row[edge], y: (row.bottom + row.top) / 2 })
  })
  const [first, last] = [rows[0], rows.at(-1)]
  if (first !== undefined) stretches[0]?.unshift({ x: first[edge], y: first.bottom })
  if (last !== undefined) stretches.at(-1)?.push({ x: last[edge], y: last.top })
  return stretches.flatMap((points) => simplified(points, usualTolerance))
}

/** The outline of a piece from its lower left corner, clockwise; across in stitches, up in rows. */
export function outlineOf(part: Part): readonly Point[] {
  const points = [...edgeOf(part, 'left'), ...part.parts.flatMap(outlineOf), ...edgeOf(part, 'right').toReversed()]
  return points.filter(({ x, y }, at) => at === 0 || x !== points[at - 1]?.x || y !== points[at - 1]?.y)
}
