import { textForAll } from '../measure/segment.ts'
import type { Block, Inline } from '../pattern/node.ts'

/** A section of a pattern's body, for the list of contents. */
export interface OutlineEntry {
  /** Anchor of its heading. */
  readonly id: string
  readonly text: string
}

/** The highest headings of a body, in order; those of nested blocks are left to their blocks. */
export function outline(body: readonly Block[]): OutlineEntry[] {
  return body.flatMap((block) =>
    block.type === 'heading' && block.depth <= 2
      ? [{ id: block.id, text: block.children.map(plainText).join('') }]
      : [],
  )
}

function plainText(node: Inline): string {
  switch (node.type) {
    case 'text':
    case 'code':
      return node.text
    case 'value':
      return textForAll(node.segments).replace(/\s*\n\s*/g, ' ')
    case 'break':
      return ' '
    case 'image':
      return node.alt
    default:
      return node.children.map(plainText).join('')
  }
}
