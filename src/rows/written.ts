import type { Span } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/value.ts'

/**
 * What the row reader is given. The draft's Markdown has been cut into sections and passages; the
 * text of a passage is the draft's own characters, for Markdown would eat asterisks and brackets.
 */

/** A heading and what stands under it up to the next heading. The heading names the piece. */
export interface Section {
  /** The heading's plain text; null above the first heading. */
  readonly title: string | null
  /** Depth of the heading, 1 to 6; 0 above the first heading. */
  readonly depth: number
  readonly at: Span
  readonly passages: readonly Passage[]
}

/** A paragraph, a list item, a table row or cell, a heading: it may hold no row, one row, or one row a line. */
export interface Passage {
  readonly form: 'paragraph' | 'item' | 'cell' | 'tableRow' | 'heading'
  /** Where the text stands in the draft. `text` is exactly what stands there. */
  readonly at: Span
  readonly text: string
  /** The same with other marks in some places, where the form says more than the words: the bars of a table. */
  readonly asRead?: string
  /** Its place in a numbered list whose marks do not count: `1.` before each item. */
  readonly position?: number
  /** The placeholders within, in order, with offsets into the draft. */
  readonly holes: readonly Hole[]
  /** Positions of the only sizes that work this passage; null for all. */
  readonly only: readonly number[] | null
}

/** A placeholder in a passage, already calculated. */
export interface Hole {
  readonly at: Span
  readonly content: HoleContent
}

export type HoleContent =
  /** A whole number for every size; null where it does not apply. */
  | { readonly kind: 'number'; readonly bySize: PerSize<number | null> }
  /** A length in centimetres, as in `until piece measures {{depth}}`. */
  | { readonly kind: 'length'; readonly bySize: PerSize<number | null> }
  /** Words to be read as if they had been typed, such as the steps of a shaping phrase. */
  | { readonly kind: 'text'; readonly bySize: PerSize<string | null> }
  /** What the row itself makes, `{{total}}` or `{{count(dc)}}`: known once it has been worked. */
  | { readonly kind: 'made'; readonly of: (row: MadeByRow) => PerSize<number | null> }
  /** A placeholder with an error that has been reported already. */
  | { readonly kind: 'broken' }

/** What a worked row has made, for the placeholders that ask. */
export interface MadeByRow {
  readonly total: PerSize<number | null>
  /** By abbreviation in the draft's terms, space kind or special stitch; null when the row makes none. */
  readonly count: (what: string) => PerSize<number | null> | null
}

/** What the reader must know about the draft beside its text. */
export interface Settings {
  /** Names of the sizes, in the draft's order. */
  readonly sizes: readonly string[]
  readonly terms: 'us' | 'uk'
  /** Rows in a length (cm) by the row gauge, not rounded; null where no row gauge is known. */
  readonly rowsIn: (centimetres: number) => number | null
}
