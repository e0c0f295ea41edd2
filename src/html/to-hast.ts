import type { Element, Nodes } from 'hast'
import { toHtml } from 'hast-util-to-html'
import type { Root } from 'mdast'
import { type State, toHast } from 'mdast-util-to-hast'
import type { Pattern } from '../pattern/pattern.ts'
import type { BlockElement, PhrasingElement } from './element.ts'
import { toMdast } from './mdast.ts'

/** Our own elements as they are: the usual way clones the properties of each, and a page has thousands. */
function asElement(state: State, node: BlockElement | PhrasingElement): Element {
  const { hName, hProperties } = node.data
  return { type: 'element', tagName: hName, properties: hProperties, children: state.all(node) }
}

/** How our own nodes become elements, beside those that Markdown has. */
export const elementHandlers = { blockElement: asElement, phrasingElement: asElement } as const

/** A pattern's text as HTML where no host makes it; pictures keep the addresses that the draft has. */
export function bodyHtml({ body, sizes }: Pattern): string {
  const root: Root = { type: 'root', children: toMdast(body, sizes) }
  const tree: Nodes = toHast(root, { handlers: elementHandlers })
  return toHtml(tree)
}
