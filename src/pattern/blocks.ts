import type { List, Nodes, Paragraph, RootContent, Table } from 'mdast'
import { toString as plainText } from 'mdast-util-to-string'
import type { Span } from '../diagnostic/index.ts'
import type { Ledger, WrittenRow } from '../rows/ledger.ts'
import { bodyNodes, spanOf, textAt } from './draft.ts'
import { type DrawingRequest, isDrawingRequest } from './drawing-request.ts'
import { cutInlines, cutsOf, inlines, opening, type Printing, sourceInlines } from './inlines.ts'
import type { Block, Inline, RowBlock } from './node.ts'
import { isOnlySizes, sizesOf } from './only.ts'

/** Makes an anchor of words; words that come again get one of their own. */
export type Anchor = (words: string) => string

interface Building {
  readonly printing: Printing
  readonly ledger: Ledger
  readonly anchor: Anchor
  /** Whether a passage for some sizes stands around, which says so itself. */
  readonly forSome: boolean
}

/** The text of a pattern in our own nodes: rows as rows, all else as the designer's prose. */
export function buildBlocks(ledger: Ledger, printing: Printing, anchor: Anchor): Block[] {
  const building: Building = { printing, ledger, anchor, forSome: false }
  return bodyNodes(printing.draft).flatMap((node) => block(node, building))
}

function block(node: RootContent, building: Building): Block[] {
  const { printing } = building
  switch (node.type) {
    case 'heading': {
      const id = building.anchor(plainText(node))
      // The page's own title is the only heading of depth 1.
      return [{ type: 'heading', depth: Math.max(node.depth, 2), id, children: inlines(node.children, printing) }]
    }
    case 'paragraph':
      return paragraph(node, spanOf(printing.draft, node), building)
    case 'list':
      return list(node, building)
    case 'table':
      return [table(node, printing)]
    case 'blockquote':
      return [{ type: 'quote', children: node.children.flatMap((child) => block(child, building)) }]
    case 'code':
      return node.lang === 'grading' ? [] : [{ type: 'codeBlock', text: node.value }]
    case 'thematicBreak':
      return [{ type: 'rule' }]
    case 'containerDirective':
      return directive(node, building)
    case 'leafDirective':
      return isDrawingRequest(node) ? drawing(node, building) : asWritten(node, building)
    case 'definition':
    case 'yaml':
      return []
    default:
      return asWritten(node, building)
  }
}

function asWritten(node: Nodes, { printing }: Building): Block[] {
  return [{ type: 'paragraph', children: sourceInlines(spanOf(printing.draft, node), [node], [], printing) }]
}

/** A drawing under the words in its brackets, or a caption of its own; nothing where it can't be drawn. */
function drawing(node: DrawingRequest, { printing, anchor }: Building): Block[] {
  const drawn = printing.drawn(node)
  if (drawn === null) return []
  const { key, ...figure } = drawn
  const caption = inlines(node.children, printing)
  const text = (words: string): readonly Inline[] => [{ type: 'text', text: words }]
  return [
    {
      type: 'drawing',
      id: anchor(`${figure.kind} ${figure.piece}`),
      caption: caption.length > 0 ? caption : text(figure.caption),
      figure,
      key: key.map(({ symbol, words }) => ({ symbol, words: text(words) })),
    },
  ]
}

/** A paragraph may hold prose, rows, or prose with rows below it; its rows never share a block. */
function paragraph(node: Paragraph, at: Span, building: Building): Block[] {
  const rows = rowsWithin(at, building.ledger)
  if (rows.length === 0) return [{ type: 'paragraph', children: opening(inlines(node.children, building.printing)) }]
  const blocks: Block[] = []
  let from = at.start
  for (const row of rows) {
    blocks.push(...besideRows({ start: from, end: row.at.start }, node, building), rowBlock(row, node, building))
    from = row.at.end
  }
  return [...blocks, ...besideRows({ start: from, end: at.end }, node, building)]
}

