import type { Block } from '../pattern/node.ts'
import { setCodeBlock } from './blocks/code-block.ts'
import { setDrawing } from './blocks/drawing.ts'
import { setHeading } from './blocks/heading.ts'
import { setList } from './blocks/list.ts'
import { setOnly } from './blocks/only.ts'
import { setParagraph } from './blocks/paragraph.ts'
import { setQuote } from './blocks/quote.ts'
import { setRow } from './blocks/row.ts'
import { setRule } from './blocks/rule.ts'
import { setTable } from './blocks/table.ts'
import type { Composer, Strips } from './composer.ts'
import { tag } from './tag.ts'

type BlockOf<T extends Block['type']> = Block & { readonly type: T }

type Handlers = { readonly [T in Block['type']]: (block: BlockOf<T>, composer: Composer) => Strips }

const handlers = {
  heading: setHeading,
  paragraph: setParagraph,
  list: (block, composer) => setList(block, composer, setBlocks),
  table: setTable,
  quote: (block, composer) => setQuote(block, composer, setBlocks),
  codeBlock: setCodeBlock,
  rule: setRule,
  only: (block, composer) => setOnly(block, composer, setBlocks),
  row: setRow,
  drawing: setDrawing,
} satisfies Handlers

function set<T extends Block['type']>(block: BlockOf<T>, composer: Composer): Strips {
  const table: Handlers = handlers
  return table[block.type](block, composer)
}

/** Sizes blocks that follow one another. Rows in a row are one list, and no level of heading is skipped. */
export function setBlocks(blocks: readonly Block[], composer: Composer): Strips {
  let level = composer.level
  let list = composer
  let before: Block['type'] | null = null
  return blocks.flatMap((block) => {
    if (block.type === 'row' && before !== 'row')
      list = { ...composer, parent: tag('L', composer.parent, { numbering: 'Decimal' }) }
    if (block.type === 'heading') level = Math.max(2, Math.min(block.depth, level + 1))
    before = block.type
    return set(block, { ...(block.type === 'row' ? list : composer), level })
  })
}
