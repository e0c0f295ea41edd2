import type { Composer, Frame, Strips } from './composer.ts'
import { gridWidths, shareWidth } from './grid-widths.ts'
import type { Line, Run } from './line.ts'
import { breakLines } from './line.ts'
import type { Pen } from './pen.ts'
import type { Strip } from './strip.ts'
import { after, drawLine, heightOf, keptWithNext, together } from './strip.ts'
import type { Tag } from './tag.ts'
import { tag } from './tag.ts'

export interface Cell {
  readonly runs: readonly Run[]
  readonly align: 'left' | 'right' | 'center'
  /** What the cell is a header of; null for a plain one. */
  readonly heads: 'Row' | 'Column' | null
}

/** A table's cells by row; the first row is its header. Short rows are filled up. */
export type Grid = readonly (readonly Cell[])[]

/** Space between columns; less of it, then smaller letters too, where the longest words would not fit otherwise. */
const columnSpaces = { roomy: 16, close: 9, tight: 6 }
const rowSpace = 4
/** A row of more lines than this may be cut at the foot of a page. */
const mostLines = 24
/** A table that takes more of a page than this may go over to the next. */
const longest = 0.55

/** A table from the frame's text edge, or from its start where it is too wide for that; several where no page is wide enough. */
export function setGrid(wanted: Grid, composer: Composer): Strips {
  const { start, end } = composer.frame
  const { tightest } = composer.look
  const fitting = [columnSpaces.roomy, columnSpaces.close]
    .map((space) => space * spaceScale(composer))
    .find((space) => gridWidths(wanted, space, composer).least <= end - start)
  if (fitting !== undefined) return setTable(wanted, fitting, composer)
  const space = columnSpaces.tight * spaceScale(composer)
  const tight = wanted.map((cells) => cells.map((cell) => tighten(cell, tightest)))
  return cutGrid(tight, end - start, space, composer).flatMap((part) => setTable(part, space, composer))
}

/** Larger letters want more space between columns. */
const spaceScale = ({ look }: Composer): number => look.styles.cell.size / 9.5

/** Space between columns that have room enough, in points. */
export const roomySpace = (composer: Composer): number => columnSpaces.roomy * spaceScale(composer)

function tighten(cell: Cell, size: number): Cell {
  return { ...cell, runs: cell.runs.map(({ text, style }) => ({ text, style: { ...style, size } })) }
}

/** Cuts a grid that is too wide between columns; each part begins with the first column. */
function cutGrid(grid: Grid, room: number, space: number, composer: Composer): readonly Grid[] {
  const count = Math.max(...grid.map((cells) => cells.length))
  const part = (columns: readonly number[]): Grid =>
    grid.map((cells) => columns.map((column) => cells[column] ?? { runs: [], align: 'left', heads: null }))
  const parts: number[][] = []
  for (let column = 1; column < count; column++) {
    const last = parts.at(-1)
    if (last !== undefined && gridWidths(part([...last, column]), space, composer).least <= room) last.push(column)
    else parts.push([0, column])
  }
  return parts.length < 2 ? [grid] : parts.map(part)
}

function setTable(grid: Grid, space: number, composer: Composer): Strips {
  const columns = columnsOf(grid, composer, space)
  const table = tag('Table', composer.parent)
  const [header = [], ...rows] = grid.map((cells) => setGridRow(cells, columns, { ...composer, parent: table }))
  const head = header.map((strip) => ({ ...strip, keep: true }))
  const body = lastTwoTogether(rows).flatMap((strips) => strips.map((strip) => ({ ...strip, repeats: head })))
  const all = after(8, [...head, ...body])
  return heightOf(all, true) > composer.area * longest ? all : together(all)
}

/** A last row alone on a page would look forgotten. */
function lastTwoTogether(rows: readonly Strips[]): readonly Strips[] {
  return rows.map((strips, index) => (index === rows.length - 2 ? keptWithNext(strips) : strips))
}

interface Column {
  readonly x: number
  readonly width: number
}

function columnsOf(grid: Grid, composer: Composer, space: number): readonly Column[] {
  const { needs, whole } = gridWidths(grid, space, composer)
  const { start, text, end } = composer.frame
  const left = whole <= end - text ? text : start
  const widths = shareWidth(needs, end - left - space * (needs.length - 1))
  let x = left
  return widths.map((width) => {
    const column = { x, width }
    x += width + space
    return column
  })
}

interface GridLine {
  readonly line: Line
  readonly index: number
  readonly cell: Tag
  readonly column: Column
  readonly align: Cell['align']
}

/** A row as one strip; as one for each line where it is very tall. */
function setGridRow(cells: readonly Cell[], columns: readonly Column[], composer: Composer): Strips {
  const row = tag('TR', composer.parent)
  const set = columns.map((column, index) => setCell(cells[index], column, row, composer))
  const height = Math.max(1, ...set.map(({ lines }) => lines.length))
  const lines = set.flatMap((cell) => cell.lines)
  const header = cells.some((cell) => cell.heads === 'Column')
  const announce = (pen: Pen): void => pen.announce([row, ...set.map((cell) => cell.tag)])
  if (height <= mostLines) return [gridStrip(lines, 0, height, columns, header, announce, composer)]
  const parts = Array.from({ length: height }, (_, line) => {
    const here = lines.filter((entry) => entry.index === line)
    return gridStrip(here, line, 1, columns, header && line === height - 1, announce, composer)
  })
  return together(parts)
}

function setCell(
  cell: Cell | undefined,
  column: Column,
  row: Tag,
  composer: Composer,
): { readonly tag: Tag; readonly lines: readonly GridLine[] } {
  const heads = cell?.heads ?? null
  const structure = heads === null ? tag('TD', row) : tag('TH', row, { scope: heads })
  const lines = breakLines(composer, cell?.runs ?? [], column.width)
  const align = cell?.align ?? 'left'
  return { tag: structure, lines: lines.map((line, index) => ({ line, index, cell: structure, column, align })) }
}

function gridStrip(
  lines: readonly GridLine[],
  from: number,
  count: number,
  columns: readonly Column[],
  header: boolean,
  announce: (pen: Pen) => void,
  { look }: Composer,
): Strip {
  const { leading, colours } = look
  const height = count * leading.small + 2 * rowSpace
  const { start, end } = extent(columns)
  return {
    height,
    gap: 0,
    keep: false,
    draw: (pen, top) => {
      announce(pen)
      for (const { line, index, cell, column, align } of lines) {
        const setting = { tag: cell, x: column.x, width: column.width, leading: leading.small, align }
        drawLine(pen, line, setting, top + rowSpace + (index - from) * leading.small)
      }
      pen.rule(start, top + height, end, top + height, header ? colours.ink : colours.hairline, header ? 0.75 : 0.4)
    },
  }
}

function extent(columns: readonly Column[]): Pick<Frame, 'start' | 'end'> {
  const last = columns.at(-1)
  return { start: columns[0]?.x ?? 0, end: (last?.x ?? 0) + (last?.width ?? 0) }
}
