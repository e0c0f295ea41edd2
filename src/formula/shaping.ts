/** The functions that print as steps. */
export type ShapingName =
  | 'evenly'
  | 'spaced'
  | 'taper'
  | 'waist_taper'
  | 'armhole_steps'
  | 'neck_steps'
  | 'shoulder_steps'
  | 'yoke_rounds'
  | 'shares'

/** Why a shaping phrase cannot be worked for a size. */
export type ShapingProblem =
  /** An argument, counted from 0, lies outside what can be worked. */
  | {
      readonly kind: 'range'
      readonly argument: number
      readonly found: number
      readonly least: number
      readonly most: number
    }
  /** More shaped rows than rows. */
  | { readonly kind: 'rows'; readonly shaped: number; readonly rows: number }
  /** More stitches needed than there are. */
  | { readonly kind: 'stitches'; readonly needed: number; readonly there: number }
  /** A difference that cannot be halved between two ends. */
  | { readonly kind: 'odd'; readonly from: number; readonly to: number }
  /** It goes out where it should go in, or the other way round. */
  | { readonly kind: 'direction'; readonly from: number; readonly to: number }

/** A shaping phrase for one size. */
export type Shaped =
  | { readonly words: string; readonly problem: null }
  | { readonly words: null; readonly problem: ShapingProblem }

/**
 * Writes a shaping phrase for one size. `counts` are whole numbers in the order of the function's arguments, `words`
 * its quoted ones.
 */
export type Shape = (name: ShapingName, counts: readonly number[], words: readonly string[]) => Shaped
