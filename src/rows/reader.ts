import type { Span } from '../diagnostic/index.ts'
import { cover } from '../diagnostic/index.ts'
import type { Count } from './count.ts'
import { everySize } from './count.ts'
import type { LoopCode } from './past.ts'
import type { Special, Step } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'
import type { Stitch } from './terms/stitch.ts'
import { plain } from './terms/stitch.ts'
import type { NumberWord, Word } from './words.ts'

/** The words that stopped the reader, and what would have been read there. */
export interface Unread {
  readonly at: Span
  readonly words: string
  readonly expected: string
  /** A repeat goes back to this mark, which stands nowhere before it. */
  readonly mark: string | null
}

/** What the rows of a pattern share while they are read. */
export interface Vocabulary {
  readonly sizes: number
  /** Names of the sizes in the words of a row, `adult s`; none where they are not known. */
  readonly sizeNames: readonly string[]
  readonly dictionary: Dictionary
  /** By spelling in lower case. */
  readonly specials: ReadonlyMap<string, Special>
}

/** A place in the words of one row. Phrases move `at` forward, or give null and are put back. */
export interface Reader {
  readonly words: readonly Word[]
  readonly vocabulary: Vocabulary
  /** The closing bracket of each opening one. */
  readonly closing: ReadonlyMap<number, number>
  /** Reads the steps up to `end`; null when some words can't be read. */
  readonly sequence: (reader: Reader, end: number) => readonly Step[] | null
  at: number
  /** Index after the last word that may be read. */
  end: number
  depth: number
  /** The stitch that `inc` means. */
  stitch: Stitch
  /** Where reading got furthest and stopped. */
  unread: Unread | null
  /** Whether some word names a loop to work into. */
  readonly namesLoops: boolean
  /** The loop named for all that follows, as far as the words have been heard. */
  loop: LoopCode | null
  heard: number
}

/** One written form. `opens` is a cheap look at the next word; `read` gives null when it is another form. */
export interface Phrase {
  readonly name: string
  readonly opens: (reader: Reader) => boolean
  readonly read: (reader: Reader) => readonly Step[] | null
}

export const maximalDepth = 40

export function peek(reader: Reader, ahead = 0): Word | undefined {
  const at = reader.at + ahead
  return at < reader.end ? reader.words[at] : undefined
}

/** The text of a word or mark ahead; empty for the end and for numbers. */
export function textAt(reader: Reader, ahead = 0): string {
  const word = peek(reader, ahead)
  return word !== undefined && (word.kind === 'word' || word.kind === 'mark') ? word.text : ''
}

/** Takes the next word if it is one of these. */
export function take(reader: Reader, ...texts: readonly string[]): boolean {
  const text = textAt(reader)
  if (text === '' || !texts.includes(text)) return false
  reader.at += 1
  return true
}

/** Takes words that stand one after the other, all or none. */
export function takeAll(reader: Reader, ...texts: readonly string[]): boolean {
  if (!texts.every((text, ahead) => textAt(reader, ahead) === text)) return false
  reader.at += texts.length
  return true
}

/** A whole cardinal number ahead, not an ordinal. */
export function numberAt(reader: Reader, ahead = 0): NumberWord | null {
  const word = peek(reader, ahead)
  return word?.kind === 'number' && !word.ordinal && word.count.every(isWhole) ? word : null
}

function isWhole(value: number | null): boolean {
  return value === null || Number.isInteger(value)
}

export function takeNumber(reader: Reader): Count | null {
  const number = numberAt(reader)
  if (number === null) return null
  reader.at += 1
  return number.count
}

export function takeOrdinal(reader: Reader): Count | null {
  const word = peek(reader)
  if (word?.kind !== 'number' || !word.ordinal) return null
  reader.at += 1
  return word.count
}

export function one(reader: Reader): Count {
  return everySize(1, reader.vocabulary.sizes)
}

/** Tries `read`; puts the reader back when it gives null. */
export function attempt<T>(reader: Reader, read: (reader: Reader) => T | null): T | null {
  const from = reader.at
  const result = read(reader)
  if (result === null) reader.at = from
  return result
}

/** The words from `from` to where the reader stands. */
export function spanSince(reader: Reader, from: number): Span {
  const first = reader.words[from]?.at ?? reader.words.at(-1)?.at ?? { start: 0, end: 0 }
  const last = reader.words[Math.max(from, reader.at - 1)]?.at ?? first
  return cover(first, last)
}

const clauseEnds = new Set([',', ';', '.', ':', ''])

/** Whether nothing more of a clause is ahead. A closing bracket ends a clause too. */
export function atClauseEnd(reader: Reader): boolean {
  const word = peek(reader)
  if (word === undefined) return true
  return word.kind === 'mark' && (clauseEnds.has(word.text) || /^[)\]}>]$/.test(word.text))
}

