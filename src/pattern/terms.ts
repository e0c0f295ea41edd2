import { type Segment, type Term, textForAll } from '../measure/index.ts'
import { definesStitches, type Manner, type Naming, type TermFound, termsIn, translated } from '../rows/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import type { Block, BlockOf, Inline } from './node.ts'
import type { Abbreviation, Pattern, Reading } from './pattern.ts'

/** What is needed to know the terms of a pattern's text. */
interface Speaking {
  readonly naming: Naming
  /** The abbreviations that the pattern lists, by their names. */
  readonly listed: ReadonlyMap<string, Abbreviation>
  /** The place of a reading among those of the pattern, which grow. */
  readonly place: (reading: Reading) => number
}

/** A pattern with the terms of its text apart, each with what it is in the other country's terms. */
export function inBothTerms(pattern: Pattern, { names }: Ledger): Pattern {
  const listed = new Map(pattern.abbreviations.map((each) => [each.abbreviation, each]))
  const readings = new Map<string, { readonly place: number; readonly reading: Reading }>()
  const place = (reading: Reading): number => {
    const key = JSON.stringify(reading)
    const known = readings.get(key) ?? { place: readings.size, reading }
    readings.set(key, known)
    return known.place
  }
  const speaking: Speaking = { naming: { terms: pattern.terms, own: names }, listed, place }
  const prose = (words: readonly Segment[]): readonly Segment[] =>
    speaksOfTerms.test(textForAll(words)) ? words : spokenSegments(words, 'prose', speaking)
  const spokenParts = {
    lead: prose(pattern.lead),
    gauge: pattern.gauge.map((gauge) => ({ ...gauge, text: prose(gauge.text) })),
    body: spokenBlocks(pattern.body, speaking),
  }
  return { ...pattern, ...spokenParts, readings: [...readings.values()].map(({ reading }) => reading) }
}

/** A text that speaks of both countries' terms says what it means, and stays as it is. */
const speaksOfTerms = /\b(?:US|USA|U\.S\.|UK|U\.K\.|American|British)\b/

/** The pieces of a text that are terms, each with what it is in the other country's. */
function pieces(text: string, manner: Manner, speaking: Speaking): readonly (string | TermPiece)[] {
  const found: (string | TermPiece)[] = []
  let from = 0
  for (const { at, other, short } of termsIn(text, speaking.naming, manner)) {
    const reading = readingOf(short, manner, speaking)
    const term: Term = {
      other,
      reading: reading === null ? null : speaking.place(reading),
      ...(reading?.explains === true ? { explains: true } : {}),
    }
    const own = text.slice(at.start, at.end)
    if (term.reading === null && other === own) continue
    if (at.start > from) found.push(text.slice(from, at.start))
    found.push({ text: own, term })
    from = at.end
  }
  return from < text.length ? [...found, text.slice(from)] : found
}

/** Prose may use a short word that is no abbreviation: there only those that the rows use are told. */
function readingOf(short: TermFound['short'], manner: Manner, { listed }: Speaking): Reading | null {
  if (short === null) return null
  if ('own' in short) {
    const entry = listed.get(short.own)
    return entry?.other == null ? null : { own: entry.meaning, other: entry.other.meaning, explains: true }
  }
  const { entry, full, otherFull } = short
  return manner === 'prose' && !listed.has(entry) ? null : { own: full, other: otherFull, explains: false }
}

interface TermPiece {
  readonly text: string
  readonly term: Term
}

/** Printed pieces with their terms apart. What stands between sizes is never one. */
function spokenSegments(segments: readonly Segment[], manner: Manner, speaking: Speaking): readonly Segment[] {
  return segments.flatMap((segment) => {
    if (segment.show === 'columns' || segment.system !== undefined || !/\p{L}{2}/u.test(segment.text)) return [segment]
    return pieces(segment.text, manner, speaking).map((piece) =>
      typeof piece === 'string' ? { ...segment, text: piece } : { ...segment, ...piece },
    )
  })
}

function spokenInlines(nodes: readonly Inline[], manner: Manner, speaking: Speaking): Inline[] {
  return nodes.flatMap((node): Inline[] => {
    if (node.type === 'value') return [{ ...node, segments: spokenSegments(node.segments, manner, speaking) }]
    if ('children' in node) return [{ ...node, children: spokenInlines(node.children, manner, speaking) }]
    if (node.type !== 'text') return [node]
    return pieces(node.text, manner, speaking).map((piece) =>
      typeof piece === 'string' ? { type: 'text', text: piece } : { type: 'term', ...piece },
    )
  })
}

/** Prose, unless it speaks of terms itself. */
function line(nodes: readonly Inline[], manner: Manner, speaking: Speaking): readonly Inline[] {
  return nodes.some(mentionsTerms) ? nodes : spokenInlines(nodes, manner, speaking)
}

function mentionsTerms(node: Inline): boolean {
  if (node.type === 'text') return speaksOfTerms.test(node.text)
  return 'children' in node && node.children.some(mentionsTerms)
}

/** The text of a pattern with its terms apart: rows and definitions of stitches as steps, all else as prose. */
function spokenBlocks(blocks: readonly Block[], speaking: Speaking): Block[] {
  let depth: number | null = null
  return blocks.map((block) => {
    if (block.type === 'heading') {
      if (definesStitches(block.children.map((node) => (node.type === 'text' ? node.text : '')).join('')))
        depth = block.depth
      else if (depth !== null && block.depth <= depth) depth = null
    }
    return spoken(block, depth === null ? 'prose' : 'steps', speaking)
  })
}

function spoken(block: Block, manner: Manner, speaking: Speaking): Block {
  const within = (nodes: readonly Inline[]): readonly Inline[] => line(nodes, manner, speaking)
  const below = (blocks: readonly Block[]): readonly Block[] => blocks.map((each) => spoken(each, manner, speaking))
  switch (block.type) {
    case 'heading':
    case 'paragraph':
      return { ...block, children: within(block.children) }
    case 'list':
      return { ...block, items: block.items.map(below) }
    case 'table':
      return { ...block, head: block.head.map(within), rows: block.rows.map((cells) => cells.map(within)) }
    case 'quote':
    case 'only':
      return { ...block, children: below(block.children) }
    case 'row':
      return spokenRow(block, speaking)
    case 'drawing':
      return {
        ...block,
        caption: within(block.caption),
        key: block.key.map(({ symbol, words }) => ({ symbol, words: line(words, 'steps', speaking) })),
      }
    default:
      return block
  }
}

function spokenRow(row: BlockOf<'row'>, speaking: Speaking): BlockOf<'row'> {
  const steps = (nodes: readonly Inline[]): readonly Inline[] => spokenInlines(nodes, 'steps', speaking)
  return { ...row, label: steps(row.label), steps: steps(row.steps), stated: steps(row.stated) }
}

/** An entry of the list of abbreviations in the other country's terms; null where these do without it. */
export function otherEntry(
  { abbreviation, meaning, special }: Ledger['terms'][number],
  naming: Naming,
): Abbreviation['other'] {
  const other = (text: string): string => translated(text, naming, 'steps')
  if (special) return { abbreviation, meaning: other(meaning) }
  const short = other(abbreviation)
  const long = other(meaning)
  return short.toLowerCase() === long.toLowerCase() ? null : { abbreviation: short, meaning: long }
}
