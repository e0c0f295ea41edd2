/**
 * Printed text in pieces, so that a face can show all sizes or one without formatting anything.
 * `always` shows in every view, `columns` (brackets, commas between sizes) only where all sizes stand
 * side by side, a number only for the size at that position.
 *
 *     52 (60, 68) cm   →   52|0  " ("|columns  60|1  ", "|columns  68|2  ")"|columns  " cm"|always
 */
export interface Segment {
  readonly text: string
  readonly show: 'always' | 'columns' | number
  /**
   * Of a measure in both systems: the part in one of them, or what stands between the two, the brackets. Left out where
   * a reader of either system needs it.
   */
  readonly system?: 'metric' | 'imperial' | 'both'
  /** Left out of words that are no term. */
  readonly term?: Term
}

/** A name of the trade in a printed text. */
export interface Term {
  /** The same in the other country's terms, US or UK; the text itself where both say the same. */
  readonly other: string
  /** Which of the pattern's readings explains it, from 0; null for words in full. */
  readonly reading: number | null
  /** Whether the reading explains a word that is read out as it stands: a special stitch. */
  readonly explains?: true
}

/** The same pieces as part of a measure in both systems. */
export function inSystem(system: NonNullable<Segment['system']>, segments: readonly Segment[]): readonly Segment[] {
  return segments.map((segment) => ({ ...segment, system }))
}

/** What a reader of all sizes sees. */
export function textForAll(segments: readonly Segment[]): string {
  return segments.map((segment) => segment.text).join('')
}

/** What a reader of one size sees; `size` is a position in the draft's list of sizes. */
export function textForSize(segments: readonly Segment[], size: number): string {
  return segments
    .filter((segment) => segment.show === 'always' || segment.show === size)
    .map((segment) => segment.text)
    .join('')
}

/** Sizes that the pieces tell apart: false for a text that is the same for every reader. */
export function differsBySize(segments: readonly Segment[]): boolean {
  return segments.some((segment) => segment.show !== 'always')
}
