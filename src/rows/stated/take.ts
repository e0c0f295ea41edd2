import type { Span } from '../../diagnostic/index.ts'
import { cover } from '../../diagnostic/index.ts'
import type { Vocabulary } from '../reader.ts'
import { matchBrackets } from '../reader.ts'
import type { Word } from '../words.ts'
import { bareCounts, soundsLikeCount } from './bare.ts'
import { ends } from './ends.ts'
import type { FoundCounts, GivenWords } from './given.ts'
import { emphasis, isMark, lastWord, nextClause, textOf, trailing, trimmed } from './given.ts'
import type { Stated, StatedItem } from './item.ts'
import { statedFor } from './item.ts'
import { readItems } from './items.ts'

export interface WithoutStated {
  readonly words: readonly Word[]
  readonly stated: Stated | null
  /** One count for each row of a run, where there are several: `(66)(60)(54)`; else empty. */
  readonly run: readonly Stated[]
  /** It stands without brackets or a sign, so that it may be a step as well. */
  readonly bare: boolean
}

type Pairs = readonly (readonly [open: number, close: number])[]

function spanOf(words: readonly Word[]): Span {
  const first = words[0]?.at ?? { start: 0, end: 0 }
  return cover(first, words.at(-1)?.at ?? first)
}

/** `in next sp (3 dc)` is a place with its stitches, not a count. */
function isFronted(words: readonly Word[], open: number): boolean {
  let start = open
  while (start > 0 && !/^[,;.:*)\]]$/.test(textOf(words, start - 1))) start -= 1
  return /^(?:in|into)$/.test(textOf(words, start)) && start < open
}

/** `(24), turn.` `(6) Fasten off.` `(36) [6 rnds]`: from this word on nothing is worked any more. */
function closes({ all, opensLine }: GivenWords, at: number): boolean {
  const next = all[at]
  if (next === undefined || opensLine(next) || nextClause.test(next.text)) return true
  return /^[,;:.]$/.test(next.text) && nextClause.test(textOf(all, at + 1))
}

/** `*ch 13, 2 sc in each ch (24 sc), sl st in next 2 sts; rep from *`: what is within a repeat is not the row's count. */
function isRepeated(words: readonly Word[], close: number): boolean {
  return words.slice(close + 1).some(({ text }, at, after) => {
    if (!/^(?:rep|repeat|repeating|\*)$/.test(text)) return false
    // `Repeat for the other side.` `Repeat Row 2.` `Repeat until it is long enough.` go back to no mark.
    const opens = at === 0 || /^[.)\]]$/.test(after[at - 1]?.text ?? '')
    return !(opens && /^(?:for|until|rows?|rnds?|rounds?|last|these|this)$/.test(after[at + 1]?.text ?? ''))
  })
}

/** Whether a bracket stands where a count may. */
function mayCount(given: GivenWords, open: number, close: number): boolean {
  const { all, opensLine } = given
  const before = textOf(all, open - 1)
  const first = all[open]
  const opens = trailing.test(before) || isMark(before) || (first !== undefined && opensLine(first))
  if (!(opens || closes(given, close + 1)) || isFronted(all, open) || isRepeated(all, close)) return false
  const after = all[close + 1]
  return !(after?.kind === 'number' || /^(?:in|into|x|times|twice|thrice|once|around|across)$/.test(after?.text ?? ''))
}

/** Words after the bracket that may be its noun: `(18) sts`, `(5) beg shells`. */
const mostNounWords = 3

/** `(18) sts` at the end: the noun stands after the bracket. */
function withNoun({ all, vocabulary, opensLine }: GivenWords, pairs: Pairs, end: number): FoundCounts | null {
  const [, last] = trimmed(all, 0, end)
  for (const [open, close] of pairs) {
    if (last - close > mostNounWords + 1) continue
    const [first, ...rest] = all.slice(close + 1, last)
    if (close >= last || rest.length >= mostNounWords || first === undefined) continue
    if (opensLine(first) || nextClause.test(first.text) || isFronted(all, open)) continue
    if (first.kind !== 'word' || rest.some((word) => word.kind !== 'word')) continue
    const items = readItems([...all.slice(open + 1, close), first, ...rest], vocabulary)
    if (items !== null) return { from: withSign(all, open), to: end, items, bare: false }
  }
  return null
}

