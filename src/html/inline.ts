import type { PhrasingContent } from 'mdast'
import { onlyWords } from '../measure/index.ts'
import type { Inline, InlineOf } from '../pattern/node.ts'
import { isLinkAddress, isPictureAddress } from './address.ts'
import type { Context } from './context.ts'
import { phrasingElement, phrasingOf } from './element.ts'
import { termElements } from './segments.ts'
import { onlyClass } from './sizes.ts'
import { value } from './value.ts'

type Handlers = {
  readonly [T in Inline['type']]: (node: InlineOf<T>, context: Context) => PhrasingContent | PhrasingContent[]
}

/** One handler for each type of node in a line of text. */
const handlers: Handlers = {
  text: (node) => ({ type: 'text', value: node.text }),
  term: (node, context) => phrasingOf(termElements(node.text, node.term, context.stops)),
  value,
  emphasis: (node, context) => ({ type: 'emphasis', children: context.inlines(node.children) }),
  strong: (node, context) => ({ type: 'strong', children: context.inlines(node.children) }),
  delete: (node, context) => ({ type: 'delete', children: context.inlines(node.children) }),
  code: (node) => ({ type: 'inlineCode', value: node.text }),
  break: () => ({ type: 'break' }),
  link,
  image,
  onlyInline,
}

/** Turns one node of a line into Markdown's node for it, or into elements where Markdown has none. */
export function inline<T extends Inline['type']>(
  node: { [K in T]: InlineOf<K> & { readonly type: K } }[T],
  context: Context,
): PhrasingContent | PhrasingContent[] {
  return handlers[node.type](node, context)
}

/** An address that is not allowed loses its link and keeps its words. */
function link(node: InlineOf<'link'>, context: Context): PhrasingContent {
  const children = context.inlines(node.children)
  if (!isLinkAddress(node.href)) return phrasingElement('span', {}, children)
  return phrasingElement('a', { href: node.href }, children)
}

/** A real Markdown image, so that the host finds it and fits its size; from elsewhere, only its words. */
function image(node: InlineOf<'image'>): PhrasingContent {
  if (!isPictureAddress(node.src)) return { type: 'text', value: node.alt }
  return { type: 'image', url: node.src, alt: node.alt }
}

function onlyInline(node: InlineOf<'onlyInline'>, context: Context): PhrasingContent {
  const label: PhrasingContent = { type: 'text', value: `${onlyWords(context.sizes, node.sizes)}: ` }
  return phrasingElement('span', { className: [...onlyClass(node.sizes)] }, [
    phrasingElement('span', { className: ['only-for', 'c'] }, [label]),
    ...context.inlines(node.children),
  ])
}
