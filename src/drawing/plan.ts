import type { Line } from './drawing.ts'
import type { Point } from './path.ts'

/** A stretch of a piece that is measured. */
export interface Span {
  /** What it is, the same for every size. */
  readonly key: string
  readonly name: string
  readonly direction: 'across' | 'up'
  /** Where its dimension line stands: outside the piece, or within it. */
  readonly side: 'below' | 'above' | 'left' | 'right' | 'within'
  /** From where to where it is drawn, and where in the other direction; centimetres. */
  readonly from: number
  readonly to: number
  readonly at: number
  /** What its measure is reckoned from by the gauge. */
  readonly count: number
  readonly of: 'stitches' | 'rows'
  /** Written at its line before the measure, where that is not the length of the line. */
  readonly word?: string
}

/** From centimetres, upwards, to places in the drawing. */
export interface Scale {
  readonly place: (x: number, y: number) => Point
  /** Points for so many centimetres. */
  readonly length: (centimetres: number) => number
}

/** A piece of one size, ready to be drawn. */
export interface Plan {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
  /** In the order in which they are listed. */
  readonly spans: readonly Span[]
  readonly lines: (scale: Scale) => readonly Line[]
}

/** Stitches and rows in one centimetre, for the drawing; measures are reckoned exactly elsewhere. */
export interface Density {
  readonly stitches: number
  readonly rows: number
}