/** Passes the words up to the end of the clause or to one of `stops`. */
export function passClause(reader: Reader, ...stops: readonly string[]): void {
  while (!atClauseEnd(reader) && !(stops.length > 0 && stops.includes(textAt(reader)))) reader.at += 1
}

/** Whether a word in letters is ahead, not a number or a mark. */
export function isWordAhead(reader: Reader): boolean {
  return peek(reader)?.kind === 'word'
}

/** `3-dc cluster`: numbers and hyphens are part of some names. */
function isNameWord(word: Word | undefined): word is Word {
  return (
    word?.kind === 'word' || (word?.kind === 'number' && word.typed) || (word?.kind === 'mark' && word.text === '-')
  )
}

/** The text of the next `count` words, parted by blanks; null where fewer of them follow. */
function phraseText(reader: Reader, count: number): string | null {
  let text = ''
  for (let ahead = 0; ahead < count; ahead += 1) {
    const word = peek(reader, ahead)
    if (!isNameWord(word)) return null
    text = ahead === 0 ? word.text : `${text} ${word.text}`
  }
  return text
}

/** How many words the longest name has that begins with a word; `size` tells when names have been added. */
interface Openings {
  readonly size: number
  readonly longest: ReadonlyMap<string, number>
}

const openings = new WeakMap<ReadonlyMap<string, unknown>, Openings>()

function longestNames(names: ReadonlyMap<string, unknown>): ReadonlyMap<string, number> {
  const known = openings.get(names)
  if (known?.size === names.size) return known.longest
  const longest = new Map<string, number>()
  for (const name of names.keys()) {
    const words = name.split(' ')
    const [first = ''] = words
    longest.set(first, Math.max(words.length, longest.get(first) ?? 0))
  }
  openings.set(names, { size: names.size, longest })
  return longest
}

const mostWordsInName = 6

/** The longest name ahead that `names` knows; the reader moves past it. */
function takeName<T>(reader: Reader, names: ReadonlyMap<string, T>): T | null {
  const longest = longestNames(names).get(peek(reader)?.text ?? '') ?? 0
  for (let count = Math.min(longest, mostWordsInName); count > 0; count -= 1) {
    const text = phraseText(reader, count)
    const found = text === null ? undefined : names.get(text)
    if (found !== undefined) {
      reader.at += count
      return found
    }
  }
  return null
}

const shaping = new WeakMap<readonly Word[], boolean>()

/** Whether some word of the row can name an increase or a decrease: most rows need not be read for one. */
export function namesShaping({ words }: Reader): boolean {
  const known = shaping.get(words)
  if (known !== undefined) return known
  const found = words.some((word) => /inc|dec|tog/.test(word.text))
  shaping.set(words, found)
  return found
}

export function takeStitch(reader: Reader): Stitch | null {
  return takeName(reader, reader.vocabulary.dictionary.stitches)
}

export function takeSpecial(reader: Reader): Special | null {
  return takeName(reader, reader.vocabulary.specials)
}

const closers: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}', '<': '>' }

/** Pairs of brackets, found once, so that no phrase has to look for the end of one. */
export function matchBrackets(words: readonly Word[]): ReadonlyMap<number, number> {
  const pairs = new Map<number, number>()
  const open: { at: number; closer: string }[] = []
  words.forEach((word, at) => {
    if (word.kind !== 'mark') return
    const closer = closers[word.text]
    if (closer !== undefined) open.push({ at, closer })
    else if (word.text === open.at(-1)?.closer) {
      const opener = open.pop()
      if (opener !== undefined) pairs.set(opener.at, at)
    }
  })
  return pairs
}

export function createReader(
  words: readonly Word[],
  vocabulary: Vocabulary,
  sequence: Reader['sequence'],
  stitch: Stitch | null,
): Reader {
  return {
    words,
    vocabulary,
    sequence,
    closing: matchBrackets(words),
    at: 0,
    end: words.length,
    depth: 0,
    stitch: stitch ?? firstStitch(words, vocabulary.dictionary) ?? plain('singleCrochet'),
    unread: null,
    namesLoops: words.some((word) => word.loop !== undefined),
    loop: null,
    heard: 0,
  }
}

/** The first stitch that a row names: what an `inc` before it must mean. */
function firstStitch(words: readonly Word[], dictionary: Dictionary): Stitch | null {
  for (const word of words) {
    const stitch = word.kind === 'word' ? dictionary.stitches.get(word.text.replace(/\d+tog$/, '')) : undefined
    if (stitch !== undefined && stitch.base !== 'slipStitch') return stitch
  }
  return null
}
