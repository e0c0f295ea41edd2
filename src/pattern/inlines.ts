import type { Nodes, PhrasingContent } from 'mdast'
import type { Span } from '../diagnostic/index.ts'
import type { Figure } from '../drawing/drawing.ts'
import type { Segment } from '../measure/segment.ts'
import type { WrittenRow } from '../rows/ledger.ts'
import { type Draft, spanOf, textAt, walk } from './draft.ts'
import type { DrawingRequest } from './drawing-request.ts'
import type { Inline } from './node.ts'
import { isOnlySizes, sizesOf } from './only.ts'
import type { Moment, ValueNode } from './pattern.ts'
import type { Placeholder } from './placeholder.ts'

/** What the text of a pattern is made with: the draft, and the printed value of each placeholder. */
export interface Printing {
  readonly draft: Draft
  readonly printed: (placeholder: Placeholder) => readonly Segment[]
  /** Makes a value node with the next number. */
  readonly value: (segments: readonly Segment[]) => ValueNode
  /** The drawing that is asked for; null where it can't be drawn, which is said. */
  readonly drawn: (request: DrawingRequest) => Figure | null
  /** Where the film shows a row. */
  readonly momentOf: (row: WrittenRow) => Moment | null
}

/** The text of a paragraph, heading, link or cell. */
export function inlines(nodes: readonly PhrasingContent[], printing: Printing): Inline[] {
  return joinText(nodes.flatMap((node) => inline(node, printing)))
}

function inline(node: PhrasingContent, printing: Printing): Inline[] {
  switch (node.type) {
    case 'text':
      return [{ type: 'text', text: node.value.replace(/\s*\n\s*/g, ' ') }]
    case 'placeholder':
      return [printing.value(printing.printed(node))]
    case 'emphasis':
    case 'strong':
    case 'delete':
      return [{ type: node.type, children: inlines(node.children, printing) }]
    case 'inlineCode':
      return [{ type: 'code', text: node.value }]
    case 'break':
      return [{ type: 'break' }]
    case 'link':
      return [{ type: 'link', href: node.url, children: inlines(node.children, printing) }]
    case 'image':
      return [{ type: 'image', src: node.url, alt: node.alt ?? '' }]
    case 'textDirective':
      if (isOnlySizes(node)) {
        return [
          {
            type: 'onlyInline',
            sizes: sizesOf(printing.draft, node).value,
            children: inlines(node.children, printing),
          },
        ]
      }
      return asWritten(node, printing)
    default:
      return asWritten(node, printing)
  }
}

/** What is not ours, and raw HTML, is shown as the designer wrote it: a draft is text, never a page's code. */
function asWritten(node: Nodes, printing: Printing): Inline[] {
  return sourceInlines(spanOf(printing.draft, node), [node], [], printing)
}

function joinText(nodes: readonly Inline[]): Inline[] {
  const joined: Inline[] = []
  for (const node of nodes) {
    const last = joined.at(-1)
    if (node.type === 'text' && last?.type === 'text')
      joined[joined.length - 1] = { type: 'text', text: last.text + node.text }
    else joined.push(node)
  }
  return joined
}

/** Text that opens a block: sizes on lines of their own need no break before the first. */
export function opening(nodes: Inline[]): Inline[] {
  const [first, ...rest] = nodes
  const segment = first?.type === 'value' ? first.segments[0] : undefined
  if (first?.type !== 'value' || segment === undefined || !segment.text.startsWith('\n')) return nodes
  return [{ ...first, segments: [{ ...segment, text: segment.text.slice(1) }, ...first.segments.slice(1)] }, ...rest]
}

interface Cut {
  readonly at: Span
  readonly shown: () => Inline[]
}

/**
 * A stretch of the draft shown in its own words, asterisks included: rows, and what is not ours to
 * interpret. Placeholders, words for some sizes and numbers typed for every size become nodes.
 */
export function sourceInlines(
  at: Span,
  within: readonly Nodes[],
  lists: WrittenRow['lists'],
  printing: Printing,
): Inline[] {
  return cutInlines(at, cutsOf(within, lists, printing), printing)
}

/** The same for one of several stretches of a text whose `cuts` are known, in order. */
export function cutInlines(at: Span, cuts: readonly Cut[], printing: Printing): Inline[] {
  const nodes: Inline[] = []
  let from = at.start
  for (const cut of cuts) {
    if (cut.at.start < from || cut.at.end > at.end) continue
    nodes.push(words(textAt(printing.draft, { start: from, end: cut.at.start })), ...cut.shown())
    from = cut.at.end
  }
  nodes.push(words(textAt(printing.draft, { start: from, end: at.end })))
  return joinText(nodes.filter((node) => node.type !== 'text' || node.text !== ''))
}

/** What is not shown in its own words, in the order of the text. */
export function cutsOf(nodes: readonly Nodes[], lists: WrittenRow['lists'], printing: Printing): Cut[] {
  const cuts: Cut[] = []
  for (const node of walk(nodes)) {
    const at = spanOf(printing.draft, node)
    if (node.type === 'placeholder') cuts.push({ at, shown: () => [printing.value(printing.printed(node))] })
    else if (node.type === 'textDirective' && isOnlySizes(node)) cuts.push({ at, shown: () => inline(node, printing) })
  }
  for (const list of lists) cuts.push({ at: list.at, shown: () => [printing.value(list.segments)] })
  return cuts.sort((a, b) => a.at.start - b.at.start)
}

/** Source text as it reads: lines joined, Markdown's escapes taken off. */
function words(source: string): Inline {
  const text = source.replace(/\s*\n\s*/g, ' ').replace(/\\([!-/:-@[-`{-~])/g, '$1')
  return { type: 'text', text }
}
