import type { Point } from '../path.ts'
import type { Placed } from './model.ts'
import type { Stage } from './stage.ts'

/** Room on a sheet, in points: the smaller of the two usual papers within its margins, with caption and key. */
const [mostWidth, mostHeight] = [470, 560]
/** A stitch is so many points wide: symbols larger than the first look clumsy, smaller than the second can't be read. */
const [largest, smallest] = [12, 5.4]
/** Around all symbols, in stitches. */
const edge = 0.9

interface Bounds {
  readonly left: number
  readonly right: number
  readonly low: number
  readonly high: number
}

function boundsOf(placed: readonly Placed[]): Bounds {
  const points = placed.flatMap(({ sign, feet, head }) => {
    const own = [...feet, head]
    if (sign.what === 'chains' && sign.bend !== null)
      return [...own, ...own.map((each) => middle(each, sign.bend ?? each))]
    if (sign.what !== 'ring') return own
    return own.flatMap(({ x, y }) => [
      { x: x - sign.radius, y: y - sign.radius },
      { x: x + sign.radius, y: y + sign.radius },
    ])
  })
  const [across, up] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  return { left: Math.min(...across), right: Math.max(...across), low: Math.min(...up), high: Math.max(...up) }
}

export function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
}

/** What a chart is drawn on. */
export interface Sheet {
  readonly stage: Stage
  readonly width: number
  readonly height: number
  /** Where it ends at the sides, in the plane of the chart. */
  readonly sides: { readonly left: number; readonly right: number }
}

/** The chart on its sheet, as large as looks well, with so much room at its sides; null where it would be too small to read. */
export function sheetFor(placed: readonly Placed[], room: number): Sheet | null {
  const { left, right, low, high } = boundsOf(placed)
  const sides = { left: left - edge - room, right: right + edge + room }
  const [wide, tall] = [sides.right - sides.left, high - low + 2 * edge]
  const scale = Math.min(largest, mostWidth / wide, mostHeight / tall)
  if (scale < smallest) return null
  const point = ({ x, y }: Point): Point => ({ x: (x - sides.left) * scale, y: (high - y + edge) * scale })
  return { stage: { point, scale }, width: wide * scale, height: tall * scale, sides }
}
