import type { Span } from '../diagnostic/index.ts'
import { cover } from '../diagnostic/index.ts'
import type { Count } from './count.ts'
import type { Reader, Vocabulary } from './reader.ts'
import { attempt, createReader, matchBrackets, peek, take, takeSpecial, takeStitch, textAt } from './reader.ts'
import { printStitch } from './terms/dictionary.ts'
import { stitchKey } from './terms/stitch.ts'
import type { Word } from './words.ts'
import type { MadeByRow } from './written.ts'

/** One number that a row states. */
export interface StatedItem {
  /** The key of the ledger: `total`, `dc`, `ch-2 sp`, `shell`. */
  readonly shown: string
  /** What it is counted under while the row is worked; null for the total, 'unknown' for a noun that is not known. */
  readonly tally: string | null
  readonly count: Count | ((row: MadeByRow) => Count)
}

export interface Stated {
  readonly items: readonly StatedItem[]
  readonly at: Span
}

export interface WithoutStated {
  readonly words: readonly Word[]
  readonly stated: Stated | null
}

const lead = (
  "you you’ll you'll should will now have has had there are = total of with ending end count counts st sts stitch " +
  'stitches made up in : for a'
).split(' ')
const trail =
  /^(?:made|total|in|all|rem|remain|remains|remaining|left|each|now|around|across|altogether|completed|worked|on|needle|hook)$/
const remarks = /^(?:including|incl|counting|not|excluding|plus|with|beg|per)$/
const stitchNouns = ['st', 'sts', 'stitch', 'stitches']
const spaceNouns = ['sp', 'sps', 'space', 'spaces', 'loop', 'loops', 'lp', 'lps', 'arch', 'arches']

/** What a noun is counted under. */
interface Noun {
  readonly shown: string
  readonly tally: string | null
}

const total: Noun = { shown: 'total', tally: null }

function chainNoun(reader: Reader): Noun | null {
  if (take(reader, 'ch-sp', 'ch-sps')) return { shown: 'ch sp', tally: 'space' }
  const front = peek(reader)
  const fronted = front?.kind === 'number' && textAt(reader, 1) === '-' && /^chs?$/.test(textAt(reader, 2))
  if (fronted) reader.at += 2
  if (!take(reader, 'ch', 'chs', 'chain', 'chains')) return null
  take(reader, '-')
  const after = peek(reader)
  const number = fronted ? front : after?.kind === 'number' ? after : undefined
  if (!fronted && number !== undefined) reader.at += 1
  const spaces = take(reader, ...spaceNouns)
  const chains = number?.kind === 'number' ? (number.count[0] ?? null) : null
  if (chains !== null) return { shown: `ch-${chains} sp`, tally: `space:${chains}` }
  return spaces ? { shown: 'ch sp', tally: 'space' } : { shown: 'ch', tally: 'chain' }
}

function togetherNoun(reader: Reader): Noun | null {
  const match = /^(\p{L}+\d+tog)s?$/u.exec(textAt(reader))
  if (match === null) return null
  reader.at += 1
  const name = match[1] ?? ''
  return { shown: name, tally: `together:${name}` }
}

function noun(reader: Reader): Noun | null {
  if (take(reader, ...stitchNouns)) return total
  const special = attempt(reader, takeSpecial)
  if (special !== null) return { shown: special.name, tally: `special:${special.name}` }
  const stitch = attempt(reader, takeStitch)
  if (stitch !== null) {
    take(reader, ...stitchNouns)
    return { shown: printStitch(reader.vocabulary.dictionary, stitch), tally: stitchKey(stitch) }
  }
  const chain = attempt(reader, togetherNoun) ?? attempt(reader, chainNoun)
  if (chain !== null) return chain
  return take(reader, ...spaceNouns) ? { shown: 'ch sp', tally: 'space' } : null
}

/** `blocks`, `3-dc groups`: a noun that this pattern gives no meaning. */
function unknownNoun(reader: Reader): Noun | null {
  const word = peek(reader)
  if (word?.kind !== 'word' || trail.test(word.text) || remarks.test(word.text)) return null
  if (/^(?:times|time|x|rows?|rnds?|rounds?|cm|mm|in|inches|more|inc|dec|incs|decs)$/.test(word.text)) return null
  reader.at += 1
  return { shown: word.text, tally: 'unknown' }
}

function item(reader: Reader): StatedItem | null {
  const word = peek(reader)
  if (word?.kind === 'made') {
    reader.at += 1
    return { count: word.of, ...(attempt(reader, noun) ?? total) }
  }
  if (word?.kind !== 'number' || word.ordinal) return null
  reader.at += 1
  const named = attempt(reader, noun) ?? attempt(reader, unknownNoun) ?? total
  return { count: word.count, ...named }
}

function passTrail(reader: Reader): void {
  while (trail.test(textAt(reader))) reader.at += 1
  if (take(reader, ',')) {
    if (!remarks.test(textAt(reader))) reader.at -= 1
  }
  if (remarks.test(textAt(reader)) || textAt(reader) === '(') reader.at = reader.end
}

