import type { Nodes } from 'mdast'
import type { LeafDirective } from 'mdast-util-directive'

/** `::schematic{piece="Back"}`, `::chart{rows="1–4"}`: a drawing that the draft asks for, where it is to stand. */
export type DrawingRequest = LeafDirective & { name: 'schematic' | 'chart' }

export function isDrawingRequest(node: Nodes): node is DrawingRequest {
  return node.type === 'leafDirective' && (node.name === 'schematic' || node.name === 'chart')
}
