import type { Numeric } from '../measure/index.ts'
import type { BodyColumns } from './body.ts'

/** The body that each size is drawn on, by the table's leading measure; low and high are the ends of its range. */
export interface ToFit {
  /** `Bust`, `Head circumference` */
  readonly label: string
  readonly low: Numeric
  readonly high: Numeric
}

/** What a reader measures to choose a size; null for a table without measures. */
export function toFit({ table, columns }: BodyColumns): ToFit | null {
  const leading = table.measures[0]
  if (leading === undefined) return null
  const spans = columns.map((column) => (column === null ? null : (leading.spans[column] ?? null)))
  const end = (which: 'low' | 'high'): Numeric => ({
    kind: 'length',
    unit: 'in',
    bySize: spans.map((span) => span?.[which] ?? null),
  })
  return { label: leading.label, low: end('low'), high: end('high') }
}
