import { toString as plainText } from 'mdast-util-to-string'
import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { diagnose, nearestTo } from '../diagnostic/index.ts'
import { bareName, entriesOf, isWorked, middleSize, pieceNames } from '../drawing/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import { bodyNodes, type Draft, spanOf } from './draft.ts'
import type { DrawingRequest } from './drawing-request.ts'

/** A request whose words are known and whose piece and size there are. */
export interface Asked {
  readonly at: Span
  readonly drawing: DrawingRequest['name']
  /** As its heading says it, without `(make 2)`. */
  readonly piece: string
  /** Rows of the piece in the ledger. */
  readonly entries: readonly number[]
  /** The size that is drawn. */
  readonly size: number
  /** Its other words, by name. */
  readonly words: Readonly<Record<string, string>>
}

const known = { schematic: ['piece', 'size', 'swatch'], chart: ['piece', 'size', 'rows', 'stitches'] } as const

interface Headed {
  readonly title: string
  readonly depth: number
  readonly at: Span
}

function headingsOf(draft: Draft): readonly Headed[] {
  return bodyNodes(draft).flatMap((node) =>
    node.type === 'heading' ? [{ title: plainText(node), depth: node.depth, at: spanOf(draft, node) }] : [],
  )
}

/** The name of a heading with the names below it, bare: what stands under them is one piece to the eye. */
function namesUnder(headings: readonly Headed[], index: number): ReadonlySet<string> {
  const head = headings[index]
  if (head === undefined) return new Set()
  const rest = headings.slice(index + 1)
  const end = rest.findIndex(({ depth }) => depth <= head.depth)
  const below = end < 0 ? rest : rest.slice(0, end)
  return new Set([head, ...below].map(({ title }) => bareName(title)))
}

interface Found {
  readonly piece: string
  readonly entries: readonly number[]
}

/** The piece named, several with commas between them, or the one that the request stands in. */
function findPiece(draft: Draft, ledger: Ledger, node: DrawingRequest): Found | null {
  const headings = headingsOf(draft)
  const named = node.attributes?.piece ?? null
  if (named === null) {
    const here = spanOf(draft, node).start
    return pieceAt(
      ledger,
      headings,
      headings.findLastIndex(({ at }) => at.start < here),
    )
  }
  const whole = pieceNamed(ledger, headings, named)
  if (whole !== null) return whole
  const parts = named.split(',').map((name) => pieceNamed(ledger, headings, name))
  const found = parts.flatMap((part) => part ?? [])
  if (found.length < parts.length) return null
  const entries = new Set(found.flatMap((part) => part.entries))
  return { piece: found.map(({ piece }) => piece).join(', '), entries: [...entries].sort((a, b) => a - b) }
}

function pieceNamed(ledger: Ledger, headings: readonly Headed[], name: string): Found | null {
  const index = headings.findIndex(({ title }) => bareName(title) === bareName(name))
  if (index >= 0) return pieceAt(ledger, headings, index)
  const entries = entriesOf(ledger, new Set([bareName(name)]))
  return entries.length === 0 ? null : { piece: name.trim(), entries }
}

function pieceAt(ledger: Ledger, headings: readonly Headed[], index: number): Found | null {
  const entries = entriesOf(ledger, namesUnder(headings, index))
  const title = headings[index]?.title ?? ''
  return entries.length === 0 ? null : { piece: title.replace(/\s*[([].*$/, ''), entries }
}

function* unknownWords(node: DrawingRequest, at: Span): Generator<Diagnostic> {
  const takes: readonly string[] = known[node.name]
  for (const name of Object.keys(node.attributes ?? {})) {
    if (!takes.includes(name)) yield diagnose('drawing-words-unknown', at, { drawing: node.name, name, takes })
  }
}

/** The size asked for, or the middle one of those that work the piece. */
function sizeFor(
  draft: Draft,
  ledger: Ledger,
  node: DrawingRequest,
  { piece, entries }: Found,
  findings: Diagnostic[],
): number | null {
  const { sizes } = draft.facts.facts
  const at = spanOf(draft, node)
  const name = node.attributes?.size ?? null
  const asked = sizes.findIndex((size) => size.toLowerCase() === name?.trim().toLowerCase())
  if (name !== null && asked < 0) {
    findings.push(diagnose('drawing-size-unknown', at, { size: name, nearest: nearestTo(name, sizes) }))
    return null
  }
  const size = name === null ? middleSize(ledger, entries, sizes.length) : asked
  if (size !== null && isWorked(ledger, entries, size)) return size
  // Rows that could not be worked have their own findings.
  if (entries.every((entry) => ledger.rows[entry]?.status === 'worked')) {
    const details = { drawing: node.name, piece, size: size === null ? null : (sizes[size] ?? null) }
    findings.push(diagnose('drawing-rows-missing', at, details))
  }
  return null
}

/** Reads what a draft asks for; null, with findings, where there is nothing that could be drawn. */
export function readRequest(draft: Draft, ledger: Ledger, node: DrawingRequest, findings: Diagnostic[]): Asked | null {
  const at = spanOf(draft, node)
  findings.push(...unknownWords(node, at))
  const found = findPiece(draft, ledger, node)
  if (found === null) {
    const piece = node.attributes?.piece ?? ''
    const nearest = nearestTo(piece, pieceNames(ledger))
    findings.push(diagnose('drawing-piece-unknown', at, { drawing: node.name, piece, nearest }))
    return null
  }
  const size = sizeFor(draft, ledger, node, found, findings)
  if (size === null) return null
  return { at, drawing: node.name, ...found, size, words: textsOf(node) }
}

function textsOf(node: DrawingRequest): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(node.attributes ?? {}).map(([name, text]) => [name, text ?? '']))
}
