import Fraction from 'fraction.js'
import { toBase } from '../../measure/index.ts'
import type { BodyTable, Inches, Wearer } from '../../standards/body-table.ts'

/** A body measure of one size in centimetres; both ends are the same where it is one number. */
export interface Ends {
  readonly low: Fraction
  readonly high: Fraction
}

export interface ChartMeasure {
  /** `upper_arm` */
  readonly key: string
  /** `Upper arm` */
  readonly label: string
  /** One for each size of the chart, in its order; null for a size without this measure. */
  readonly spans: readonly (Ends | null)[]
}

/** Body measures by size, no ease: a published table, or one of the designer's own. The first measure leads. */
export interface BodyChart {
  readonly sizes: readonly string[]
  /** One for each size of the chart; null where that is not known, as in a table of the designer's own. */
  readonly wearers: readonly (Wearer | null)[]
  readonly measures: readonly ChartMeasure[]
}

/** A published table as a chart, reckoned from its inches. */
export function publishedChart({ sizes, wearers, measures }: BodyTable): BodyChart {
  return {
    sizes,
    wearers,
    measures: measures.map(({ key, label, inches }) => ({ key, label, spans: inches.map(span) })),
  }
}

function span(inches: Inches): Ends {
  const [low, high] = typeof inches === 'number' ? [inches, inches] : inches
  return { low: centimetres(low), high: centimetres(high) }
}

function centimetres(inches: number): Fraction {
  return toBase(new Fraction(String(inches)), 'in')
}

/** By its key or label, or by words that only one measure of the chart has: `head`, `upper arm`. */
export function measureOf(chart: BodyChart, measure: string): ChartMeasure | null {
  const wanted = keyOf(measure)
  const other = wanted === 'bust' ? 'chest' : wanted === 'chest' ? 'bust' : wanted
  const named = (name: string) => chart.measures.find(({ key, label }) => key === name || keyOf(label) === name)
  const exact = named(wanted) ?? named(other)
  if (exact !== undefined || wanted === '') return exact ?? null
  const partly = chart.measures.filter(({ key }) => `_${key}_`.includes(`_${wanted}_`))
  return partly.length === 1 ? (partly[0] ?? null) : null
}

/** `Upper arm` as `upper_arm`. */
export function keyOf(measure: string): string {
  return measure
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '_')
    .replace(/^_+|_+$/g, '')
}
