import Fraction from 'fraction.js'
import type { Unit } from '../../measure/index.ts'
import { printMixed, units } from '../../measure/index.ts'

/** To a tenth, or to an eighth of an inch: what a tape measure shows. */
function rounded(amount: number, unit: Unit | null): number {
  const parts = unit !== null && units[unit].system === 'imperial' ? 8 : 10
  return Math.round(amount * parts) / parts
}

/** An amount in its unit, without it: `47.1`, `18½`; a dash for a size that does not have it. */
export function amountText(amount: number | null, unit: Unit | null): string {
  if (amount === null) return '–'
  const number = rounded(amount, unit)
  const inEighths = unit !== null && units[unit].system === 'imperial'
  return inEighths ? printMixed(new Fraction(number)) : String(number)
}

/** How far something is off, with its sign: `+1`, `−0.5`, `0`. */
export function offText(difference: number | null, unit: Unit | null): string {
  if (difference === null) return '–'
  const sign = isOff(difference, unit) ? (difference < 0 ? '−' : '+') : ''
  return sign + amountText(Math.abs(difference), unit)
}

/** Whether a difference is one that a tape measure shows. */
export function isOff(difference: number | null, unit: Unit | null): boolean {
  return difference !== null && rounded(difference, unit) !== 0
}
