import type { Composer, Picture, Strips } from './composer.ts'
import type { InlinePicture } from './inline.ts'
import { breakLines } from './line.ts'
import type { Strip } from './strip.ts'
import { lineStrips } from './strip.ts'
import { leading, styles } from './style.ts'
import { tag } from './tag.ts'

/** Tallest and, at 150 pixels an inch or better, widest that a picture is drawn; points. */
const tallest = 300
const pointsPerPixel = 72 / 150

/** A picture in the text column; its words where it cannot be drawn. */
export function setPicture({ src, alt }: InlinePicture, composer: Composer): Strips {
  const picture = composer.pictureOf(src)
  if (picture === null) return setAlt(alt, composer)
  const { frame, parent } = composer
  const { width, height } = fitPicture(
    picture,
    Math.min(frame.end - frame.text, picture.width * pointsPerPixel),
    tallest,
  )
  const figure = tag('Figure', parent, { alt })
  const strip: Strip = {
    height,
    gap: 10,
    keep: false,
    draw: (pen, top) => pen.picture(picture.image, figure, frame.text, top, width, height),
  }
  return [strip]
}

/** The largest size of a picture, in points, within a width and a height. */
export function fitPicture(
  picture: Picture,
  width: number,
  height: number,
): { readonly width: number; readonly height: number } {
  const scale = Math.min(width / picture.width, height / picture.height)
  return { width: picture.width * scale, height: picture.height * scale }
}

function setAlt(alt: string, composer: Composer): Strips {
  if (alt.trim() === '') return []
  const { text, end } = composer.frame
  const lines = breakLines(composer, [{ text: `Picture: ${alt}`, style: styles.soft }], end - text)
  const setting = { tag: tag('P', composer.parent), x: text, width: end - text, leading: leading.text }
  return lineStrips(lines, setting, 7)
}
