import { alone, pictureArtwork } from './artwork.ts'
import type { Composer, Strips } from './composer.ts'
import type { InlinePicture } from './inline.ts'
import { breakLines } from './line.ts'
import { lineStrips } from './strip.ts'
import { tag } from './tag.ts'

/** Tallest and, at 150 pixels an inch or better, widest that a picture is drawn; points. */
const tallest = 300
const pointsPerPixel = 72 / 150

/** A picture in the text column; its words where it cannot be drawn. */
export function setPicture({ src, alt }: InlinePicture, composer: Composer): Strips {
  const picture = composer.pictureOf(src)
  if (picture === null) return setAlt(alt, composer)
  const { text, end } = composer.frame
  const artwork = pictureArtwork(picture, alt, Math.min(end - text, picture.width * pointsPerPixel), tallest)
  return [alone(artwork, text, 10, composer)]
}

function setAlt(alt: string, composer: Composer): Strips {
  if (alt.trim() === '') return []
  const { text, end } = composer.frame
  const { styles, leading, gaps } = composer.look
  const lines = breakLines(composer, [{ text: `Picture: ${alt}`, style: styles.soft }], end - text)
  const setting = { tag: tag('P', composer.parent), x: text, width: end - text, leading: leading.text }
  return lineStrips(lines, setting, gaps.paragraph)
}
