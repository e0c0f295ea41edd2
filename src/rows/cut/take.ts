import type { Span } from '../../diagnostic/index.ts'
import { cover, diagnose } from '../../diagnostic/index.ts'
import { isProse } from '../prose.ts'
import type { Unread } from '../reader.ts'
import type { Read } from '../row-reading.ts'
import { countsOf, isFoundation, isRow, labelCount, lateCount } from '../row-reading.ts'
import type { Word } from '../words.ts'
import type { Passage } from '../written.ts'
import { isRowOfItsOwn, isTitle } from './chunks.ts'
import { soundsLikeFoundation } from './foundation.ts'
import type { Only } from './parts.ts'
import { bothOnly } from './parts.ts'
import type { Chunk } from './passage-text.ts'
import type { Prepared } from './prepare.ts'
import { prepare, rowsOf } from './prepare.ts'
import { readPrepared } from './read-parts.ts'
import type { Cutter } from './row.ts'

/** Sizes that were named above rows. */
interface Restriction {
  readonly only: readonly number[]
  /** It holds until words for all sizes come. */
  readonly lasts: boolean
  /** The passage of the first row below it; null until there is one. */
  within: Passage | null
}

interface Found {
  readonly chunk: Chunk
  readonly prepared: Prepared
}

/** What is known of a section while its chunks are taken one after the other. */
export interface SectionState {
  readonly heading: string
  /** Index of its first row. */
  readonly first: number
  piece: string
  /** Rows under the heading, or under a title line below it. */
  rows: number
  /** A label that stands alone; its steps are the next passage or line. */
  waiting: Found | null
  /** Words that sound like a foundation and could not be read. */
  beginning: Found | null
  restriction: Restriction | null
  /** A title that stands between the rows. */
  title: string | null
}

export function startSection(heading: string, first: number): SectionState {
  const open = { waiting: null, beginning: null, restriction: null, title: null }
  return { heading, first, piece: heading, rows: 0, ...open }
}

function wordsOf({ own }: Prepared): readonly Word[] {
  return own.flatMap(({ words }) => words)
}

function spanOf(words: readonly Word[], fallback: Span): Span {
  const first = words[0]
  return first === undefined ? fallback : cover(first.at, words.at(-1)?.at ?? first.at)
}

/** A label in another passage than the steps does not belong to the row's own words. */
function spanOfRow({ label, at }: Prepared, { passage }: Chunk): Span {
  const whole = at ?? passage.at
  const own = label !== null && label.at.start >= passage.at.start && label.at.end <= passage.at.end
  const start = own ? Math.max(passage.at.start, label.at.start) : Math.max(passage.at.start, whole.start)
  return { start, end: Math.max(start, whole.end) }
}

function addRow(cutter: Cutter, state: SectionState, { chunk, prepared }: Found, read: Read, only: Only): void {
  const { label, wrong, lists } = prepared
  const at = spanOfRow(prepared, chunk)
  for (const list of wrong) {
    cutter.found.push(diagnose('size-list-length', list.at, { given: list.given, sizes: cutter.vocabulary.sizes }))
  }
  const words = wordsOf(prepared)
  cutter.rows.push({
    piece: state.piece,
    opensSection: state.rows === 0,
    label,
    only: bothOnly(chunk.passage.only, only),
    at,
    steps: spanOf(read.words, { start: at.end, end: at.end }),
    content: read.content,
    unread: read.unread,
    broken: wrong.length > 0 || words.some((word) => word.kind === 'broken'),
    ...countsOf(read, rowsOf(label), words, cutter.vocabulary.sizes, labelCount(label, cutter.vocabulary)),
    lists,
    words: [...read.words],
    again: false,
  })
  if (read.content !== null) cutter.stitch = read.stitch
  state.rows += 1
}

function unreadAt(unread: Unread): Read {
  return { content: null, unread, stated: null, run: [], words: [], stitch: null }
}

/** A label after which no steps have come. */
function addEmpty(cutter: Cutter, state: SectionState): void {
  const found = state.waiting
  state.waiting = null
  const label = found?.prepared.label ?? null
  if (found === null || label === null || label.name === '' || found.chunk.passage.form === 'heading') return
  addRow(
    cutter,
    state,
    found,
    unreadAt({ at: label.at, words: '', expected: 'steps', mark: null }),
    found.prepared.only,
  )
}

/** The piece is begun by words that could not be read: they are the row that is unread, not the one after them. */
function addBeginning(cutter: Cutter, state: SectionState): void {
  const found = state.beginning
  state.beginning = null
  if (found === null || state.rows > 0) return
  const at = found.prepared.at ?? found.chunk.passage.at
  addRow(cutter, state, found, unreadAt({ at, words: 'beginning', expected: 'a chain or ring', mark: null }), null)
}

/** A count in a paragraph or table cell of its own, below its row or beside it. */
function takeLateCount(cutter: Cutter, { passage }: Chunk, words: readonly Word[]): boolean {
  const row = cutter.rows.at(-1)
  if (row === undefined || row.stated !== null || row.content === null) return false
  const stated = lateCount(words, cutter.vocabulary, passage.form === 'cell')
  if (stated === null) return false
  cutter.rows[cutter.rows.length - 1] = { ...row, stated }
  return true
}

function withLabel({ prepared: labelled }: Found, prepared: Prepared): Prepared {
  return {
    ...prepared,
    label: labelled.label,
    only: bothOnly(labelled.only, prepared.only),
    lists: [...labelled.lists, ...prepared.lists],
    wrong: [...labelled.wrong, ...prepared.wrong],
  }
}

