import type { Segment } from '../measure/segment.ts'
import type { Block, BlockOf, Inline } from './node.ts'
import type { ValueNode } from './pattern.ts'

/** What a reader chooses of a pattern. */
export interface Choice {
  /** Position in the list of sizes; null for all of them. */
  readonly size: number | null
  /** The draft's own terms, or those of the other country. */
  readonly terms: 'own' | 'other'
  readonly units: 'both' | 'metric' | 'imperial'
}

/** Blocks for those who chose so. What other sizes alone have is left out; what is for the chosen one needs no such words. */
export function chosenBlocks(blocks: readonly Block[], choice: Choice): readonly Block[] {
  return blocks.flatMap((block) => chosenBlock(block, choice))
}

function chosenBlock(block: Block, choice: Choice): readonly Block[] {
  const within = (nodes: readonly Inline[]): readonly Inline[] => chosenInlines(nodes, choice)
  switch (block.type) {
    case 'heading':
    case 'paragraph':
      return [{ ...block, children: within(block.children) }]
    case 'list':
      return [{ ...block, items: block.items.map((item) => chosenBlocks(item, choice)) }]
    case 'table':
      return [{ ...block, head: block.head.map(within), rows: block.rows.map((cells) => cells.map(within)) }]
    case 'quote':
      return [{ ...block, children: chosenBlocks(block.children, choice) }]
    case 'only':
      if (choice.size === null) return [{ ...block, children: chosenBlocks(block.children, choice) }]
      return block.sizes.includes(choice.size) ? chosenBlocks(block.children, choice) : []
    case 'row':
      return chosenRow(block, choice)
    case 'drawing':
      return [chosenDrawing(block, choice)]
    case 'codeBlock':
    case 'rule':
      return [block]
  }
}

function chosenRow(row: BlockOf<'row'>, choice: Choice): readonly Block[] {
  const { only } = row
  if (choice.size !== null && only !== null && !only.includes(choice.size)) return []
  const [label, steps, stated] = [row.label, row.steps, row.stated].map((nodes) => chosenInlines(nodes, choice))
  if (label === undefined || steps === undefined || stated === undefined) return []
  return [{ ...row, label, steps, stated, only: choice.size === null ? only : null }]
}

function chosenDrawing(block: BlockOf<'drawing'>, choice: Choice): BlockOf<'drawing'> {
  const { drawing, measures } = block.figure
  const labels = drawing.labels.map((label) => ({
    ...label,
    lines: label.lines.map((line) => (typeof line === 'string' ? line : chosenValue(line, choice))),
  }))
  return {
    ...block,
    caption: chosenInlines(block.caption, choice),
    key: block.key.map((entry) => ({ ...entry, words: chosenInlines(entry.words, choice) })),
    figure: {
      ...block.figure,
      drawing: { ...drawing, labels },
      measures: measures.map((measure) => ({ ...measure, value: chosenValue(measure.value, choice) })),
    },
  }
}

/** Words for those who chose so. */
function chosenInlines(nodes: readonly Inline[], choice: Choice): readonly Inline[] {
  return nodes.flatMap((node): readonly Inline[] => {
    if (node.type === 'value') return [chosenValue(node, choice)]
    if (node.type === 'term') return [choice.terms === 'own' ? node : swapTerm(node)]
    if (node.type === 'onlyInline' && choice.size !== null)
      return node.sizes.includes(choice.size) ? chosenInlines(node.children, choice) : []
    return 'children' in node ? [{ ...node, children: chosenInlines(node.children, choice) }] : [node]
  })
}

export function chosenValue(node: ValueNode, choice: Choice): ValueNode {
  return { ...node, segments: chosenSegments(node.segments, choice) }
}

/** Pieces for those who chose so; a chosen number shows in every view of what is left. */
export function chosenSegments(segments: readonly Segment[], { size, terms, units }: Choice): readonly Segment[] {
  return segments
    .filter(({ system }) => units === 'both' || system === undefined || system === units)
    .filter(({ show }) => size === null || show === 'always' || show === size)
    .map((segment): Segment => (size === null ? segment : { ...segment, show: 'always' }))
    .map((segment): Segment => {
      const { term } = segment
      return terms === 'own' || term === undefined ? segment : swapTerm({ ...segment, term })
    })
}

/** A word as the other country says it, which knows how it was said. */
function swapTerm<T extends { readonly text: string; readonly term: { readonly other: string } }>(word: T): T {
  return { ...word, text: word.term.other, term: { ...word.term, other: word.text } }
}
