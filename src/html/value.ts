import type { PhrasingContent } from 'mdast'
import type { Segment } from '../measure/segment.ts'
import type { ValueNode } from '../pattern/pattern.ts'
import { type PhrasingElement, phrasingElement } from './element.ts'
import { segmentClass } from './sizes.ts'

/** A printed value with a span for each piece that is not shown in every view. */
export function value(node: ValueNode): PhrasingElement {
  return phrasingElement('span', { className: ['value'], dataV: node.id }, node.segments.map(segment))
}

function segment({ text, show }: Segment): PhrasingContent {
  const className = segmentClass(show)
  const content: PhrasingContent = { type: 'text', value: text }
  return className === null ? content : phrasingElement('span', { className: [...className] }, [content])
}
