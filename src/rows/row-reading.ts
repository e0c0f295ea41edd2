import type { Content } from './content.ts'
import { readContent } from './content.ts'
import { everySize } from './count.ts'
import type { Unread, Vocabulary } from './reader.ts'
import type { Stated } from './stated/item.ts'
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
export function soundCounts(stated: Stated | null, words: readonly Word[]): Stated | null {
  if (stated === null) return null
  const { start, end } = stated.at
  const wrong = words.some((word) => word.kind === 'broken' && word.at.start >= start && word.at.end <= end)
  return wrong ? { ...stated, items: [] } : stated
}
