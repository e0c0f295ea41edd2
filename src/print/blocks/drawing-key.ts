import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import { readRuns } from '../inline.ts'
import { breakLines } from '../line.ts'
import type { Strip } from '../strip.ts'
import { after, drawLine } from '../strip.ts'
import type { Tag } from '../tag.ts'
import { tag } from '../tag.ts'
import { drawDrawing } from './drawing.ts'

type Entry = BlockOf<'drawing'>['key'][number]

const columnSpace = 18
const symbolSpace = 8
/** A column narrower than this would break most words of a key, in everyday print. */
const leastColumn = 135

/** The symbols of a chart with their words, in columns, as a list. */
export function setKey(key: readonly Entry[], composer: Composer): Strips {
  const { text, end } = composer.frame
  const { enlarged } = composer.look
  const least = leastColumn * enlarged
  const columns = Math.max(1, Math.min(key.length, Math.floor((end - text + columnSpace) / (least + columnSpace))))
  const width = (end - text - (columns - 1) * columnSpace) / columns
  const list = tag('L', composer.parent)
  const symbolRoom = enlarged * Math.max(...key.map(({ symbol }) => symbol.width))
  const cells = key.map((entry, index) => {
    const x = text + (index % columns) * (width + columnSpace)
    return cellOf(entry, { x, width, symbolRoom }, list, composer)
  })
  const lines = Array.from({ length: Math.ceil(cells.length / columns) }, (_, line) =>
    beside(cells.slice(line * columns, (line + 1) * columns)),
  )
  return after(8, lines)
}

/** What stands in one cell, from the top of its line; `height` is the line's. */
interface Cell {
  readonly height: number
  readonly draw: (pen: Parameters<Strip['draw']>[0], top: number, height: number) => void
}

function beside(cells: readonly Cell[]): Strip {
  const height = Math.max(...cells.map((cell) => cell.height))
  const draw: Strip['draw'] = (pen, top) => {
    for (const cell of cells) cell.draw(pen, top, height)
  }
  return { height, gap: 2, keep: false, draw }
}

/** The symbol is for the eye: the words say what it is. */
function cellOf(
  { symbol, words }: Entry,
  { x, width, symbolRoom }: { readonly x: number; readonly width: number; readonly symbolRoom: number },
  list: Tag,
  composer: Composer,
): Cell {
  const { styles, leading, enlarged: scale } = composer.look
  const item = tag('LBody', tag('LI', list))
  const left = x + symbolRoom + symbolSpace
  const room = width - symbolRoom - symbolSpace
  const lines = breakLines(composer, readRuns(words, { style: styles.cell, sizes: composer.sizes }), room)
  const symbolHeight = symbol.height * scale
  const setting = { tag: item, x: left, width: room, leading: leading.small }
  return {
    height: Math.max(symbolHeight, lines.length * leading.small),
    draw: (pen, top, height) => {
      const [aside, down] = [(symbolRoom - symbol.width * scale) / 2, (height - symbolHeight) / 2]
      drawDrawing(pen, symbol, null, { x: x + aside, y: top + down, scale }, { composer, lettered: false })
      const first = top + (height - lines.length * leading.small) / 2
      for (const [index, line] of lines.entries()) drawLine(pen, line, setting, first + index * leading.small)
    },
  }
}
