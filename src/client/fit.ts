import type { Fit } from '../pattern/pattern.ts'

/** A reader's own measure, in the unit that it was given in. */
export interface OwnMeasure {
  readonly amount: number
  readonly unit: 'cm' | 'in'
}

const fractions: Readonly<Record<string, number>> = {
  '¼': 0.25,
  '½': 0.5,
  '¾': 0.75,
  '⅛': 0.125,
  '⅜': 0.375,
  '⅝': 0.625,
  '⅞': 0.875,
}
const written =
  /^(?<whole>\d{1,3}(?:[.,]\d{1,2})?)?\s*(?:(?<sign>[¼½¾⅛⅜⅝⅞])|(?<over>\d{1,2})\s*\/\s*(?<under>\d{1,2}))?\s*(?<unit>cm|centimetres?|centimeters?|in|ins|inch|inches|["”″])?\.?$/i

/** Reads `98`, `98.5 cm`, `38 1/2`, `38½"`; `unit` is meant where none is written. Null for what is no measure. */
export function readMeasure(text: string, unit: OwnMeasure['unit']): OwnMeasure | null {
  const found = written.exec(text.trim().replace(/(?<=\d)-(?=\d+\/)/, ' '))?.groups
  if (found === undefined) return null
  const whole = Number((found.whole ?? '0').replace(',', '.'))
  const part = fractions[found.sign ?? ''] ?? (found.over === undefined ? 0 : Number(found.over) / Number(found.under))
  const amount = whole + part
  const own = found.unit === undefined ? unit : /^c/i.test(found.unit) ? 'cm' : 'in'
  return Number.isFinite(amount) && amount > 0 ? { amount, unit: own } : null
}

/** Where a reader's measure lies among those that the sizes are made for; `sizes` are positions, the nearest first. */
export interface Found {
  readonly lies: 'within' | 'between' | 'below' | 'above'
  readonly sizes: readonly number[]
}

/**
 * The size made for a measure, or the two that it lies between; past the ends only the last one. Null where no size is
 * drawn on a body.
 */
export function sizesFor(fit: Fit, { amount, unit }: OwnMeasure): Found | null {
  const low = fit.low[unit]
  const high = fit.high[unit]
  const distances = low.flatMap((from, size) => {
    const to = high[size] ?? null
    if (from === null || to === null) return []
    return [{ size, off: amount < from ? from - amount : Math.max(0, amount - to), above: amount > to }]
  })
  // Of two as near, the larger: what is too wide can still be worn.
  const nearest = distances.toSorted((a, b) => a.off - b.off || b.size - a.size)
  const [first] = nearest
  if (first === undefined) return null
  if (first.off === 0) return { lies: 'within', sizes: nearest.filter(({ off }) => off === 0).map(({ size }) => size) }
  const other = nearest.find(({ above }) => above !== first.above)
  if (other === undefined) return { lies: first.above ? 'above' : 'below', sizes: [first.size] }
  return { lies: 'between', sizes: [first.size, other.size] }
}

/** How much more a size measures than its reader, in the reader's unit; negative where it stretches. Null where it is not known. */
export function easeFor(fit: Fit, size: number, { amount, unit }: OwnMeasure): number | null {
  const made = fit.made?.[unit][size] ?? null
  return made === null ? null : made - amount
}
