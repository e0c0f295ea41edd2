import type { Block } from '../pattern/node.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { setBlocks } from './block.ts'
import type { Composer, Frame, Picture } from './composer.ts'
import { createDocument, finishDocument } from './document.ts'
import { readAloud } from './expansion.ts'
import type { Fonts } from './face.ts'
import { openFaces } from './face.ts'
import type { Furniture, Studio } from './furniture.ts'
import { setFurniture } from './furniture.ts'
import { setMasthead } from './masthead.ts'
import { setOverview } from './overview.ts'
import type { SetPage } from './paginate.ts'
import { paginate } from './paginate.ts'
import type { Sheet } from './pen.ts'
import { Pen } from './pen.ts'
import type { Tag } from './tag.ts'

export interface PrintOptions {
  readonly paper: 'a4' | 'letter'
  readonly fonts: Fonts
  readonly studio: Studio
  /** Bytes of the pictures by the `src` that the pattern gives them; PNG and JPEG are drawn. */
  readonly images?: Readonly<Record<string, Uint8Array>>
}

export interface Printed {
  readonly bytes: Uint8Array
  /** Characters that no face has, each once, in the order in which they were met; a question mark is printed. */
  readonly missing: readonly string[]
}

/** ISO 216 A4 and ANSI letter, in points. */
const sheets = {
  a4: { width: 595.28, height: 841.89 },
  letter: { width: 612, height: 792 },
} as const

const margin = { side: 58, top: 66, bottom: 70 }
/** Room in which labels hang beside the text. */
const gutter = 94

/** Prints a pattern: an overview page, then the body, for all sizes. The same input gives the same bytes. */
export async function renderPdf(pattern: Pattern, options: PrintOptions): Promise<Printed> {
  const sheet = sheets[options.paper]
  const document = createDocument(pattern, options.studio.name)
  const root: Tag = { role: 'Document', parent: null }
  const composer = createComposer(pattern, options, document, sheet, root)
  const [introduction, instructions] = cutIntroduction(pattern.body)
  const overview = [
    ...setMasthead(pattern, options.studio.name, composer),
    ...setBlocks(introduction, composer),
    ...setOverview(pattern, composer, setBlocks),
  ]
  const body = setBlocks(instructions, composer)
  const pages = paginate([overview, body], sheet.height - margin.top - margin.bottom)
  const place = { frame: composer.frame, head: 34, foot: sheet.height - 48 }
  const furniture = setFurniture(pattern, options.studio, composer, place, root)
  drawPages(new Pen(document, readAloud(pattern.abbreviations)), sheet, pages, furniture)
  return { bytes: finishDocument(document), missing: [...composer.missing] }
}

/** What stands above the first heading introduces the pattern; without a heading all of it is instructions. */
function cutIntroduction(body: readonly Block[]): readonly [introduction: readonly Block[], rest: readonly Block[]] {
  const first = Math.max(
    0,
    body.findIndex((block) => block.type === 'heading'),
  )
  return [body.slice(0, first), body.slice(first)]
}

function createComposer(
  pattern: Pattern,
  options: PrintOptions,
  document: PDFKit.PDFDocument,
  sheet: Sheet,
  parent: Tag,
): Composer {
  const frame: Frame = { start: margin.side, text: margin.side + gutter, end: sheet.width - margin.side }
  return {
    faces: openFaces(options.fonts),
    missing: new Set(),
    sizes: pattern.sizes,
    pictureOf: openPictures(document, options.images ?? {}),
    frame,
    parent,
    level: 1,
  }
}

function openPictures(
  document: PDFKit.PDFDocument,
  images: Readonly<Record<string, Uint8Array>>,
): (src: string) => Picture | null {
  const opened = new Map<string, Picture | null>()
  return (src) => {
    const known = opened.get(src)
    if (known !== undefined) return known
    const bytes = Object.hasOwn(images, src) ? images[src] : undefined
    const picture = bytes === undefined ? null : openPicture(document, bytes)
    opened.set(src, picture)
    return picture
  }
}

/** PDFKit throws at bytes that are neither PNG nor JPEG; such a picture is left out. */
function openPicture(document: PDFKit.PDFDocument, bytes: Uint8Array): Picture | null {
  try {
    const image = document.openImage(bytes)
    const onSide = (image.orientation ?? 1) > 4
    return { image, width: onSide ? image.height : image.width, height: onSide ? image.width : image.height }
  } catch {
    return null
  }
}

function drawPages(pen: Pen, sheet: Sheet, pages: readonly SetPage[], furniture: Furniture): void {
  for (const [index, { placed, piece }] of pages.entries()) {
    pen.turnPage(sheet)
    for (const { strip, top, repeated } of placed) {
      const draw = (): void => strip.draw(pen, margin.top + top)
      if (repeated) pen.artifact('Pagination', draw)
      else draw()
    }
    furniture.draw(pen, index + 1, pages.length, piece)
  }
  pen.finish()
}
