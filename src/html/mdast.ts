import type { RootContent } from 'mdast'
import type { Block } from '../pattern/node.ts'
import { blocks } from './block.ts'
import type { Context } from './context.ts'
import { inline } from './inline.ts'
import { firstUses } from './stops.ts'

/**
 * The body of a pattern as Markdown nodes for the host, which makes HTML of them and fits the pictures.
 * `sizes` are the names of the sizes, in the draft's order: they are said beside what is for some
 * sizes only. Nothing in the result is raw HTML.
 */
export function toMdast(body: readonly Block[], sizes: readonly string[]): RootContent[] {
  const context: Context = {
    sizes,
    stops: firstUses(),
    blocks: (nodes) => blocks(nodes, context),
    inlines: (nodes) => nodes.flatMap((node) => inline(node, context)),
  }
  return context.blocks(body)
}
