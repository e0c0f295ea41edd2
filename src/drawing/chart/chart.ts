import type { PlaceKind } from '../../rows/fabric.ts'
import type { Drawing, Figure, KeyEntry, Label, Line } from '../drawing.ts'
import type { Point } from '../path.ts'
import type { Drawn } from './key.ts'
import { keyOf, wordsFor } from './key.ts'
import type { LaidChart, RowPlace } from './lay-chart.ts'
import type { ChartRow, Placed } from './model.ts'
import type { Naming } from './signs.ts'
import { drawnLines, drawnOf, signLines } from './signs.ts'
import { chainLength, heightOf } from './size.ts'
import type { Stage } from './stage.ts'
import { drawChain, drawPicot, drawRing, drawSlip } from './symbols.ts'
import { rowWords } from './words.ts'

/** Room on a sheet, in points: the smaller of the two usual papers within its margins, with caption and key. */
const [mostWidth, mostHeight] = [470, 560]
/** A stitch is so many points wide: symbols larger than the first look clumsy, smaller than the second can't be read. */
const [largest, smallest] = [12, 5.4]
const edge = 0.9

/** What is charted, and from what. */
export interface Charted {
  readonly piece: string
  readonly caption: string
  readonly rows: readonly ChartRow[]
  readonly laid: LaidChart
  readonly kinds: readonly PlaceKind[]
  readonly naming: Naming
}

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

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
}

/** Room for the numbers of rows at the sides. */
const numberRoom = 1.9

interface Sheet {
  readonly stage: Stage
  readonly width: number
  readonly height: number
}

/** The chart on its sheet, as large as looks well; null where it would be too small to read. */
function sheetFor(placed: readonly Placed[]): Sheet | null {
  const { left, right, low, high } = boundsOf(placed)
  const [wide, tall] = [right - left + 2 * (edge + numberRoom), high - low + 2 * edge]
  const scale = Math.min(largest, mostWidth / wide, mostHeight / tall)
  if (scale < smallest) return null
  const point = ({ x, y }: Point): Point => ({
    x: (x - left + edge + numberRoom) * scale,
    y: (high - y + edge) * scale,
  })
  return { stage: { point, scale }, width: wide * scale, height: tall * scale }
}

const numberSize = (scale: number): number => Math.max(6.5, scale * 0.76)

function text(words: string, at: Point, anchor: Label['anchor'], size: number): Label {
  return { x: at.x, y: at.y + size * 0.36, anchor, size, lines: [words], letter: null }
}

/** The number of a row, at the side where it begins. */
function rowNumber({ label, first, fromRight, round }: RowPlace, { stage, width }: Sheet): Label[] {
  if (first === null) return []
  const size = numberSize(stage.scale)
  const foot = first.feet[0] ?? first.head
  const at = stage.point(middle(foot, first.head))
  if (round !== null) return [text(label, stage.point(round), 'middle', size)]
  return [
    text(
      label,
      { x: fromRight ? width - edge * stage.scale : edge * stage.scale, y: at.y },
      fromRight ? 'end' : 'start',
      size,
    ),
  ]
}

interface Entry {
  readonly key: string
  readonly placed: Placed
  readonly drawn: Drawn | null
}

function entriesOf(placed: readonly Placed[], naming: Naming): ReadonlyMap<string, Entry> {
  const entries = new Map<string, Entry>()
  for (const each of placed) {
    const drawn = drawnOf(each, naming)
    const key = keyOf(each, drawn)
    if (!entries.has(key)) entries.set(key, { key, placed: each, drawn })
  }
  return entries
}

/** Numbers of the stitches that are the pattern's own, by their key. */
function ownNumbers(entries: ReadonlyMap<string, Entry>): ReadonlyMap<string, number> {
  const own = [...entries.values()].filter(({ drawn }) => drawn?.as === 'own')
  return new Map(own.map(({ key }, index) => [key, index + 1]))
}

const keyScale = 9

/** A symbol upright, alone. */
function sample({ placed, drawn }: Entry, number: number | null): Drawing {
  const { sign } = placed
  const legs = drawn?.as === 'closed' ? drawn.legs : 1
  const high = sign.what === 'stitch' ? heightOf(sign.kind) : chainLength
  const wide = Math.max(1.2, legs * 0.9)
  const point = ({ x, y }: Point): Point => ({ x: (x + wide / 2 + 0.3) * keyScale, y: (high + 0.45 - y) * keyScale })
  const stage: Stage = { point, scale: keyScale }
  const feet = Array.from({ length: legs }, (_, leg) => ({ x: (leg - (legs - 1) / 2) * 0.9, y: 0 }))
  const head = { x: 0, y: high }
  const labels = number === null ? [] : [text(String(number), point({ x: 0, y: high / 2 }), 'middle', 6.5)]
  const lines = drawn === null ? plainSample(stage, placed) : drawnLines(stage, feet, head, drawn)
  return { width: (wide + 0.6) * keyScale, height: (high + 0.9) * keyScale, lines, labels }
}

function plainSample(stage: Stage, { sign }: Placed): readonly Line[] {
  const centre = { x: 0, y: chainLength / 2 }
  if (sign.what === 'chains') return [drawChain(stage, centre, { x: 1, y: 0 })]
  if (sign.what === 'picot') return drawPicot(stage, { x: 0, y: -0.25 }, { x: 0, y: 1 }, sign.chains)
  if (sign.what === 'ring') return drawRing(stage, centre, 0.5, 0)
  return [drawSlip(stage, centre)]
}

function plainWords({ sign }: Placed): string | null {
  switch (sign.what) {
    case 'chains':
      return 'ch: chain'
    case 'slip':
      return 'sl st: slip stitch'
    case 'picot':
      return 'picot'
    case 'ring':
      return sign.chains === 0 ? 'ring' : null
    default:
      return null
  }
}

/** Rows that are worked with the wrong side facing. */
function hasWrongSide(placed: readonly Placed[]): boolean {
  return placed.some(({ sign }) => sign.what === 'stitch' && !sign.front)
}

function keyEntries(
  entries: ReadonlyMap<string, Entry>,
  own: ReadonlyMap<string, number>,
  charted: Charted,
): KeyEntry[] {
  const turns = hasWrongSide(charted.laid.placed)
  return [...entries.values()].flatMap((entry): KeyEntry[] => {
    const { dictionary } = charted.naming
    const words = entry.drawn === null ? plainWords(entry.placed) : wordsFor(entry.drawn, turns, dictionary)
    return words === null ? [] : [{ symbol: sample(entry, own.get(entry.key) ?? null), words }]
  })
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
  const sheet = sheetFor(laid.placed)
  if (sheet === null) return null
  const entries = entriesOf(laid.placed, naming)
  const own = ownNumbers(entries)
  const lines = laid.placed.flatMap((each) => signLines(sheet.stage, each, drawnOf(each, naming)))
  const boxes = laid.placed.flatMap((each) => {
    const number = own.get(keyOf(each, drawnOf(each, naming)))
    return number === undefined ? [] : [boxLabel(each, number, sheet)]
  })
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
      lines,
      labels: [...laid.rows.flatMap((row) => rowNumber(row, sheet)), ...boxes],
    },
    measures: [],
    lettered: false,
    key: keyEntries(entries, own, charted),
  }
  return { figure, own: names }
}
