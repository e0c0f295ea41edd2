import type { BlockContent, ListItem } from 'mdast'
import type { Block, BlockOf, RowBlock } from '../pattern/node.ts'
import type { Context } from './context.ts'
import { rowList } from './row.ts'

/** A list whose every item is a row is a list of rows: the marks of the draft add nothing to the labels. */
export function list(node: BlockOf<'list'>, context: Context): BlockContent {
  const rows = node.items.map(soleRow)
  if (rows.every((row) => row !== null)) return rowList(rows, context)
  const spread = node.items.some((item) => item.filter(({ type }) => type === 'paragraph').length > 1)
  return {
    type: 'list',
    ordered: node.ordered,
    start: node.ordered ? node.start : null,
    spread,
    children: node.items.map((item): ListItem => ({ type: 'listItem', spread, children: context.blocks(item) })),
  }
}

function soleRow(item: readonly Block[]): RowBlock | null {
  const [first, ...more] = item
  return first?.type === 'row' && more.length === 0 ? first : null
}
