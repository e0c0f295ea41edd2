import { describe, expect, it } from 'vitest'
import { openFaces } from '../../src/print/face.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { beginSpan, number, rgb, words } from '../../src/print/operators.ts'
import { shapeText } from '../../src/print/shape.ts'

const faces = openFaces(loadFonts())
const face = faces.main('text')

/** The glyph numbers that an array of `TJ` shows, read back from its strings. */
function shown(show: string): readonly number[] {
  const strings = [...show.matchAll(/\(((?:\\[\s\S]|[^\\)])*)\)/g)].map(([, text = '']) => text)
  const bytes = strings
    .join('')
    .replace(/\\r/g, '\r')
    .replace(/\\([()\\])/g, '$1')
  return Array.from(
    { length: bytes.length / 2 },
    (_, at) => bytes.charCodeAt(2 * at) * 256 + bytes.charCodeAt(2 * at + 1),
  )
}

/** How far an array of `TJ` moves on beside the widths of its glyphs, in units of the font. */
function moved(show: string): number {
  const moves = show.replace(/\((?:\\[\s\S]|[^\\)])*\)/g, ' ').match(/-?\d+(\.\d+)?/g) ?? []
  return moves.reduce((sum, move) => sum - (Number(move) * face.font.unitsPerEm) / 1000, 0)
}

describe('the shape of a text', () => {
  it('has a part for each word, with the space behind it', () => {
    const glyphs = shapeText(face, 'sc in  next', false).map((shape) => shape.glyphs.length)
    expect(glyphs).toEqual([3, 3, 1, 4])
  })

  it('is remembered by the word', () => {
    const [first, , third] = shapeText(face, 'sc in sc st', false)
    expect(third).toBe(first)
    expect(shapeText(face, 'sc ', true)[0]).not.toBe(first)
  })

  it('shows every letter of the face, brackets and line ends of its numbers escaped', () => {
    for (const codePoint of face.font.characterSet) {
      const text = String.fromCodePoint(codePoint)
      const ids = face.font.layout(text).glyphs.map((glyph) => glyph.id)
      const pieces = shapeText(face, text, false).flatMap((shape) => shape.pieces)
      expect(pieces.flatMap((piece) => shown(piece.show))).toEqual(ids)
    }
  })

  it.each(['AVATAR', 'To. Ty,', '(r.)', 'Row'])('is as wide as it was measured: %s', (text) => {
    const measured = text.split(/(?<= )/).reduce((sum, word) => sum + face.font.layout(word).advanceWidth, 0)
    const shapes = shapeText(face, text, false)
    const widths = shapes.flatMap((shape) => shape.glyphs).reduce((sum, glyph) => sum + glyph.advanceWidth, 0)
    const moves = shapes.flatMap((shape) => shape.pieces).reduce((sum, piece) => sum + moved(piece.show), 0)
    expect(widths + moves).toBeCloseTo(measured, 1)
  })

  it('gives figures of one width for columns', () => {
    const width = (text: string, tabular: boolean): number | undefined =>
      shapeText(face, text, tabular)[0]?.glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0)
    expect(width('111', true)).toBe(width('000', true))
    expect(width('111', false)).not.toBe(width('000', false))
  })
})

describe('operators', () => {
  const shape = (lift: number, text: string) => ({ text, glyphs: [], pieces: [{ lift, show: `(${text})` }] })
  const asWritten = () => null

  it.each([
    [1 / 3, '0.3333'],
    [-0.00001, '0'],
    [841.89, '841.89'],
    [1e-9, '0'],
  ])('write %d as %s', (value, text) => expect(number(value)).toBe(text))

  it('write a colour', () => expect(rgb('#ff0080')).toBe('1 0 0.502'))

  it('raise what stands above the baseline, and come down again', () => {
    expect(words([shape(0, 'a'), shape(0.25, 'b'), shape(0, 'c')], 10, 5, 7, asWritten)).toBe(
      'BT 1 0 0 -1 5 7 Tm [(a)] TJ 2.5 Ts [(b)] TJ 0 Ts [(c)] TJ ET\n',
    )
    expect(words([shape(0.25, 'b')], 10, 5, 7, asWritten)).toBe('BT 1 0 0 -1 5 7 Tm 2.5 Ts [(b)] TJ 0 Ts ET\n')
  })

  it('say what an abbreviation stands for, with its brackets kept in their string', () => {
    const spoken = (word: string): string | null => (word === 'b' ? '(back)' : null)
    expect(words([shape(0, 'a'), shape(0, 'b'), shape(0, 'c')], 10, 5, 7, spoken)).toBe(
      'BT 1 0 0 -1 5 7 Tm [(a)] TJ /Span <</E (\\(back\\))>> BDC\n[(b)] TJ EMC\n[(c)] TJ ET\n',
    )
  })

  it('give a fraction its own character, in UTF-16', () => {
    expect(beginSpan('ActualText', '⅛ ')).toBe('/Span <</ActualText <feff215b0020>>> BDC\n')
  })
})
