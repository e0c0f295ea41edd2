import type { Composer } from './composer.ts'
import type { Part } from './count-columns.ts'
import type { CountPiece, CountRow } from './count-rows.ts'
import type { Line } from './line.ts'
import { breakLines, measureRuns } from './line.ts'
import { roundedSquare } from './operators.ts'
import type { Pen } from './pen.ts'
import { drawLine } from './strip.ts'
import type { Style } from './style.ts'
import type { Tag } from './tag.ts'
import { tag } from './tag.ts'

/** Measures that all parts of a count sheet share, in points. */
export interface CountSizes {
  /** Width of a column of the page. */
  readonly width: number
  /** Where cells begin within it, and how wide each is. */
  readonly cells: number
  readonly cell: number
  /** Width of the widest count, which stands at the right of its cell. */
  readonly count: number
  readonly leading: number
  readonly names: readonly (readonly Line[])[]
  readonly headOf: (row: CountRow) => readonly Line[]
  readonly styles: Readonly<Record<'title' | 'name' | 'head' | 'number' | 'count', Style>>
}

/** Draws a part with its upper edge at `top`. */
export type SetPart = (pen: Pen, top: number) => void

const boxSpace = 13
const numberSpace = 4
const rowSpace = 1.6
const partSpace = 11
/** A head wider than this is broken into lines. */
const widestHead = 130

/** Measures for letters of `size` points. */
export function countSizes(
  pieces: readonly CountPiece[],
  sizes: readonly string[],
  size: number,
  composer: Composer,
): CountSizes {
  const { styles, section } = composer.look
  const own = {
    title: { ...section.style, size: size * 1.25 },
    name: { ...styles.tiny, size: Math.max(6, size * 0.75) },
    head: { ...styles.headCell, size },
    number: { ...styles.tiny, size: Math.max(6, size * 0.78) },
    count: { ...styles.cell, size },
  }
  const rows = pieces.flatMap((piece) => piece.rows)
  const widest = (texts: readonly string[], style: Style): number =>
    Math.max(0, ...texts.map((text) => whole(text, style, composer)))
  const head = Math.min(
    widestHead * (size / 9.5),
    Math.max(
      30,
      widest(
        rows.map((row) => row.head),
        own.head,
      ),
    ),
  )
  const count = widest(
    rows.flatMap((row) => row.counts),
    own.count,
  )
  const number = widest(
    rows.flatMap((row) => row.numbers ?? []),
    own.number,
  )
  const names = sizes.flatMap((name) => name.split(' '))
  const wanted = Math.max(widest(names, own.name), number + (number > 0 ? numberSpace : 0) + count) + size
  const cells = boxSpace + head
  const room = composer.frame.end - composer.frame.start
  const cell = Math.min(wanted, (room - cells) / sizes.length)
  // Heights are asked for again and again while columns are filled.
  const heads = new Map(rows.map((row) => [row, breakLines(composer, [{ text: row.head, style: own.head }], head)]))
  return {
    width: cells + sizes.length * cell,
    cells,
    cell,
    count,
    leading: size * 1.2,
    names: sizes.map((text) => breakLines(composer, [{ text, style: own.name }], cell - 2)),
    headOf: (row) => heads.get(row) ?? [],
    styles: own,
  }
}

const whole = (text: string, style: Style, composer: Composer): number => measureRuns(composer, [{ text, style }]).whole

const titleHeight = ({ styles }: CountSizes): number => styles.title.size * 1.5

const nameLeading = ({ styles }: CountSizes): number => styles.name.size * 1.25

const headerHeight = (measures: CountSizes): number =>
  Math.max(1, ...measures.names.map((lines) => lines.length)) * nameLeading(measures) + rowSpace

function rowHeight(row: CountRow, measures: CountSizes): number {
  return measures.headOf(row).length * measures.leading + 2 * rowSpace
}

/** Height of a part with its title, names of sizes and the space below. */
export function heightOfPart(part: Part, measures: CountSizes): number {
  const rows = part.rows.reduce((sum, row) => sum + rowHeight(row, measures), 0)
  return (part.begins ? titleHeight(measures) : 0) + headerHeight(measures) + rows + partSpace
}

