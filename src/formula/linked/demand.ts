import Fraction from 'fraction.js'
import type { Direction } from '../../measure/index.ts'
import { isPositive, roundToMultiple } from '../../measure/index.ts'
import type { Linear } from './linear.ts'
import { evaluateSum } from './linear.ts'

/** A linked count of one size: `of × k + plus` for some whole `k`, within bounds, as near as can be to its target. */
export interface Count {
  readonly kind: 'count'
  readonly name: string
  readonly size: number
  readonly target: Fraction
  /** Whole, above 0. */
  readonly of: Fraction
  readonly plus: Fraction
  readonly lower: Fraction
  readonly upper: Fraction
}

/** `base` rounded to a whole number: what `as even`, `is multiple of 6` and their like divide by. */
export interface Quotient {
  readonly kind: 'quotient'
  readonly base: Linear
  readonly direction: Direction
}

/** A whole number that is to be found; its position in the list of all is its name. */
export type Unknown = Count | Quotient

/** The sum stands in this relation to 0. */
export interface Constraint {
  readonly sum: Linear
  readonly relation: '=' | '<=' | '<'
}

/** A need, or the part of it that speaks of one size or of two neighbours: one of these ways must hold as a whole. */
export interface Demand {
  /** Position of the need among those of the draft. */
  readonly need: number
  readonly sizes: readonly number[]
  readonly ways: readonly (readonly Constraint[])[]
}

/** The value of every unknown, once the counts are known: a quotient follows from them. */
export function knownFrom(
  unknowns: readonly Unknown[],
  counts: ReadonlyMap<number, Fraction>,
): (id: number) => Fraction {
  const known = (id: number): Fraction => {
    const one = unknowns[id]
    if (one?.kind !== 'quotient') return counts.get(id) ?? new Fraction(0)
    return roundToMultiple(evaluateSum(one.base, known), new Fraction(1), new Fraction(0), one.direction)
  }
  return known
}

export function holds({ sum, relation }: Constraint, known: (id: number) => Fraction): boolean {
  const value = evaluateSum(sum, known)
  if (value.n === 0n) return relation !== '<'
  return relation !== '=' && !isPositive(value)
}

export function isMet({ ways }: Demand, known: (id: number) => Fraction): boolean {
  return ways.some((way) => way.every((constraint) => holds(constraint, known)))
}

/** The count at a position: none where a quotient stands, or nothing. */
export function countAt(unknowns: readonly Unknown[], id: number): readonly Count[] {
  const one = unknowns[id]
  return one?.kind === 'count' ? [one] : []
}
