import type { Diagnostic } from '../../src/diagnostic/index.ts'
import type { Hole, HoleContent, Ledger, LedgerRow, Passage, Section } from '../../src/rows/index.ts'
import { workRows } from '../../src/rows/index.ts'

/** What stands for `{{name}}` in a test draft. */
export type Holes = Readonly<Record<string, HoleContent>>

interface Options {
  readonly sizes?: readonly string[]
  readonly terms?: 'us' | 'uk'
  readonly holes?: Holes
  /** Rows in 10 cm; null for a swatch without a row gauge. */
  readonly rowsPer10cm?: number | null
}

export interface WorkedDraft {
  readonly text: string
  readonly ledger: Ledger
  readonly found: readonly Diagnostic[]
  readonly codes: readonly string[]
}

export function counts(...bySize: readonly (number | null)[]): HoleContent {
  return { kind: 'number', bySize }
}

const made: Holes = {
  total: { kind: 'made', of: (row) => row.total },
}

function holeContent(name: string, holes: Holes): HoleContent {
  const count = /^count\((.+)\)$/.exec(name)?.[1]
  if (count !== undefined) return { kind: 'made', of: (row) => row.count(count) ?? row.total.map(() => 0) }
  return holes[name] ?? made[name] ?? { kind: 'broken' }
}

function passage(text: string, start: number, holes: Holes): Passage {
  const item = /^\s*[-+] /.exec(text)
  const lead = item?.[0].length ?? 0
  const own = text.slice(lead)
  const at = { start: start + lead, end: start + text.length }
  const found: Hole[] = [...own.matchAll(/\{\{\s*(.*?)\s*\}\}/g)].map((match) => ({
    at: { start: at.start + match.index, end: at.start + match.index + match[0].length },
    content: holeContent(match[1] ?? '', holes),
  }))
  return { form: item === null ? 'paragraph' : 'item', at, text: own, holes: found, only: null }
}

/** Cuts a test draft into sections: headings, paragraphs parted by blank lines, and list items. */
export function sections(text: string, holes: Holes = {}): readonly Section[] {
  const found: { title: string | null; depth: number; at: Passage['at']; passages: Passage[] }[] = [
    { title: null, depth: 0, at: { start: 0, end: 0 }, passages: [] },
  ]
  let start = 0
  for (const block of text.split(/(?<=\n)(?=[-+#] ?)|(?<=\n)(?=\n)|(?<=^#[^\n]*\n)/m)) {
    const blank = block.length - block.trimStart().length
    const own = block.trim()
    const heading = /^(#+) (.*)$/.exec(own)
    const from = start + blank
    start += block.length
    if (heading !== null) {
      const at = { start: from, end: from + own.length }
      found.push({ title: heading[2] ?? '', depth: heading[1]?.length ?? 0, at, passages: [] })
    } else if (own !== '') found.at(-1)?.passages.push(passage(own, from, holes))
  }
  return found
}

/** Reads and works a test draft. */
export function work(text: string, options: Options = {}): WorkedDraft {
  const { rowsPer10cm = 10 } = options
  const outcome = workRows(sections(text, options.holes), {
    sizes: options.sizes ?? ['One size'],
    terms: options.terms ?? 'us',
    rowsIn: (centimetres) => (rowsPer10cm === null ? null : (centimetres * rowsPer10cm) / 10),
  })
  const codes = outcome.diagnostics.map((each) => each.code)
  return { text, ledger: outcome.value, found: outcome.diagnostics, codes }
}

/** The rows as `label: total`, for tables. */
export function totals(draft: WorkedDraft): readonly string[] {
  return draft.ledger.rows.map((row) => `${row.label ?? '–'}: ${row.total.join(' ')}`)
}

export function row(draft: WorkedDraft, label: string): LedgerRow {
  const found = draft.ledger.rows.find((each) => each.label === label)
  if (found === undefined) throw new Error(`no row ${label} in ${totals(draft).join(', ')}`)
  return found
}
