import type { Wearer } from '../grading/index.ts'
import type { Segment } from '../measure/segment.ts'
import type { Kind, PerSize, Unit } from '../measure/value.ts'
import type { LedgerRow } from '../rows/ledger.ts'
import type { Block, Inline } from './node.ts'

/**
 * A pattern with every number settled: the only thing that a face (page, PDF, counts, proof) reads.
 * Plain data: it survives JSON. Faces pick from it and compute nothing.
 */
export interface Pattern {
  /** Short name in addresses and file names, from the draft's folder: `kelp-line-cowl`. */
  readonly slug: string
  readonly title: string
  readonly summary: string | null
  /** The summary in pieces, as a page shows it; empty without one. */
  readonly lead: readonly Segment[]
  readonly terms: 'us' | 'uk'
  /** What it is, singular and in lower case: `hat`; a set has several. */
  readonly kinds: readonly string[]
  readonly skill: 'basic' | 'easy' | 'intermediate' | 'complex' | null
  /** ISO date, `2026-03-14`. */
  readonly published: string | null
  readonly edition: string | null
  readonly changes: readonly Change[]
  readonly sizes: readonly string[]
  /** Whom the sizes are drawn on; empty where no published body table says it. */
  readonly wearers: readonly Wearer[]
  /** Lines of the sizes table: what each size fits, and the finished measures. One cell a size. */
  readonly fits: readonly MeasureLine[]
  readonly finished: readonly MeasureLine[]
  /** The finished measures in numbers, beside what they were to be; those that are words are left out. */
  readonly measures: readonly Measure[]
  /** By what a reader's own measure finds a size; null where the draft names no body table. */
  readonly fit: Fit | null
  readonly materials: Materials
  readonly gauge: readonly GaugeLine[]
  /** Generated from the rows: only what is used, in the order of the alphabet. */
  readonly abbreviations: readonly Abbreviation[]
  /** What the abbreviations and special stitches of the text are read out or explained as, each once. */
  readonly readings: readonly Reading[]
  /** What makers and wearers should be warned of; empty for most patterns. */
  readonly cautions: readonly Caution[]
  readonly cover: { readonly src: string; readonly alt: string } | null
  readonly film: Film | null
  readonly body: readonly Block[]
  readonly rows: readonly LedgerRow[]
  readonly pieces: readonly PieceUse[]
  readonly values: Readonly<Record<string, NamedValue>>
  readonly yarn: Readonly<Record<string, YarnUse>>
  /** What a reader may change; empty where the draft allows nothing. */
  readonly adjustables: readonly Adjustable[]
  /** What a reader has changed; empty as the pattern is published. */
  readonly own: readonly OwnNumber[]
}

/** A length, or the gauge of a swatch, that a reader may give instead of the draft's. */
export type Adjustable = AdjustableLength | AdjustableGauge

export interface AdjustableLength {
  readonly kind: 'length'
  /** As the grading blocks name it. */
  readonly name: string
  /** `Body length` */
  readonly label: string
  /** As it is published. */
  readonly text: readonly Segment[]
  /** In centimetres; null for a size that has no such length. */
  readonly bySize: PerSize<number | null>
  /** The unit of the draft. */
  readonly unit: 'cm' | 'in'
  /** The least and the most that it may be, in centimetres. */
  readonly from: number
  readonly to: number
}

export interface AdjustableGauge {
  readonly kind: 'gauge'
  /** Name of the swatch; empty for the only one. */
  readonly name: string
  readonly label: string
  readonly text: readonly Segment[]
  readonly stitches: AdjustableRate | null
  readonly rows: AdjustableRate | null
  /** Per cent by which a reader's gauge may differ. */
  readonly within: number
}

/** So many over a length: `12` over `10 cm`. */
export interface AdjustableRate {
  readonly count: number
  readonly over: readonly Segment[]
}

/** A number that is a reader's own, beside the published one. */
export interface OwnNumber {
  readonly label: string
  readonly own: readonly Segment[]
  readonly published: readonly Segment[]
}

/** The designer's own film, on another site: it is linked to, never loaded. */
export interface Film {
  readonly url: string
  readonly moments: readonly Moment[]
}

/** What the film shows from some moment on. */
export interface Moment {
  /** A row or a heading, as the draft names it: `Rnd 2`. */
  readonly place: string
  /** `8:13` */
  readonly time: string
  readonly seconds: number
  /** The film from that moment on. */
  readonly href: string
}

export interface Change {
  readonly edition: string
  readonly date: string | null
  readonly note: string
}

