import type Fraction from 'fraction.js'

/**
 * Lengths are kept in centimetres, masses in grams; counts and ratios are plain numbers, and so are shares: `5 %` is
 * 1/20. All are exact.
 */
export type Kind = 'count' | 'number' | 'length' | 'mass' | 'share'

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'yd'
export type MassUnit = 'g' | 'kg' | 'oz' | 'lb'
export type ShareUnit = '%'
export type Unit = LengthUnit | MassUnit | ShareUnit

/** One entry for each size, in the draft's order of sizes. */
export type PerSize<T> = readonly T[]

/**
 * A number for every size. `null` stands for a size to which it does not apply (`none`).
 * `unit` is the unit it was written in, used only for printing; null for counts and ratios.
 */
export interface Numeric {
  readonly kind: Kind
  readonly unit: Unit | null
  readonly bySize: PerSize<Fraction | null>
}

/** Words for every size. `phrase`: written for each size by one function, so that what sizes share is printed once. */
export interface Words {
  readonly kind: 'text'
  readonly unit: null
  readonly bySize: PerSize<string | null>
  readonly phrase?: true
}

export type Value = Numeric | Words
