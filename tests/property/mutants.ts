import type { Diagnostic } from '../../src/diagnostic/index.ts'
import type { Ledger, WrittenRow } from '../../src/rows/index.ts'

/** A draft as the program has worked it. */
export interface Run {
  readonly ledger: Ledger
  readonly found: readonly Diagnostic[]
}

/** A draft with one of its numbers changed in one size, or for all where the draft has one number for them. */
export interface Mutant {
  readonly what: 'stated count' | 'repeat count' | 'foundation'
  readonly text: string
  /** `48: (60 sc) → (61 sc)`, to find it again. */
  readonly shown: string
}

/** A number of the draft, typed or a placeholder. `size`: the size that it is for, where it stands in a list of sizes. */
interface Numeral {
  readonly start: number
  readonly text: string
  readonly size: number | null
}

const numeral = /\{\{\s*(?<formula>[^{}]*?)\s*\}\}|(?<![\w.-])\d+(?![\w.]*tog|\w)/g

/** The numerals in a stretch of a draft; those of a size list know their size. */
function numerals(text: string, from: number, to: number, sizes: number): readonly Numeral[] {
  const found = [...text.slice(from, to).matchAll(numeral)].map((match) => ({
    start: from + match.index,
    text: match[0],
  }))
  const all: Numeral[] = []
  for (let at = 0; at < found.length; ) {
    const list = found.slice(at, at + sizes)
    const isList =
      sizes > 1 && list.length === sizes && list.every((each, index) => goesOn(text, list[index - 1], each))
    all.push(...(isList ? list.map((each, size) => ({ ...each, size })) : found.slice(at, at + 1).map(plain)))
    at += isList ? sizes : 1
  }
  return all
}

function plain(each: Omit<Numeral, 'size'>): Numeral {
  return { ...each, size: null }
}

function goesOn(text: string, before: Omit<Numeral, 'size'> | undefined, own: Omit<Numeral, 'size'>): boolean {
  return before === undefined || /^(?: \(|, )$/.test(text.slice(before.start + before.text.length, own.start))
}

const listed = /(?:\{\{[^{}]*\}\}|\d+)(?: \([\d, ]+\))?/.source
const repeats = new RegExp(`(${listed}) (?:more )?times`, 'g')
const foundations = new RegExp(`(?:Ch|Fsc|Fhdc|Fdc) (${listed})(?! from)`)

function inMatch(text: string, row: WrittenRow, match: RegExpExecArray | null, sizes: number): readonly Numeral[] {
  const words = match?.[1]
  if (match === null || words === undefined) return []
  const start = row.steps.start + match.index + match[0].indexOf(words)
  return numerals(text, start, start + words.length, sizes)
}

/** A ring takes any number of stitches: how many chains it has shows in no count. */
function isSmallRing(steps: string, after: string): boolean {
  return /\bring\b/.test(steps) && /\bin ring\b/.test(`${steps} ${after}`)
}

function foundationOf(text: string, row: WrittenRow, ledger: Ledger, sizes: number): readonly Numeral[] {
  const [first] = row.entries
  const counts = Object.keys(ledger.rows[first]?.counts ?? {})
  const steps = text.slice(row.steps.start, row.steps.end)
  const laid = counts.every((kind) => kind === 'ch' || /^F/.test(kind)) && counts.length > 0
  if (!laid || isSmallRing(steps, text.slice(row.steps.end, row.steps.end + 400))) return []
  return inMatch(text, row, foundations.exec(steps), sizes)
}

/** One more, one less, and its last two digits the other way round. */
function changes({ text, size }: Numeral, sizes: number): readonly string[] {
  if (text.startsWith('{{')) {
    const formula = text.slice(2, -2).trim()
    if (/\b(?:total|count)\b|\bas\b/.test(formula)) return []
    const own = Array.from({ length: sizes }, (_, at) => (at === formula.length % sizes ? 1 : 0))
    const by = sizes === 1 ? '1' : `[${own.join(', ')}]`
    return [`{{${formula} + ${by}}}`, `{{${formula} - ${by}}}`]
  }
  const number = Number(text)
  const swapped = Number(text.replace(/(\d)(\d)$/, '$2$1'))
  const others = size === null || sizes > 0 ? [number + 1, number - 1, swapped] : []
  return [...new Set(others)].filter((other) => other > 0 && other !== number).map(String)
}

function* changed(text: string, of: Numeral, what: Mutant['what'], sizes: number): Generator<Mutant> {
  const line = text.slice(0, of.start).split('\n').length
  for (const other of changes(of, sizes)) {
    const mutated = text.slice(0, of.start) + other + text.slice(of.start + of.text.length)
    const from = Math.max(text.lastIndexOf('\n', of.start) + 1, of.start - 50)
    const shown = mutated.slice(from, of.start + other.length + 20).replace(/\s+/g, ' ')
    yield { what, text: mutated, shown: `${line}: ${of.text} → ${other} in “${shown}”` }
  }
}

/** Every draft that differs from this one in one stated count, one number of repeats, or one foundation. */
export function* mutants(text: string, { ledger }: Run, sizes: number): Generator<Mutant> {
  for (const row of ledger.written) {
    const stated = row.stated === null ? [] : numerals(text, row.stated.start, row.stated.end, sizes)
    for (const each of stated) yield* changed(text, each, 'stated count', sizes)
    const steps = text.slice(row.steps.start, row.steps.end)
    for (const match of steps.matchAll(repeats)) {
      for (const each of inMatch(text, row, match, sizes)) yield* changed(text, each, 'repeat count', sizes)
    }
    for (const each of foundationOf(text, row, ledger, sizes)) yield* changed(text, each, 'foundation', sizes)
  }
}
