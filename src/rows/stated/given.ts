import type { Vocabulary } from '../reader.ts'
import type { Word } from '../words.ts'
import type { StatedItem } from './item.ts'

/** The words of one row, and what is known of them. */
export interface GivenWords {
  readonly all: readonly Word[]
  readonly vocabulary: Vocabulary
  /** Whether a word is the first of a line of the draft. */
  readonly opensLine: (word: Word) => boolean
}

/** Counts and where they stand. Without items they only tell how many stitches come or go. */
export interface FoundCounts {
  readonly from: number
  readonly to: number
  readonly items: readonly StatedItem[]
  readonly bare: boolean
}

export const emphasis = /^(?:\*{1,3}|_)$/
export const trailing = /^(?:\*{1,3}|[._!/])$/

/** Words that begin a clause or sentence after which nothing is worked: `(6), join. Fasten off.` */
export const nextClause =
  /^(?:fasten|finish|break|cut|weave|stuff|change|changing|place|placing|mark|move|now|cont|continue|do|don’t|don't|turn|turning|join|joining|sl|ss|slip|with|rs|ws|insert|attach|pull|sew|pm|end|set|remove|put|drop|close|secure|leave|leaving)$/

/** Signs that a count follows. */
export function isMark(text: string): boolean {
  return /^(?:=>?|[–→])$/.test(text)
}

export function textOf(words: readonly Word[], at: number): string {
  return words[at]?.text ?? ''
}

/** The words from `from` to `to` without marks of emphasis and full stops around them. */
export function trimmed(words: readonly Word[], from: number, to: number): readonly [number, number] {
  let first = from
  let end = to
  while (first < end && emphasis.test(textOf(words, first))) first += 1
  while (end > first && trailing.test(textOf(words, end - 1))) end -= 1
  return [first, end]
}

/** `[6 rnds]`, `(6 rows in all)`: how many rows a range has. */
function isRowsRemark(words: readonly Word[], open: number, close: number): boolean {
  return (
    words[open + 1]?.kind === 'number' && /^(?:rows?|rnds?|rounds?)$/.test(textOf(words, open + 2)) && close - open < 6
  )
}

/** The last word that is no full stop, mark of emphasis or remark on how many rows there are. */
export function lastWord(words: readonly Word[], pairs: readonly (readonly [number, number])[]): number {
  let last = words.length - 1
  for (;;) {
    while (last >= 0 && trailing.test(textOf(words, last))) last -= 1
    const pair = pairs.find(([, close]) => close === last)
    if (pair === undefined || !isRowsRemark(words, pair[0], pair[1])) return last
    last = pair[0] - 1
  }
}
