import { inflateSync } from 'node:zlib'

const headerLength = 44
const entryLength = 20

/**
 * The TrueType font inside a WOFF 1.0 file (W3C, "WOFF File Format 1.0", 2012, sections 3 to 5). A WOFF
 * can be embedded as it is, but every look at a glyph then inflates its whole table again.
 */
export function unwrapWoff(woff: Uint8Array): Uint8Array {
  const from = new DataView(woff.buffer, woff.byteOffset, woff.byteLength)
  if (from.getUint32(0) !== 0x774f4646) throw new Error('not a WOFF 1.0 file')
  const tables = Array.from({ length: from.getUint16(12) }, (_, index) => readTable(woff, from, index))
  return joinTables(from.getUint32(4), tables)
}

interface FontTable {
  readonly tag: number
  readonly checksum: number
  readonly bytes: Uint8Array
}

function readTable(woff: Uint8Array, from: DataView, index: number): FontTable {
  const entry = headerLength + entryLength * index
  const start = from.getUint32(entry + 4)
  const stored = woff.subarray(start, start + from.getUint32(entry + 8))
  const length = from.getUint32(entry + 12)
  const bytes = stored.length < length ? inflateSync(stored) : stored
  return { tag: from.getUint32(entry), checksum: from.getUint32(entry + 16), bytes }
}

/** Header, directory and tables as the OpenType specification orders them, each table on a multiple of four. */
function joinTables(flavour: number, tables: readonly FontTable[]): Uint8Array {
  const start = 12 + 16 * tables.length
  const size = tables.reduce((sum, table) => sum + padded(table.bytes.length), start)
  const font = new Uint8Array(size)
  const to = new DataView(font.buffer)
  const power = Math.floor(Math.log2(tables.length))
  to.setUint32(0, flavour)
  to.setUint16(4, tables.length)
  to.setUint16(6, 16 * 2 ** power)
  to.setUint16(8, power)
  to.setUint16(10, 16 * (tables.length - 2 ** power))
  let offset = start
  for (const [index, table] of tables.entries()) {
    const entry = 12 + 16 * index
    to.setUint32(entry, table.tag)
    to.setUint32(entry + 4, table.checksum)
    to.setUint32(entry + 8, offset)
    to.setUint32(entry + 12, table.bytes.length)
    font.set(table.bytes, offset)
    offset += padded(table.bytes.length)
  }
  return font
}

function padded(length: number): number {
  return Math.ceil(length / 4) * 4
}
