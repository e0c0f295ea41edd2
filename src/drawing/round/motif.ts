import type { Line } from '../drawing.ts'
import type { Point } from '../path.ts'
import { closed, ellipse } from '../path.ts'
import type { Density, Plan, Scale, Span } from '../plan.ts'

/** A corner for each of `corners`, on a level side, around a centre; `inner` is how far the sides are from it. */
export function polygon(corners: number, inner: number): readonly Point[] {
  const outer = inner / Math.cos(Math.PI / corners)
  return Array.from({ length: corners }, (_, index) => {
    const angle = -Math.PI / 2 + Math.PI / corners + (index * 2 * Math.PI) / corners
    return { x: outer * Math.cos(angle), y: outer * Math.sin(angle) }
  })
}

interface Measured {
  readonly name: string
  readonly rounds: number
}

/** What is measured: across a circle, from side to side of an even motif, from the middle to a side of an odd one. */
function measured(rounds: number, corners: number): Measured {
  if (corners === 0) return { name: 'Across', rounds: 2 * rounds }
  if (corners === 4) return { name: 'Each side', rounds: 2 * rounds }
  return corners % 2 === 0 ? { name: 'From side to side', rounds: 2 * rounds } : { name: 'From center to side', rounds }
}

const dot = 1.6

function lines(corners: number, radius: number, { place, length }: Scale): readonly Line[] {
  const middle = place(0, 0)
  const edge =
    corners === 0
      ? ellipse(middle, length(radius), length(radius))
      : closed(polygon(corners, radius).map(({ x, y }) => place(x, y)))
  return [
    { look: 'shape', path: edge },
    { look: 'solid', path: ellipse(middle, dot, dot) },
  ]
}

/** A flat motif: as many rounds as it has, in each direction from its middle. */
export function motifPlan(rounds: number, corners: number, density: Density): Plan {
  const radius = rounds / density.rows
  const points = corners === 0 ? [] : polygon(corners, radius)
  const [across, up] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  const { name, rounds: count } = measured(rounds, corners)
  // A square is as wide as it is high; of others the height between level sides is told.
  const upright = corners > 4
  const span: Span = {
    key: 'across',
    name,
    direction: upright ? 'up' : 'across',
    side: upright ? 'right' : 'below',
    from: -radius,
    to: corners % 2 === 1 ? 0 : radius,
    at: upright ? Math.max(...across) : Math.min(-radius, ...up),
    count,
    of: 'rows',
  }
  return {
    left: Math.min(-radius, ...across),
    right: Math.max(radius, ...across),
    bottom: Math.min(-radius, ...up),
    top: Math.max(radius, ...up),
    spans: [corners === 3 ? { ...span, direction: 'up', side: 'right', at: Math.max(...across) } : span],
    lines: (scale) => lines(corners, radius, scale),
  }
}
