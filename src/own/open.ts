import type { Diagnostic } from '../diagnostic/index.ts'
import type { Solver } from '../formula/index.ts'
import type { Block } from '../pattern/node.ts'
import type { Changes } from '../pattern/own/changes.ts'
import { rework } from '../pattern/own/rework.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { workPattern } from '../pattern/work.ts'
import { type Recipe, unpackRecipe } from './recipe.ts'
import { type Trouble, troublesOf } from './troubles.ts'

/** A published pattern that can be worked anew. */
export interface OpenPattern {
  readonly published: Pattern
  readonly work: (changes: Changes) => OwnPattern
}

/** A pattern with a reader's own numbers, and what does not come out with them. */
export interface OwnPattern {
  readonly pattern: Pattern
  readonly troubles: readonly Trouble[]
}

/**
 * Works a recipe as it was published, and then as often as wanted with what a reader changes. `solver` is for linked counts that
 * come to other problems then.
 */
export function openRecipe(recipe: Recipe, solver: Solver | null = null): OpenPattern {
  const { draft, reach } = unpackRecipe(recipe, solver)
  const findings: Diagnostic[] = []
  const published = workPattern(draft, reach, findings)
  return {
    published: published.pattern,
    work: (changes) => {
      const { value, diagnostics } = rework(published, changes, reach)
      const troubles = troublesOf(diagnostics, findings, value.pattern)
      return { pattern: withAnchors(value.pattern, published.pattern), troubles }
    },
  }
}

/** Rows keep the anchors that they were published with: their numbers may differ, and a reader's place goes by them. */
function withAnchors(pattern: Pattern, published: Pattern): Pattern {
  const ids = anchorsIn(published.body)
  if (ids.length !== anchorsIn(pattern.body).length) return pattern
  const next = ids.values()
  return { ...pattern, body: pattern.body.map((block) => renamed(block, next)) }
}

function anchorsIn(blocks: readonly Block[]): string[] {
  return blocks.flatMap((block) => ('id' in block ? [block.id] : childrenOf(block).flatMap(anchorsIn)))
}

function childrenOf(block: Block): readonly (readonly Block[])[] {
  if (block.type === 'list') return block.items
  return block.type === 'quote' || block.type === 'only' ? [block.children] : []
}

function renamed(block: Block, ids: Iterator<string>): Block {
  if ('id' in block) return { ...block, id: ids.next().value ?? block.id }
  if (block.type === 'list')
    return { ...block, items: block.items.map((item) => item.map((each) => renamed(each, ids))) }
  if (block.type === 'quote' || block.type === 'only') {
    return { ...block, children: block.children.map((each) => renamed(each, ids)) }
  }
  return block
}
