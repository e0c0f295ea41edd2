/**
 * A linear problem in whole and other numbers, as plain data: the sum of each column's value times its cost is to be
 * least. Bounds may be infinite.
 */
export interface Program {
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
}

export interface Column {
  readonly lower: number
  readonly upper: number
  readonly whole: boolean
  readonly cost: number
}

/** The sum of some columns' values, each times a factor, lies between two bounds. */
export interface Row {
  readonly lower: number
  readonly upper: number
  readonly terms: readonly Term[]
}

export type Term = readonly [column: number, factor: number]

/**
 * `solved`: a value for each column, right to about nine digits. `impossible`: proved. `undecided`: given up at a
 * limit that depends on the problem alone, never on the clock.
 */
export type Answer =
  | { readonly kind: 'solved'; readonly values: readonly number[] }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'undecided' }

/** An integer-programming library behind a plain function: the same problem always gets the same answer. */
export type Solver = (program: Program) => Answer
