import Fraction from 'fraction.js'
import { readNumber } from './number.ts'
import type { LengthUnit, MassUnit, Unit } from './value.ts'

interface UnitFact {
  readonly kind: 'length' | 'mass' | 'share'
  /** Centimetres, grams or wholes in one of it, exactly. */
  readonly inBase: Fraction
  readonly system: 'metric' | 'imperial'
  /** What people write for it, so that the right symbol can be offered. */
  readonly spellings: readonly string[]
}

/**
 * Exact by definition: international yard and pound agreement, in force 1 July 1959 (yard 0.9144 m, pound
 * 0.45359237 kg); NIST Special Publication 811, Appendix B, 2008.
 */
export const units: Readonly<Record<Unit, UnitFact>> = {
  mm: metric('length', '1/10', ['millimetre', 'millimeter', 'mms']),
  cm: metric('length', '1', ['centimetre', 'centimeter', 'cms']),
  m: metric('length', '100', ['metre', 'meter', 'mtr']),
  in: imperial('length', '2.54', ['inch', 'inches', 'ins']),
  yd: imperial('length', '91.44', ['yard', 'yds']),
  g: metric('mass', '1', ['gram', 'gramme', 'gr', 'gm', 'gms']),
  kg: metric('mass', '1000', ['kilogram', 'kilogramme', 'kilo', 'kgs']),
  oz: imperial('mass', '28.349523125', ['ounce', 'ozs']),
  lb: imperial('mass', '453.59237', ['pound', 'lbs']),
  '%': metric('share', '1/100', ['percent', 'pct']),
}

function metric(kind: UnitFact['kind'], inBase: string, spellings: readonly string[]): UnitFact {
  return { kind, inBase: new Fraction(inBase), system: 'metric', spellings }
}

function imperial(kind: UnitFact['kind'], inBase: string, spellings: readonly string[]): UnitFact {
  return { kind, inBase: new Fraction(inBase), system: 'imperial', spellings }
}

export function isUnit(text: string): text is Unit {
  return Object.hasOwn(units, text)
}

export function isLengthUnit(unit: Unit): unit is LengthUnit {
  return units[unit].kind === 'length'
}

export function isMassUnit(unit: Unit): unit is MassUnit {
  return units[unit].kind === 'mass'
}

/** The unit that a longer spelling stands for: `inches` is `in`; null when it stands for none. */
export function unitOfSpelling(text: string): Unit | null {
  const wanted = text.toLowerCase().replace(/\.$/, '')
  const singular = wanted.replace(/s$/, '')
  for (const [unit, fact] of Object.entries(units)) {
    const fits = wanted === unit || fact.spellings.includes(wanted) || fact.spellings.includes(singular)
    if (fits && isUnit(unit)) return unit
  }
  return null
}

/** An amount in a unit as centimetres, grams or a share of 1. */
export function toBase(amount: Fraction, unit: Unit): Fraction {
  return amount.mul(units[unit].inBase)
}

/** Centimetres, grams or a share of 1 as an amount in a unit. */
export function fromBase(base: Fraction, unit: Unit): Fraction {
  return base.div(units[unit].inBase)
}

/** One length or mass as it was written, and what it comes to. */
export interface Quantity {
  readonly amount: Fraction
  readonly unit: Unit
  /** Centimetres or grams. */
  readonly base: Fraction
}

/** Reads `6.5 mm`, `20 1/2 in`, `100g`; null when it is not a number with a known unit. */
export function readQuantity(text: string): Quantity | null {
  const match = /^([^a-z]{1,40})([a-z]{1,2})$/.exec(text.trim())
  const unit = match?.[2] ?? ''
  const amount = readNumber(match?.[1] ?? '')
  if (amount === null || !isUnit(unit)) return null
  return { amount, unit, base: toBase(amount, unit) }
}
