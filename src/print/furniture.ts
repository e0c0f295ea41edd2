import type { Pattern } from '../pattern/pattern.ts'
import type { Frame } from './composer.ts'
import type { Line, Setter } from './line.ts'
import { breakLines } from './line.ts'
import type { Pen } from './pen.ts'
import { sizeOrder } from './sizes.ts'
import { drawLine } from './strip.ts'
import { styles } from './style.ts'
import type { Tag } from './tag.ts'

export interface Studio {
  readonly name: string
  readonly address: string | null
}

/** What stands at the head and foot of each page beside the text: artifacts, not read out. */
export interface Furniture {
  readonly draw: (pen: Pen, page: number, pages: number, piece: string | null) => void
}

interface Place {
  readonly frame: Frame
  /** Upper edges of the head line and the first foot line, in points from the top of the page. */
  readonly head: number
  readonly foot: number
}

const leading = 12

/** Head: the piece, and the order of the sizes where it fits. Foot: title, edition, page, studio. */
export function setFurniture(pattern: Pattern, studio: Studio, setter: Setter, place: Place, root: Tag): Furniture {
  const { start, end } = place.frame
  const width = end - start
  const line = (text: string, room: number): Line => shorten(setter, text, room)
  const title = line(
    pattern.edition === null ? pattern.title : `${pattern.title} · Edition ${pattern.edition}`,
    width - 90,
  )
  const name = line([studio.name, studio.address].filter((words) => words !== null && words !== '').join(' · '), width)
  const order = pattern.sizes.length < 2 ? null : wholeOrNothing(setter, sizeOrder(pattern.sizes), width * 0.7)
  const left = { tag: root, x: start, width, leading }
  const right = { ...left, align: 'right' } as const
  const drawHead = (pen: Pen, piece: string | null): void => {
    drawLine(pen, line(piece ?? pattern.title, width * 0.28), left, place.head)
    if (order !== null) drawLine(pen, order, right, place.head)
  }
  return {
    draw: (pen, page, pages, piece) =>
      pen.artifact('Pagination', () => {
        if (page > 1) drawHead(pen, piece)
        drawLine(pen, title, left, place.foot)
        drawLine(pen, line(`Page ${page} of ${pages}`, 90), right, place.foot)
        drawLine(pen, name, left, place.foot + leading)
      }),
  }
}

/** The text on one line, its end given up where it is too long. */
function shorten(setter: Setter, text: string, width: number): Line {
  const style = styles.small
  const fitting = (words: string): Line | null => wholeOrNothing(setter, words, width)
  const whole = fitting(text)
  if (whole !== null) return whole
  const words = text.split(' ')
  for (let count = words.length - 1; count > 0; count--) {
    const cut = fitting(`${words.slice(0, count).join(' ')} …`)
    if (cut !== null) return cut
  }
  return breakLines(setter, [{ text, style }], width)[0] ?? { fragments: [], width: 0 }
}

function wholeOrNothing(setter: Setter, text: string, width: number): Line | null {
  const [line, ...more] = breakLines(setter, [{ text, style: styles.small }], width)
  return line === undefined || more.length > 0 ? null : line
}
