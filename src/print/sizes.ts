import { textForAll } from '../measure/segment.ts'
import type { MeasureLine, Pattern } from '../pattern/pattern.ts'
import { setRuns } from './blocks/paragraph.ts'
import type { Composer, Strips } from './composer.ts'
import type { Cell, Grid } from './grid.ts'
import { roomySpace, setGrid } from './grid.ts'
import { gridWidths } from './grid-widths.ts'
import { belowHeading } from './side-heading.ts'
import type { Strip } from './strip.ts'
import { after, keptWithNext } from './strip.ts'
import { tag } from './tag.ts'

/**
 * What sizes fit and how large the piece becomes: a column for each size, or a row where they are too many for that.
 * `acrossPage` says that the text column is too narrow for the table: it begins at the frame's start.
 */
export function setSizes(
  pattern: Pattern,
  composer: Composer,
): { readonly strips: Strips; readonly acrossPage: boolean } {
  const lines = [...pattern.fits, ...pattern.finished]
  if (lines.length === 0) return { strips: setOrder(pattern.sizes, composer), acrossPage: false }
  const { start, text, end } = composer.frame
  const grid = inRoom(acrossGrid(pattern.sizes, lines, composer), end - text, composer)
  const acrossPage = gridWidths(grid, roomySpace(composer), composer).least > end - text
  const frame = acrossPage ? { start, text: start, end } : { start: text, text, end }
  const within = { ...composer, frame }
  const order = pattern.sizes.length < 2 ? [] : setOrder(pattern.sizes, composer)
  const beside = acrossPage && composer.look.gutter > 0 && order.length === 1
  const above = beside ? order.map((strip) => besideHeading(strip, composer)) : order
  return { strips: [...keptWithNext(above), ...after(order.length === 0 ? 0 : 8, setGrid(grid, within))], acrossPage }
}

/** A table that goes across the page leaves the line of its heading free, from the text edge on. */
function besideHeading(strip: Strip, { look }: Composer): Strip {
  const up = look.section.leading + belowHeading
  return { ...strip, height: 0, draw: (pen, top) => strip.draw(pen, top - up) }
}

/** A grid as it is, or with its rows as columns where that alone needs no broken lines, or where it is too wide as it is. */
export function inRoom(grid: Grid, room: number, composer: Composer): Grid {
  const turned = turn(grid)
  const asItIs = gridWidths(grid, roomySpace(composer), composer)
  if (asItIs.whole <= room) return grid
  return gridWidths(turned, roomySpace(composer), composer).whole <= room || asItIs.least > room ? turned : grid
}

/** Rows as columns: what headed a row heads a column, and the other way about. */
function turn(grid: Grid): Grid {
  const [header = []] = grid
  return header.map((_, column) =>
    grid.flatMap((cells): Cell[] => {
      const cell = cells[column]
      if (cell === undefined) return []
      return [{ ...cell, heads: cell.heads === null ? null : column === 0 ? 'Column' : 'Row' }]
    }),
  )
}

/** In which order the numbers of the rows are given; of one size its name. */
function setOrder(sizes: readonly string[], composer: Composer): Strips {
  const words = sizes.length < 2 ? (sizes[0] ?? '') : `Numbers are given in this order: ${sizeOrder(sizes)}.`
  return setRuns([{ text: words, style: composer.look.styles.soft }], composer, tag('P', composer.parent))
}

/** `Child (Adult S, Adult L)`, as numbers by size are written. */
export function sizeOrder([first = '', ...others]: readonly string[]): string {
  return others.length === 0 ? first : `${first} (${others.join(', ')})`
}

/** A cell of words or a number. */
export function cell(text: string, heads: Cell['heads'], { look }: Composer): Cell {
  return { runs: [{ text, style: heads === null ? look.styles.cell : look.styles.headCell }], align: 'left', heads }
}

function acrossGrid(sizes: readonly string[], lines: readonly MeasureLine[], composer: Composer): Grid {
  const header = ['Size', ...sizes].map((name) => cell(name, 'Column', composer))
  const rows = lines.map((line) => [
    cell(line.label, 'Row', composer),
    ...line.cells.map((segments) => cell(textForAll(segments), null, composer)),
  ])
  return [header, ...rows]
}
