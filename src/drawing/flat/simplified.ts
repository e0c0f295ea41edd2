import type { Point } from '../path.ts'

/** Increases every few rows make a staircase of whole stitches; closer to a line than this it is that line. */
export const usualTolerance = 0.8

function distance(point: Point, from: Point, to: Point): number {
  const rise = to.y - from.y
  // Edges go up, so how far a point is from the line is measured across.
  if (rise === 0) return 0
  return Math.abs(point.x - (from.x + ((to.x - from.x) * (point.y - from.y)) / rise))
}

/** An edge with as few corners as tell its course, its ends kept (Ramer, 1972; Douglas and Peucker, 1973). */
export function simplified(points: readonly Point[], tolerance: number): readonly Point[] {
  const [first, last] = [points[0], points.at(-1)]
  if (first === undefined || last === undefined || points.length < 3) return points
  let [worst, most] = [0, tolerance]
  points.forEach((point, at) => {
    const off = distance(point, first, last)
    if (off > most) [worst, most] = [at, off]
  })
  if (worst === 0) return [first, last]
  return [...simplified(points.slice(0, worst + 1), tolerance), ...simplified(points.slice(worst), tolerance).slice(1)]
}
