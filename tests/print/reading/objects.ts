import { execFileSync } from 'node:child_process'

/** A value of a PDF as qpdf gives it: `/Name`, `u:text`, `b:` and bytes in hex, `12 0 R` for another object. */
export type PdfValue = null | boolean | number | string | readonly PdfValue[] | PdfDictionary

export interface PdfDictionary {
  readonly [key: string]: PdfValue | undefined
}

/** The objects of a PDF, read by qpdf. */
export interface PdfFile {
  /** The value itself, or the object that a reference leads to; of a stream, its dictionary. */
  readonly resolve: (value: PdfValue | undefined) => PdfValue
  readonly dictionary: (value: PdfValue | undefined) => PdfDictionary
  readonly array: (value: PdfValue | undefined) => readonly PdfValue[]
  /** The decoded bytes of a stream; none where there is no stream. */
  readonly stream: (value: PdfValue | undefined) => Uint8Array
  readonly objects: readonly PdfValue[]
  readonly trailer: PdfDictionary
  readonly catalog: PdfDictionary
  readonly pages: readonly PdfDictionary[]
}

interface Entry {
  readonly value?: PdfValue
  readonly stream?: { readonly dict: PdfDictionary; readonly data: string }
}

const isDictionary = (value: PdfValue): value is PdfDictionary =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
const isArray = (value: PdfValue): value is readonly PdfValue[] => Array.isArray(value)

export function openPdf(path: string): PdfFile {
  const words = ['--json=2', '--json-stream-data=inline', '--decode-level=generalized', path]
  const found: { qpdf: [unknown, Readonly<Record<string, Entry>>] } = JSON.parse(
    execFileSync('qpdf', words, { encoding: 'utf8', maxBuffer: 1e9 }),
  )
  const [, entries] = found.qpdf
  const entryOf = (value: PdfValue | undefined): Entry | undefined =>
    typeof value === 'string' && /^\d+ \d+ R$/.test(value) ? entries[`obj:${value}`] : undefined
  const contentOf = (entry: Entry): PdfValue => entry.value ?? entry.stream?.dict ?? null
  const resolve = (value: PdfValue | undefined): PdfValue => {
    const entry = entryOf(value)
    return entry === undefined ? (value ?? null) : contentOf(entry)
  }
  const dictionary = (value: PdfValue | undefined): PdfDictionary => {
    const there = resolve(value)
    return isDictionary(there) ? there : {}
  }
  const array = (value: PdfValue | undefined): readonly PdfValue[] => {
    const there = resolve(value)
    return isArray(there) ? there : []
  }
  const trailer = dictionary(entries.trailer?.value)
  const catalog = dictionary(trailer['/Root'])
  const pagesUnder = (node: PdfDictionary): readonly PdfDictionary[] =>
    node['/Type'] === '/Page' ? [node] : array(node['/Kids']).flatMap((kid) => pagesUnder(dictionary(kid)))
  return {
    resolve,
    dictionary,
    array,
    stream: (value) => new Uint8Array(Buffer.from(entryOf(value)?.stream?.data ?? '', 'base64')),
    objects: Object.values(entries).map(contentOf),
    trailer,
    catalog,
    pages: pagesUnder(dictionary(catalog['/Pages'])),
  }
}

/** The characters of a text string; null for what is none. */
export function textOf(value: PdfValue | undefined): string | null {
  return typeof value === 'string' && value.startsWith('u:') ? value.slice(2) : null
}
