import type { Diagnostic, Outcome, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { ChartRow, Figure } from '../drawing/index.ts'
import { chartOf, chartRows, cutToStitches, isInRing, namesOfRows, rowsAsked } from '../drawing/index.ts'
import { dictionaryFor } from '../rows/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import type { Asked } from './drawings.ts'

/** What charts are drawn from. */
export interface ChartSource {
  readonly ledger: Ledger
  readonly sizes: readonly string[]
  readonly terms: 'us' | 'uk'
  /** What the draft writes in a place. */
  readonly textAt: (at: Span) => string
}

function refused(finding: Diagnostic): Outcome<null> {
  return { value: null, diagnostics: [finding] }
}

/** `1–12` */
function stitchRange(text: string): readonly [from: number, to: number] | null {
  const [, from = '', to = from] = /^\s*(\d+)(?:\s*[-–—]\s*(\d+))?\s*$/.exec(text) ?? []
  return from === '' ? null : [Number(from), Number(to)]
}

function chosenRows(asked: Asked, { ledger }: ChartSource): Outcome<readonly ChartRow[] | null> {
  const { at, piece, entries, size, words } = asked
  const chosen = words.rows === undefined ? entries : rowsAsked(ledger, entries, words.rows)
  const rows = chosen === null ? [] : chartRows(ledger, chosen, size)
  if (rows.length === 0) return refused(diagnose('chart-rows-unknown', at, { rows: words.rows ?? '', piece }))
  if (words.stitches === undefined) return { value: rows, diagnostics: [] }
  const [first] = rows
  if (first !== undefined && isInRing(first, ledger.kinds))
    return refused(diagnose('chart-stitches-ring', at, { row: first.name }))
  const range = stitchRange(words.stitches)
  const cut = range === null ? null : cutToStitches(rows, ledger.kinds, ...range)
  if (cut !== null) return { value: cut, diagnostics: [] }
  return refused(diagnose('chart-stitches-unknown', at, { stitches: words.stitches, row: first?.name ?? '' }))
}

/** Whether every size works the rows with the same stitches, so that a chart is for all of them. */
function isForAll(rows: readonly ChartRow[], { ledger, sizes }: ChartSource): boolean {
  return rows.every(({ row }) => {
    const entry = ledger.fabric.find((bySize) => bySize.includes(row)) ?? []
    return sizes.every((_, size) => {
      const other = entry[size]?.row.places ?? []
      return other.length === row.row.places.length && other.every((number, at) => number === row.row.places[at])
    })
  })
}

const manners = /\b(?:reverse|rev|linked|spike)[\s.-]+\p{L}+(?: \p{L}+)?/giu

/** `reverse sc`, `linked dc`: stitches that a row works in a manner of their own, as the draft writes them. */
function mannersIn(rows: readonly ChartRow[], { ledger, textAt, terms }: ChartSource): readonly string[] {
  const charted = ledger.rows.filter((_, entry) => rows.some(({ row }) => ledger.fabric[entry]?.includes(row)))
  const { stitches } = dictionaryFor(terms)
  const found = charted.flatMap(({ at }) => textAt(at).match(manners) ?? [])
  const named = found.flatMap((words) => {
    const [manner = '', first = '', second = ''] = words.split(/[\s.-]+/)
    const stitch = [`${first} ${second}`, first].find((name) => stitches.has(name.toLowerCase()))
    return stitch === undefined ? [] : [`${manner} ${stitch}`.toLowerCase()]
  })
  return [...new Set(named)]
}

/** The chart asked for; null, with findings, where it can't be drawn. */
export function chartFor(asked: Asked, source: ChartSource): Outcome<Figure | null> {
  const { at, piece, size } = asked
  const { value: rows, diagnostics } = chosenRows(asked, source)
  if (rows === null) return { value: null, diagnostics }
  const inSize = isForAll(rows, source) ? '' : `, size ${source.sizes[size] ?? ''}`
  const names = namesOfRows(rows)
  const range = stitchRange(asked.words.stitches ?? '')
  const stitches = range === null ? '' : `, stitches ${[...new Set(range)].join('–')}`
  const caption = `${piece}${names === '' ? '' : `, ${names}`}${stitches}${inSize}`
  const drawn = chartOf({ piece, caption, rows }, source.ledger, dictionaryFor(source.terms))
  if (drawn === 'too-large') return refused(diagnose('chart-too-large', at, { piece }))
  if (drawn === 'both-sides') return refused(diagnose('chart-both-sides', at, { row: rows[0]?.name ?? '' }))
  const { figure, own } = drawn
  const notes = own.map((name) => diagnose('chart-stitch-own', at, { name }))
  const plain = mannersIn(rows, source).map((stitch) => diagnose('chart-stitch-plain', at, { stitch }))
  return { value: figure, diagnostics: [...notes, ...plain] }
}