/** The sign before a bracket goes with it: `= (18)`. */
function withSign(words: readonly Word[], open: number): number {
  return isMark(textOf(words, open - 1)) ? open - 1 : open
}

/** A bracket that is the last of the row's words. */
function closingBracket({ all, vocabulary }: GivenWords, pairs: Pairs, end: number): FoundCounts | null {
  const last = lastWord(all.slice(0, end), pairs)
  const open = pairs.find(([, close]) => close === last)?.[0]
  if (open === undefined || isFronted(all, open)) return null
  const items = readItems(all.slice(...trimmed(all, open + 1, last)), vocabulary)
  return items === null ? null : { from: withSign(all, open), to: end, items, bare: false }
}

/** A bracket of counts within the row, after a full stop or before a new clause. */
function bracketWithin(given: GivenWords, pairs: Pairs): FoundCounts | null {
  const { all, vocabulary } = given
  let outer = all.length
  for (const [open, close] of pairs.slice(0, 200)) {
    if (close > outer || !mayCount(given, open, close)) continue
    outer = open
    const items = readItems(all.slice(...trimmed(all, open + 1, close)), vocabulary)
    if (items !== null) return { from: withSign(all, open), to: close + 1, items, bare: false }
  }
  return null
}

/** `(60, 72, 84)`: a size list that brought its brackets. */
function listAlone({ all, vocabulary }: GivenWords, pairs: Pairs, end: number): FoundCounts | null {
  const last = lastWord(all.slice(0, end), pairs)
  const word = all[last]
  if (word?.kind !== 'number' || !word.bracketed || last === 0) return null
  // `ch (66, 72, 78)`: the list belongs to the step before it.
  const before = textOf(all, last - 1)
  const belongs = /^(?:chs?|chains?|next|sk|skip|miss|first|last|x|of|for)$/.test(before)
  const placed = /^(?:first|last|next|same|each|every|beg|top|of)$/.test(textOf(all, last - 2))
  if (belongs || (vocabulary.dictionary.stitches.has(before) && !placed)) return null
  const items: readonly StatedItem[] = [{ shown: 'total', of: { kind: 'total' }, count: word.count, by: null }]
  return { from: last, to: end, items, bare: false }
}

/** The count that stands at the end of a row's words, before clauses that only close it. */
function atEnd(given: GivenWords, pairs: Pairs): FoundCounts | null {
  for (const { at, to } of ends(given)) {
    const found =
      withNoun(given, pairs, at) ??
      closingBracket(given, pairs, at) ??
      listAlone(given, pairs, at) ??
      bareCounts(given, at)
    if (found !== null) return { ...found, to: Math.max(found.to, to) }
  }
  return null
}

/** The marks of emphasis around a count go with it: `**(18)**`. */
function withEmphasis(words: readonly Word[], found: FoundCounts): FoundCounts {
  const mark = textOf(words, found.from - 1)
  if (!emphasis.test(mark)) return found
  const closed = textOf(words, found.to) === mark
  const within = words.slice(found.from, found.to).filter((word) => word.text === mark).length % 2 === 1
  if (!(closed || within)) return found
  return { ...found, from: found.from - 1, to: closed ? found.to + 1 : found.to }
}

