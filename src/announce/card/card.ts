import sharp from 'sharp'
import type { Style } from '../../print/style.ts'
import { lineCount, outlined } from './outline.ts'
import { cardSize } from './size.ts'

/** What other sites and messengers show of a page that is shared. */
export interface Card {
  readonly studio: string
  readonly title: string
  readonly summary: string
  /** A line of short facts: skill, sizes; empty for none. */
  readonly facts: string
  /** The cover's file. */
  readonly picture: Uint8Array | null
}

const pictureWidth = 600
const edge = 64
const paper = '#f8f3ea'
const ink = '#29241f'
const soft = '#645a4f'
const accent = '#1d5c63'

/** A card as a JPEG of `cardSize`; the same card has the same bytes. */
export async function cardImage(card: Card): Promise<Uint8Array> {
  const picture = card.picture === null ? null : await pictureFor(card.picture)
  const { width, height } = cardSize
  const base = sharp({ create: { width, height, channels: 3, background: paper } })
  const words = { input: Buffer.from(wordsOf(card, picture === null ? 0 : pictureWidth)), left: 0, top: 0 }
  const layers = picture === null ? [words] : [{ input: picture, left: width - pictureWidth, top: 0 }, words]
  return base.composite(layers).jpeg({ quality: 88, chromaSubsampling: '4:4:4' }).toBuffer()
}

/** The cover, cut to the right end of the card. A drawing is drawn at the size that is needed. */
async function pictureFor(file: Uint8Array): Promise<Buffer> {
  const { format, width = 1, height = 1 } = await sharp(file).metadata()
  const enlarge = Math.max(1, pictureWidth / width, cardSize.height / height)
  const density = format === 'svg' ? { density: Math.min(72 * enlarge, 2400) } : {}
  return sharp(file, density)
    .rotate()
    .resize(pictureWidth, cardSize.height, { fit: 'cover' })
    .flatten({ background: paper })
    .png({ compressionLevel: 1 })
    .toBuffer()
}

function wordsOf({ studio, title, summary, facts }: Card, taken: number): string {
  const { width, height } = cardSize
  const column = { x: edge, width: width - taken - 2 * edge }
  const name = outlined(studio, {
    ...column,
    style: style('textBold', 26, accent),
    top: edge - 8,
    leading: 34,
    lines: 1,
  })
  const size = titleSize(title, column.width)
  const titleStyle = style('title', size, ink)
  const head = outlined(title, { ...column, style: titleStyle, top: name.bottom + 36, leading: size * 1.15, lines: 4 })
  const free = Math.floor((height - edge - 56 - head.bottom - 20) / 40)
  const text = outlined(summary, {
    ...column,
    style: style('text', 28, soft),
    top: head.bottom + 20,
    leading: 40,
    lines: Math.max(1, free),
  })
  const foot = outlined(facts, {
    ...column,
    style: style('text', 24, ink),
    top: height - edge - 28,
    leading: 32,
    lines: 1,
  })
  const line = `<rect x="0" y="${height - 12}" width="${width - taken}" height="12" fill="${accent}"/>`
  const shapes = [name, head, text, foot].map(({ paths }) => paths).join('')
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${line}${shapes}</svg>`
}

function style(face: Style['face'], size: number, colour: string): Pick<Style, 'face' | 'size' | 'colour'> {
  return { face, size, colour }
}

/** The largest type in which a title takes no more than three lines. */
function titleSize(title: string, width: number): number {
  const sizes = [72, 60, 50, 42]
  return sizes.find((size) => lineCount(title, { style: style('title', size, ink), width }) <= 3) ?? 36
}
