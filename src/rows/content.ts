import { cover } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/value.ts'
import type { Even } from './content/even.ts'
import { readEven } from './content/even.ts'
import { rowWord } from './content/extent.ts'
import { plainBeginning } from './content/foundation.ts'
import type { Further } from './content/further.ts'
import { readFurther } from './content/further.ts'
import type { Reference } from './content/reference.ts'
import { readReference } from './content/reference.ts'
import type { Schedule } from './content/schedule.ts'
import { readSchedule } from './content/schedule.ts'
import { mayWork, sentencesOf } from './prose.ts'
import type { ReadSteps } from './read.ts'
import { readSteps } from './read.ts'
import type { Reader, Unread, Vocabulary } from './reader.ts'
import { attempt, createReader } from './reader.ts'
import type { Step } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import { overWholeRow } from './whole-row.ts'
import type { Word } from './words.ts'
import { wordsOfText } from './words.ts'

/** What a row's words ask for. */
export type Content =
  | { readonly kind: 'steps'; readonly steps: readonly Step[] }
  | ({ readonly kind: 'reference' } & Reference)
  | ({ readonly kind: 'even' } & Even)
  /** `dec 1 st at each end of every 4th row 6 times` */
  | ({ readonly kind: 'schedule' } & Schedule)
  /** `Continue increasing in this way` */
  | ({ readonly kind: 'further' } & Further)
  /** Null for a size that the words are not for. */
  | { readonly kind: 'bySize'; readonly options: PerSize<Content | null> }

export type ReadContent =
  | { readonly content: Content; readonly stitch: Stitch; readonly unread: null }
  | { readonly content: null; readonly stitch: Stitch; readonly unread: Unread }

function reference(reader: Reader): Content | null {
  const found = readReference(reader)
  return found === null ? null : { kind: 'reference', ...found }
}

function even(reader: Reader): Content | null {
  const found = readEven(reader)
  return found === null ? null : { kind: 'even', ...found }
}

function further(reader: Reader): Content | null {
  const found = readFurther(reader)
  return found === null ? null : { kind: 'further', ...found }
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
  return { content: { kind: 'steps', steps: overWholeRow(read.steps) }, stitch, unread: null }
}

/** Reads a row's words, without label and stated count. */
export function readContent(words: readonly Word[], vocabulary: Vocabulary, stitch: Stitch | null): ReadContent {
  const different = bySize(words, vocabulary, stitch)
  if (different !== null) return different
  const reader = createReader(words, vocabulary, () => null, stitch)
  const content =
    attempt(reader, reference) ?? attempt(reader, even) ?? attempt(reader, schedule) ?? attempt(reader, further)
  if (content !== null) return { content, stitch: reader.stitch, unread: null }
  const read = readSteps(words, vocabulary, stitch)
  if (read.steps !== null && soundsLikeReference(words)) return unreadFrom(words, read.stitch)
  const says = read.steps?.some((step) => step.kind !== 'remark') === true
  const works = read.steps?.some((step) => step.kind === 'work' || step.kind === 'repeat') === true
  if (says && (works || !words.some(({ text }) => ringWords.test(text)))) return fromSteps(read)
  const plain = plainBeginning(words)
  const begun = plain === null ? null : readSteps(plain, vocabulary, stitch)
  if (begun?.steps) return fromSteps(begun)
  return fromSteps(read.steps === null ? (withoutTalk(words, vocabulary, stitch) ?? read) : read)
}

/** Of words that can't be read whole, the sentences in which something is worked; null where these can't be read either. */
function withoutTalk(words: readonly Word[], vocabulary: Vocabulary, stitch: Stitch | null): ReadSteps | null {
  const sentences = sentencesOf(words)
  const kept = sentences.filter(
    (sentence) => mayWork(sentence, vocabulary) || readSteps(sentence, vocabulary, stitch).steps !== null,
  )
  const some = kept.length > 0 && kept.length < sentences.length && kept.some((each) => mayWork(each, vocabulary))
  const read = some ? readSteps(kept.flat(), vocabulary, stitch) : null
  return read?.steps ? read : null
}

/** `As row 1 but in every stitch`: it goes back to rows, in words that could not be read as such. */
function soundsLikeReference(words: readonly Word[]): boolean {
  const opens = /^(?:as|same|like|rep|repeat)$/.test(words[0]?.text ?? '')
  return opens && words.slice(1, 4).some(({ text }) => rowWord.test(text))
}

function unreadFrom(words: readonly Word[], stitch: Stitch): ReadContent {
  const at = cover(words[0]?.at ?? { start: 0, end: 0 }, words.at(-1)?.at ?? { start: 0, end: 0 })
  const unread = {
    at,
    words: words.map(({ text }) => text).join(' '),
    expected: 'rows that stand before it',
    mark: null,
  }
  return { content: null, stitch, unread }
}

/** With these, words that read may still mean more than they say. */
const ringWords = /^(?:ring|circle|twist|twisted|twisting)$/
