import type Fraction from 'fraction.js'

/** A count for each member of a problem, by its position in the problem's unknowns. */
export type Counts = ReadonlyMap<number, Fraction>

/** `undecided`: there was no solver, or it gave up. */
export type Choice =
  | { readonly kind: 'chosen'; readonly counts: Counts }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'undecided' }
