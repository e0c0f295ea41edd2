import type { Source } from './source.ts'

/** Inches as published: one number, or the ends of a range. Centimetres are reckoned from them, exactly. */
export type Inches = number | readonly [low: number, high: number]

export interface BodyMeasure {
  readonly key: string
  readonly label: string
  /** One for each size of the table, in its order. */
  readonly inches: readonly Inches[]
  /** `seen` or `from memory`. */
  readonly how: string
  readonly note?: string
}

/** Whom a size is drawn on; what goes beyond X-Large is looked for by itself. */
export type Wearer = 'babies' | 'children' | 'women' | 'women-2x' | 'men' | 'men-2x'

/** Body measures, no ease. */
export interface BodyTable {
  readonly source: Source
  readonly sizes: readonly string[]
  /** One for each size. */
  readonly wearers: readonly Wearer[]
  /** What the tape goes around, by measure; a few keys serve several measures. */
  readonly howToMeasure: Readonly<Record<string, string>>
  readonly measures: readonly BodyMeasure[]
  readonly uncertain: readonly string[]
}
