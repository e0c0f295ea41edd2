import type Fraction from 'fraction.js'
import type { Unit } from './value.ts'

/** How a placeholder asks for its value: `as words`, `as ordinal`, `as skeins`, `as in to 1/8`. */
export type Format =
  | { readonly kind: 'words' }
  | { readonly kind: 'ordinal' }
  | { readonly kind: 'skeins' }
  /** One unit only; `step` is the fineness asked for, in that unit, null for the usual one. */
  | { readonly kind: 'unit'; readonly unit: Unit; readonly step: Fraction | null }
