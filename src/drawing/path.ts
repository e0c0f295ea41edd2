/** A place in a drawing, in points. */
export interface Point {
  readonly x: number
  readonly y: number
}

/** A hundredth of a point is finer than any printer. */
function number(value: number): string {
  return String(Math.round(value * 100) / 100 + 0)
}

function at({ x, y }: Point): string {
  return `${number(x)} ${number(y)}`
}

/** A line through points. */
export function open(points: readonly Point[]): string {
  return points.map((point, index) => `${index === 0 ? 'M' : 'L'} ${at(point)}`).join(' ')
}

/** A line through points and back to the first. */
export function closed(points: readonly Point[]): string {
  return `${open(points)} Z`
}

export function curve(from: Point, first: Point, second: Point, to: Point): string {
  return `M ${at(from)} C ${at(first)} ${at(second)} ${at(to)}`
}

/** How far the handles of a quarter of a circle reach, as a part of its radius. */
const handle = (4 * (Math.SQRT2 - 1)) / 3

/** A whole ellipse around a centre, turned by `angle` in radians. */
export function ellipse(centre: Point, along: number, across: number, angle = 0): string {
  const place = (u: number, v: number): Point => ({
    x: centre.x + u * along * Math.cos(angle) - v * across * Math.sin(angle),
    y: centre.y + u * along * Math.sin(angle) + v * across * Math.cos(angle),
  })
  const quarter = (...points: readonly (readonly [number, number])[]): string =>
    `C ${points.map(([u, v]) => at(place(u, v))).join(' ')}`
  return [
    `M ${at(place(1, 0))}`,
    quarter([1, handle], [handle, 1], [0, 1]),
    quarter([-handle, 1], [-1, handle], [-1, 0]),
    quarter([-1, -handle], [-handle, -1], [0, -1]),
    quarter([handle, -1], [1, -handle], [1, 0]),
    'Z',
  ].join(' ')
}

/** The half of an ellipse between the ends of a level line: below it, or above. */
export function halfEllipse(left: Point, right: Point, depth: number): string {
  const radius = (right.x - left.x) / 2
  const middle = left.x + radius
  const far = left.y + depth
  const reach = radius * handle
  return [
    `M ${at(left)}`,
    `C ${at({ x: left.x, y: left.y + depth * handle })} ${at({ x: middle - reach, y: far })} ${at({ x: middle, y: far })}`,
    `C ${at({ x: middle + reach, y: far })} ${at({ x: right.x, y: right.y + depth * handle })} ${at(right)}`,
  ].join(' ')
}
