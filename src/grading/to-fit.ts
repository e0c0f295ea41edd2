import Fraction from 'fraction.js'
import { type Numeric, type PerSize, toBase } from '../measure/index.ts'
import type { Inches } from '../standards/body-table.ts'
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
  const inches = columns.map((column) => (column === null ? null : (leading.inches[column] ?? null)))
  const end = (index: 0 | 1) => lengths(inches.map((range) => endOf(range, index)))
  return { label: leading.label, low: end(0), high: end(1) }
}

function endOf(range: Inches | null, index: 0 | 1): number | null {
  return typeof range === 'number' || range === null ? range : range[index]
}

function lengths(inches: PerSize<number | null>): Numeric {
  return {
    kind: 'length',
    unit: 'in',
    bySize: inches.map((amount) => (amount === null ? null : toBase(new Fraction(String(amount)), 'in'))),
  }
}
