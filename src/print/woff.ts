import type { FontTable } from './truetype.ts'
import { joinTables, readTag, viewOf } from './truetype.ts'

/** Unpacks bytes of zlib's format. */
export type Inflate = (bytes: Uint8Array) => Uint8Array

const headerLength = 44
const entryLength = 20

/**
 * The TrueType font inside a WOFF 1.0 file (W3C, "WOFF File Format 1.0", 2012, sections 3 to 5). A WOFF
 * can be embedded as it is, but every look at a glyph then inflates its whole table again.
 */
export function unwrapWoff(woff: Uint8Array, inflate: Inflate): Uint8Array {
  const from = viewOf(woff)
  if (from.getUint32(0) !== 0x774f4646) throw new Error('not a WOFF 1.0 file')
  const tables = Array.from({ length: from.getUint16(12) }, (_, index) => readTable(woff, from, index, inflate))
  return joinTables(from.getUint32(4), tables)
}

function readTable(woff: Uint8Array, from: DataView, index: number, inflate: Inflate): FontTable {
  const entry = headerLength + entryLength * index
  const start = from.getUint32(entry + 4)
  const stored = woff.subarray(start, start + from.getUint32(entry + 8))
  const length = from.getUint32(entry + 12)
  return { tag: readTag(from, entry), bytes: stored.length < length ? inflate(stored) : stored }
}
