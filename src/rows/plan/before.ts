import type { Step } from '../step.ts'

/** What a plan looks up about the rows before. */
export interface Before {
  readonly sizes: number
  /** Steps of the row with this number, as it was worked for a size. */
  readonly stepsOf: (number: number, size: number) => readonly Step[] | null
  /** Steps of the last row that was called so. */
  readonly stepsCalled: (name: string, size: number) => readonly Step[] | null
  /** The rows that a size goes on with `in pattern`; null where the last ones changed the number of stitches. */
  readonly pattern: (size: number) => readonly (readonly Step[])[] | null
  /** So many of the last rows; null where there are not as many. */
  readonly lastRows: (count: number, size: number) => readonly (readonly Step[])[] | null
  /** Number of the last row, null when it has none. */
  readonly last: (size: number) => number | null
  /** Rows of the piece so far, without the foundation. */
  readonly rows: (size: number) => number
  /** Of these, those under the last heading. */
  readonly rowsHere: (size: number) => number
  /** Stitches of the last row. */
  readonly stitches: (size: number) => number
  /** How many stitches more the rows from one number to another made when they were last worked; null where that is not known. */
  readonly gained: (from: number, to: number, size: number) => number | null
  readonly rowsIn: (centimetres: number) => number | null
}

export type Trouble =
  | { readonly kind: 'unknown row'; readonly number: number | null }
  | { readonly kind: 'unknown name'; readonly name: string }
  | { readonly kind: 'no row gauge' }
  | { readonly kind: 'too long' }
  /** A range that names another number of rows than its shaping, or what it repeats, takes. */
  | { readonly kind: 'rows differ'; readonly named: number; readonly taken: number; readonly by: 'shaping' | 'repeats' }
  /** The rows named are said to make more stitches, or fewer, and did not. */
  | { readonly kind: 'not as said'; readonly change: 1 | -1 }
  /** The row with this number is worked into the chain that the piece is begun on. */
  | { readonly kind: 'on foundation'; readonly number: number }
  /** Changing the number of stitches by this again and again never comes to the number named. */
  | { readonly kind: 'never there'; readonly from: number; readonly by: number; readonly to: number }

/** The rows of one size, in order. */
export interface SizePlan {
  readonly rows: readonly (readonly Step[])[]
  readonly trouble: Trouble | null
  /** The rows that it goes through again and again. */
  readonly cycle?: readonly (readonly Step[])[]
}

export const noRows: SizePlan = { rows: [], trouble: null }

/** How often a change must be made to come from one number to another; a trouble where it never does. */
export function timesTo(from: number, by: number, to: number): number | Trouble {
  const times = by === 0 ? (from === to ? 0 : -1) : (to - from) / by
  return times >= 0 && Number.isInteger(times) ? times : { kind: 'never there', from, by, to }
}
