import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, Strips } from '../composer.ts'
import type { InlinePicture, Piece } from '../inline.ts'
import { readInlines } from '../inline.ts'
import type { Run } from '../line.ts'
import { breakLines } from '../line.ts'
import { setPicture } from '../picture.ts'
import { lineStrips } from '../strip.ts'
import type { Tag } from '../tag.ts'
import { tag } from '../tag.ts'

/** Prose in the text column; a picture among the words stands between lines. */
export function setParagraph(block: BlockOf<'paragraph'>, composer: Composer): Strips {
  const pieces = readInlines(block.children, { style: composer.look.styles.text, sizes: composer.sizes })
  const paragraph = tag('P', composer.parent)
  return splitAtPictures(pieces).flatMap((part) =>
    'src' in part ? setPicture(part, composer) : setRuns(part, composer, paragraph),
  )
}

/** Sizes text that has been read already, as one paragraph. */
export function setRuns(runs: readonly Run[], composer: Composer, paragraph: Tag): Strips {
  const { text, end } = composer.frame
  const { leading, gaps } = composer.look
  const lines = breakLines(composer, runs, end - text)
  return lineStrips(lines, { tag: paragraph, x: text, width: end - text, leading: leading.text }, gaps.paragraph)
}

function splitAtPictures(pieces: readonly Piece[]): readonly (InlinePicture | readonly Run[])[] {
  const parts: (InlinePicture | Run[])[] = []
  for (const piece of pieces) {
    const last = parts.at(-1)
    if ('src' in piece) parts.push(piece)
    else if (Array.isArray(last)) last.push(piece)
    else if (piece.text.trim() !== '') parts.push([piece])
  }
  return parts
}
