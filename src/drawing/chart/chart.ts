import type { PlaceKind } from '../../rows/fabric.ts'
import type { Figure, Label } from '../drawing.ts'
import { keyOf } from './key.ts'
import type { LaidChart } from './lay-chart.ts'
import { entriesOf, keyEntries, ownNumbers } from './legend.ts'
import type { ChartRow, Placed } from './model.ts'
import { numberSize, roomForNumbers, rowNumbers, text } from './numbers.ts'
import type { Sheet } from './sheet.ts'
import { middle, sheetFor } from './sheet.ts'
import type { Naming } from './signs.ts'
import { drawnOf, signLines } from './signs.ts'
import { rowWords } from './words.ts'

/** What is charted, and from what. */
export interface Charted {
  readonly piece: string
  readonly caption: string
  readonly rows: readonly ChartRow[]
  readonly laid: LaidChart
  readonly kinds: readonly PlaceKind[]
  readonly naming: Naming
}

/** Whether it shows a part of each row only. */
function isCut(rows: readonly ChartRow[]): boolean {
  return rows.some(({ places }) => places !== null)
}

function boxLabel(placed: Placed, number: number, { stage }: Sheet): Label {
  return text(
    String(number),
    stage.point(middle(placed.feet[0] ?? placed.head, placed.head)),
    'middle',
    numberSize(stage.scale) * 0.9,
  )
}

/** A chart as a figure, and the names of stitches that have no symbol; null where it fits on no page. */
export function drawChart(charted: Charted): { readonly figure: Figure; readonly own: readonly string[] } | null {
  const { laid, naming, rows, kinds, piece, caption } = charted
  const sheet = sheetFor(laid.placed, roomForNumbers(laid.rows))
  if (sheet === null) return null
  const entries = entriesOf(laid.placed, naming)
  const own = ownNumbers(entries)
  const lines = laid.placed.flatMap((each) => signLines(sheet.stage, each, drawnOf(each, naming)))
  const boxes = laid.placed.flatMap((each) => {
    const number = own.get(keyOf(each, drawnOf(each, naming)))
    return number === undefined ? [] : [boxLabel(each, number, sheet)]
  })
  const marks = rowNumbers(laid.rows, sheet)
  const words = rows.map((row) => rowWords(row, kinds, naming.dictionary))
  const names = [...entries.values()].flatMap(({ drawn }) => (drawn?.as === 'own' ? [drawn.called] : []))
  const figure: Figure = {
    kind: 'chart',
    piece,
    caption,
    alt: [`Stitch chart: ${caption}.`, ...(isCut(rows) ? ['The rows in full:'] : []), ...words].join(' '),
    drawing: {
      width: sheet.width,
      height: sheet.height,
      lines: [...lines, ...marks.lines],
      labels: [...marks.labels, ...boxes],
    },
    measures: [],
    lettered: false,
    key: keyEntries(entries, own, charted),
  }
  return { figure, own: names }
}
