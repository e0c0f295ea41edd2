import type { ShapingProblem } from '../../formula/index.ts'

/** Where a row is shaped. An edge that has a name is one end. */
export type Edge = 'each end' | 'one end' | 'neck edge' | 'armhole edge'

/** So many shaped rows, each the last of its group: `every: 4` is three plain rows and a shaped one. */
export interface Leg {
  readonly every: number
  readonly times: number
}

/** So many rows one after the other, each of which changes as many stitches at an edge. */
export interface Run {
  readonly stitches: number
  readonly times: number
}

/** A stretch of rows or rounds. */
export type Passage =
  | { readonly kind: 'even'; readonly rows: number }
  /** One stitch at a time. */
  | { readonly kind: 'slope'; readonly change: 'inc' | 'dec'; readonly edge: Edge; readonly legs: readonly Leg[] }
  /** Decreases of several stitches in a row. */
  | { readonly kind: 'curve'; readonly edge: Edge; readonly runs: readonly Run[] }
  /** One round that is increased all around, and its count afterwards. */
  | { readonly kind: 'around'; readonly by: number; readonly to: number }

/** Shaping over a number of rows, from the first to the last of them. */
export interface Schedule {
  readonly unit: 'row' | 'rnd'
  readonly passages: readonly Passage[]
}

/** What an algorithm gives: what it was asked for, or why that cannot be worked. */
export type Planned<T> = { readonly plan: T; readonly problem: null } | Refused
export interface Refused {
  readonly plan: null
  readonly problem: ShapingProblem
}

export function planned<T>(plan: T): Planned<T> {
  return { plan, problem: null }
}

export function refused(problem: ShapingProblem): Refused {
  return { plan: null, problem }
}

/** A stretch of plain rows; nothing where there are none. */
export function evenRows(rows: number): readonly Passage[] {
  return rows === 0 ? [] : [{ kind: 'even', rows }]
}
