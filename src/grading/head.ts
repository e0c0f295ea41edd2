import Fraction from 'fraction.js'
import type { PerSize } from '../measure/index.ts'
import type { Wearer } from '../standards/body-table.ts'
import { measuredHeads } from '../standards/head-measured.ts'
import { type BodyColumns, bodyMeasure } from './body.ts'

/** Age in months by the name of a table's size: `18 months`, `6` and `6 years`; null where it names none. */
function monthsIn(name: string): number | null {
  const found = /^(\d{1,2})\s*(months?|years?)?$/i.exec(name.trim())
  if (found === null) return null
  return Number(found[1]) * (/^m/i.test(found[2] ?? '') ? 1 : 12)
}

/** A head that was measured on such people, in centimetres; null where nothing is known of them. */
function measured(wearer: Wearer | null, name: string): Fraction | null {
  if (wearer === null) return null
  const grown = wearer.startsWith('women') ? 'women' : wearer.startsWith('men') ? 'men' : null
  const months = grown === null ? monthsIn(name) : null
  if (grown === null && months === null) return null
  const own = measuredHeads.find(({ who, upToMonths }) =>
    grown === null ? who === 'children' && (upToMonths ?? 0) >= (months ?? 0) : who === grown,
  )
  // Youths beyond the table have the head of a woman.
  const head = own ?? measuredHeads.find(({ who }) => who === 'women')
  return head === undefined ? null : new Fraction(head.cm)
}

/**
 * The head of each size in centimetres: from the draft's body table where that has heads, else as measured on people of
 * that age. Null for a size that is drawn on nobody, or on a body whose age is not known.
 */
export function headsOf(body: BodyColumns): PerSize<Fraction | null> {
  const own = bodyMeasure(body, 'head_circumference', 'cm')
  const found = own.kind === 'found' ? own : bodyMeasure(body, 'head', 'cm')
  if (found.kind === 'found') return found.bySize
  const { wearers, sizes } = body.table
  return body.columns.map((column) => (column === null ? null : measured(wearers[column] ?? null, sizes[column] ?? '')))
}
