import type { Read } from '../row-reading.ts'
import type { Word } from '../words.ts'
import type { Passage } from '../written.ts'
import type { Chunk } from './passage-text.ts'
import type { Prepared } from './prepare.ts'

/** Sizes that were named above rows. */
export interface Restriction {
  readonly only: readonly number[]
  /** It holds until words for all sizes come. */
  readonly lasts: boolean
  /** Where it stands. */
  readonly passage: Passage
  /** The passage of the first row below it; null until there is one. */
  within: Passage | null
}

export interface Found {
  readonly chunk: Chunk
  readonly prepared: Prepared
  /** The chunks of the section after it. */
  readonly further: readonly Chunk[]
}

/** What is known of a section while its chunks are taken one after the other. */
export interface SectionState {
  readonly heading: string
  /** Index of its first row. */
  readonly first: number
  piece: string
  /** Rows under the heading, or under a title line below it. */
  rows: number
  /** A label that stands alone; its steps are the next passage or line. */
  waiting: Found | null
  /** Words that sound like a foundation and could not be read. */
  beginning: Found | null
  /** Where the next row begins, said in a line before it: `Rejoin yarn in next unworked st.` */
  leading: Read | null
  restriction: Restriction | null
  /** Words that are no row, or a row without a label, stand before what is taken next. */
  broken: boolean
  /** Of these, that the yarn is cut. */
  ended: boolean
  /** A title that stands between the rows. */
  title: string | null
}

export function startSection(heading: string, first: number): SectionState {
  return {
    heading,
    first,
    piece: heading,
    rows: 0,
    waiting: null,
    beginning: null,
    leading: null,
    restriction: null,
    broken: false,
    ended: false,
    title: null,
  }
}

export function wordsOf({ own }: Prepared): readonly Word[] {
  return own.flatMap(({ words }) => words)
}
