import type Fraction from 'fraction.js'
import type { PerSize } from '../measure/index.ts'
import type { Solver } from './linked/program.ts'
import type { Shape } from './shaping.ts'

/** A swatch's gauge, exactly: stitches and rows in one centimetre. */
export interface Gauge {
  readonly stitches: Fraction | null
  readonly rows: Fraction | null
  /** The unit that the swatch was measured in; measures computed from it are printed in it first. */
  readonly unit: 'cm' | 'in'
}

/** `broken`: there is one, with an error that has been reported already. */
export type GaugeFound = { readonly kind: 'found'; readonly gauge: Gauge } | { readonly kind: 'unknown' | 'broken' }

/** A stitch multiple with measures of its own: how many lie in a centimetre across and up, each if the draft gives it. */
export type RepeatFound =
  | {
      readonly kind: 'found'
      readonly across: Fraction | null
      readonly up: Fraction | null
      readonly unit: 'cm' | 'in'
    }
  | { readonly kind: 'unknown'; readonly known: readonly string[] }
  | { readonly kind: 'broken' }

export type BodyFound =
  /** Centimetres for every size. */
  | { readonly kind: 'found'; readonly bySize: PerSize<Fraction | null>; readonly unit: 'cm' | 'in' }
  | { readonly kind: 'unknown'; readonly known: readonly string[] }
  | { readonly kind: 'no-table' | 'broken' }

/** The ease of a fit, in centimetres. */
export type EaseFound =
  | { readonly kind: 'found'; readonly length: Fraction; readonly unit: 'cm' | 'in' }
  | { readonly kind: 'unknown'; readonly known: readonly string[] }

/** The yarn's skein: grams and centimetres, each if the draft gives it. */
export interface Skein {
  readonly mass: Fraction | null
  readonly length: Fraction | null
}

/** What a placeholder asks of the worked rows. `row` null: the row that it stands in. */
export interface MadeQuery {
  readonly what: string
  readonly piece: string | null
  readonly row: string | null
}

/** All that a formula can reach beside the names of its draft. */
export interface Environment {
  readonly sizes: readonly string[]
  /** Names of the draft's swatches, for a hint; empty when it has one without a name. */
  readonly swatches: readonly string[]
  /** The gauge of a named swatch, or of the first one for null. */
  readonly gauge: (swatch: string | null) => GaugeFound
  readonly repeat: (name: string) => RepeatFound
  readonly body: (measure: string) => BodyFound
  readonly ease: (fit: string) => EaseFound
  readonly skein: Skein | null
  /** Chooses linked counts; left out or null where the program was started without one. */
  readonly solver?: Solver | null
  readonly shape: Shape
  /** Left out where no rows have been worked; null when there is no such row or it makes no such thing. */
  readonly made?: (query: MadeQuery) => PerSize<Fraction | null> | null
}