/** Sizes a part; nothing is drawn before it is called. */
export function setPart(part: Part, measures: CountSizes, x: number, composer: Composer): SetPart {
  const heading = tag('H2', composer.parent)
  const table = tag('Table', composer.parent)
  const title = breakLines(composer, [{ text: part.title, style: measures.styles.title }], measures.width)[0]
  const header = setHeader(measures, x, table, composer)
  const rows = part.rows.map((row) => ({
    draw: setRow(row, measures, x, table, composer),
    height: rowHeight(row, measures),
  }))
  return (pen, top) => {
    let y = top
    if (part.begins && title !== undefined && part.title !== '') {
      pen.bookmark(part.title, 2, top)
      drawLine(pen, title, { tag: heading, x, width: 0, leading: titleHeight(measures) }, y)
    }
    if (part.begins) y += titleHeight(measures)
    header(pen, y)
    y += headerHeight(measures)
    for (const { draw, height } of rows) {
      draw(pen, y)
      y += height
    }
  }
}

function setHeader(measures: CountSizes, x: number, table: Tag, composer: Composer): SetPart {
  const row = tag('TR', table)
  const corner = tag('TH', row, { scope: 'Column' })
  const cells = measures.names.map(() => tag('TH', row, { scope: 'Column' }))
  const [words] = breakLines(composer, [{ text: 'Row', style: measures.styles.name }], measures.cells)
  const leading = nameLeading(measures)
  return (pen, top) => {
    pen.announce([row, corner, ...cells])
    const last = headerHeight(measures) - rowSpace - leading
    if (words !== undefined) drawLine(pen, words, { tag: corner, x: x + boxSpace, width: 0, leading }, top + last)
    for (const [size, cell] of cells.entries()) {
      const lines = measures.names[size] ?? []
      const setting = { tag: cell, ...cellPlace(size, measures, x), leading, align: 'right' } as const
      for (const [index, line] of lines.entries())
        drawLine(pen, line, setting, top + last - (lines.length - 1 - index) * leading)
    }
    const y = top + headerHeight(measures)
    pen.rule(x, y, x + measures.width, y, composer.look.colours.ink, 0.75)
  }
}

const cellPlace = (
  size: number,
  { cells, cell }: CountSizes,
  x: number,
): { readonly x: number; readonly width: number } => ({
  x: x + cells + size * cell,
  width: cell,
})

/** A count stands at the right of its cell, the row's own number for that size before it. */
function setRow(row: CountRow, measures: CountSizes, x: number, table: Tag, composer: Composer): SetPart {
  const { styles, leading, cell, count } = measures
  const structure = tag('TR', table)
  const head = tag('TH', structure, { scope: 'Row' })
  const cells = row.counts.map(() => tag('TD', structure))
  const set = (text: string, style: Style): Line | undefined => breakLines(composer, [{ text, style }], cell)[0]
  const counts = row.counts.map((text) => set(text, styles.count))
  const numbers = row.numbers?.map((text) => set(text, styles.number)) ?? []
  const height = rowHeight(row, measures)
  const { colours } = composer.look
  return (pen, top) => {
    pen.announce([structure, head, ...cells])
    const y = top + rowSpace
    const side = leading * 0.55
    pen.boxes([[x, y + leading * 0.73 - side]], roundedSquare(side, 1), colours.soft, 0.5)
    for (const [index, line] of measures.headOf(row).entries())
      drawLine(pen, line, { tag: head, x: x + boxSpace, width: 0, leading }, y + index * leading)
    for (const [size, cellTag] of cells.entries()) {
      const place = cellPlace(size, measures, x)
      const setting = { tag: cellTag, x: place.x, leading, align: 'right' } as const
      const [number, stitches] = [numbers[size], counts[size]]
      if (number !== undefined) drawLine(pen, number, { ...setting, width: place.width - count - numberSpace }, y)
      if (stitches !== undefined) drawLine(pen, stitches, { ...setting, width: place.width }, y)
    }
    pen.rule(x, top + height, x + measures.width, top + height, colours.hairline, 0.4)
  }
}
