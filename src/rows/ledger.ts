import type { Span } from '../diagnostic/index.ts'
import type { Segment } from '../measure/segment.ts'
import type { PerSize } from '../measure/value.ts'
import type { PlaceKind } from './fabric.ts'
import type { FabricRow } from './past.ts'
import type { UnknownWord } from './unknown.ts'

/**
 * `worked`: every step was read and came out. `unread`: some words could not be read.
 * `not-worked`: read, but the row before it could not be worked, or it does not come out.
 */
export type RowStatus = 'worked' | 'unread' | 'not-worked'

/** Names of special stitches by their other spellings, in lower case. */
export type SpecialNames = Readonly<Record<string, string>>

/** One row or round of a piece, as worked for every size. A range has one entry for each row it stands for. */
export interface LedgerRow {
  readonly piece: string
  /** Singular and bare, `Rnd 7`; null for a row without a label. */
  readonly label: string | null
  readonly side: 'RS' | 'WS' | null
  /** The words of the row, label included. */
  readonly at: Span
  readonly status: RowStatus
  /** Why it was not worked, in the trade's words; null when it was. */
  readonly reason: string | null
  /** Stitches by the counting rule of the pattern; null for a size that does not work this row. */
  readonly total: PerSize<number | null>
  /** Each stitch kind by its abbreviation in the draft's terms, space kind (`ch-2 sp`) and special stitch. */
  readonly counts: Readonly<Record<string, PerSize<number>>>
  /** What takes yarn and is in no count: chains (`ch`) of a foundation in this row, special stitches worked as one. */
  readonly besides: Readonly<Record<string, PerSize<number>>>
  /** Of the special stitches in `counts`: a placeholder may ask by any of them. */
  readonly names: SpecialNames
  /** The count that the draft states, by kind, `total` where it names none; null when nothing is stated. */
  readonly stated: Readonly<Record<string, PerSize<number | null>>> | null
  /** Whether stated and worked agree for every size; null when nothing is stated or nothing was worked. */
  readonly agrees: boolean | null
  /** Places of the row below that were left unworked. */
  readonly left: PerSize<number>
}

/** A row as the draft writes it, for the faces that show its words. */
export interface WrittenRow {
  readonly at: Span
  /** The label with its colon, without the bold marks around it; null for a row without a label. */
  readonly label: Span | null
  readonly steps: Span
  /** The stated count at the end, with its brackets. */
  readonly stated: Span | null
  /** Numbers typed for every size, `60 (72, 84)`, ready to be shown by size. */
  readonly lists: readonly { readonly at: Span; readonly segments: readonly Segment[] }[]
  /** Its entries in the ledger: the first and the one after the last. */
  readonly entries: readonly [first: number, end: number]
}

/** An abbreviation or special stitch that the rows use, with its meaning. */
export interface UsedTerm {
  readonly abbreviation: string
  /** In the draft's terms: `single crochet`; for a special stitch, its definition as the draft gives it. */
  readonly meaning: string
  readonly special: boolean
  /** Its first use. */
  readonly at: Span
}

/** All that reading and working the rows of a draft gives. */
export interface Ledger {
  readonly rows: readonly LedgerRow[]
  /** For each row of `rows` the places it has made, size by size; null where it was not worked. */
  readonly fabric: readonly PerSize<FabricRow | null>[]
  /** What the places of `fabric` are, by number. */
  readonly kinds: readonly PlaceKind[]
  readonly written: readonly WrittenRow[]
  readonly terms: readonly UsedTerm[]
  /** Of all special stitches that the draft defines or uses. */
  readonly names: SpecialNames
  /** Words that stopped the reader and are not known. */
  readonly unknown: readonly UnknownWord[]
}
