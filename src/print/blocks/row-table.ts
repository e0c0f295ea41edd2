import { columnSpace, type SizeColumns } from '../columns.ts'
import type { Composer, Strips } from '../composer.ts'
import type { Line } from '../line.ts'
import { breakLines, measureRuns } from '../line.ts'
import type { Strip } from '../strip.ts'
import { drawLine } from '../strip.ts'
import type { Style } from '../style.ts'
import type { Tag } from '../tag.ts'
import { tag } from '../tag.ts'
import type { TableLine } from './row-parts.ts'

/** A cell with its lines; `x` and `width` in points. */
interface SetCell {
  readonly tag: Tag
  readonly lines: readonly Line[]
  readonly x: number
  readonly width: number
  readonly align: 'right' | 'center'
}

/**
 * The numbers of a row in the columns of the sizes, what they are in the gutter. `head` is where the gutter begins. Null
 * where a number or a word is too wide.
 */
export function setRowTable(
  lines: readonly TableLine[],
  columns: SizeColumns,
  head: number,
  composer: Composer,
): Strips | null {
  const { tiny, cell, headCell, stated } = composer.look.styles
  const widest = columns.width - columnSpace
  const styleOf = ({ kind }: TableLine): Style => (kind === 'stated' ? { ...stated, tabular: true } : cell)
  const fits = (text: string, style: Style, width: number): boolean =>
    measureRuns(composer, [{ text, style }]).word <= width
  const headWidth = columns.left - head - 8
  const tooWide = lines.some(
    (line) => !fits(line.head, headCell, headWidth) || line.cells.some((text) => !fits(text, styleOf(line), widest)),
  )
  if (tooWide) return null
  const within = { ...composer, parent: tag('Table', composer.parent) }
  const gutter = { x: head, width: headWidth }
  const names = { lines: columns.names, style: tiny, leading: tiny.size * 1.3 }
  const header = setLine('Size', names.style, 'Column', names.lines, gutter, columns, names.leading, within)
  const rows = lines.map((line) => {
    const style = styleOf(line)
    const cells = line.cells.map((text) => breakLines(composer, [{ text, style }], widest))
    const heading = line.kind === 'stated' ? style : headCell
    return setLine(line.head, heading, null, cells, gutter, columns, composer.look.leading.small, within)
  })
  return [{ ...header, gap: 4 }, ...rows]
}

function setLine(
  head: string,
  headStyle: Style,
  heads: 'Column' | null,
  cells: readonly (readonly Line[])[],
  gutter: { readonly x: number; readonly width: number },
  columns: SizeColumns,
  leading: number,
  composer: Composer,
): Strip {
  const row = tag('TR', composer.parent)
  const first: SetCell = {
    tag: tag('TH', row, { scope: heads ?? 'Row' }),
    lines: breakLines(composer, [{ text: head, style: headStyle }], gutter.width),
    ...gutter,
    align: 'right',
  }
  const others = cells.map((lines, size): SetCell => {
    const place = { x: columns.left + size * columns.width, width: columns.width, align: 'center' } as const
    return { tag: heads === null ? tag('TD', row) : tag('TH', row, { scope: heads }), lines, ...place }
  })
  const all = [first, ...others]
  const height = Math.max(...all.map(({ lines }) => lines.length)) * leading
  const { hairline } = composer.look.colours
  return {
    height,
    gap: 0,
    keep: true,
    draw: (pen, top) => {
      pen.announce([row, ...all.map((cell) => cell.tag)])
      pen.rule(columns.left, top, columns.left + columns.width * cells.length, top, hairline, 0.4)
      for (const { tag, lines, x, width, align } of all) {
        for (const [index, line] of lines.entries())
          drawLine(pen, line, { tag, x, width, leading, align }, top + index * leading)
      }
    },
  }
}
