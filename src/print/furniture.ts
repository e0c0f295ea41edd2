import type { Pattern } from '../pattern/pattern.ts'
import type { SizeColumns } from './columns.ts'
import type { Composer } from './composer.ts'
import { shortAddress } from './corrections.ts'
import type { Line } from './line.ts'
import { breakLines } from './line.ts'
import type { Pen, Sheet } from './pen.ts'
import { sizeOrder } from './sizes.ts'
import { drawLine } from './strip.ts'

export interface Studio {
  readonly name: string
  readonly address: string | null
}

/** What stands at the head and foot of each page beside the text: artifacts, not read out. */
export interface Furniture {
  readonly draw: (pen: Pen, page: number, pages: number, piece: string | null) => void
}

/** What the head and foot say beside the piece and the page. */
export interface FurnitureWords {
  readonly studio: Studio
  /** The print-out among those of the pattern: `Large print`; null for the usual one. */
  readonly form: string | null
  /** The address of the pattern's page; null where it is not printed. */
  readonly page: string | null
  /** The size alone that is printed of several; null where all are. */
  readonly size: string | null
}

/** Head: the piece, and the sizes over their columns, or their order where it fits, or the one that was chosen. Foot: title, edition, page, studio. */
export function setFurniture(pattern: Pattern, words: FurnitureWords, composer: Composer, sheet: Sheet): Furniture {
  const { frame, look, parent } = composer
  const width = frame.end - frame.start
  const { foot: leading } = look.leading
  const foot = sheet.height - look.foot
  const numbered = Math.max(90, look.styles.small.size * 8)
  const edition = pattern.edition === null ? null : `Edition ${pattern.edition}`
  const titles = [[pattern.title, edition, words.form], [pattern.title, edition], [pattern.title]]
  const title = firstFitting(composer, titles, width - numbered)
  const address = words.page === null ? words.studio.address : shortAddress(words.page)
  const name = firstFitting(composer, [[words.studio.name, address], [address ?? words.studio.name]], width)
  const left = { tag: parent, x: frame.start, width, leading }
  const right = { ...left, align: 'right' } as const
  const sizes = headOfSizes(words.size ?? (pattern.sizes.length < 2 ? null : sizeOrder(pattern.sizes)), composer)
  return {
    draw: (pen, page, pages, piece) =>
      pen.artifact('Pagination', () => {
        if (page > 1) {
          drawLine(pen, shorten(composer, piece ?? pattern.title, sizes.room), left, look.head)
          sizes.draw(pen, look.head)
        }
        drawLine(pen, title, left, foot)
        drawLine(pen, shorten(composer, `Page ${page} of ${pages}`, numbered), right, foot)
        drawLine(pen, name, left, foot + leading)
      }),
  }
}

const joined = (words: readonly (string | null)[]): string =>
  words.filter((word) => word !== null && word !== '').join(' · ')

/** The sizes at the head of a page, and how much of the line they leave for the piece, in points. */
interface SizesHead {
  readonly room: number
  readonly draw: (pen: Pen, top: number) => void
}

/** `words` name the sizes where these have no columns; null where there is no need. */
function headOfSizes(words: string | null, composer: Composer): SizesHead {
  const { frame, look, columns, parent } = composer
  const width = frame.end - frame.start
  if (columns !== null) return headOfColumns(columns, composer)
  const order = words === null ? null : wholeOrNothing(composer, words, width * 0.7)
  if (order === null) return { room: width, draw: () => {} }
  const setting = { tag: parent, x: frame.start, width, leading: look.leading.foot, align: 'right' } as const
  return { room: width * 0.28, draw: (pen, top) => drawLine(pen, order, setting, top) }
}

function headOfColumns({ left, width, names }: SizeColumns, { frame, look, parent }: Composer): SizesHead {
  const leading = look.styles.tiny.size * 1.3
  const draw: SizesHead['draw'] = (pen, top) => {
    for (const [size, lines] of names.entries()) {
      const setting = { tag: parent, x: left + size * width, width, leading, align: 'center' } as const
      for (const [index, line] of lines.entries()) drawLine(pen, line, setting, top + index * leading)
    }
  }
  return { room: left - frame.start - 8, draw }
}

/** The first of several wordings that fits on one line; the last with its end given up where none does. */
function firstFitting(composer: Composer, wordings: readonly (readonly (string | null)[])[], width: number): Line {
  for (const words of wordings) {
    const line = wholeOrNothing(composer, joined(words), width)
    if (line !== null) return line
  }
  return shorten(composer, joined(wordings.at(-1) ?? []), width)
}

/** The text on one line, its end given up where it is too long. */
function shorten(composer: Composer, text: string, width: number): Line {
  const fitting = (words: string): Line | null => wholeOrNothing(composer, words, width)
  const whole = fitting(text)
  if (whole !== null) return whole
  const words = text.split(' ')
  for (let count = words.length - 1; count > 0; count--) {
    const cut = fitting(`${words.slice(0, count).join(' ')} …`)
    if (cut !== null) return cut
  }
  return breakLines(composer, [{ text, style: composer.look.styles.small }], width)[0] ?? { fragments: [], width: 0 }
}

function wholeOrNothing(composer: Composer, text: string, width: number): Line | null {
  const [line, ...more] = breakLines(composer, [{ text, style: composer.look.styles.small }], width)
  return line === undefined || more.length > 0 ? null : line
}
