import type { Span } from '../diagnostic/index.ts'
import type { Segment } from '../measure/segment.ts'
import { afterChain } from './sizelist/after-chain.ts'
import type { Found } from './sizelist/found.ts'
import { bracket, chained, isChain, isNothing, isNumber } from './sizelist/found.ts'
import { namedList } from './sizelist/named.ts'
import { rangesAt } from './sizelist/ranges.ts'
import type { NumberWord, Word } from './words.ts'

/** A size list that has another length than the draft's list of sizes. */
export interface WrongLength {
  readonly at: Span
  readonly given: number
}

export interface SizeLists {
  readonly words: readonly Word[]
  /** The lists that were found, with their pieces for showing one size or all. */
  readonly lists: readonly { readonly at: Span; readonly segments: readonly Segment[] }[]
  readonly wrong: readonly WrongLength[]
}

/** `…, sc in last 3 (12, 14, 16)`: a count at the end of a sentence, the number before it is not part of it. */
function standsAlone(words: readonly Word[], first: number, end: number): boolean {
  const before = words[first - 1]?.text ?? ''
  if (isChain(words[first - 1]) || /^[([=–]$/.test(before)) return false
  return /^(?:|[.*]|\*\*|turn|join|fasten)$/.test(words[end]?.text ?? '')
}

/** `– (72, 84)`: a dash for a first size to which the number does not apply. */
function afterNothing(words: readonly Word[], first: number, sizes: number): Found | null {
  const start = words[first]
  const group = isNothing(start) ? bracket(words, first + 1) : null
  if (start === undefined || group === null || group.entries.length + 1 !== sizes) return null
  return { first, end: group.end, entries: [start, ...group.entries], bracketed: false }
}

/** `60 (72, 84)` `60 (72, 84)[96, 108]` `60 (72) 84 (96)`, as far as it goes. */
function afterNumber(words: readonly Word[], first: number, sizes: number): Found | null {
  const start = words[first]
  if (start === undefined) return null
  const entries: Word[] = [start]
  let end = first + 1
  for (;;) {
    const group = bracket(words, end)
    if (group === null) break
    if (entries.length === 1 && sizes > 1 && group.entries.length === sizes && standsAlone(words, first, group.end))
      return null
    entries.push(...group.entries)
    end = group.end
    if (entries.length >= sizes) break
    const closes = entries.length + 1 === sizes || bracket(words, end + 1) !== null
    if (isNumber(words[end]) && !isChainsOf(words, end) && group.entries.length === 1 && closes) {
      entries.push(...words.slice(end, end + 1))
      end += 1
    }
  }
  return end > first + 1 ? { first, end, entries, bracketed: false } : null
}

/** `64 (84) 1ch-sps`: the number is the space's. */
function isChainsOf(words: readonly Word[], at: number): boolean {
  return words[at + 1]?.glued === true && /^ch/.test(words[at + 1]?.text ?? '')
}

/**
 * `(sc, inc) x 6 (18)` in a draft of two sizes: how often, and the count of the row. Two sizes repeat about as
 * often as each other; a count is the same as the number of repeats or at least twice as much.
 */
function isTimesAndCount(words: readonly Word[], { first, end, entries }: Found): boolean {
  const times = entries.length === 2 && /^[x×*]$/.test(words[first - 1]?.text ?? '')
  const often = valueIn(entries[0]) ?? 0
  const count = valueIn(entries[1]) ?? 0
  return times && standsAlone(words, first, end) && (count === often || count >= 2 * often)
}

/** The longest chain that begins a row. */
const longestOpening = 4

/** `…, join, ch 1 (6)` in a draft of one size: the chain of the next round, and the count of this one. */
function isChainAndCount(words: readonly Word[], { first, end, entries }: Found, sizes: number): boolean {
  const opening = isChain(words[first - 1]) && (valueIn(entries[0]) ?? 0) <= longestOpening
  return sizes === 1 && entries.length === 2 && opening && /^(?:|[.*]|\*\*)$/.test(words[end]?.text ?? '')
}

/** `(66, 72, 78 sts)`, `[66: 72: 78 sts]`, and after a sentence `66, 72, 78 sts`: numbers with one noun for all. */
function plainList(words: readonly Word[], at: number, sizes: number): Found | null {
  const before = words[at - 1]?.text ?? ''
  const found = chained(words, at, ',') ?? (/^[([]$/.test(before) ? chained(words, at, ':') : null)
  if (found === null || words[found.end]?.kind !== 'word') return null
  if (/^[([–=]$/.test(before)) return found
  // Of `40, 44, 48 sts` the list does not begin at its second number.
  if (before === ',') return isNumber(words[at - 2]) ? null : found
  return before === '.' && found.entries.length === sizes ? found : null
}

function listAt(words: readonly Word[], at: number, sizes: number): Found | null {
  const word = words[at]
  const spelled = afterChain(words, at, sizes)
  if (spelled !== null) return spelled
  if (isNumber(word)) {
    const grouped = afterNumber(words, at, sizes)
    if (grouped !== null)
      return isTimesAndCount(words, grouped) || isChainAndCount(words, grouped, sizes) ? null : grouped
    const slashed = chained(words, at, '/')
    if (slashed?.entries.length === sizes) return slashed
    const dashed = chained(words, at, '-')
    if (sizes > 2 && dashed?.entries.length === sizes) return dashed
    return plainList(words, at, sizes)
  }
  const later = afterNothing(words, at, sizes)
  if (later !== null) return later
  const whole = bracket(words, at)
  if (whole === null || whole.entries.length < 2) return null
  return { first: at, end: whole.end, entries: whole.entries, bracketed: true }
}

/** A list of another length, where it can't be anything but sizes. */
function isSurelySizes(found: Found, words: readonly Word[]): boolean {
  if (found.bracketed) return true
  if (found.entries.length > 2) return true
  if (isChain(words[found.first - 1])) return true
  // `dec x 6 (6)`: how often, and the count of the row.
  if (/^[x×*]$/.test(words[found.first - 1]?.text ?? '')) return false
  // `sc in last 3 (18)`: the bracket is the count of the row.
  const after = words[found.end]
  // `Rnd 6 (18):` has its count in the label.
  return after !== undefined && !/^[.:]$/.test(after.text)
}

function segmentsOf(
  found: Found,
  words: readonly Word[],
  source: (span: Span) => string,
  meant: readonly number[],
): readonly Segment[] {
  const segments: Segment[] = []
  const first = words[found.first]?.at.start ?? 0
  const last = words[found.end - 1]?.at.end ?? first
  let at = first
  found.entries.forEach((entry, index) => {
    if (entry.at.start > at) segments.push({ text: source({ start: at, end: entry.at.start }), show: 'columns' })
    segments.push({ text: source(entry.at), show: meant[index] ?? index })
    at = entry.at.end
  })
  if (last > at) segments.push({ text: source({ start: at, end: last }), show: 'columns' })
  return segments
}

function valueIn(entry: Word | undefined): number | null {
  return entry?.kind === 'number' ? (entry.count[0] ?? null) : null
}

/** The sizes that a list is for; null where its length fits neither all of them nor those that are named. */
function everySizeOf(length: number, sizes: number): readonly number[] | null {
  return length === sizes ? Array.from({ length }, (_, size) => size) : null
}

/** `12/14` where the row is for two sizes only. */
function listFor(words: readonly Word[], at: number, only: readonly number[] | null): Found | null {
  return only === null || only.length < 2 ? null : listAt(words, at, only.length)
}

function folded(found: Found, words: readonly Word[], meant: readonly number[] | null, sizes: number): NumberWord {
  const first = words[found.first]
  const last = words[found.end - 1]
  const start = first?.at.start ?? 0
  return {
    kind: 'number',
    at: { start, end: last?.at.end ?? start },
    text: 'sizes',
    glued: first?.glued ?? false,
    count: Array.from({ length: sizes }, (_, size) => valueIn(found.entries[meant?.indexOf(size) ?? -1])),
    typed: true,
    ordinal: false,
    bracketed: found.bracketed,
  }
}

/**
 * Folds size lists typed by hand into one number with a value per size. A list of another length
 * than `sizes` becomes a broken word and is named in `wrong`.
 *
 *     ch 60 (72, 84), sc 3 (18)
 *        ^ one number    ^ left alone: a count
 *
 * @param source the draft's text in a span, for the pieces to show
 * @param only the sizes that the row is for, where it names them: a list may be for these alone
 * @param rows how many rows the words stand for: a list of as many numbers is left alone where it is none of sizes
 * @param names of the sizes, in the words of a row
 */
export function foldSizeLists(
  words: readonly Word[],
  sizes: number,
  source: (span: Span) => string,
  only: readonly number[] | null = null,
  rows: number | null = null,
  names: readonly string[] = [],
): SizeLists {
  const out: Word[] = []
  const lists: { at: Span; segments: readonly Segment[] }[] = []
  const wrong: WrongLength[] = []
  for (let at = 0; at < words.length; ) {
    const ranges = rangesAt(words, at, sizes)
    if (ranges !== null) {
      out.push(...ranges.words)
      at = ranges.end
      continue
    }
    const found = namedList(words, at, names) ?? listAt(words, at, sizes) ?? listFor(words, at, only)
    const word = words[at]
    if (found === null && word !== undefined) out.push(word)
    if (found === null) {
      at += 1
      continue
    }
    const { length } = found.entries
    const meant = found.of ?? (length === only?.length ? only : everySizeOf(length, sizes))
    const number = folded(found, words, meant, sizes)
    if (meant !== null && meant.length > 1) {
      out.push(number)
      lists.push({ at: number.at, segments: segmentsOf(found, words, source, meant) })
      at = found.end
    } else if (found.entries.length !== rows && isSurelySizes(found, words)) {
      wrong.push({ at: number.at, given: found.entries.length })
      out.push({ kind: 'broken', at: number.at, text: 'sizes', glued: number.glued })
      at = found.end
    } else {
      out.push(...words.slice(at, at + 1))
      at += 1
    }
  }
  return { words: out, lists, wrong }
}