/** A list of counts and nothing else. */
function items(reader: Reader): readonly StatedItem[] | null {
  while (take(reader, ...lead));
  const found: StatedItem[] = []
  for (;;) {
    const next = item(reader)
    if (next === null) return null
    found.push(next)
    passTrail(reader)
    const more = take(reader, ',', 'and', '+', ';', '/')
    if (more) take(reader, 'and')
    if (!more) break
  }
  take(reader, '.')
  if (reader.at < reader.end) return null
  const unknown = found.filter((each) => each.tally === 'unknown').length
  return found.length > 0 && (unknown === 0 || found.length > unknown || found.length === 1) ? found : null
}

function readItems(words: readonly Word[], vocabulary: Vocabulary): readonly StatedItem[] | null {
  if (words.length === 0 || words.length > 60) return null
  return items(createReader(words, vocabulary, () => null, null))
}

function spanOf(words: readonly Word[]): Span {
  const first = words[0]?.at ?? { start: 0, end: 0 }
  return cover(first, words.at(-1)?.at ?? first)
}

function without(words: readonly Word[], from: number, to: number, found: readonly StatedItem[]): WithoutStated {
  const kept = [...words.slice(0, from), ...words.slice(to)]
  return { words: kept, stated: { items: found, at: spanOf(words.slice(from, to)) } }
}

const trailing = /^(?:\*{1,2}|\.|_)$/
/** `(6) Fasten off.`: words that begin another sentence, so that the bracket before them ended one. */
const nextSentence = /^(?:fasten|finish|break|cut|weave|stuff|change|place|mark|now|cont|continue|do|turn|join)$/

function lastIndex(words: readonly Word[]): number {
  let last = words.length - 1
  while (last >= 0 && trailing.test(words[last]?.text ?? '')) last -= 1
  return last
}

/** `in next sp (3 dc)` is a place with its stitches, not a count. */
function isFronted(words: readonly Word[], open: number): boolean {
  let start = open
  while (start > 0 && !/^[,;.:*]$/.test(words[start - 1]?.text ?? '')) start -= 1
  return /^(?:in|into)$/.test(words[start]?.text ?? '') && start < open
}

/** `… turn. (18 sc) Fasten off.`: a bracket of counts after a full stop, or at the end. */
function bracketed(words: readonly Word[], vocabulary: Vocabulary): WithoutStated | null {
  const last = lastIndex(words)
  const closing = [...matchBrackets(words)].sort((a, b) => b[0] - a[0])
  let outer = words.length
  for (const [open, close] of closing.slice(0, 200)) {
    const atEnd = close === last
    const before = words[open - 1]?.text ?? ''
    const ends =
      atEnd || trailing.test(before) || /^=>?$/.test(before) || nextSentence.test(words[close + 1]?.text ?? '')
    if (!ends || close > outer || isFronted(words, open)) continue
    outer = open
    const after = words[close + 1]
    if (after?.kind === 'number' || /^(?:in|into|x|times|twice|around|across)$/.test(after?.text ?? '')) continue
    const found = readItems(words.slice(open + 1, close), vocabulary)
    const from = /^(?:=|=>|–)$/.test(before) ? open - 1 : open
    if (found !== null) return without(words, from, atEnd ? words.length : close + 1, found)
  }
  return null
}

/** `(60, 72, 84)`: a size list that brought its brackets. */
function listAlone(words: readonly Word[], vocabulary: Vocabulary): WithoutStated | null {
  const last = lastIndex(words)
  const word = words[last]
  if (word?.kind !== 'number' || !word.bracketed || last === 0) return null
  // `ch (66, 72, 78)`: the list belongs to the step before it.
  const before = words[last - 1]?.text ?? ''
  if (
    /^(?:chs?|chains?|next|sk|skip|miss|first|last|x|of|for)$/.test(before) ||
    vocabulary.dictionary.stitches.has(before)
  )
    return null
  return without(words, last, words.length, [{ shown: 'total', tally: null, count: word.count }])
}

/** `– 18 sc`, `= 18`, and after a full stop `18 sc` or `You have 18 sts.` */
function afterMark(words: readonly Word[], vocabulary: Vocabulary): WithoutStated | null {
  const last = lastIndex(words)
  let depth = 0
  for (let at = last; at > 0 && last - at < 40; at -= 1) {
    const word = words[at]
    const text = word?.text ?? ''
    if (/^[)\]}]$/.test(text)) depth += 1
    if (/^[([{]$/.test(text)) depth -= 1
    if (depth !== 0 || word?.kind !== 'mark') continue
    const glued = word.glued && words[at + 1]?.glued === true
    // `2–3` is a range, `… – 18 sc` a count.
    const dash = (text === '–' || text === '-') && !glued
    const opens = dash || text === '=' || text === '=>' || text === '.'
    if (!opens || (text === '.' && at === last)) continue
    const found = readItems(words.slice(at + 1, last + 1), vocabulary)
    if (found !== null) return without(words, text === '.' ? at + 1 : at, words.length, found)
    if (text === '.') return null
  }
  return null
}

/**
 * Takes the stated count out of a row's words.
 *
 *     Sc in each st around, join. (60 sc)
 *                                 ^^^^^^^
 */
export function takeStated(words: readonly Word[], vocabulary: Vocabulary): WithoutStated {
  return (
    bracketed(words, vocabulary) ??
    listAlone(words, vocabulary) ??
    afterMark(words, vocabulary) ?? { words, stated: null }
  )
}
