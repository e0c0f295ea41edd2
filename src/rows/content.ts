import type { Span } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/value.ts'
import type { Count } from './count.ts'
import type { Schedule } from './phrase/schedule.ts'
import { plainRow, readSchedule } from './phrase/schedule.ts'
import { readTimes } from './phrase/times.ts'
import type { ReadSteps } from './read.ts'
import { readSteps } from './read.ts'
import type { Reader, Unread, Vocabulary } from './reader.ts'
import {
  attempt,
  createReader,
  numberAt,
  passClause,
  peek,
  spanSince,
  take,
  takeNumber,
  takeOrdinal,
  takeStitch,
  textAt,
} from './reader.ts'
import type { Step } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import type { Word } from './words.ts'
import { wordsOfText } from './words.ts'

/** How many rows something goes on for. */
export type Extent =
  | { readonly kind: 'rows'; readonly count: Count }
  /** So many times through all the rows named. */
  | { readonly kind: 'times'; readonly count: Count }
  /** Until the piece, or this part of it, is so long (cm). */
  | { readonly kind: 'length'; readonly centimetres: Count; readonly wholePiece: boolean }

/** What a row's words ask for. */
export type Content =
  | { readonly kind: 'steps'; readonly steps: readonly Step[] }
  /** `Rep Rows 3 and 4`; `rows` are the numbers named, or how many rows back. */
  | {
      readonly kind: 'reference'
      readonly rows: { readonly numbers: PerSize<readonly number[]> } | { readonly back: number }
      readonly extent: Extent | null
      readonly at: Span
    }
  /** `work even`: one stitch in each. */
  | { readonly kind: 'even'; readonly steps: readonly Step[]; readonly extent: Extent | null }
  /** `dec 1 st at each end of every 4th row 6 times` */
  | ({ readonly kind: 'schedule' } & Schedule)
  /** Null for a size that the words are not for. */
  | { readonly kind: 'bySize'; readonly options: PerSize<Content | null> }

export type ReadContent =
  | { readonly content: Content; readonly stitch: Stitch; readonly unread: null }
  | { readonly content: null; readonly stitch: Stitch; readonly unread: Unread }

const rowWord = /^(?:row|rows|rnd|rnds|round|rounds)$/
const longestReference = 200

function passEnd(reader: Reader): boolean {
  while (take(reader, '.', ',', ';', ':'));
  return reader.at >= reader.end
}

interface RowSpan {
  readonly from: Count
  readonly to: Count
}

/** `4`, `3 and 4`, `2–5`: the rows named, for every size. */
function rowNumbers(reader: Reader): PerSize<readonly number[]> | null {
  const spans: RowSpan[] = []
  for (let from = rowNumber(reader); from !== null && spans.length < longestReference; from = nextNumber(reader)) {
    const ranges = take(reader, '-', '–', 'to', 'through', 'thru')
    const to = ranges ? rowNumber(reader) : from
    if (to === null) return null
    spans.push({ from, to })
    if (ranges) break
  }
  return spans.length === 0
    ? null
    : Array.from({ length: reader.vocabulary.sizes }, (_, size) => rowsOfSpans(spans, size))
}

function rowNumber(reader: Reader): Count | null {
  return takeNumber(reader) ?? takeOrdinal(reader)
}

/** The number after `and` or a comma; null, with nothing taken, where what follows is no number. */
function nextNumber(reader: Reader): Count | null {
  const from = reader.at
  const joins = take(reader, 'and', ',') || take(reader, '+')
  if (joins) take(reader, 'and')
  if (joins && numberAt(reader) !== null) return rowNumber(reader)
  reader.at = from
  return null
}

function rowsOfSpans(spans: readonly RowSpan[], size: number): readonly number[] {
  return spans.flatMap(({ from, to }) => {
    const [first, last] = [from[size] ?? null, to[size] ?? null]
    if (first === null || last === null) return []
    const length = Math.min(Math.max(last - first + 1, 0), longestReference)
    return Array.from({ length }, (_, index) => first + index)
  })
}

const centimetresIn: Readonly<Record<string, number>> = {
  mm: 0.1,
  cm: 1,
  m: 100,
  in: 2.54,
  inch: 2.54,
  inches: 2.54,
  '"': 2.54,
  '”': 2.54,
}
const fractions: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅛': 0.125,
  '⅜': 0.375,
  '⅝': 0.625,
  '⅞': 0.875,
}

/** `31 cm`, `12½ in`, a placeholder that is a length */
function length(reader: Reader): Count | null {
  const word = peek(reader)
  if (word?.kind === 'length') {
    reader.at += 1
    return word.centimetres
  }
  if (word?.kind !== 'number') return null
  reader.at += 1
  const fraction = fractions[textAt(reader)] ?? 0
  if (fraction > 0) reader.at += 1
  const unit = centimetresIn[textAt(reader)]
  if (unit === undefined) return null
  reader.at += 1
  return word.count.map((value) => (value === null ? null : (value + fraction) * unit))
}

function untilLength(reader: Reader): Extent | null {
  const until = take(reader, 'until', 'till', 'to')
  if (!until && !take(reader, 'for')) return null
  for (let passed = 0; passed < 12 && reader.at < reader.end; passed += 1) {
    const found = attempt(reader, length)
    if (found !== null) {
      passClause(reader)
      return { kind: 'length', centimetres: found, wholePiece: until }
    }
    reader.at += 1
  }
  return null
}

