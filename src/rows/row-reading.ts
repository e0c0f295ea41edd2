import { cover } from '../diagnostic/index.ts'
import type { Content } from './content.ts'
import { readContent } from './content.ts'
import { everySize } from './count.ts'
import type { Label } from './label.ts'
import type { Unread, Vocabulary } from './reader.ts'
import { matchBrackets } from './reader.ts'
import { bySize } from './stated/by-size.ts'
import { trimmed } from './stated/given.ts'
import type { Stated } from './stated/item.ts'
import { statedFor } from './stated/item.ts'
import { readItems } from './stated/items.ts'
import { takeStated } from './stated/take.ts'
import type { Step } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import type { Word } from './words.ts'

function makesSomething(steps: readonly Step[]): boolean {
  const idle = new Set<Step['kind']>(['remark', 'turn', 'fastenOff', 'join', 'leave', 'slip'])
  return steps.some((step) => !idle.has(step.kind))
}

/** Whether words are a row: more than turns and joins. */
export function isRow(content: Content | null): boolean {
  if (content === null) return false
  return content.kind !== 'steps' || makesSomething(content.steps)
}

/** A foundation opens a piece: a chain of more than a turning chain, a ring, foundation stitches. */
export function isFoundation(content: Content | null): boolean {
  if (content?.kind === 'bySize') return content.options.some(isFoundation)
  if (content?.kind !== 'steps') return false
  const first = content.steps.find((step) => step.kind !== 'remark')
  if (first?.kind === 'ring') return true
  if (first?.kind === 'chain') return first.count.some((count) => count !== null && count > 1)
  return first?.kind === 'work' && (first.where.kind === 'ring' || first.parts.some(isFoundationPart))
}

function isFoundationPart(part: { kind: string; stitch?: Stitch }): boolean {
  return part.kind === 'stitch' && part.stitch?.style === 'foundation'
}

/** A row's words as they are read. */
export interface Read {
  readonly content: Content | null
  readonly unread: Unread | null
  readonly stated: Stated | null
  readonly run: readonly Stated[]
  readonly words: readonly Word[]
  readonly stitch: Stitch | null
}

function someNumber(word: Word, sizes: number): Word {
  const { at, text, glued } = word
  return { kind: 'number', at, text, glued, count: everySize(2, sizes), typed: false, ordinal: false, bracketed: false }
}

/** Whether steps put a stitch somewhere; chains, turns and joins do not. */
function works(content: Content | null): boolean {
  const still = new Set<Step['kind']>(['remark', 'turn', 'fastenOff', 'join', 'leave', 'slip', 'chain', 'ring'])
  return content?.kind !== 'steps' || content.steps.some((step) => !still.has(step.kind))
}

/** Reads a row's words without its label: the count that it states, and its steps. */
export function readWordsOfRow(
  words: readonly Word[],
  vocabulary: Vocabulary,
  stitch: Stitch | null,
  opensLine: (word: Word) => boolean,
): Read {
  // Whether it is a row does not hang on a wrong size list: any number tells as much.
  const sound = words.map((word) => (word.kind === 'broken' ? someNumber(word, vocabulary.sizes) : word))
  const { words: steps, stated, run, bare } = takeStated(sound, vocabulary, opensLine)
  const { content, unread, stitch: last } = readContent(steps, vocabulary, stitch)
  // `Ch 1. 18 sc. Turn.`: what sounds like a count is all that the row works.
  const whole = bare && !works(content) ? readContent(sound, vocabulary, stitch) : null
  if (whole !== null && works(whole.content)) {
    return { content: whole.content, unread: null, stated: null, run: [], words: sound, stitch: whole.stitch }
  }
  return { content, unread, stated, run, words: steps, stitch: last }
}

/** A count with a wrong size list in it states nothing. */
function soundCounts(stated: Stated, words: readonly Word[]): Stated {
  const { start, end } = stated.at
  const wrong = words.some((word) => word.kind === 'broken' && word.at.start >= start && word.at.end <= end)
  return wrong ? { ...stated, items: [] } : stated
}

/** Several numbers for one noun, `12, 18, 24 sts`, as a count for each row. */
function listedRun(stated: Stated, rows: number): readonly Stated[] {
  const { items, at } = stated
  const last = items.at(-1)
  const alike = items.every((item) => item.shown === last?.shown || item.shown === 'total')
  if (last === undefined || items.length !== rows || !alike) return []
  return items.map(({ count }) => ({ items: [{ ...last, count }], at }))
}

/**
 * What a row states, and for a range what each of its rows does: `(66)(60)(54)` for three rows. The same for as many
 * sizes is a list of sizes.
 *
 * @param rows that the label names
 * @param before the count that the label brings, for a row whose words state none
 */
export function countsOf(
  { stated, run }: Read,
  rows: number,
  words: readonly Word[],
  sizes: number,
  before: Stated | null,
): { readonly stated: Stated | null; readonly run: readonly Stated[] } {
  if (stated === null) return { stated: before, run: [] }
  const sound = soundCounts(stated, words)
  if (rows > 1 && run.length === rows) return { stated: sound, run }
  const listed = rows > 1 ? listedRun(sound, rows) : []
  if (listed.length > 0) return { stated: sound, run: listed }
  const all = run.every((each) => each.items.length === 1)
    ? bySize(
        run.flatMap((each) => each.items),
        sizes,
      )
    : null
  return { stated: all === null ? sound : { ...sound, items: all }, run: [] }
}

/** `Rnd 5 (24 sts):`: a count in the label; `Rnds 4–8 (5):` is how many rounds there are. */
export function labelCount(label: Label | null, vocabulary: Vocabulary): Stated | null {
  if (label === null) return null
  const { words, numbers } = label
  const rows = numbers.kind === 'list' ? numbers.items.length : 1
  for (const [open, close] of matchBrackets(words)) {
    const items = readItems(words.slice(open + 1, close), vocabulary)
    const [first] = items ?? []
    if (items === null || first === undefined || (rows > 1 && statedFor(first, 0) === rows)) continue
    return { items, at: cover(words[open]?.at ?? noPlace, words[close]?.at ?? noPlace) }
  }
  return null
}

/**
 * A count that stands by itself: `(18 sts)`, `You should have 18 sts.` By its kind alone, `18 sc`, it may be the steps of
 * another row.
 */
export function lateCount(words: readonly Word[], vocabulary: Vocabulary): Stated | null {
  const [first, end] = trimmed(words, 0, words.length)
  const bracket = matchBrackets(words).get(first) === end - 1 && first < end
  const own = bracket ? words.slice(first + 1, end - 1) : words.slice(first, end)
  const sounds = bracket || own.some(({ text }) => /^(?:sts?|stitch|stitches|total|count)$/.test(text))
  const items = sounds && own.every((word) => word.kind !== 'made') ? readItems(own, vocabulary) : null
  const at = cover(words[first]?.at ?? noPlace, words[end - 1]?.at ?? noPlace)
  return items === null || items.length === 0 ? null : { items, at }
}

const noPlace = { start: 0, end: 0 }
