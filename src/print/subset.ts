import type { FontTable } from './truetype.ts'
import { joinTables, readTables, viewOf } from './truetype.ts'

/** Tables that a TrueType font in a PDF needs (ISO 32000-1, 9.9), in the order of their tags. */
const kept = ['cvt ', 'fpgm', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'prep']

/**
 * The TrueType font with the outlines of some glyphs alone, given by their numbers; each keeps its number.
 * So a word is written in the same way in every document, whatever other letters that one has.
 */
export function subsetFont(file: Uint8Array, glyphs: Iterable<number>): Uint8Array {
  const tables = readTables(file)
  const outlines = readOutlines(tables)
  const wanted = withComponents(glyphs, outlines)
  const { glyf, loca } = writeOutlines(outlines, wanted)
  const hmtx = keepMetrics(tables, wanted)
  const changed = new Map([...tables, ['glyf', glyf] as const, ['loca', loca] as const, ['hmtx', hmtx] as const])
  const parts = kept.flatMap((tag): readonly FontTable[] => {
    const bytes = changed.get(tag)
    return bytes === undefined ? [] : [{ tag, bytes }]
  })
  return joinTables(0x00010000, parts)
}

interface Outlines {
  readonly count: number
  /** The outline of a glyph; no bytes for one that has none, such as a space. */
  readonly of: (glyph: number) => Uint8Array
  /** Places in the file count in fours of bytes; in twos in a small font. */
  readonly long: boolean
}

function readOutlines(tables: ReadonlyMap<string, Uint8Array>): Outlines {
  const glyf = needed(tables, 'glyf')
  const loca = viewOf(needed(tables, 'loca'))
  const long = viewOf(needed(tables, 'head')).getInt16(50) === 1
  const place = (index: number): number => (long ? loca.getUint32(index * 4) : loca.getUint16(index * 2) * 2)
  return {
    count: viewOf(needed(tables, 'maxp')).getUint16(4),
    of: (glyph) => glyf.subarray(place(glyph), place(glyph + 1)),
    long,
  }
}

function needed(tables: ReadonlyMap<string, Uint8Array>, tag: string): Uint8Array {
  const table = tables.get(tag)
  if (table === undefined) throw new Error(`a font file has no TrueType outlines: its table ${tag} is missing`)
  return table
}

/** The glyphs, those that they are built from, and the first: what a reader shows for a letter that is not there. */
function withComponents(glyphs: Iterable<number>, outlines: Outlines): ReadonlySet<number> {
  const wanted = new Set([0, ...glyphs])
  for (const glyph of wanted) for (const component of componentsOf(outlines.of(glyph))) wanted.add(component)
  return wanted
}

/** What a component's flags say of it (OpenType specification, "glyf"). */
const flag = { wordArguments: 0x01, scale: 0x08, more: 0x20, twoScales: 0x40, matrix: 0x80 }

function componentsOf(outline: Uint8Array): readonly number[] {
  const view = viewOf(outline)
  if (outline.length === 0 || view.getInt16(0) >= 0) return []
  const components: number[] = []
  let offset = 10
  let flags = flag.more
  while ((flags & flag.more) !== 0) {
    flags = view.getUint16(offset)
    components.push(view.getUint16(offset + 2))
    offset += 4 + ((flags & flag.wordArguments) === 0 ? 2 : 4) + transformLength(flags)
  }
  return components
}

function transformLength(flags: number): number {
  if ((flags & flag.scale) !== 0) return 2
  if ((flags & flag.twoScales) !== 0) return 4
  return (flags & flag.matrix) === 0 ? 0 : 8
}

function writeOutlines(
  outlines: Outlines,
  wanted: ReadonlySet<number>,
): { readonly glyf: Uint8Array; readonly loca: Uint8Array } {
  const length = [...wanted].reduce((sum, glyph) => sum + outlines.of(glyph).length, 0)
  const glyf = new Uint8Array(length)
  const loca = new Uint8Array((outlines.count + 1) * (outlines.long ? 4 : 2))
  const places = viewOf(loca)
  let offset = 0
  for (let glyph = 0; glyph <= outlines.count; glyph++) {
    if (outlines.long) places.setUint32(glyph * 4, offset)
    else places.setUint16(glyph * 2, offset / 2)
    if (!wanted.has(glyph)) continue
    const outline = outlines.of(glyph)
    glyf.set(outline, offset)
    offset += outline.length
  }
  return { glyf, loca }
}

/** The table of widths with those of other glyphs at nought, which take next to no room. */
function keepMetrics(tables: ReadonlyMap<string, Uint8Array>, wanted: ReadonlySet<number>): Uint8Array {
  const all = needed(tables, 'hmtx')
  // Glyphs from here on have the width before it, and only their own left bearing.
  const last = (viewOf(needed(tables, 'hhea')).getUint16(34) - 1) * 4
  const kept = new Uint8Array(all.length)
  for (const glyph of wanted) if (glyph * 4 < last) kept.set(all.subarray(glyph * 4, glyph * 4 + 4), glyph * 4)
  kept.set(all.subarray(last), last)
  return kept
}
