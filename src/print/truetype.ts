/** A table of a TrueType or OpenType font (OpenType specification, "Organization of an OpenType Font"). */
export interface FontTable {
  readonly tag: string
  readonly bytes: Uint8Array
}

const headerLength = 12
const entryLength = 16

/** The tables of a font file, by their tags. */
export function readTables(file: Uint8Array): ReadonlyMap<string, Uint8Array> {
  const view = viewOf(file)
  const tables = new Map<string, Uint8Array>()
  for (let index = 0; index < view.getUint16(4); index++) {
    const entry = headerLength + entryLength * index
    const start = view.getUint32(entry + 8)
    tables.set(readTag(view, entry), file.subarray(start, start + view.getUint32(entry + 12)))
  }
  return tables
}

/** A font file: header, directory and tables, each table on a multiple of four. `tables` are in the order of their tags. */
export function joinTables(flavour: number, tables: readonly FontTable[]): Uint8Array {
  const start = headerLength + entryLength * tables.length
  const size = tables.reduce((sum, table) => sum + padded(table.bytes.length), start)
  const file = new Uint8Array(size)
  const view = viewOf(file)
  writeHeader(view, flavour, tables.length)
  let offset = start
  for (const [index, { tag, bytes }] of tables.entries()) {
    file.set(bytes, offset)
    const entry = headerLength + entryLength * index
    for (let letter = 0; letter < 4; letter++) view.setUint8(entry + letter, tag.charCodeAt(letter))
    view.setUint32(entry + 4, checksum(view, offset, padded(bytes.length)))
    view.setUint32(entry + 8, offset)
    view.setUint32(entry + 12, bytes.length)
    offset += padded(bytes.length)
  }
  return file
}

function writeHeader(view: DataView, flavour: number, count: number): void {
  const power = Math.floor(Math.log2(count))
  view.setUint32(0, flavour)
  view.setUint16(4, count)
  view.setUint16(6, 16 * 2 ** power)
  view.setUint16(8, power)
  view.setUint16(10, 16 * (count - 2 ** power))
}

function checksum(view: DataView, start: number, length: number): number {
  let sum = 0
  for (let offset = start; offset < start + length; offset += 4) sum = (sum + view.getUint32(offset)) >>> 0
  return sum
}

export function readTag(view: DataView, offset: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((letter) => view.getUint8(offset + letter)))
}

/** A view of bytes that may be a part of a larger buffer. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}

function padded(length: number): number {
  return Math.ceil(length / 4) * 4
}