/** Sizes named on a line of their own hold for the rows below it. */
function restrict(cutter: Cutter, state: SectionState, only: Only, further: readonly Chunk[]): void {
  const opens = further.map((chunk) => prepare({ ...chunk, text: chunk.text.slice(0, 120) }, cutter).opens)
  const next = opens.find((each) => each !== null)
  state.restriction = only === null ? null : { only, lasts: next === 'all', within: null }
}

/** The sizes that a row is for by what stands above it; the restriction ends where the row shows that it is for all. */
function restricted(cutter: Cutter, state: SectionState, chunk: Chunk, plain: Prepared): Prepared {
  const { restriction } = state
  if (restriction === null || plain.opens !== null) {
    state.restriction = null
    return plain
  }
  const own = prepare(
    { ...chunk, passage: { ...chunk.passage, only: bothOnly(chunk.passage.only, restriction.only) } },
    cutter,
  )
  const prepared = { ...own, only: bothOnly(own.only, restriction.only) }
  const proven = plain.wrong.length > own.wrong.length
  const below = restriction.within === null || restriction.within === chunk.passage
  if (proven || (own.wrong.length === plain.wrong.length && (restriction.lasts || below))) {
    if (own.label !== null) restriction.within ??= chunk.passage
    return prepared
  }
  state.restriction = null
  return plain
}

/** A name in the middle of a section: what follows it begins anew where its numbers do. */
function takeTitle(state: SectionState, text: string): void {
  state.title = text
    .replace(/[*_#:]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
}

function beginsAnew(cutter: Cutter, state: SectionState, { label }: Prepared): boolean {
  if (state.title === null || label?.numbers.kind !== 'list') return false
  const number = label.numbers.items[0]?.[0] ?? null
  const last = cutter.rows
    .slice(state.first)
    .findLast((row) => row.label?.numbers.kind === 'list' && row.label.name === label.name && row.piece === state.piece)
  const before = last?.label?.numbers.kind === 'list' ? (last.label.numbers.items.at(-1)?.[0] ?? null) : null
  return number !== null && before !== null && number <= before
}

/** Whether a chunk with a label is a row: by its label, by what it says, or because something in it may be worked. */
function isLabelledRow(cutter: Cutter, state: SectionState, prepared: Prepared, read: Read): boolean {
  const { label } = prepared
  if (label === null) return false
  if (label.sure || isRow(read.content)) return true
  return (label.name !== '' || state.rows > 0) && !isProse(wordsOf(prepared), cutter.vocabulary)
}

function isUnlabelledRow(cutter: Cutter, state: SectionState, { chunk, prepared }: Found, read: Read): boolean {
  if (prepared.label !== null) return false
  if (isRow(read.content)) return state.rows > 0 || isFoundation(read.content)
  // An instruction among rows is not passed over in silence.
  return (
    read.content === null &&
    state.rows > 0 &&
    isRowOfItsOwn(chunk.text) &&
    !isProse(wordsOf(prepared), cutter.vocabulary)
  )
}

function takeProse(cutter: Cutter, state: SectionState, found: Found): void {
  const { chunk, prepared } = found
  if (isTitle(chunk.text, cutter, () => prepared)) takeTitle(state, chunk.text)
  if (soundsLikeFoundation(wordsOf(prepared))) state.beginning = found
}

/** Reads a chunk with its label, or that of the passage before it. */
function takeRow(cutter: Cutter, state: SectionState, found: Found): boolean {
  const { prepared, chunk } = found
  const { label } = prepared
  const read = readPrepared(prepared, cutter.vocabulary, cutter.stitch)
  if (!(isLabelledRow(cutter, state, prepared, read) || isUnlabelledRow(cutter, state, found, read))) return false
  if (beginsAnew(cutter, state, prepared)) {
    state.piece = state.title ?? state.piece
    state.rows = 0
    state.title = null
  }
  if (isFoundation(read.content)) state.beginning = null
  addBeginning(cutter, state)
  const unknown = prepared.unknownSizes && label !== null
  const own = unknown
    ? unreadAt({ at: label.at, words: 'sizes', expected: 'the name of a size of this draft', mark: null })
    : read
  addRow(cutter, state, { chunk, prepared }, own, prepared.only)
  return true
}

/** Takes one chunk as a row, or gives false where it is none. */
export function takeChunk(cutter: Cutter, state: SectionState, chunk: Chunk, further: readonly Chunk[]): boolean {
  const plain = prepare(chunk, cutter)
  if (plain.opens !== null && plain.alone) {
    restrict(cutter, state, plain.only, further)
    return true
  }
  const { waiting } = state
  const own = restricted(cutter, state, chunk, plain)
  if (own.label !== null) addEmpty(cutter, state)
  state.waiting = null
  const joins = own.label === null && waiting !== null && wordsOf(own).length > 0
  const prepared = joins ? withLabel(waiting, own) : own
  const words = wordsOf(prepared)
  if (prepared.label === null && state.rows > 0 && takeLateCount(cutter, chunk, words)) return true
  if (prepared.label !== null && words.length === 0) {
    state.waiting = { chunk, prepared }
    return true
  }
  if (prepared.label === null && chunk.passage.form === 'cell') return false
  const found = { chunk, prepared }
  const taken = takeRow(cutter, state, found)
  if (!taken) takeProse(cutter, state, found)
  return taken
}

export function endSection(cutter: Cutter, state: SectionState): void {
  addEmpty(cutter, state)
}