/** What stands before, between and after the rows of a paragraph, without the marks of emphasis around a label. */
function besideRows(between: Span, node: Paragraph, { printing }: Building): Block[] {
  const text = textAt(printing.draft, between)
  if (!/[\p{L}\d]/u.test(text)) return []
  const start = between.start + (/^[\s*_>]*(?:[-+]\s)?/.exec(text)?.[0].length ?? 0)
  const end = between.end - (/[\s*_]*$/.exec(text)?.[0].length ?? 0)
  const children = sourceInlines({ start, end: Math.max(start, end) }, node.children, [], printing)
  return children.length === 0 ? [] : [{ type: 'paragraph', children }]
}

function rowsWithin(at: Span, ledger: Ledger): WrittenRow[] {
  return ledger.written.filter((row) => row.at.start >= at.start && row.at.end <= at.end)
}

function rowBlock(row: WrittenRow, node: Nodes, { printing, ledger, anchor, forSome }: Building): RowBlock {
  const cuts = cutsOf([node], row.lists, printing)
  const show = (at: Span | null) => (at === null ? [] : cutInlines(at, cuts, printing))
  const entry = ledger.rows[row.entries[0]]
  const name = `${entry?.piece ?? ''} ${entry?.label ?? 'row'}`.trim()
  return {
    type: 'row',
    id: anchor(name),
    label: show(row.label),
    steps: opening(show(row.steps)),
    stated: show(row.stated),
    entries: row.entries,
    times: mostRows(row, ledger),
    only: forSome ? null : sizesThatWork(row, ledger),
    moment: printing.momentOf(row),
  }
}

/** Sizes may number a row differently, so that it has more entries than any reader works rows. */
function mostRows({ entries: [first, end] }: WrittenRow, { rows }: Ledger): number {
  const entries = rows.slice(first, end)
  const bySize = (entries[0]?.total ?? []).map((_, size) => entries.filter(({ total }) => total[size] !== null).length)
  return Math.max(1, ...bySize)
}

/** Sizes for which a row stands, where it does not stand for all: `Sizes S and M only`, or a range that is empty for some. */
function sizesThatWork({ entries: [first, end] }: WrittenRow, { rows }: Ledger): readonly number[] | null {
  const entries = rows.slice(first, end).filter((row) => row.status === 'worked')
  const sizes = (entries[0]?.total ?? []).flatMap((_, size) =>
    entries.some(({ total }) => total[size] !== null) ? [size] : [],
  )
  return entries.length === 0 || sizes.length === entries[0]?.total.length ? null : sizes
}

/** A list whose items are rows is not a list to the reader: the rows stand on their own. */
function list(node: List, building: Building): Block[] {
  const holdsRows = rowsWithin(spanOf(building.printing.draft, node), building.ledger).length > 0
  const items = node.children.map((item) =>
    item.children.flatMap((child, index) => {
      if (child.type !== 'paragraph') return block(child, building)
      const start = holdsRows && index === 0 ? item : child
      const at = {
        start: spanOf(building.printing.draft, start).start,
        end: spanOf(building.printing.draft, child).end,
      }
      return paragraph(child, at, building)
    }),
  )
  if (holdsRows) return items.flat()
  return [{ type: 'list', ordered: node.ordered === true, start: node.start ?? 1, items }]
}

function table(node: Table, printing: Printing): Block {
  const [head, ...rows] = node.children.map((row) =>
    row.children.map((cell) => opening(inlines(cell.children, printing))),
  )
  return { type: 'table', align: node.align ?? [], head: head ?? [], rows }
}

/** A container that is not ours goes back to the words it was written with, its contents kept. */
function directive(node: Extract<RootContent, { type: 'containerDirective' }>, building: Building): Block[] {
  if (isOnlySizes(node)) {
    const sizes = sizesOf(building.printing.draft, node).value
    return [
      { type: 'only', sizes, children: node.children.flatMap((child) => block(child, { ...building, forSome: true })) },
    ]
  }
  const fence = (text: string): Block => ({ type: 'paragraph', children: [{ type: 'text', text }] })
  const opening = textAt(building.printing.draft, spanOf(building.printing.draft, node)).split('\n', 1)[0] ?? ''
  return [fence(opening), ...node.children.flatMap((child) => block(child, building)), fence(':::')]
}
