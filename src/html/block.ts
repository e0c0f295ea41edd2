import type { BlockContent, Heading } from 'mdast'
import { onlyWords } from '../measure/index.ts'
import type { Block, BlockOf, RowBlock } from '../pattern/node.ts'
import type { Context } from './context.ts'
import { drawing } from './drawing.ts'
import { blockElement } from './element.ts'
import { list } from './list.ts'
import { rowList } from './row.ts'
import { onlyClass } from './sizes.ts'
import { table } from './table.ts'

type Handlers = { readonly [T in Block['type']]: (node: BlockOf<T>, context: Context) => BlockContent }

/** One handler for each type of block. */
const handlers: Handlers = {
  heading,
  paragraph: (node, context) => ({ type: 'paragraph', children: context.inlines(node.children) }),
  list,
  table,
  quote: (node, context) => ({ type: 'blockquote', children: context.blocks(node.children) }),
  codeBlock: (node) => ({ type: 'code', value: node.text }),
  rule: () => ({ type: 'thematicBreak' }),
  only,
  row: (node, context) => rowList([node], context),
  drawing,
}

/** Turns blocks into Markdown's own nodes or into elements; rows that follow each other become one list. */
export function blocks(nodes: readonly Block[], context: Context): BlockContent[] {
  return runs(nodes).map((run) => (Array.isArray(run) ? rowList(run, context) : block(run, context)))
}

function block<T extends Block['type']>(
  node: { [K in T]: BlockOf<K> & { readonly type: K } }[T],
  context: Context,
): BlockContent {
  return handlers[node.type](node, context)
}

/** Rows that follow each other are taken together, every other block stands alone. */
function runs(nodes: readonly Block[]): (Exclude<Block, RowBlock> | RowBlock[])[] {
  const found: (Exclude<Block, RowBlock> | RowBlock[])[] = []
  for (const node of nodes) {
    const last = found.at(-1)
    if (node.type !== 'row') found.push(node)
    else if (Array.isArray(last)) last.push(node)
    else found.push([node])
  }
  return found
}

/** The page has one first heading, the title; the draft's own start below it. */
function heading(node: BlockOf<'heading'>, context: Context): Heading {
  context.stops.begin()
  return {
    type: 'heading',
    depth: depthBelowTitle(node.depth),
    data: { hProperties: { id: node.id } },
    children: context.inlines(node.children),
  }
}

function depthBelowTitle(depth: number): Heading['depth'] {
  const depths = [2, 3, 4, 5, 6] as const
  return depths.find((each) => each >= depth) ?? 6
}

function only(node: BlockOf<'only'>, context: Context): BlockContent {
  const label = onlyWords(context.sizes, node.sizes)
  return blockElement('div', { className: [...onlyClass(node.sizes)] }, [
    blockElement('p', { className: ['only-for', 'c'] }, [{ type: 'text', value: label }]),
    ...context.blocks(node.children),
  ])
}
