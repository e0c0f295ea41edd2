import { textForAll } from '../measure/segment.ts'
import type { MeasureLine, Pattern } from '../pattern/pattern.ts'
import { setRuns } from './blocks/paragraph.ts'
import type { Composer, Strips } from './composer.ts'
import type { Cell, Grid } from './grid.ts'
import { gridWidths, setGrid } from './grid.ts'
import { after } from './strip.ts'
import { styles } from './style.ts'
import { tag } from './tag.ts'

/** The sizes with what they fit and measure: a column for each size, or a row where they are too many for that. */
export function setSizes(pattern: Pattern, composer: Composer): Strips {
  const lines = [...pattern.fits, ...pattern.finished]
  const order = setOrder(pattern.sizes, composer)
  if (lines.length === 0) return order
  const beside = { ...composer, frame: { ...composer.frame, start: composer.frame.text } }
  return [...setGrid(chooseGrid(pattern.sizes, lines, beside), beside), ...after(10, order)]
}

/** Whichever form needs no broken lines, a column for each size before a row; else the one whose words fit. */
function chooseGrid(sizes: readonly string[], lines: readonly MeasureLine[], composer: Composer): Grid {
  const room = composer.frame.end - composer.frame.text
  const across = acrossGrid(sizes, lines)
  const down = downGrid(sizes, lines)
  const wide = gridWidths(across, composer)
  if (wide.whole <= room) return across
  return gridWidths(down, composer).whole <= room || wide.least > room ? down : across
}

/** In which order the numbers of the rows are given; one size needs no such words. */
function setOrder(sizes: readonly string[], composer: Composer): Strips {
  const words =
    sizes.length < 2 ? `One size: ${sizes[0] ?? ''}` : `Numbers are given in this order: ${sizeOrder(sizes)}.`
  return setRuns([{ text: words, style: styles.soft }], composer, tag('P', composer.parent))
}

/** `Child (Adult S, Adult L)`, as numbers by size are written. */
export function sizeOrder([first = '', ...others]: readonly string[]): string {
  return others.length === 0 ? first : `${first} (${others.join(', ')})`
}

function cell(text: string, heads: Cell['heads']): Cell {
  return { runs: [{ text, style: heads === null ? styles.cell : styles.headCell }], align: 'left', heads }
}

function acrossGrid(sizes: readonly string[], lines: readonly MeasureLine[]): Grid {
  const header = ['Size', ...sizes].map((name) => cell(name, 'Column'))
  return [
    header,
    ...lines.map((line) => [
      cell(line.label, 'Row'),
      ...line.cells.map((segments) => cell(textForAll(segments), null)),
    ]),
  ]
}

function downGrid(sizes: readonly string[], lines: readonly MeasureLine[]): Grid {
  const header = [cell('Size', 'Column'), ...lines.map((line) => cell(line.label, 'Column'))]
  const rows = sizes.map((size, index) => [
    cell(size, 'Row'),
    ...lines.map((line) => cell(textForAll(line.cells[index] ?? line.value.segments), null)),
  ])
  return [header, ...rows]
}
