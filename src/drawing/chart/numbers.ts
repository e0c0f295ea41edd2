import type { Label, Line } from '../drawing.ts'
import type { Point } from '../path.ts'
import type { RowPlace } from './lay-chart.ts'
import type { Sheet } from './sheet.ts'
import { middle } from './sheet.ts'
import type { Stage } from './stage.ts'
import { stemFrom, stroke } from './stage.ts'

/** Lines and words of a chart that are no symbols. */
export interface Marks {
  readonly lines: readonly Line[]
  readonly labels: readonly Label[]
}

/** Size of a number, in points, where a stitch is so many of them wide. */
export const numberSize = (scale: number): number => Math.max(6.5, scale * 0.76)

/** How wide a digit is, as a part of its size. */
const digit = 0.56
const arrowLength = 0.9
/** Between chart and arrow, arrow and number, number and edge, in stitches. */
const [beforeArrow, beforeNumber, afterNumber] = [0.35, 0.25, 0.15]

/** Room for arrows and numbers at the sides of a chart of rows, in stitches; none is needed where rounds lie around. */
export function roomForNumbers(rows: readonly RowPlace[]): number {
  const beside = rows.filter(({ round }) => round === null)
  if (beside.length === 0) return 0
  const longest = Math.max(...beside.map(({ label }) => label.length))
  return arrowLength + longest * digit
}

export function text(words: string, at: Point, anchor: Label['anchor'], size: number): Label {
  return { x: at.x, y: at.y + size * 0.36, anchor, size, lines: [words], letter: null }
}

/** An arrow in the direction of work. */
export function arrow(stage: Stage, tail: Point, tip: Point): readonly Line[] {
  const length = Math.hypot(tip.x - tail.x, tip.y - tail.y)
  const [x, y] = [(tip.x - tail.x) / length, (tip.y - tail.y) / length]
  const barb = (side: 1 | -1): Point => ({
    x: tip.x - 0.28 * x - 0.18 * side * y,
    y: tip.y - 0.28 * y + 0.18 * side * x,
  })
  return [stroke(stage, tail, tip), stroke(stage, barb(1), tip, barb(-1))].map((line) => ({ ...line, look: 'thin' }))
}

/** The number of a row and an arrow, at the side where it begins. */
function besideRow({ label, first, fromRight }: RowPlace, { stage, sides }: Sheet): Marks {
  if (first === null) return { lines: [], labels: [] }
  const size = numberSize(stage.scale)
  const { y } = middle(first.feet[0] ?? first.head, first.head)
  const [side, way] = fromRight ? [sides.right, -1] : [sides.left, 1]
  const edge = side + way * afterNumber
  const tail = edge + way * ((label.length * digit * size) / stage.scale + beforeNumber)
  return {
    lines: arrow(stage, { x: tail, y }, { x: tail + way * arrowLength, y }),
    labels: [text(label, stage.point({ x: edge, y }), fromRight ? 'end' : 'start', size)],
  }
}

/** An arrow over the beginning of the last round, along its way. */
function overRound({ first, ahead }: RowPlace, stage: Stage): readonly Line[] {
  if (first === null) return []
  const stem = stemFrom(first.feet[0] ?? { x: 0, y: 0 }, first.head)
  const place = (along: number): Point => stem.at(stem.length + overLast, -ahead * along)
  return arrow(stage, place(beforeArrow), place(beforeArrow + arrowLength))
}

/** Clear of the slip stitch that closes a round. */
const overLast = 0.65

/** Numbers of all rows, and the direction in which they are worked. */
export function rowNumbers(rows: readonly RowPlace[], sheet: Sheet): Marks {
  const marks = rows.map((row): Marks => {
    if (row.round === null) return besideRow(row, sheet)
    const at = sheet.stage.point(row.round)
    return { lines: [], labels: [text(row.label, at, 'middle', numberSize(sheet.stage.scale))] }
  })
  const last = rows.at(-1)
  const over = last === undefined || last.round === null ? [] : overRound(last, sheet.stage)
  return { lines: [...marks.flatMap(({ lines }) => lines), ...over], labels: marks.flatMap(({ labels }) => labels) }
}
