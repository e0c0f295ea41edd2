import type { BlockContent, DefinitionContent, Heading, List, ListItem, Nodes, RootContent, TableCell } from 'mdast'
import { toString as plainText } from 'mdast-util-to-string'
import type { Span } from '../diagnostic/index.ts'
import type { Hole, HoleContent, Passage, Section } from '../rows/written.ts'
import { bodyNodes, type Draft, spanOf, textAt } from './draft.ts'
import { isOnlySizes, sizesOf } from './only.ts'
import type { Placeholder } from './placeholder.ts'
import { rowsOfTable } from './row-tables.ts'

/** What a placeholder comes to in a row. */
export type HoleOf = (placeholder: Placeholder) => HoleContent

interface Surroundings {
  readonly draft: Draft
  readonly holeOf: HoleOf
}

/** Cuts a draft into headings and passages for the row reader: words from the source, numbers from the formulas. */
export function cutSections(draft: Draft, holeOf: HoleOf): Section[] {
  const around: Surroundings = { draft, holeOf }
  const sections: { head: Heading | null; nodes: RootContent[] }[] = [{ head: null, nodes: [] }]
  for (const node of bodyNodes(draft)) {
    // A label made a heading names its row, not a piece.
    if (node.type === 'heading' && !rowHeading.test(plainText(node))) sections.push({ head: node, nodes: [] })
    else sections.at(-1)?.nodes.push(node)
  }
  return sections.map(({ head, nodes }) => ({
    title: head === null ? null : plainText(head),
    depth: head?.depth ?? 0,
    at: head === null ? { start: draft.bodyStart, end: draft.bodyStart } : spanOf(draft, head),
    passages: nodes.flatMap((node) => passagesOf(node, around, null)),
  }))
}

const rowHeading =
  /^(?:(?:foundation|set-?up|base|next) (?:row|rnd|round)|(?:rows?|rnds?|rounds?|rds?)\.?\s*\d+(?:\s*(?:[-–,&]|to|and)\s*\d+)*|\d+(?:st|nd|rd|th) (?:row|rnd|round)|R\d+(?:\s*[-–]\s*R?\d+)?)\s*(?:[([](?:RS|WS)[)\]])?\s*(?:[:.]?$|[:.–-]\s*(?=.*\b(?:sc|hdc|dc|tr|htr|ch|inc|dec)\b))/i

type Only = readonly number[] | null

function passagesOf(node: RootContent, around: Surroundings, only: Only): Passage[] {
  if (node.type === 'paragraph') return [passage('paragraph', node, spanOf(around.draft, node), around, only)]
  if (node.type === 'heading') {
    return [passage('heading', node, inner(node.children, around.draft) ?? spanOf(around.draft, node), around, only)]
  }
  if (node.type === 'list') return listPassages(node, around, only)
  if (node.type === 'table') {
    const rows = rowsOfTable(
      node,
      (at) => textAt(around.draft, at),
      (part) => (part.type === 'tableRow' ? spanOf(around.draft, part) : contents(part, around.draft)),
    )
    if (rows !== null) {
      return rows.map(({ row, at, asRead }) => ({ ...passage('tableRow', row, at, around, only), asRead }))
    }
    return node.children.flatMap((row) =>
      row.children.map((cell) => passage('cell', cell, contents(cell, around.draft), around, only)),
    )
  }
  if (isOnlySizes(node)) {
    const sizes = sizesOf(around.draft, node).value
    return node.children.flatMap((child) => passagesOf(child, around, sizes))
  }
  return 'children' in node ? node.children.flatMap((child) => passagesOf(child, around, only)) : []
}

function listPassages(list: List, around: Surroundings, only: Only): Passage[] {
  const ordered = list.ordered === true
  const marks = list.children.map((item) => /^\d+/.exec(textAt(around.draft, spanOf(around.draft, item)))?.[0])
  // `1.` before each item: its place tells which it is.
  const alike = ordered && marks.length > 1 && marks.every((mark) => mark !== undefined && mark === marks[0])
  return list.children.flatMap((item, index) => {
    const [first, ...others] = itemPassages(item, ordered, around, only)
    if (first === undefined) return []
    return [alike ? { ...first, position: (list.start ?? 1) + index } : first, ...others]
  })
}

/**
 * In an ordered list the designer's own number may be the row's label (`7. sc in each st`), so it stays
 * with the words of the first paragraph.
 */
function itemPassages(item: ListItem, ordered: boolean, around: Surroundings, only: Only): Passage[] {
  return item.children.flatMap((child: BlockContent | DefinitionContent, index) => {
    if (child.type !== 'paragraph') return passagesOf(child, around, only)
    const at = spanOf(around.draft, child)
    const start = ordered && index === 0 ? spanOf(around.draft, item).start : at.start
    return [passage('item', child, { start, end: at.end }, around, only)]
  })
}

function passage(form: Passage['form'], node: Nodes, at: Span, around: Surroundings, only: Only): Passage {
  return { form, at, text: textAt(around.draft, at), holes: holesIn(node, around), only }
}

function inner(children: readonly Nodes[], draft: Draft): Span | null {
  const first = children[0]
  const last = children.at(-1)
  return first === undefined || last === undefined
    ? null
    : { start: spanOf(draft, first).start, end: spanOf(draft, last).end }
}

function contents(cell: TableCell, draft: Draft): Span {
  const { start } = spanOf(draft, cell)
  return inner(cell.children, draft) ?? { start, end: start }
}

function holesIn(node: Nodes, around: Surroundings): Hole[] {
  if (node.type === 'placeholder') return [{ at: spanOf(around.draft, node), content: around.holeOf(node) }]
  if (isOnlySizes(node)) return [{ at: spanOf(around.draft, node), content: wordsForSome(node.children, node, around) }]
  return 'children' in node ? node.children.flatMap((child) => holesIn(child, around)) : []
}

/** Words for some sizes are typed words for those, and nothing for the others. */
function wordsForSome(children: readonly Nodes[], node: Nodes & { name: string }, around: Surroundings): HoleContent {
  const { draft } = around
  const chosen = isOnlySizes(node) ? sizesOf(draft, node).value : []
  const at = inner(children, draft)
  if (at === null) return { kind: 'text', bySize: draft.facts.facts.sizes.map(() => '') }
  const holes = children.flatMap((child) => holesIn(child, around))
  return {
    kind: 'text',
    bySize: draft.facts.facts.sizes.map((_, size) => (chosen.includes(size) ? wordsFor(size, at, holes, draft) : '')),
  }
}

function wordsFor(size: number, at: Span, holes: readonly Hole[], draft: Draft): string {
  let words = ''
  let from = at.start
  for (const hole of holes) {
    words += textAt(draft, { start: from, end: hole.at.start }) + shown(hole.content, size)
    from = hole.at.end
  }
  return words + textAt(draft, { start: from, end: at.end })
}

function shown(content: HoleContent, size: number): string {
  if (content.kind === 'text') return content.bySize[size] ?? ''
  return 'bySize' in content ? String(content.bySize[size] ?? 0) : ''
}
