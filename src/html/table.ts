import type { Properties } from 'hast'
import type { BlockContent, TableCell, TableRow } from 'mdast'
import type { BlockOf, Inline } from '../pattern/node.ts'
import type { Context } from './context.ts'
import { blockElement } from './element.ts'

/** A table in a box of its own that scrolls sideways, by keyboard too, where the page is too narrow. */
export function table(node: BlockOf<'table'>, context: Context): BlockContent {
  const line = (cells: readonly (readonly Inline[])[], head: Properties): TableRow => ({
    type: 'tableRow',
    children: cells.map((cell, column) => tableCell(cell, { ...head, ...alignment(node, column) }, context)),
  })
  const children = [line(node.head, { scope: 'col' }), ...node.rows.map((cells) => line(cells, {}))]
  return blockElement('div', { className: ['table-box'], role: 'group', ariaLabel: 'Table', tabIndex: 0 }, [
    { type: 'table', children },
  ])
}

function tableCell(inlines: readonly Inline[], hProperties: Properties, context: Context): TableCell {
  return { type: 'tableCell', data: { hProperties }, children: context.inlines(inlines) }
}

/** By class: the `align` attribute is obsolete, and a style attribute is not allowed on the page. */
function alignment(node: BlockOf<'table'>, column: number): Properties {
  const align = node.align[column] ?? null
  return align === null ? {} : { className: [`align-${align}`] }
}
