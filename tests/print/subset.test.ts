import * as fontkit from 'fontkit'
import { describe, expect, it } from 'vitest'
import { loadFonts } from '../../src/print/fonts.ts'
import { subsetFont } from '../../src/print/subset.ts'
import { readTables } from '../../src/print/truetype.ts'

const faces = Object.entries(loadFonts()).flatMap(([name, files]) =>
  files.map((file) => [name, typeof file === 'function' ? file() : file] as const),
)

function open(file: Uint8Array): fontkit.Font {
  const font = fontkit.create(file)
  if (font.type !== 'TTF') throw new Error('not a single font')
  return font
}

const outline = (font: fontkit.Font, glyph: number): string => font.getGlyph(glyph).path.toSVG()

describe.each(faces)('some glyphs of %s', (_, file) => {
  const whole = open(file)
  const letters = whole.characterSet.filter((_, index) => index % 9 === 0)
  const glyphs = letters.map((letter) => whole.glyphForCodePoint(letter).id)
  const part = open(subsetFont(file, glyphs))

  it('have their outlines and widths, under their own numbers', () => {
    for (const glyph of [0, ...glyphs]) {
      expect(outline(part, glyph)).toBe(outline(whole, glyph))
      expect(part.getGlyph(glyph).advanceWidth).toBe(whole.getGlyph(glyph).advanceWidth)
    }
  })

  it('leave the outlines of the others out', () => {
    const drawn = Array.from({ length: whole.numGlyphs }, (_, glyph) => glyph).filter((glyph) => outline(part, glyph))
    expect(drawn.length).toBeGreaterThan(1)
    expect(drawn.length).toBeLessThan(3 * glyphs.length + 2)
  })
})

describe('a font file', () => {
  const [, file = new Uint8Array()] = faces[0] ?? []

  it('keeps the parts of a letter that is built from others', () => {
    const whole = open(file)
    const built = Array.from({ length: whole.numGlyphs }, (_, glyph) => glyph).filter((glyph) => isBuilt(file, glyph))
    expect(built.length).toBeGreaterThan(0)
    for (const glyph of built) {
      const part = open(subsetFont(file, [glyph]))
      expect(outline(part, glyph)).toBe(outline(whole, glyph))
    }
  })

  it('has only the tables that a PDF needs', () => {
    expect([...readTables(subsetFont(file, [1])).keys()]).toEqual(['glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp'])
  })

  it('is the same whatever the order of the glyphs', () => {
    expect(subsetFont(file, [40, 7, 12])).toEqual(subsetFont(file, [12, 40, 7]))
  })

  it('is refused without outlines', () => {
    expect(() => subsetFont(new Uint8Array(64), [1])).toThrow('no TrueType outlines')
  })
})

/** Whether an outline refers to others: its number of contours is negative (OpenType specification, "glyf"). */
function isBuilt(file: Uint8Array, glyph: number): boolean {
  const tables = readTables(file)
  const loca = tables.get('loca') ?? new Uint8Array()
  const place = (index: number): number => 2 * new DataView(loca.buffer, loca.byteOffset).getUint16(index * 2)
  const glyf = tables.get('glyf') ?? new Uint8Array()
  return place(glyph + 1) > place(glyph) && (glyf[place(glyph)] ?? 0) >= 0x80
}
