import type { Worked } from '../work.ts'

/**
 * What a reader changes of a pattern, as plain data: lengths by the names that the grading blocks give them, `{depth: '30 cm'}`,
 * and gauges by the names of their swatches, `''` for the only one, `{'': {stitches: '13', rows: '9.5'}}`: counts over the
 * length that the draft gives them for.
 */
export interface Changes {
  readonly lengths: Readonly<Record<string, string>>
  readonly gauges: Readonly<Record<string, OwnGauge>>
}

/** Null for what the swatch does not tell. */
export interface OwnGauge {
  readonly stitches: string | null
  readonly rows: string | null
}

/** A reader's changes, with the pattern as it was published. */
export interface Own {
  readonly changes: Changes
  readonly published: Worked
}
