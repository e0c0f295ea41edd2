import type { Composer, Picture, Strips } from './composer.ts'
import type { Pen } from './pen.ts'
import type { Strip } from './strip.ts'
import { heightOf } from './strip.ts'
import type { Tag } from './tag.ts'
import { tag } from './tag.ts'

/** A picture or a drawing of a settled size, in points, with the words that stand for it. */
export interface Artwork {
  readonly width: number
  readonly height: number
  readonly alt: string
  /** Draws it as the figure `tag`, its upper left corner at `x` and `top`. */
  readonly draw: (pen: Pen, tag: Tag, x: number, top: number) => void
}

/** A picture as large as it can be within a width and a height, in points. */
export function pictureArtwork(picture: Picture, alt: string, width: number, height: number): Artwork {
  const scale = Math.min(width / picture.width, height / picture.height)
  const size = { width: picture.width * scale, height: picture.height * scale }
  return {
    ...size,
    alt,
    draw: (pen, figure, x, top) => pen.picture(picture.image, figure, x, top, size.width, size.height),
  }
}

/** A line of its own for it, from `x` on. */
export function alone(artwork: Artwork, x: number, gap: number, composer: Composer): Strip {
  const figure = tag('Figure', composer.parent, { alt: artwork.alt })
  const draw: Strip['draw'] = (pen, top) => artwork.draw(pen, figure, x, top)
  return { height: artwork.height, gap, keep: false, draw }
}

/**
 * Strips with it at their right, its upper edge at that of the first; what follows stands clear of both. The strips must
 * have been set in a frame that leaves it room.
 */
export function beside(strips: Strips, artwork: Artwork, composer: Composer): Strips {
  const figure = tag('Figure', composer.parent, { alt: artwork.alt })
  const x = composer.frame.end - artwork.width
  const height = heightOf(strips, true)
  const rest = Math.max(0, artwork.height - height)
  const draw: Strip['draw'] = (pen, top) => {
    artwork.draw(pen, figure, x, top + rest - Math.max(artwork.height, height))
  }
  return [...strips.map((strip) => ({ ...strip, keep: true })), { height: rest, gap: 0, keep: false, draw }]
}
