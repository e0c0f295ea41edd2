import type { Nodes, Root } from 'mdast'
import type {} from 'mdast-util-directive'
import type { Source, Span } from '../diagnostic/index.ts'
import type { Own } from './own/changes.ts'
import type { LocatedFacts } from './read-facts.ts'

/** A draft that has been read: its facts, and its text as a Markdown tree with placeholders as nodes. */
export interface Draft {
  readonly slug: string
  readonly source: Source
  readonly facts: LocatedFacts
  readonly tree: Root
  /** What must be added to the tree's offsets to get offsets into the file. */
  readonly shift: number
  /** Offset of the first character after the front matter. */
  readonly bodyStart: number
  /** What its reader has changed; left out for the pattern as it is published. */
  readonly own?: Own
}

/** Where a node stands in the file; the tree always comes from a parser, so every node has a place. */
export function spanOf(draft: Draft, node: Nodes): Span {
  return {
    start: (node.position?.start.offset ?? 0) + draft.shift,
    end: (node.position?.end.offset ?? 0) + draft.shift,
  }
}

/** The draft's own characters. */
export function textAt(draft: Draft, { start, end }: Span): string {
  return draft.source.text.slice(start, end)
}

/** The top-level nodes of the body: a parser that knows no front matter makes nodes of it, which are left out. */
export function bodyNodes(draft: Draft): Root['children'] {
  return draft.tree.children.filter((node) => node.type !== 'yaml' && spanOf(draft, node).start >= draft.bodyStart)
}

/** Every node below the given ones, in the order of the text. */
export function* walk(nodes: readonly Nodes[]): Generator<Nodes> {
  for (const node of nodes) {
    yield node
    if ('children' in node) yield* walk(node.children)
  }
}
