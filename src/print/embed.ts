import type { Font, Glyph } from 'fontkit'
import type { Face } from './face.ts'
import type { Shape } from './shape.ts'
import { subsetFont } from './subset.ts'

/** A face in one document. */
export interface Embedded {
  /** What content streams call it. */
  readonly name: string
  readonly reference: PDFKit.PDFKitReference
  /** Words that the document shows in it; to be added to as they are drawn. */
  readonly shown: Set<Shape>
  /** Writes the letters shown into the document; nothing can be added after. */
  readonly end: () => void
}

/**
 * Enters a face in a document, with glyph numbers as its codes. PDFKit would number the glyphs anew in each
 * document, so that no word could be kept for the next.
 */
export function embedFace(document: PDFKit.PDFDocument, face: Face, index: number, deflate: Deflate | null): Embedded {
  const baseName = `${subsetTag(index)}+${face.font.postscriptName.replaceAll(' ', '_')}`
  const dictionary = { Type: 'Font', Subtype: 'Type0', BaseFont: baseName, Encoding: 'Identity-H' }
  const reference = document.ref(dictionary)
  const shown = new Set<Shape>()
  const end = (): void => {
    const part = partOf(face, glyphsOf(shown), deflate)
    Object.assign(dictionary, {
      DescendantFonts: [descendant(document, face.font, baseName, part)],
      ToUnicode: stream(document, part.characters),
    })
    reference.end(undefined)
  }
  return { name: `F${index + 1}`, reference, shown, end }
}

/** Six capitals, another six for each face of a document (ISO 32000-1, 9.6.4). */
function subsetTag(index: number): string {
  return `FACE${String.fromCharCode(65 + Math.floor(index / 26), 65 + (index % 26))}`
}

/** Glyphs by their numbers, in the order of these: what it gives does not depend on the order of the words. */
function glyphsOf(shapes: Iterable<Shape>): ReadonlyMap<number, Glyph> {
  const glyphs = new Map<number, Glyph>()
  for (const shape of shapes) for (const glyph of shape.glyphs) glyphs.set(glyph.id, glyph)
  return new Map([...glyphs].sort(([a], [b]) => a - b))
}

/** What a document holds of a face that shows some of its glyphs. */
interface Part {
  readonly widths: readonly (number | readonly number[])[]
  readonly program: Packed
  readonly characters: Packed
}

/** Packs bytes as the filter `FlateDecode` takes them. */
export type Deflate = (bytes: Uint8Array) => Uint8Array

/** A stream's bytes, and how many they were before they were packed. */
interface Packed {
  readonly bytes: Uint8Array
  readonly length: number
  readonly filter: 'FlateDecode' | null
}

const parts = new WeakMap<Face, Map<string, Part>>()

/** Both papers of a pattern show the same letters, and so do many patterns of one studio. */
const mostParts = 64

function partOf(face: Face, glyphs: ReadonlyMap<number, Glyph>, deflate: Deflate | null): Part {
  const known = parts.get(face) ?? new Map<string, Part>()
  parts.set(face, known)
  const key = `${deflate === null ? 'plain' : 'packed'} ${[...glyphs.keys()].join()}`
  const before = known.get(key)
  if (before !== undefined) return before
  if (known.size >= mostParts) known.clear()
  const part = makePart(face, glyphs, deflate)
  known.set(key, part)
  return part
}

function makePart({ font, file }: Face, glyphs: ReadonlyMap<number, Glyph>, deflate: Deflate | null): Part {
  const scale = 1000 / font.unitsPerEm
  return {
    widths: [...glyphs].flatMap(([id, glyph]) => [id, [glyph.advanceWidth * scale]]),
    program: packed(subsetFont(file, glyphs.keys()), deflate),
    characters: packed(new TextEncoder().encode(toUnicode(font, glyphs)), deflate),
  }
}

function packed(bytes: Uint8Array, deflate: Deflate | null): Packed {
  if (deflate === null) return { bytes, length: bytes.length, filter: null }
  return { bytes: deflate(bytes), length: bytes.length, filter: 'FlateDecode' }
}

/** `Length1` is wanted of a font's stream and means nothing in another. */
function stream(document: PDFKit.PDFDocument, { bytes, length, filter }: Packed): PDFKit.PDFKitReference {
  const reference = document.ref({ ...(filter === null ? {} : { Filter: filter }), Length1: length })
  reference.end(bytes)
  return reference
}

function descendant(document: PDFKit.PDFDocument, font: Font, baseName: string, part: Part): PDFKit.PDFKitReference {
  const reference = document.ref({
    Type: 'Font',
    Subtype: 'CIDFontType2',
    BaseFont: baseName,
    // PDFKit writes an object of strings as text, a plain string as a name.
    CIDSystemInfo: { Registry: Object('Adobe'), Ordering: Object('Identity'), Supplement: 0 },
    CIDToGIDMap: 'Identity',
    FontDescriptor: descriptor(document, font, baseName, stream(document, part.program)),
    W: part.widths,
  })
  reference.end(undefined)
  return reference
}

/** Flags of ISO 32000-1, table 123. Glyphs go by their numbers, so the font counts as one of symbols. */
const flag = { symbolic: 4, italic: 64 }

function descriptor(
  document: PDFKit.PDFDocument,
  font: Font,
  baseName: string,
  program: PDFKit.PDFKitReference,
): PDFKit.PDFKitReference {
  const scale = 1000 / font.unitsPerEm
  const { minX, minY, maxX, maxY } = font.bbox
  const reference = document.ref({
    Type: 'FontDescriptor',
    FontName: baseName,
    Flags: flag.symbolic + (font.italicAngle === 0 ? 0 : flag.italic),
    FontBBox: [minX * scale, minY * scale, maxX * scale, maxY * scale],
    ItalicAngle: font.italicAngle,
    Ascent: font.ascent * scale,
    Descent: font.descent * scale,
    CapHeight: (font.capHeight || font.ascent) * scale,
    XHeight: (font.xHeight || 0) * scale,
    StemV: 0,
    FontFile2: program,
  })
  reference.end(undefined)
  return reference
}

/** Most entries that a block of the map may have. */
const mostEntries = 100

/** The characters of each glyph, for whoever copies or listens (ISO 32000-1, 9.10.3). */
function toUnicode(font: Font, glyphs: ReadonlyMap<number, Glyph>): string {
  const entries = [...glyphs.values()].map((glyph) => `<${hex(glyph.id)}> <${charactersOf(font, glyph)}>`)
  const blocks = Array.from({ length: Math.ceil(entries.length / mostEntries) }, (_, block) => {
    const part = entries.slice(block * mostEntries, (block + 1) * mostEntries)
    return `${part.length} beginbfchar\n${part.join('\n')}\nendbfchar`
  })
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <ffff>
endcodespacerange
${blocks.join('\n')}
endcmap
CMapName currentdict /CMap defineresource pop
end
end`
}

const characters = new WeakMap<Glyph, string>()

/**
 * UTF-16 of a glyph's characters. Several may share a glyph, as space and no-break space do: the lowest
 * stands for it, so that it does not matter which was met first.
 */
function charactersOf(font: Font, glyph: Glyph): string {
  const before = characters.get(glyph)
  if (before !== undefined) return before
  const [lowest] = font.stringsForGlyph(glyph.id).sort()
  const text = lowest ?? String.fromCodePoint(...glyph.codePoints)
  const units = Array.from({ length: text.length }, (_, index) => hex(text.charCodeAt(index))).join('')
  characters.set(glyph, units)
  return units
}

function hex(number: number): string {
  return number.toString(16).padStart(4, '0')
}
