import type { Span } from '../../diagnostic/index.ts'
import { cover } from '../../diagnostic/index.ts'
import { everySize } from '../count.ts'
import type { Label } from '../label.ts'
import { readLabel } from '../label.ts'
import { isProse } from '../prose.ts'
import type { Vocabulary } from '../reader.ts'
import type { SizeLists } from '../sizelist.ts'
import { foldSizeLists } from '../sizelist.ts'
import { inTodaysWords } from '../wording/index.ts'
import type { Word } from '../words.ts'
import { readWords } from '../words.ts'
import type { Passage } from '../written.ts'
import type { Only, Part, Parts } from './parts.ts'
import { bothOnly, partsOf } from './parts.ts'
import type { Chunk } from './passage-text.ts'
import { holesIn, opensLineIn } from './passage-text.ts'
import type { SizeNames } from './size-names.ts'

export interface Wording {
  readonly vocabulary: Vocabulary
  readonly names: SizeNames
}

/** Words for some sizes, or with null for all, in today's wording. */
export interface OwnWords {
  readonly only: Only
  readonly words: readonly Word[]
}

/** A chunk in words: size lists folded, the label read; and what was wrong with the lists. */
export interface Prepared {
  readonly label: Label | null
  /** The sizes that the row is for; null for all. */
  readonly only: Only
  /** Words after the label; further ones for the sizes that each is for. */
  readonly own: readonly OwnWords[]
  /** A name before steps that have no label: `Second shoulder: skip next 8 sts, …`; null for none. */
  readonly title: string | null
  /** All of its words. */
  readonly at: Span | null
  readonly lists: SizeLists['lists']
  readonly wrong: SizeLists['wrong']
  readonly opens: Parts['opens']
  readonly alone: boolean
  readonly unknownSizes: boolean
  /** Whether a word is the first of its line in the draft. */
  readonly opensLine: (word: Word) => boolean
}

/** The second of two bold marks around the label stands somewhere after it. */
function withoutBold(words: readonly Word[], end: number): readonly Word[] {
  const opening = words[0]?.text ?? ''
  if (!/^\*{1,2}$/.test(opening)) return words.slice(end)
  const inLabel = words.slice(1, end).some((word) => word.text === opening)
  const rest = words.slice(end)
  const closing = inLabel ? -1 : rest.findLastIndex((word) => word.text === opening)
  return closing < 0 ? rest : rest.toSpliced(closing, 1)
}

/** How many rows a label names, 1 where it does not say. */
export function rowsOf(label: Label | null): number {
  return label?.numbers.kind === 'list' ? label.numbers.items.length : 1
}

interface Folded {
  readonly words: readonly Word[]
  readonly lists: SizeLists
}

function fold(chunk: Chunk, part: Part, only: Only, { vocabulary }: Wording): Folded {
  const at = { start: part.start, end: part.start + part.text.length }
  const words = readWords({ at, text: part.text, holes: holesIn(chunk.passage.holes, at) }, vocabulary.sizes)
  const source = sourceOf(chunk)
  const folded = (rows: number | null): SizeLists =>
    foldSizeLists(words, vocabulary.sizes, source, only, rows, vocabulary.sizeNames)
  const first = folded(null)
  const rows = first.wrong.length === 0 ? 0 : rowsOf(readLabel(first.words, source, vocabulary.sizes))
  // `Rnds 2–4: … (12, 18, 24)`: a count for each row.
  const lists = rows > 1 ? folded(rows) : first
  return { words: inTodaysWords(lists.words, vocabulary.dictionary.terms, source), lists }
}

function sourceOf({ passage }: Chunk): (span: Span) => string {
  return (span) => passage.text.slice(span.start - passage.at.start, span.end - passage.at.start)
}

/** The number of an item in a list whose marks do not count. */
function atPosition(label: Label, { passage, start }: Chunk, sizes: number): Label {
  const { position } = passage
  if (position === undefined || label.name !== '' || start !== passage.at.start) return label
  return { ...label, numbers: { kind: 'list', items: [everySize(position, sizes)] } }
}

const mostTitle = 4

/** How many words a name before a colon takes; 0 where none stands there. */
function titleEnd(words: readonly Word[], vocabulary: Vocabulary): number {
  const colon = words.slice(0, mostTitle + 1).findIndex(({ text }) => text === ':')
  if (colon < 1 || colon === words.length - 1) return 0
  const name = words.slice(0, colon)
  const sound = name.every((word) => isNameWord(word) && !/^(?:note|tip|with|in|for|at|work|using)$/.test(word.text))
  return sound && isProse(name, vocabulary) && !name.some(({ text }) => /^(?:ch|chain|ring|loop)$/.test(text))
    ? colon + 1
    : 0
}

function isNameWord(word: Word): boolean {
  return word.kind === 'word' || (word.kind === 'number' && word.ordinal)
}

function titleText(words: readonly Word[], source: (span: Span) => string): string {
  const [first] = words
  return first === undefined ? '' : source(cover(first.at, words.at(-1)?.at ?? first.at))
}

type Known = WeakMap<Passage, Map<string, Prepared>>

const prepared = new WeakMap<Wording, Known>()

function knownIn(wording: Wording, passage: Passage): Map<string, Prepared> {
  const all = prepared.get(wording) ?? new WeakMap<Passage, Map<string, Prepared>>()
  prepared.set(wording, all)
  const known = all.get(passage) ?? new Map<string, Prepared>()
  all.set(passage, known)
  return known
}

/** The same stretch of a passage is looked at to cut rows apart and again to read them: it is prepared once. */
export function prepare(chunk: Chunk, wording: Wording): Prepared {
  const { passage, start, text } = chunk
  const known = knownIn(wording, passage)
  const key = `${start} ${text}`
  const found = known.get(key) ?? prepareChunk(chunk, wording)
  known.set(key, found)
  return found
}

function prepareChunk(chunk: Chunk, wording: Wording): Prepared {
  const { vocabulary, names } = wording
  const { passage } = chunk
  const { only, parts, opens, alone, unknown } = partsOf(chunk, names, vocabulary.sizes)
  const folded = parts.map((part) => fold(chunk, part, bothOnly(passage.only, bothOnly(only, part.only)), wording))
  const words = folded.flatMap((part) => part.words)
  const [first] = folded
  const read = first === undefined ? null : readLabel(first.words, sourceOf(chunk), vocabulary.sizes)
  const label = read === null ? null : atPosition(read, chunk, vocabulary.sizes)
  const own = folded.map((part, index): OwnWords => {
    const after = index === 0 && label !== null ? withoutBold(part.words, label.end) : part.words
    return { only: parts[index]?.only ?? null, words: after }
  })
  const title = label === null ? titleEnd(own[0]?.words ?? [], vocabulary) : 0
  return {
    label,
    only,
    own:
      title === 0 ? own : own.map((each, index) => (index === 0 ? { ...each, words: each.words.slice(title) } : each)),
    title: title === 0 ? null : titleText(own[0]?.words.slice(0, title - 1) ?? [], sourceOf(chunk)),
    at: words[0] === undefined ? null : cover(words[0].at, words.at(-1)?.at ?? words[0].at),
    lists: folded.flatMap((part) => part.lists.lists),
    wrong: folded.flatMap((part) => part.lists.wrong),
    opens,
    alone,
    unknownSizes: unknown,
    opensLine: (word) => opensLineIn(chunk, word.at.start),
  }
}
