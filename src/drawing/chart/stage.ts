import type { Line, Look } from '../drawing.ts'
import type { Point } from '../path.ts'
import { closed, curve, ellipse, open } from '../path.ts'

/** Draws in the plane of a chart, in chain stitches and upwards, on a drawing, in points and downwards. */
export interface Stage {
  readonly point: (place: Point) => Point
  readonly scale: number
}

export function stroke({ point }: Stage, ...places: readonly Point[]): Line {
  return { look: 'symbol', path: open(places.map(point)) }
}

export function bow({ point }: Stage, from: Point, first: Point, second: Point, to: Point): Line {
  return { look: 'symbol', path: curve(point(from), point(first), point(second), point(to)) }
}

export function box({ point }: Stage, places: readonly Point[]): Line {
  return { look: 'symbol', path: closed(places.map(point)) }
}

/** An oval around a centre, its long side along `direction`. */
export function oval(stage: Stage, centre: Point, direction: Point, along: number, across: number, look: Look): Line {
  const angle = -Math.atan2(direction.y, direction.x)
  return { look, path: ellipse(stage.point(centre), along * stage.scale, across * stage.scale, angle) }
}

/** Places told from a foot, so far along the way to a head and so far to its right. */
export interface Stem {
  readonly length: number
  readonly at: (along: number, right: number) => Point
}

export function stemFrom(foot: Point, head: Point): Stem {
  const length = Math.max(Math.hypot(head.x - foot.x, head.y - foot.y), 0.01)
  const [x, y] = [(head.x - foot.x) / length, (head.y - foot.y) / length]
  return {
    length,
    at: (along, right) => ({ x: foot.x + x * along + y * right, y: foot.y + y * along - x * right }),
  }
}
