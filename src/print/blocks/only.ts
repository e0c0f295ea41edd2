import { onlyWords } from '../../measure/index.ts'
import type { BlockOf } from '../../pattern/node.ts'
import type { Composer, SetBlocks, Strips } from '../composer.ts'
import { after, decorate, keptWithNext } from '../strip.ts'
import { tag } from '../tag.ts'
import { setRuns } from './paragraph.ts'

/** What only some sizes work: named above it, with a bar in the margin as far as it goes. */
export function setOnly(block: BlockOf<'only'>, composer: Composer, setBlocks: SetBlocks): Strips {
  const within = { ...composer, parent: tag('Div', composer.parent) }
  const words = [{ text: `${onlyWords(composer.sizes, block.sizes)}:`, style: composer.look.styles.only }]
  const named = keptWithNext(setRuns(words, within, tag('P', within.parent)))
  const x = composer.frame.start - 9
  return decorate([...named, ...after(3, setBlocks(block.children, within))], (pen, top, height) => {
    pen.rule(x, top, x, top + height, composer.look.colours.accent, 1)
  })
}
