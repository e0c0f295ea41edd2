import type { ValueNode } from '../pattern/pattern.ts'
import type { Context } from './context.ts'
import { type PhrasingElement, phrasingElement, phrasingOf } from './element.ts'
import { segmentElements } from './segments.ts'

/** A printed value with an element for each piece that is not shown in every view. */
export function value(node: ValueNode, { stops }: Context): PhrasingElement {
  const pieces = phrasingOf(segmentElements(node.segments, stops))
  return phrasingElement('span', { className: ['value'], dataV: node.id }, pieces)
}