/** `(66)(60)(54)`: the counts that stand before the last one, side by side with it. */
function runBefore({ all, vocabulary }: GivenWords, pairs: Pairs, from: number): { run: Stated[]; from: number } {
  const run: Stated[] = []
  let start = from
  for (;;) {
    const close = start - (/^[,–-]$/.test(textOf(all, start - 1)) ? 2 : 1)
    const open = pairs.find((pair) => pair[1] === close)?.[0]
    const items = open === undefined ? null : readItems(all.slice(open + 1, close), vocabulary)
    if (open === undefined || items === null || items.length === 0) return { run, from: start }
    run.unshift({ items, at: spanOf(all.slice(open, close + 1)) })
    start = open
  }
}

/** What stood on either side of a count are two clauses: `sc around (12) sl st in next st`. */
function joined(before: readonly Word[], after: readonly Word[]): readonly Word[] {
  const last = before.at(-1)
  const [next] = after
  const apart = last === undefined || next === undefined || last.kind === 'mark' || next.kind === 'mark'
  if (apart) return [...before, ...after]
  return [...before, { kind: 'mark', text: ',', glued: true, at: next.at }, ...after]
}

function without(given: GivenWords, pairs: Pairs, plain: FoundCounts): WithoutStated {
  const { all } = given
  const found = withEmphasis(all, plain)
  const before = found.bare || found.items.length === 0 ? noRun(found.from) : runBefore(given, pairs, found.from)
  const words = joined(all.slice(0, before.from), all.slice(found.to))
  if (found.items.length === 0) return { words, stated: null, run: [], bare: found.bare }
  const stated = { items: found.items, at: spanOf(all.slice(before.from, found.to)) }
  return { words, stated, run: before.run.length === 0 ? [] : [...before.run, stated], bare: found.bare }
}

function noRun(from: number): { run: Stated[]; from: number } {
  return { run: [], from }
}

function isWhole({ stated }: WithoutStated): boolean {
  return stated?.items.some(({ of }) => of.kind === 'total' || of.kind === 'key' || of.kind === 'special') ?? false
}

function saysSame(items: readonly StatedItem[], { stated }: WithoutStated): boolean {
  const numbers = new Set(stated?.items.map((item) => statedFor(item, 0)))
  return items.every((item) => numbers.has(statedFor(item, 0)))
}

/** `…, which gives you 12 sts. (12)`: what only says the count once more is no step. */
function withoutSaying(given: GivenWords, found: WithoutStated): WithoutStated {
  const { words } = found
  const again = bareCounts({ ...given, all: words }, words.length)
  const says = again !== null && words.slice(again.from, again.from + 3).some(({ text }) => soundsLikeCount.test(text))
  return says && saysSame(again.items, found) ? { ...found, words: words.slice(0, again.from) } : found
}

/** `24 sts (6 per side)`, `18 sts (2 sts dec'd)`: the count stands before what is only said beside it. */
function withEarlier(given: GivenWords, found: WithoutStated): WithoutStated {
  if (found.stated === null) return takeStated(found.words, given.vocabulary, given.opensLine)
  if (isWhole(found) || found.run.length > 0) return withoutSaying(given, found)
  const earlier = bareCounts({ ...given, all: found.words }, found.words.length)
  if (earlier === null) return found
  const more = without({ ...given, all: found.words }, [], earlier)
  if (more.stated === null) return found
  const at = cover(more.stated.at, found.stated.at)
  return { ...more, stated: { items: [...more.stated.items, ...found.stated.items], at } }
}

/**
 * Takes the stated count out of a row's words.
 *
 *     Sc in each st around, join. (60 sc)
 *                                 ^^^^^^^
 *
 * @param opensLine whether a word is the first of its line in the draft
 */
export function takeStated(
  words: readonly Word[],
  vocabulary: Vocabulary,
  opensLine: (word: Word) => boolean,
): WithoutStated {
  const given = { all: words, vocabulary, opensLine }
  const pairs: Pairs = [...matchBrackets(words)].sort((a, b) => b[0] - a[0])
  const found = atEnd(given, pairs) ?? bracketWithin(given, pairs)
  if (found === null) return { words, stated: null, run: [], bare: false }
  return withEarlier(given, without(given, pairs, found))
}
