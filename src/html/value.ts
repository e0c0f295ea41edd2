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
  const content = lines(text)
  const [only] = content
  if (className === null && only !== undefined && content.length === 1) return only
  return phrasingElement('span', className === null ? {} : { className: [...className] }, content)
}

/** A phrase whose wording differs by size stands on a line of its own for each. */
function lines(text: string): PhrasingContent[] {
  return text
    .split('\n')
    .flatMap((line, index): PhrasingContent[] => [
      ...(index === 0 ? [] : [{ type: 'break' } as const]),
      ...(line === '' && index > 0 ? [] : [{ type: 'text', value: line } as const]),
    ])
}
