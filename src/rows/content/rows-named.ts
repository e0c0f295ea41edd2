import type { PerSize } from '../../measure/value.ts'
import type { Count } from '../count.ts'
import { calledBy } from '../label/head.ts'
import type { Reader } from '../reader.ts'
import { attempt, numberAt, one, peek, take, takeNumber, takeOrdinal, textAt } from '../reader.ts'
import { rowWord } from './extent.ts'

/** Earlier rows that a row goes back to. */
export type RowsNamed =
  | { readonly kind: 'numbers'; readonly numbers: PerSize<readonly number[]> }
  /** So many rows back. */
  | { readonly kind: 'back'; readonly back: number }
  /** `dec row` */
  | { readonly kind: 'called'; readonly called: string }
  /** `in pattern`: the rows that have been repeated so far. */
  | { readonly kind: 'pattern' }

const longestReference = 200

interface RowSpan {
  readonly from: Count
  readonly to: Count
}

function passRowWord(reader: Reader): boolean {
  if (!rowWord.test(textAt(reader)) && !(textAt(reader) === 'r' && numberAt(reader, 1)?.glued === true)) return false
  reader.at += 1
  take(reader, '.')
  return true
}

/** `Body rows` before a number: rows that are told by their part and their number */
function passNamedRow(reader: Reader): true | null {
  const [word, row] = [textAt(reader), textAt(reader, 1)]
  if (peek(reader)?.kind !== 'word' || noName.test(word) || !rowWord.test(row)) return null
  reader.at += 2
  // `rib row 70 times` is one row, so many times.
  return numberAt(reader) === null || /^(?:times?|more|x)$/.test(textAt(reader, 1)) ? null : true
}

function rowNumber(reader: Reader): Count | null {
  passRowWord(reader)
  if (rowWord.test(textAt(reader, 1)) && take(reader, 'first')) return one(reader)
  const ordinal = takeOrdinal(reader)
  if (ordinal === null) return takeNumber(reader)
  return ordinal
}

/** The number after `and` or a comma; null, with nothing taken, where what follows is no number. */
function nextNumber(reader: Reader): Count | null {
  const from = reader.at
  const joins = take(reader, 'and', ',') || take(reader, '+', '/')
  if (joins) take(reader, 'and')
  const cardinal = numberAt(reader) !== null
  const row = joins ? rowNumber(reader) : null
  // `Rows 2 and 3, 4 times`: another number, of something else.
  if (row === null || (cardinal && /^(?:times?|more|x|rows?|rnds?|rounds?|sts?)$/.test(textAt(reader)))) {
    reader.at = from
    return null
  }
  return row
}

/** `4`, `3 and 4`, `2–5`, `2 to Row 5`: the rows named, for every size. */
function rowNumbers(reader: Reader): PerSize<readonly number[]> | null {
  const spans: RowSpan[] = []
  for (let from = rowNumber(reader); from !== null && spans.length < longestReference; from = nextNumber(reader)) {
    const start = reader.at
    // `Rows 2 and 3 through Row 9` goes on with the two up to the last.
    const upTo = spans.length > 0 && /^(?:to|through|thru)$/.test(textAt(reader)) && rowWord.test(textAt(reader, 1))
    const ranges = !upTo && take(reader, '-', '–', 'to', 'through', 'thru')
    const to = ranges ? rowNumber(reader) : from
    // `Rep Row 2 to end`, `Rep Row 3 – 31 sts`: no second row.
    const further = to === null || (ranges && /^(?:sts?|stitches|sc|hdc|dc|tr|cm|in|inches)$/.test(textAt(reader)))
    if (further) reader.at = start
    spans.push({ from, to: further || to === null ? from : to })
  }
  return spans.length === 0
    ? null
    : Array.from({ length: reader.vocabulary.sizes }, (_, size) => rowsOfSpans(spans, size))
}

function rowsOfSpans(spans: readonly RowSpan[], size: number): readonly number[] {
  return spans.flatMap(({ from, to }) => {
    const [first, last] = [from[size] ?? null, to[size] ?? null]
    if (first === null || last === null) return []
    const length = Math.min(Math.max(last - first + 1, 0), longestReference)
    return Array.from({ length }, (_, index) => first + index)
  })
}

/** `last 2 rows`, `previous row`, `these 2 rows`, `the row above` */
function back(reader: Reader): RowsNamed | null {
  const opens = take(reader, 'last', 'previous', 'prev', 'preceding', 'above', 'this', 'these', 'prior')
  const count = opens ? takeNumber(reader) : null
  const single = /^(?:row|rnd|round)$/.test(textAt(reader))
  if (!passRowWord(reader)) return null
  if (!opens) return take(reader, 'above', 'below') ? { kind: 'back', back: 1 } : null
  // `these rows` does not say how many.
  return count === null && !single ? { kind: 'pattern' } : { kind: 'back', back: count?.[0] ?? 1 }
}

/** `Row 2`, `[Rnds 2–7]`, `2nd and 3rd rows`, `R2`, and after `as` or `like` a bare `2` */
function numbered(reader: Reader, bare: boolean): RowsNamed | null {
  const opens = take(reader, '[', '(')
  take(reader, 'from')
  const first = passRowWord(reader) || attempt(reader, passNamedRow) !== null
  // `2nd row` is one of the rows, `2 rows` is how many.
  const ordinal = textAt(reader) === 'first' || (peek(reader)?.kind === 'number' && numberAt(reader) === null)
  const numbers = rowNumbers(reader)
  if (numbers === null) return null
  const last = !first && ordinal && passRowWord(reader)
  if (opens && !take(reader, ']', ')')) return null
  if (!(first || last || (bare && !opens))) return null
  take(reader, 'inclusive', 'incl')
  return { kind: 'numbers', numbers }
}

const mostWords = 3
const noName = /^(?:a|an|one|each|every|any|another|next|more|few|some|this|that|these|those|first|whole|entire|same)$/

/** `dec rnd`, `Increase Row`, `pattern rows` */
function called(reader: Reader): RowsNamed | null {
  const words: string[] = []
  if (noName.test(textAt(reader))) return null
  while (words.length < mostWords && !rowWord.test(textAt(reader))) {
    if (peek(reader)?.kind !== 'word') return null
    words.push(textAt(reader))
    reader.at += 1
  }
  const row = textAt(reader)
  if (words.length === 0 || !rowWord.test(row)) return null
  reader.at += 1
  if (/^(?:pattern|patt|pat)$/.test(words.join(' '))) return { kind: 'pattern' }
  return row.endsWith('s') ? null : { kind: 'called', called: calledBy(`${words.join(' ')} ${row}`) }
}

/** @param bare whether a number may stand without `row` */
export function readRowsNamed(reader: Reader, bare: boolean): RowsNamed | null {
  take(reader, 'the', 'for')
  return attempt(reader, back) ?? attempt(reader, (inner) => numbered(inner, bare)) ?? attempt(reader, called)
}
