import type Fraction from 'fraction.js'
import type { Span } from '../../diagnostic/index.ts'
import { isLengthUnit, isUnit, type LengthUnit, readNumber, readQuantity, toBase, units } from '../../measure/index.ts'

/** Words of the front matter with their place. */
export interface WrittenText {
  readonly text: string
  readonly at: Span
}

/** One count over one length of a swatch. */
export interface Measurement {
  /** Above zero. */
  readonly count: Fraction
  /** Centimetres, above zero. */
  readonly length: Fraction
  readonly unit: LengthUnit
  readonly written: WrittenText
}

/** It says no count or no length; or one of them is nothing. */
export type Misread = 'unreadable' | 'not-positive'

/**
 *     12 per 10 cm     16 sts per 4 in     8½ rows over 10 cm
 */
const form =
  /^([-−]?)([\d\s./½¼¾⅛⅜⅝⅞]{1,24}?)\s*(?:[a-z]{1,12}\.?\s+)?(?:per|to|over|in|=)\s*([\d\s./½¼¾⅛⅜⅝⅞]{1,24}?)\s*([a-z]{1,2})$/i

/** Reads a measurement exactly. */
export function readMeasurement(written: WrittenText): Measurement | Misread {
  const [, minus, amount = '', over = '', unit = ''] = form.exec(written.text.trim()) ?? []
  const count = readNumber(amount)
  const length = readNumber(over)
  if (count === null || length === null || !isUnit(unit) || !isLengthUnit(unit)) return 'unreadable'
  if (minus !== '' || count.n === 0n || length.n === 0n) return 'not-positive'
  return { count, length: toBase(length, unit), unit, written }
}

/** The same for what is measured piece by piece: `4.2 cm` is one over 4.2 cm. */
export function readSpan(written: WrittenText): Measurement | Misread {
  const quantity = readQuantity(written.text)
  return quantity === null ? readMeasurement(written) : readMeasurement({ ...written, text: `1 per ${written.text}` })
}

/** The first system that a measure in this unit is printed in. */
export function systemOf(unit: LengthUnit): 'cm' | 'in' {
  return units[unit].system === 'metric' ? 'cm' : 'in'
}
