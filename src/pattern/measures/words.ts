import Fraction from 'fraction.js'
import type { Unit } from '../../measure/index.ts'
import { fromBase, printDecimal, printMixed, roundToStep, units } from '../../measure/index.ts'

const eighth = new Fraction(1, 8)

/** A length (cm) in one unit, fine enough to compare: `47.1 cm`, `18½ in`. */
export function lengthWords(base: Fraction, unit: Unit | null): string {
  const own = unit ?? 'cm'
  const amount = fromBase(base, own)
  const fine = units[own].system === 'imperial' ? printMixed(roundToStep(amount, eighth)) : printDecimal(amount, 1)
  return `${fine} ${own}`
}
