import type { PerSize } from '../measure/value.ts'
import type { RowBlock } from '../pattern/node.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { sizeColumns } from './columns.ts'
import type { Composer, Frame, Picture } from './composer.ts'
import { openFaces } from './face.ts'
import type { Look } from './look.ts'
import type { Sheet } from './pen.ts'
import type { PrintOptions } from './render.ts'

/** Height of the text area of a sheet, in points. */
function textArea({ margin }: Look, sheet: Sheet): number {
  return sheet.height - margin.top - margin.bottom
}

/** What the blocks of a print-out are sized with. */
export function createComposer(
  pattern: Pattern,
  options: PrintOptions,
  look: Look,
  document: PDFKit.PDFDocument,
  sheet: Sheet,
): Composer {
  const { margin, gutter } = look
  const frame: Frame = { start: margin.side, text: margin.side + gutter, end: sheet.width - margin.side }
  const setter = { faces: openFaces(options.fonts), missing: new Set<string>() }
  const inColumns = options.numbers !== 'brackets' && gutter > 0
  return {
    ...setter,
    sizes: pattern.sizes,
    pictureOf: openPictures(document, options.images ?? {}),
    look,
    columns: inColumns ? sizeColumns(pattern.sizes, frame.text, frame.end, setter, look) : null,
    timesOf: (block) => timesOf(block, pattern),
    frame,
    area: textArea(look, sheet),
    parent: { role: 'Document', parent: null },
    level: 1,
  }
}

/** Rows that each size works; where none was worked, as many as the draft's range has. */
function timesOf({ entries: [first, end], times }: RowBlock, { rows, sizes }: Pattern): PerSize<number> {
  const worked = sizes.map(
    (_, size) => rows.slice(first, end).filter(({ total }) => (total[size] ?? null) !== null).length,
  )
  return worked.every((count) => count === 0) ? sizes.map(() => times) : worked
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
