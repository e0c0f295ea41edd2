import type { Segment } from '../../measure/segment.ts'
import { differsBySize, textForAll, textForSize } from '../../measure/segment.ts'
import type { Inline, RowBlock } from '../../pattern/node.ts'
import type { ValueNode } from '../../pattern/pattern.ts'

/** A line of a row's table: the numbers of one value, a cell for each size. */
export interface TableLine {
  /** What they are: the letter that stands for them in the steps, or words of the row. */
  readonly head: string
  readonly cells: readonly string[]
  readonly kind: 'label' | 'letter' | 'stated'
}

/** A row whose numbers by size have been taken out into a table. */
export interface RowParts {
  readonly label: readonly Inline[]
  readonly steps: readonly Inline[]
  readonly stated: readonly Inline[]
  readonly lines: readonly TableLine[]
}

/** Longer texts, such as phrases and measures in two systems, stay where they are. */
const longestCell = 9

/**
 * Takes the numbers that differ by size out of a row. In the steps a letter stands for each, the same for the same
 * numbers; the row's own numbers and its stated counts have lines of their own in the table.
 *
 *     Row 41 (42, 42): Sc in next 56 (60, 66) sts. (56 (60, 66) sc)
 *     Row: Sc in next A sts. (A sc)       Row 41 42 42   A 56 60 66
 */
export function partsOf(block: RowBlock, count: number): RowParts {
  const label = labelParts(block.label.flatMap(numbersApart), count)
  const letters = new Letters(count)
  const steps = block.steps.flatMap(numbersApart).map((node) => letters.into(node))
  const known = letters.lines.length
  const statedNodes = block.stated.flatMap(numbersApart)
  const stated = statedLines(statedNodes, count)
  if (stated === null || stated.every((line) => letters.knows(line.cells))) {
    const words = statedNodes.map((node) => letters.into(node))
    return { label: label.words, steps, stated: words, lines: [...label.lines, ...letters.lines] }
  }
  return { label: label.words, steps, stated: [], lines: [...label.lines, ...letters.lines.slice(0, known), ...stated] }
}

/**
 * A value as what it consists of: words for all sizes, and each number by size on its own.
 *
 *     increase 18 (20, 22) evenly over 82 (84, 90)   →   “increase ”, 18 (20, 22), “ evenly over ”, 82 (84, 90)
 */
function numbersApart(node: Inline): readonly Inline[] {
  if (node.type !== 'value') {
    return 'children' in node ? [{ ...node, children: node.children.flatMap(numbersApart) }] : [node]
  }
  const parts: { always: boolean; segments: Segment[] }[] = []
  for (const segment of node.segments) {
    const always = segment.show === 'always'
    const last = parts.at(-1)
    if (last?.always === always) last.segments.push(segment)
    else parts.push({ always, segments: [segment] })
  }
  return parts.map(({ always, segments }) =>
    always ? { type: 'text', text: textForAll(segments) } : { type: 'value', id: node.id, segments },
  )
}

const cellsOf = (segments: readonly Segment[], count: number): readonly string[] =>
  Array.from({ length: count }, (_, size) => textForSize(segments, size))

function isTabularNode(node: Inline, count: number): node is ValueNode {
  if (node.type !== 'value' || !differsBySize(node.segments)) return false
  return cellsOf(node.segments, count).every((cell) => cell.length <= longestCell && !cell.includes('\n'))
}

/** Letters for the values of a row, in the order in which they are met. */
class Letters {
  readonly #count: number
  readonly #known = new Map<string, string>()
  readonly lines: TableLine[] = []

  constructor(count: number) {
    this.#count = count
  }

  knows(cells: readonly string[]): boolean {
    return this.#known.has(cells.join('|'))
  }

  /** The node with letters for its values. */
  into(node: Inline): Inline {
    if (isTabularNode(node, this.#count)) return this.#letterFor(node)
    return 'children' in node ? { ...node, children: node.children.map((child) => this.into(child)) } : node
  }

  #letterFor(node: ValueNode): Inline {
    const cells = cellsOf(node.segments, this.#count)
    const known = this.#known.get(cells.join('|'))
    const letter = known ?? letterAt(this.#known.size)
    if (known === undefined) this.lines.push({ head: letter, cells, kind: 'letter' })
    this.#known.set(cells.join('|'), letter)
    return { type: 'strong', children: [{ type: 'text', text: letter }] }
  }
}

/** `A` to `Z`, then `AA` and so on. */
function letterAt(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26))
  return index < 26 ? letter : `${letterAt(Math.floor(index / 26) - 1)}${letter}`
}

/** `Rows 42–60 (RS):` as `Rows (RS):` with a line `Rows: 42–60 …`; as it is where no number differs. */
function labelParts(
  label: readonly Inline[],
  count: number,
): { readonly words: readonly Inline[]; readonly lines: readonly TableLine[] } {
  const values = label.flatMap((node, index) => (isTabularNode(node, count) ? [index] : []))
  const [first, last] = [values[0], values.at(-1)]
  if (first === undefined || last === undefined) return { words: label, lines: [] }
  // A range may begin with a number that all sizes share: `Rows 7–40 (42, 44)`.
  const before = wordsOf(label.slice(0, first))
  const [, words = '', start = ''] = /^(.*?)([\d\s,–-]*)$/s.exec(before) ?? []
  const after = wordsOf(label.slice(last + 1))
  const between = label.slice(first, last + 1)
  const cells = Array.from({ length: count }, (_, size) => {
    const numbers = between.map((node) => (node.type === 'value' ? textForSize(node.segments, size) : wordsOf([node])))
    return `${start}${numbers.join('')}`.trim()
  })
  const head = words.trim()
  const line: TableLine = { head: head === '' ? 'Row' : head, cells, kind: 'label' }
  return { words: [{ type: 'text', text: `${head}${/^[\s(]/.test(after) ? ' ' : ''}${after.trim()}` }], lines: [line] }
}

const isWords = (node: Inline): node is Extract<Inline, { readonly type: 'text' | 'term' }> =>
  node.type === 'text' || node.type === 'term'

/** Words of nodes in a label, which has no other values. */
function wordsOf(nodes: readonly Inline[]): string {
  return nodes
    .map((node) => {
      if (isWords(node) || node.type === 'code') return node.text
      if (node.type === 'value') return textForAll(node.segments)
      return 'children' in node ? wordsOf(node.children) : ''
    })
    .join('')
}

/** What opens a stated count, and what follows a number in it. */
const opening = /^[\s([–—-]*$/
const following = /^\s*([^\d,;()]*?)\s*(?:,\s*|[)\].:]*\s*)$/

/** `(10 (12, 14) shells, 10 (12, 14) sc)` as a line for each; null where it is anything else. */
function statedLines(stated: readonly Inline[], count: number): readonly TableLine[] | null {
  const values = stated.filter((node) => isTabularNode(node, count))
  const others = stated.filter((node) => !isTabularNode(node, count))
  if (values.length === 0 || !others.every(isWords)) return null
  // A mark where each number stands, so that the words around them are known.
  const words = stated.map((node) => (isWords(node) ? node.text : '\0')).join('')
  const [before = '', ...after] = words.split('\0')
  const kinds = after.map((text) => following.exec(text)?.[1] ?? null)
  if (!opening.test(before) || kinds.includes(null)) return null
  return values.map(({ segments }, index) => {
    const kind = kinds[index] ?? ''
    return { head: kind === '' ? 'Stitches' : kind, cells: cellsOf(segments, count), kind: 'stated' }
  })
}
