import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, SetBlocks, Strips } from '../composer.ts'
import { decorate } from '../strip.ts'
import { tag } from '../tag.ts'

const indent = 14

/** A quotation, with a hairline at its side. */
export function setQuote(block: BlockOf<'quote'>, composer: Composer, setBlocks: SetBlocks): Strips {
  const { text, end } = composer.frame
  const frame = { start: text + indent, text: text + indent, end }
  const strips = setBlocks(block.children, { ...composer, frame, parent: tag('BlockQuote', composer.parent) })
  return decorate(strips, (pen, top, height) => {
    pen.rule(text + 2, top, text + 2, top + height, composer.look.colours.hairline, 1)
  })
}
