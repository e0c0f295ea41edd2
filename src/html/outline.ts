import { always } from '../measure/index.ts'
import type { Segment } from '../measure/segment.ts'
import type { Block, Inline } from '../pattern/node.ts'

/** A section of a pattern's body, for the list of contents. */
export interface OutlineEntry {
  /** Anchor of its heading. */
  readonly id: string
  readonly text: readonly Segment[]
}

/** The highest headings of a body, in order; those of nested blocks are left to their blocks. */
export function outline(body: readonly Block[]): OutlineEntry[] {
  return body.flatMap((block) =>
    block.type === 'heading' && block.depth <= 2 ? [{ id: block.id, text: block.children.flatMap(pieces) }] : [],
  )
}

/** What a line says, without its looks; an abbreviation explains itself in the text. */
function pieces(node: Inline): readonly Segment[] {
  switch (node.type) {
    case 'text':
    case 'code':
      return [always(node.text)]
    case 'term':
      return [{ ...always(node.text), term: { ...node.term, reading: null } }]
    case 'value':
      return node.segments.map((segment) => ({ ...segment, text: segment.text.replace(/\s*\n\s*/g, ' ') }))
    case 'break':
      return [always(' ')]
    case 'image':
      return [always(node.alt)]
    default:
      return node.children.flatMap(pieces)
  }
}
