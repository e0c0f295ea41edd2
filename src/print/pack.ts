import type { Deflate } from './embed.ts'

/** A file as PDFKit writes it, a chunk at a time. */
type Chunks = readonly Uint8Array[]

/** An object of the file; one without a stream can be put into a stream with others. */
interface FileObject {
  readonly id: number
  readonly body: Uint8Array
  /** All that is written of it. */
  readonly chunks: Chunks
  readonly hasStream: boolean
}

interface ReadFile {
  readonly header: Chunks
  readonly objects: readonly FileObject[]
  /** Entries of the trailer, without the brackets around them. */
  readonly trailer: string
}

/** Objects in one stream: a reader takes all of them out for one. */
const mostObjects = 300

/**
 * The same file with its small objects packed together (ISO 32000-1, 7.5.7 and 7.5.8): the structure of a pattern is
 * thousands of them, much alike, and takes more room than all the rest.
 */
export function packObjects(chunks: Chunks, deflate: Deflate): readonly Uint8Array[] {
  const { header, objects, trailer } = readChunks(chunks)
  const out = new Writer()
  for (const chunk of header) out.add(chunk)
  for (const { id, chunks, hasStream } of objects) {
    if (!hasStream) continue
    out.begin(id)
    for (const chunk of chunks) out.add(chunk)
  }
  const small = objects.filter((object) => !object.hasStream)
  let next = Math.max(0, ...objects.map(({ id }) => id)) + 1
  for (let start = 0; start < small.length; start += mostObjects) {
    const some = small.slice(start, start + mostObjects)
    out.begin(next)
    writeStream(out, next, objectStream(some), deflate)
    for (const [index, { id }] of some.entries()) out.within(id, next, index)
    next += 1
  }
  const place = out.begin(next)
  const entries = `/Type /XRef /Size ${next + 1} /W [1 4 2] ${trailer}`
  writeStream(out, next, { entries, content: out.table(next + 1) }, deflate)
  out.text(`startxref\n${place}\n%%EOF\n`)
  return out.chunks
}

/** PDFKit writes `12 0 obj`, the object, perhaps `stream`, bytes and `endstream`, then `endobj`, a chunk each. */
function readChunks(chunks: Chunks): ReadFile {
  const objects: FileObject[] = []
  const header: Uint8Array[] = []
  let place = 0
  const textAt = (index: number): string => {
    const chunk = chunks[index]
    return chunk === undefined || chunk.length > 20 ? '' : latin1.decode(chunk)
  }
  for (; place < chunks.length && textAt(place) !== 'xref\n'; place++) {
    const [, id] = /^(\d+) 0 obj\n$/.exec(textAt(place)) ?? []
    const body = chunks[place + 1]
    if (id === undefined || body === undefined) {
      header.push(chunks[place] ?? new Uint8Array())
      continue
    }
    const hasStream = textAt(place + 2) === 'stream\n'
    const end = place + (hasStream ? 5 : 2)
    objects.push({ id: Number(id), body, chunks: chunks.slice(place, end + 1), hasStream })
    place = end
  }
  const rest = chunks
    .slice(place)
    .map((chunk) => latin1.decode(chunk))
    .join('')
  const [, trailer = ''] = /trailer\n<<([\s\S]*)>>\nstartxref/.exec(rest) ?? []
  return { header, objects, trailer: trailer.replace(/\/Size \d+/, '').trim() }
}

interface StreamContent {
  readonly entries: string
  readonly content: Uint8Array
}

/** Numbers and places of the objects, then the objects. */
function objectStream(objects: readonly FileObject[]): StreamContent {
  let offset = 0
  const places = objects.map(({ id, body }) => {
    const place = `${id} ${offset}`
    offset += body.length
    return place
  })
  const head = bytesOf(`${places.join(' ')}\n`)
  return {
    entries: `/Type /ObjStm /N ${objects.length} /First ${head.length}`,
    content: join([head, ...objects.map((object) => object.body)]),
  }
}

function writeStream(out: Writer, id: number, { entries, content }: StreamContent, deflate: Deflate): void {
  const packed = deflate(content)
  out.text(`${id} 0 obj\n<< ${entries} /Length ${packed.length} /Filter /FlateDecode >>\nstream\n`)
  out.add(packed)
  out.text('\nendstream\nendobj\n')
}

/** Where an object is: at a place in the file, or within a stream of objects. */
type Entry =
  | { readonly kind: 'place'; readonly offset: number }
  | { readonly kind: 'within'; readonly stream: number; readonly index: number }

/** A file being written, with where its objects are. */
class Writer {
  readonly chunks: Uint8Array[] = []
  readonly #entries = new Map<number, Entry>()
  #length = 0

  add(chunk: Uint8Array): void {
    this.chunks.push(chunk)
    this.#length += chunk.length
  }

  text(text: string): void {
    this.add(bytesOf(text))
  }

  /** The object of this number follows; gives its place. */
  begin(id: number): number {
    this.#entries.set(id, { kind: 'place', offset: this.#length })
    return this.#length
  }

  within(id: number, stream: number, index: number): void {
    this.#entries.set(id, { kind: 'within', stream, index })
  }

  /** An entry of seven bytes for each number: its kind, a place of four bytes, two bytes more. */
  table(size: number): Uint8Array {
    const bytes = new Uint8Array(size * 7)
    const view = new DataView(bytes.buffer)
    view.setUint16(5, 0xffff)
    for (const [id, entry] of this.#entries) {
      view.setUint8(id * 7, entry.kind === 'place' ? 1 : 2)
      view.setUint32(id * 7 + 1, entry.kind === 'place' ? entry.offset : entry.stream)
      view.setUint16(id * 7 + 5, entry.kind === 'place' ? 0 : entry.index)
    }
    return bytes
  }
}

/** A letter for each byte. */
const latin1 = new TextDecoder('latin1')

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)

/** Chunks as one. */
export function join(chunks: Chunks): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0))
  let offset = 0
  for (const chunk of chunks) {
    bytes.set(chunk, offset)
    offset += chunk.length
  }
  return bytes
}
