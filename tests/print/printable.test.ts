import { describe, expect, it } from 'vitest'
import { charactersOf } from '../../src/print/cmap.ts'
import { openFaces } from '../../src/print/face.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { prints } from '../../src/print/printable.ts'
import { isPrinted } from '../../src/print/substitute.ts'
import { readTables } from '../../src/print/truetype.ts'

describe('the characters of a font, read from its table', () => {
  it.each(loadFonts().text.map((file, index) => [index, file] as const))(
    'file %d: as a reader of fonts finds them',
    (_, file) => {
      const bytes = typeof file === 'function' ? file() : file
      const own = charactersOf(readTables(bytes).get('cmap') ?? new Uint8Array())
      const face = openFaces({ text: [bytes], textBold: [], textItalic: [], textBoldItalic: [], title: [] })
      const found = Array.from({ length: 0x20000 }, (_, code) => code).filter((code) => face.faceFor('text', code))
      expect(found.length).toBeGreaterThan(50)
      expect(found.filter((code) => !own.has(code))).toEqual([])
      expect([...own].filter((code) => !found.includes(code))).toEqual([])
    },
  )
})

describe('whether a character is printed', () => {
  const faces = openFaces(loadFonts())

  it('is known of most without a look at any file, and rightly', () => {
    const has = (character: string): boolean => faces.faceFor('text', character.codePointAt(0) ?? 0) !== null
    const all = Array.from({ length: 0x2100 }, (_, code) => String.fromCodePoint(code))
    expect(all.filter((character) => prints(character) !== isPrinted(character, has))).toEqual([])
  })

  it.each([...'é½⅛⅙→★①℃編Жώệﬁ', '\u200d', '\ufe0f'])('yes: %s', (character) => expect(prints(character)).toBe(true))

  it.each([...'한שعก🧶‰'])('no: %s', (character) => expect(prints(character)).toBe(false))
})