/** A measure with one cell for each size. `cells` are the same values as `value`, each on its own, in pieces for all. */
export interface MeasureLine {
  readonly label: string
  readonly value: ValueNode
  readonly cells: PerSize<readonly Segment[]>
}

/** A finished measure in numbers, in its unit; null for a size that does not have it. */
export interface Measure {
  readonly label: string
  /** Null for a count. */
  readonly unit: Unit | null
  /** What it comes to when no count on the way to it is rounded; null where none is, and for what is no length. */
  readonly target: PerSize<number | null> | null
  readonly made: PerSize<number | null>
  /** What is made less what was to be. */
  readonly difference: PerSize<number | null> | null
  /** Of a closed edge the heads that it must pass; null for any other measure, and where no head is known. */
  readonly head: HeadMeasure | null
}

/** The heads that a closed edge must pass, in its unit. */
export interface HeadMeasure {
  readonly around: PerSize<number | null>
  /** Per cent that the edge stretches, and what it comes to then. */
  readonly stretch: number
  readonly stretched: PerSize<number | null>
}

/** The body that each size is made for, by the measure that leads its table, in numbers as they are printed. */
export interface Fit {
  /** `Bust`, `Head circumference` */
  readonly label: string
  /** The unit that the page leads with. */
  readonly unit: 'cm' | 'in'
  readonly low: FitMeasure
  readonly high: FitMeasure
  /** The finished measure that goes around the same place: what it is wider is the ease. Null where none is given. */
  readonly made: FitMeasure | null
}

/** One number a size in each unit, each rounded by itself; null for a size that is drawn on no body. */
export type FitMeasure = Readonly<Record<'cm' | 'in', PerSize<number | null>>>

export interface Materials {
  readonly yarn: readonly YarnLine[]
  /** What may be bought instead; null where no length is known. */
  readonly yarnNote: string | null
  /** `6.5 mm (US K-10½)` */
  readonly hooks: readonly string[]
  readonly notions: readonly string[]
}

export interface YarnLine {
  /** What the rows call it: `main`. */
  readonly as: string
  /** Published category, 0 to 7; null where the draft names none. */
  readonly category: number | null
  /** `Bulky (category 5), wool blend, 100 g (3½ oz) = 110 m (120 yd) a skein` */
  readonly description: readonly Segment[]
  /** Amount for each size, with a margin; null when it can't be estimated. */
  readonly amount: ValueNode | null
}

/** `12 stitches and 8 rows = 10 cm (4 in)` with the hook and stitch it was measured in. */
export interface GaugeLine {
  readonly name: string | null
  readonly text: readonly Segment[]
}

export interface Abbreviation {
  readonly abbreviation: string
  /** In the draft's terms; of a special stitch, its definition. */
  readonly meaning: string
  readonly special: boolean
  /** The same in the other country's terms; null where these write the word in full. */
  readonly other: { readonly abbreviation: string; readonly meaning: string } | null
}

/** What may hurt a child who wears or holds the piece. */
export interface Caution {
  /** Ends by sending the reader to the rules of the place. */
  readonly text: string
  /** The published rules and guidance that it rests on. */
  readonly source: string
  /** Sizes it is for, as positions; null for all. */
  readonly sizes: readonly number[] | null
}

/** `single crochet` and `double crochet`, for `sc` in US terms; for a special stitch, its definition. */
export interface Reading {
  readonly own: string
  /** In the other country's terms. */
  readonly other: string
  /** Whether the word reads well as it stands, and this explains it: a special stitch. */
  readonly explains: boolean
}

/** A printed value. Page and PDF show the same id with the same pieces; a test compares them. */
export interface ValueNode {
  readonly type: 'value'
  readonly id: string
  readonly segments: readonly Segment[]
}

/** A piece by the name that its rows have, and how often it is made. */
export interface PieceUse {
  readonly name: string
  readonly times: PerSize<number>
}

/** A name of the grading block with its value, as numbers in `unit`; text for words. */
export interface NamedValue {
  readonly kind: Kind | 'text'
  readonly unit: Unit | null
  readonly bySize: PerSize<number | string | null>
}

/** What a yarn comes to, rounded up; nothing to spare but in the skeins. */
export interface YarnUse {
  readonly grams: PerSize<number>
  /** Null where the draft does not give the skein's length. */
  readonly metres: PerSize<number> | null
  readonly yards: PerSize<number> | null
  /** Whole skeins with the margin; null where the draft does not give the skein's weight. */
  readonly skeins: PerSize<number> | null
  /** Per cent to spare in `skeins`. */
  readonly margin: number
}

export type { Block, Inline }
