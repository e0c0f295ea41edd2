import type { Block, Inline } from '../pattern/node.ts'
import type { Change } from '../pattern/pattern.ts'
import { beside } from './artwork.ts'
import type { Composer, SetBlocks, Strips } from './composer.ts'
import { dateWords } from './date.ts'
import { qrArtwork } from './qr.ts'

/** Where the pattern's page is found. */
export interface PageAddress {
  /** `https://lowwater.example/patterns/tide-line/` */
  readonly address: string
  /** Whether a QR code of it is printed. */
  readonly code: boolean
}

/** Side of the QR code in points: 22 millimetres are read at arm's length (common practice, no source). */
const codeSide = 74
const codeSpace = 16

/** What has changed, and the page on which the newest edition is found, with its QR code. */
export function setCorrections(
  changes: readonly Change[],
  page: PageAddress | null,
  composer: Composer,
  setBlocks: SetBlocks,
): Strips {
  const blocks = [...(page === null ? [] : [pageWords(page.address)]), ...changes.map(changeWords)]
  if (page === null || !page.code) return setBlocks(blocks, composer)
  const { frame, look } = composer
  const narrower = { ...composer, frame: { ...frame, end: frame.end - codeSide - codeSpace } }
  return beside(setBlocks(blocks, narrower), qrArtwork(page.address, codeSide, look.colours.ink), composer)
}

/** `lowwater.example/patterns/tide-line`: what must be typed of an address. */
export function shortAddress(address: string): string {
  return address.replace(/^https?:\/\/(?:www\.)?/i, '').replace(/\/$/, '')
}

const text = (text: string): Inline => ({ type: 'text', text })

function pageWords(address: string): Block {
  const link: Inline = { type: 'link', href: address, children: [text(shortAddress(address))] }
  return { type: 'paragraph', children: [text('The newest edition, with all corrections, is at '), link, text('.')] }
}

function changeWords({ edition, date, note }: Change): Block {
  const words = `Edition ${edition}${date === null ? '' : ` (${dateWords(date)})`}: ${note}`
  return { type: 'paragraph', children: [text(words)] }
}
