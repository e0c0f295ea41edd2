import { zlibSync } from 'fflate'
import type { Pattern } from '../../pattern/pattern.ts'
import { renderPdf } from '../../print/index.ts'
import { type FetchedFonts, fetchedFonts } from './fonts.ts'
import type { MineJob, PrintParts } from './job.ts'

let fonts: FetchedFonts | null = null

/** Makes the print-out that a reader wants, by what makes those of the site. Rejects where a part of it can't be had. */
export async function makeMine({ places, own, choice, form, paper }: MineJob): Promise<Uint8Array> {
  const [pattern, { words, images }] = await Promise.all([
    own ?? fetchJson(places.pattern, isPattern),
    fetchJson(places.parts, isParts),
  ])
  fonts ??= fetchedFonts(places.typefaces)
  const pictures = Object.fromEntries(Object.entries(images).map(([src, text]) => [src, bytesIn(text)]))
  const { bytes } = await fonts.use((fonts) =>
    renderPdf(pattern, { ...words, choice, form, paper, fonts, images: pictures, deflate }),
  )
  return bytes
}

const deflate = (bytes: Uint8Array): Uint8Array => zlibSync(bytes, { level: 6 })

const bytesIn = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))

async function fetchJson<T>(address: string, isIt: (data: unknown) => data is T): Promise<T> {
  const response = await fetch(address)
  const data: unknown = await response.json()
  if (!isIt(data)) throw new Error(`${address} is not what it should be`)
  return data
}

/** The files and their reader come from one build, so a look at one part tells. */
const isPattern = (data: unknown): data is Pattern => typeof data === 'object' && data !== null && 'rows' in data
const isParts = (data: unknown): data is PrintParts => typeof data === 'object' && data !== null && 'words' in data
