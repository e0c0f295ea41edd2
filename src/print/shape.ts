import type { Glyph } from 'fontkit'
import type { Face } from './face.ts'

/** A word with its space, as a content stream shows it in its face; it serves in every document. */
export interface Shape {
  readonly text: string
  readonly pieces: readonly Piece[]
  readonly glyphs: readonly Glyph[]
}

/** Letters that stand at one height. */
export interface Piece {
  /** Elements of the array that the operator `TJ` takes: glyph numbers of two bytes, and by how much to move between them. */
  readonly show: string
  /** How far above the baseline they stand, as a part of the type size: the marks on letters. */
  readonly lift: number
}

interface Shapes {
  readonly plain: Map<string, Shape>
  readonly tabular: Map<string, Shape>
}

const known = new WeakMap<Face, Shapes>()

/** Enough for the words of a few hundred patterns; then memory is started afresh. */
const mostWords = 30_000

/** The words of a text; one met before, in whatever document, costs one look. */
export function shapeText(face: Face, text: string, tabular: boolean): readonly Shape[] {
  const shapes = shapesOf(face)[tabular ? 'tabular' : 'plain']
  const words: Shape[] = []
  let start = 0
  while (start < text.length) {
    const space = text.indexOf(' ', start)
    const end = space < 0 ? text.length : space + 1
    words.push(shapeWord(face, text.slice(start, end), tabular, shapes))
    start = end
  }
  return words
}

function shapesOf(face: Face): Shapes {
  const shapes = known.get(face) ?? { plain: new Map(), tabular: new Map() }
  known.set(face, shapes)
  return shapes
}

function shapeWord(face: Face, word: string, tabular: boolean, shapes: Map<string, Shape>): Shape {
  const before = shapes.get(word)
  if (before !== undefined) return before
  if (shapes.size >= mostWords) shapes.clear()
  const shape = compose(face, word, tabular)
  shapes.set(word, shape)
  return shape
}

function compose({ font }: Face, word: string, tabular: boolean): Shape {
  const { glyphs, positions } = font.layout(word, tabular ? ['tnum'] : undefined)
  const pieces: { show: string; lift: number }[] = []
  for (const [index, glyph] of glyphs.entries()) {
    const { xOffset = 0, yOffset = 0, xAdvance = glyph.advanceWidth } = positions[index] ?? {}
    const lift = yOffset / font.unitsPerEm
    const piece = pieces.at(-1)?.lift === lift ? pieces.at(-1) : undefined
    const parts = move(xOffset) + code(glyph.id) + move(xAdvance - glyph.advanceWidth - xOffset)
    if (piece === undefined) pieces.push({ show: parts, lift })
    else piece.show += parts
  }
  // Glyph numbers in a row are one string. Brackets among them are escaped, so that none looks like a seam.
  return { text: word, pieces: pieces.map(({ show, lift }) => ({ show: show.replaceAll(')(', ''), lift })), glyphs }

  /** A move to the right, in units of the font; the operator counts in thousandths of the type size, to the left. */
  function move(units: number): string {
    const thousandths = Math.round((-units * 1e6) / font.unitsPerEm) / 1000
    return thousandths === 0 ? '' : ` ${thousandths}`
  }
}

/** The two bytes of a glyph number as a string of the content stream, a letter for each byte. */
function code(glyph: number): string {
  const bytes = String.fromCharCode(glyph >> 8, glyph & 0xff)
  // A bare carriage return would be read as a line feed (ISO 32000-1, 7.3.4.2).
  return `(${bytes.replace(/[()\\]/g, '\\$&').replaceAll('\r', '\\r')})`
}
