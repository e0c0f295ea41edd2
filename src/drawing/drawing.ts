import { differsBySize, type Segment } from '../measure/index.ts'

/**
 * A drawing that every face renders in its own way: lines and words in one plane, in points, from the upper left
 * corner. Plain data: it survives JSON.
 */
export interface Drawing {
  readonly width: number
  readonly height: number
  readonly lines: readonly Line[]
  readonly labels: readonly Label[]
}

/**
 * `shape`: the outline of a piece, lightly filled; `thin`: a dimension line, an arrow; `symbol`: the strokes of stitch
 * symbols; `solid`: filled.
 */
export type Look = 'shape' | 'thin' | 'symbol' | 'solid'

export interface Line {
  readonly look: Look
  /** `M x y`, `L x y`, `C x y x y x y` and `Z`, all absolute and parted by blanks: SVG and PDF both can say it. */
  readonly path: string
}

/** A printed value with its number in the pattern. */
export interface DrawnValue {
  readonly type: 'value'
  readonly id: string
  readonly segments: readonly Segment[]
}

/** Words in a drawing, line under line. */
export interface Label {
  readonly x: number
  /** Baseline of the first line. */
  readonly y: number
  readonly anchor: 'start' | 'middle' | 'end'
  readonly size: number
  readonly lines: readonly (string | DrawnValue)[]
  /** Stands in the place of the lines where all sizes are shown, on a baseline of its own; null where there is room. */
  readonly letter: { readonly text: string; readonly y: number } | null
}

/** A measure of a schematic, as it is listed below. */
export interface Measure {
  readonly letter: string
  readonly name: string
  readonly value: DrawnValue
}

/** A symbol of a chart with what it stands for. */
export interface KeyEntry {
  readonly symbol: Drawing
  readonly words: string
}

/** A drawing with all that stands around it. */
export interface Figure {
  readonly kind: 'schematic' | 'chart'
  readonly piece: string
  /** What stands below it where the draft gives no words of its own. */
  readonly caption: string
  /** What the drawing shows, in words, for readers who do not see it. */
  readonly alt: string
  readonly drawing: Drawing
  readonly measures: readonly Measure[]
  /** Whether there is no room for all sizes side by side: the drawing has letters then, and the measures are listed. */
  readonly lettered: boolean
  readonly key: readonly KeyEntry[]
}

/** Distance between the baselines of a label's lines, as a part of its size. */
export const lineStep = 1.2

/** Room that a text takes at most, in points. The core has no fonts, so it reckons with wide letters. */
export function roomFor(text: string, size: number): number {
  return text.length * size * 0.56
}

/** Whether letters stand for the measures in a drawing: not where it shows one size only. */
export function isLettered({ lettered, measures }: Pick<Figure, 'lettered' | 'measures'>): boolean {
  return lettered && measures.some(({ value }) => differsBySize(value.segments))
}
