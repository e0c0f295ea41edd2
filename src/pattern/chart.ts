import type { Diagnostic, Outcome } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { ChartRow, Figure } from '../drawing/index.ts'
import { chartOf, chartRows, cutToStitches, namesOfRows, rowsAsked } from '../drawing/index.ts'
import { dictionaryFor } from '../rows/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import type { Asked } from './drawings.ts'

/** What charts are drawn from. */
export interface ChartSource {
  readonly ledger: Ledger
  readonly sizes: readonly string[]
  readonly terms: 'us' | 'uk'
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
  const range = stitchRange(words.stitches)
  const cut = range === null ? null : cutToStitches(rows, ledger.kinds, ...range)
  if (cut !== null) return { value: cut, diagnostics: [] }
  return refused(diagnose('chart-stitches-unknown', at, { stitches: words.stitches, row: rows[0]?.name ?? '' }))
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
  if (drawn === null) return refused(diagnose('chart-too-large', at, { piece }))
  const { figure, own } = drawn
  const notes = own.map((name) => diagnose('chart-stitch-own', at, { name }))
  return { value: figure, diagnostics: notes }
}
