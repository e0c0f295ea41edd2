import type { Anchor } from '../pattern/blocks.ts'
import type { Block } from '../pattern/node.ts'
import type { Pattern } from '../pattern/pattern.ts'

type Anchored = Extract<Block, { id: string }>

/** Anchors of a page by what they are for, in the order of the page. */
export type Anchors = Readonly<Record<Anchored['type'], readonly string[]>>

/**
 * The anchors that a pattern was published with. With other numbers its rows may be called otherwise, and keep their anchors
 * all the same: a reader's place goes by them.
 */
export function anchorsIn({ body }: Pattern): Anchors {
  const found: Record<Anchored['type'], string[]> = { heading: [], row: [], drawing: [] }
  for (const { type, id } of anchored(body)) found[type].push(id)
  return found
}

function anchored(blocks: readonly Block[]): Anchored[] {
  return blocks.flatMap((block) => {
    if ('id' in block) return [block]
    if (block.type === 'list') return block.items.flatMap(anchored)
    return block.type === 'quote' || block.type === 'only' ? anchored(block.children) : []
  })
}

/** For a text that is given its anchors afterwards. */
export function namelessAnchors(): Anchor {
  let last = 0
  return () => {
    last += 1
    return `part-${last}`
  }
}

/** The text with these anchors; the text of a draft has as many parts whatever its numbers are. */
export function withAnchors(pattern: Pattern, anchors: Anchors): Pattern {
  const left = { heading: anchors.heading.values(), row: anchors.row.values(), drawing: anchors.drawing.values() }
  return { ...pattern, body: pattern.body.map((block) => named(block, left)) }
}

function named(block: Block, left: Readonly<Record<Anchored['type'], Iterator<string, unknown>>>): Block {
  if ('id' in block) {
    const next = left[block.type].next()
    return typeof next.value === 'string' ? { ...block, id: next.value } : block
  }
  if (block.type === 'list')
    return { ...block, items: block.items.map((item) => item.map((each) => named(each, left))) }
  if (block.type === 'quote' || block.type === 'only') {
    return { ...block, children: block.children.map((each) => named(each, left)) }
  }
  return block
}