/** `for 12 more rows`, `12 rows` */
function forRows(reader: Reader): Extent | null {
  take(reader, 'for')
  take(reader, 'the', 'next', 'a', 'another')
  const count = takeNumber(reader)
  if (count === null) return null
  take(reader, 'more')
  if (!rowWord.test(textAt(reader))) return null
  reader.at += 1
  take(reader, 'more')
  return { kind: 'rows', count }
}

function times(reader: Reader): Extent | null {
  const found = readTimes(reader, false)
  return found === null || found.kind === 'until' ? null : { kind: 'times', count: found.count }
}

function extent(reader: Reader): Extent | null {
  take(reader, ',', ';')
  return attempt(reader, untilLength) ?? attempt(reader, forRows) ?? attempt(reader, times)
}

/** `, ending with a WS row`: which row is last follows from how many there are. */
function passEnding(reader: Reader): void {
  take(reader, ',')
  if (take(reader, 'ending', 'ends', 'end')) passClause(reader)
}

function named(reader: Reader): { numbers: PerSize<readonly number[]> } | { back: number } | null {
  take(reader, 'the', 'these', 'for')
  if (take(reader, 'last', 'previous', 'prev')) {
    const back = takeNumber(reader)?.[0] ?? 1
    if (!rowWord.test(textAt(reader))) return null
    reader.at += 1
    return { back }
  }
  if (rowWord.test(textAt(reader))) {
    reader.at += 1
    take(reader, '.')
    const numbers = rowNumbers(reader)
    return numbers === null ? null : { numbers }
  }
  const numbers = rowNumbers(reader)
  if (numbers === null || !rowWord.test(textAt(reader))) return null
  reader.at += 1
  return { numbers }
}

/**
 * Rows worked as earlier ones.
 *
 *     Rep Rows 3 and 4 until piece measures 31 cm.
 *     ^
 */
function reference(reader: Reader): Content | null {
  const from = reader.at
  take(reader, 'work', 'worked')
  take(reader, 'the')
  const opens = take(reader, 'rep', 'repeat', 'as', 'same', 'like')
  if (!opens) return null
  take(reader, 'as', 'for')
  take(reader, 'as', 'for')
  const rows = named(reader)
  if (rows === null) return null
  const at = spanSince(reader, from)
  const until = attempt(reader, extent)
  passEnding(reader)
  take(reader, '.')
  if (take(reader, 'fasten')) passClause(reader)
  return passEnd(reader) ? { kind: 'reference', rows, extent: until, at } : null
}

/** `Work even in sc for 10 rows`, `Sc even until …` */
function even(reader: Reader): Content | null {
  const from = reader.at
  take(reader, 'work', 'continue', 'cont')
  const before = attempt(reader, forRows)
  const front = attempt(reader, takeStitch)
  if (!take(reader, 'even')) return null
  take(reader, 'in')
  const stitch = attempt(reader, takeStitch) ?? front ?? reader.stitch
  reader.stitch = stitch
  take(reader, 'in')
  take(reader, 'pattern', 'pat', 'patt', 'stitches')
  const at = spanSince(reader, from)
  const until = before ?? attempt(reader, extent)
  passEnding(reader)
  return passEnd(reader) ? { kind: 'even', steps: plainRow(reader, stitch, at), extent: until } : null
}

function schedule(reader: Reader): Content | null {
  const found = readSchedule(reader)
  return found === null ? null : { kind: 'schedule', ...found }
}

/** The words of a row for one size; null where its phrase does not apply to the size. */
function wordsFor(size: number, words: readonly Word[], sizes: number): readonly Word[] | null {
  const own: Word[] = []
  for (const word of words) {
    const text = word.kind === 'bySize' ? (word.texts[size] ?? null) : ''
    if (text === null) return null
    own.push(...(word.kind === 'bySize' ? wordsOfText(text, word.at, sizes) : [word]))
  }
  return own
}

/** Rows that differ by size: a phrase alone, or one that stands for several rows. */
function bySize(words: readonly Word[], vocabulary: Vocabulary, stitch: Stitch | null): ReadContent | null {
  if (!words.some((word) => word.kind === 'bySize')) return null
  const alone = words.every((word) => word.kind === 'bySize' || word.text === '.')
  const options: (Content | null)[] = []
  let last: Stitch | null = stitch
  for (let size = 0; size < vocabulary.sizes; size += 1) {
    const own = wordsFor(size, words, vocabulary.sizes)
    const read = own === null ? null : readContent(own, vocabulary, stitch)
    if (read !== null && read.content === null) return alone ? read : null
    options.push(read?.content ?? null)
    last = read?.stitch ?? last
  }
  if (!(alone || options.some((option) => option?.kind === 'schedule')) || last === null) return null
  return { content: { kind: 'bySize', options }, stitch: last, unread: null }
}

function fromSteps(read: ReadSteps): ReadContent {
  const { stitch } = read
  if (read.steps === null) return { content: null, stitch, unread: read.unread }
  return { content: { kind: 'steps', steps: read.steps }, stitch, unread: null }
}

/** Reads a row's words, without label and stated count. */
export function readContent(words: readonly Word[], vocabulary: Vocabulary, stitch: Stitch | null): ReadContent {
  const different = bySize(words, vocabulary, stitch)
  if (different !== null) return different
  const reader = createReader(words, vocabulary, () => null, stitch)
  const content = attempt(reader, reference) ?? attempt(reader, even) ?? attempt(reader, schedule)
  if (content !== null) return { content, stitch: reader.stitch, unread: null }
  return fromSteps(readSteps(words, vocabulary, stitch))
}
