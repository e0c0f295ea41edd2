import { textForAll, textForSize } from '../measure/index.ts'
import type { DrawnValue, Label, Line } from './drawing.ts'
import { lineStep, roomFor } from './drawing.ts'
import type { Point } from './path.ts'
import { open } from './path.ts'
import type { Scale, Span } from './plan.ts'

/** A span with what is written at it, in the draft's units and in the other ones. */
export interface Dimension {
  readonly span: Span
  readonly letter: string | null
  readonly lines: readonly (string | DrawnValue)[]
}

export const labelSize = 11
/** Between the piece and the nearest dimension line, and between a line and its label. */
const [standOff, gap] = [14, 5]
const tick = 3.5

/** Height of a label; points. */
function heightOf({ lines }: Dimension): number {
  return labelSize * (1 + (lines.length - 1) * lineStep)
}

/** The widest that a label gets, whichever size is chosen; points. */
export function widthOf({ lines, letter }: Dimension, sizes: number): number {
  const texts = lines.flatMap((line) => {
    if (typeof line === 'string') return [line]
    const each = Array.from({ length: sizes }, (_, size) => textForSize(line.segments, size))
    return letter === null ? [...each, textForAll(line.segments)] : each
  })
  return Math.max(0, ...texts.map((text) => roomFor(text, labelSize)))
}

/** Dimension lines that would lie on each other stand in columns, the first nearest to the piece. */
function columnsOf(dimensions: readonly Dimension[]): readonly (readonly Dimension[])[] {
  const columns: Dimension[][] = []
  for (const dimension of dimensions) {
    const { from, to } = dimension.span
    const free = columns.find((column) => column.every(({ span }) => to <= span.from + 0.01 || from >= span.to - 0.01))
    if (free === undefined) columns.push([dimension])
    else free.push(dimension)
  }
  return columns
}

interface Drawn {
  readonly lines: readonly Line[]
  readonly labels: readonly Label[]
  /** How far beyond the piece it reaches; points. */
  readonly reach: number
}

const thin = (points: readonly Point[]): Line => ({ look: 'thin', path: open(points) })

/** A line with a tick at either end. */
function measuringLine(from: Point, to: Point): readonly Line[] {
  const upright = from.x === to.x
  const ticked = ({ x, y }: Point): Line =>
    upright
      ? thin([
          { x: x - tick, y },
          { x: x + tick, y },
        ])
      : thin([
          { x, y: y - tick },
          { x, y: y + tick },
        ])
  return [thin([from, to]), ticked(from), ticked(to)]
}

/** How far the baseline of a line of words lies below its middle, and below its top. */
const [fromMiddle, fromTop] = [labelSize * 0.36, labelSize * 0.86]

/** A label whose lines have their middle at a place. */
function labelBeside({ lines, letter }: Dimension, at: Point, anchor: Label['anchor']): Label {
  const y = at.y + fromMiddle - ((lines.length - 1) * labelSize * lineStep) / 2
  const own = letter === null ? null : { text: letter, y: at.y + fromMiddle }
  return { x: at.x, y, anchor, size: labelSize, lines, letter: own }
}

/** A label above (`towards` -1) or below (1) a place. */
function labelAcross(dimension: Dimension, at: Point, towards: -1 | 1): Label {
  const { lines, letter } = dimension
  const nearest = towards < 0 ? at.y - labelSize * 0.12 : at.y + fromTop
  const y = towards < 0 ? nearest - (lines.length - 1) * labelSize * lineStep : nearest
  const own = letter === null ? null : { text: letter, y: nearest }
  return { x: at.x, y, anchor: 'middle', size: labelSize, lines, letter: own }
}

/** Dimension lines at the left (`towards` -1) or right (1) of the piece, whose edge is at `edge`. */
export function drawBeside(
  dimensions: readonly Dimension[],
  edge: number,
  towards: -1 | 1,
  scale: Scale,
  sizes: number,
): Drawn {
  let reach = 0
  const lines: Line[] = []
  const labels: Label[] = []
  for (const column of columnsOf(dimensions)) {
    const x = edge + towards * (reach + standOff)
    for (const dimension of column) {
      const { from, to, at } = dimension.span
      const [start, end] = [scale.place(at, from), scale.place(at, to)]
      lines.push(...measuringLine({ x, y: start.y }, { x, y: end.y }))
      const middle = { x: x + towards * gap, y: (start.y + end.y) / 2 }
      labels.push(labelBeside(dimension, middle, towards < 0 ? 'end' : 'start'))
    }
    reach += standOff + gap + Math.max(...column.map((dimension) => widthOf(dimension, sizes)))
  }
  return { lines, labels, reach }
}

/** How many labels high each label must stand, so that none lies on a neighbour. */
function storeys(dimensions: readonly Dimension[], scale: Scale, sizes: number): readonly number[] {
  const ends: number[] = []
  return dimensions.map((dimension) => {
    const middle = scale.place((dimension.span.from + dimension.span.to) / 2, 0).x
    const half = widthOf(dimension, sizes) / 2
    const free = ends.findIndex((end) => end + gap <= middle - half)
    const storey = free < 0 ? ends.length : free
    ends[storey] = middle + half
    return storey
  })
}

/** Dimension lines above (`towards` -1) or below (1) the piece, whose edge is at `edge`. */
export function drawAcross(
  dimensions: readonly Dimension[],
  edge: number,
  towards: -1 | 1,
  scale: Scale,
  sizes: number,
): Drawn {
  const sorted = [...dimensions].sort((a, b) => a.span.from - b.span.from)
  const heights = storeys(sorted, scale, sizes)
  const y = edge + towards * standOff
  const lines: Line[] = []
  const labels: Label[] = []
  sorted.forEach((dimension, index) => {
    const { from, to } = dimension.span
    const [start, end] = [
      { x: scale.place(from, 0).x, y },
      { x: scale.place(to, 0).x, y },
    ]
    lines.push(...measuringLine(start, end))
    const away = gap + (heights[index] ?? 0) * (heightOf(dimension) + gap)
    labels.push(labelAcross(dimension, { x: (start.x + end.x) / 2, y: y + towards * away }, towards))
  })
  const storey = gap + Math.max(0, ...sorted.map(heightOf))
  const reach = sorted.length === 0 ? 0 : standOff + (Math.max(...heights) + 1) * storey + gap
  return { lines, labels, reach }
}

/** Dimension lines across the inside of a piece, each with its label above it. */
export function drawWithin(dimensions: readonly Dimension[], scale: Scale): Omit<Drawn, 'reach'> {
  const lines: Line[] = []
  const labels: Label[] = []
  for (const dimension of dimensions) {
    const { from, to, at } = dimension.span
    const [start, end] = [scale.place(from, at), scale.place(to, at)]
    lines.push(...measuringLine(start, end))
    labels.push(labelAcross(dimension, { x: (start.x + end.x) / 2, y: start.y - gap }, -1))
  }
  return { lines, labels }
}
