import Fraction from 'fraction.js'
import type { Diagnostic, Outcome } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { printDecimal } from '../../measure/index.ts'
import { type Measurement, type Misread, systemOf, type WrittenText } from './measurement.ts'

export interface Rate {
  readonly perCentimetre: Fraction
  readonly unit: 'cm' | 'in'
}

/** How the measurements of one line are read, and what is said of one that can't be. */
interface Reading {
  readonly read: (written: WrittenText) => Measurement | Misread
  readonly finding: (written: WrittenText, misread: Misread) => Diagnostic
}

/** The mean of what was measured; null for nothing, `broken` where a measurement has been reported. */
export function readMean(written: readonly WrittenText[], { read, finding }: Reading): Outcome<Rate | null | 'broken'> {
  const measurements: Measurement[] = []
  const findings: Diagnostic[] = []
  for (const text of written) {
    const found = read(text)
    if (typeof found === 'string') findings.push(finding(text, found))
    else measurements.push(found)
  }
  if (findings.length > 0) return { value: 'broken', diagnostics: findings }
  return { value: meanOf(measurements), diagnostics: scatterOf(measurements) }
}

/**
 * The mean of several measurements of one fabric, each weighing as much as its length: all that was counted by all that
 * was measured. Null for none.
 */
function meanOf(measurements: readonly Measurement[]): Rate | null {
  const [first] = measurements
  if (first === undefined) return null
  const total = (pick: (measurement: Measurement) => Fraction) =>
    measurements.reduce((sum, measurement) => sum.add(pick(measurement)), new Fraction(0))
  const perCentimetre = total(({ count }) => count).div(total(({ length }) => length))
  return { perCentimetre, unit: systemOf(first.unit) }
}

/**
 * How far the loosest and the tightest place of one swatch may lie apart, as a share of their mean. Common practice, no
 * source: neighbouring sizes of adults differ by about a tenth, and half of that puts a piece between two of them.
 */
const tolerance = new Fraction(1, 20)

/** The finding for measurements that scatter more than one fabric should, at the one farthest from the mean. */
function scatterOf(measurements: readonly Measurement[]): readonly Diagnostic[] {
  const mean = meanOf(measurements)
  if (mean === null) return []
  const ordered = measurements.toSorted((a, b) => rate(a).compare(rate(b)))
  const [least, most] = [ordered[0], ordered.at(-1)]
  if (least === undefined || most === undefined) return []
  const apart = rate(most).sub(rate(least)).div(mean.perCentimetre)
  if (apart.lte(tolerance)) return []
  const isMostFarther = rate(most)
    .sub(mean.perCentimetre)
    .gte(mean.perCentimetre.sub(rate(least)))
  const at = (isMostFarther ? most : least).written.at
  const details = { least: least.written.text, most: most.written.text, percent: printDecimal(apart.mul(100), 0) }
  return [diagnose('gauge-scatters', at, details)]
}

function rate({ count, length }: Measurement): Fraction {
  return count.div(length)
}
