import type { Span } from '../../diagnostic/index.ts'
import { cover, diagnose } from '../../diagnostic/index.ts'
import { essentialBeginning } from '../content/beginning.ts'
import type { Unread } from '../reader.ts'
import type { Read } from '../row-reading.ts'
import { countsOf, isFoundation, labelCount, lateCount } from '../row-reading.ts'
import type { Word } from '../words.ts'
import { isTitle } from './chunks.ts'
import { isLabelledRow, isUnlabelledRow, leadsOn } from './decide.ts'
import { soundsLikeFoundation, soundsLikeOtherPiece } from './foundation.ts'
import type { Only } from './parts.ts'
import { bothOnly } from './parts.ts'
import type { Chunk } from './passage-text.ts'
import type { Prepared } from './prepare.ts'
import { prepare, rowsOf } from './prepare.ts'
import { readPrepared } from './read-parts.ts'
import { restrict, restricted } from './restrict.ts'
import type { Cutter } from './row.ts'
import type { Found, SectionState } from './state.ts'
import { wordsOf } from './state.ts'

function spanOf(words: readonly Word[], fallback: Span): Span {
  const first = words[0]
  return first === undefined ? fallback : cover(first.at, words.at(-1)?.at ?? first.at)
}

/** A label in another passage than the steps does not belong to the row's own words. */
function spanOfRow({ label, at, opens }: Prepared, { passage, text, start: from }: Chunk): Span {
  const whole = at ?? passage.at
  // The sizes that it is for stand before it.
  if (opens !== null) return { start: from + (text.length - text.trimStart().length), end: whole.end }
  const own = label !== null && label.at.start >= passage.at.start && label.at.end <= passage.at.end
  const start = own ? Math.max(passage.at.start, label.at.start) : Math.max(passage.at.start, whole.start)
  return { start, end: Math.max(start, whole.end) }
}

/** A row with the steps that a line before it says. */
function ledOn(leading: Read | null, read: Read): Pick<Read, 'content' | 'words'> {
  if (leading?.content?.kind !== 'steps' || read.content?.kind !== 'steps') return read
  const steps = [...leading.content.steps, ...read.content.steps]
  return { content: { kind: 'steps', steps }, words: [...leading.words, ...read.words] }
}

function addRow(cutter: Cutter, state: SectionState, { chunk, prepared }: Found, read: Read, only: Only): void {
  const { label, wrong, lists } = prepared
  const at = spanOfRow(prepared, chunk)
  for (const list of wrong) {
    cutter.found.push(diagnose('size-list-length', list.at, { given: list.given, sizes: cutter.vocabulary.sizes }))
  }
  const words = wordsOf(prepared)
  const whole = ledOn(state.leading, read)
  cutter.rows.push({
    piece: state.piece,
    opensSection: state.rows === 0,
    label,
    only: bothOnly(chunk.passage.only, only),
    at,
    steps: spanOf(read.words, { start: at.end, end: at.end }),
    content: whole.content,
    unread: read.unread,
    broken: wrong.length > 0 || words.some((word) => word.kind === 'broken'),
    ...countsOf(read, rowsOf(label), words, cutter.vocabulary.sizes, labelCount(label, cutter.vocabulary)),
    lists,
    words: [...whole.words],
    afterBreak: state.broken,
    afterEnd: state.ended,
    again: false,
  })
  if (read.content !== null) cutter.stitch = read.stitch
  state.rows += 1
  state.broken = label === null
  state.ended = false
  state.leading = null
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
  // `Base:` above numbered rows is what they make.
  if (label.numbers.kind === 'none' && label.style === null) return
  const read = unreadAt({ at: label.at, words: '', expected: 'steps', mark: null })
  addRow(cutter, state, found, read, found.prepared.only)
}

/** The chain that words which could not be read in full begin with, where they make nothing else. */
function essentials(cutter: Cutter, { prepared }: Found): Read | null {
  const words = essentialBeginning(wordsOf(prepared))
  if (words === null) return null
  const read = readPrepared({ ...prepared, own: [{ only: null, words }] }, cutter.vocabulary, cutter.stitch)
  return isFoundation(read.content) ? read : null
}

/** The piece is begun by words that could not be read: they are the row that is unread, not the one after them. */
function addBeginning(cutter: Cutter, state: SectionState): void {
  const found = state.beginning
  state.beginning = null
  if (found === null || state.rows > 0) return
  const at = found.prepared.at ?? found.chunk.passage.at
  const unread = unreadAt({ at, words: 'beginning', expected: 'a chain or ring', mark: null })
  addRow(cutter, state, found, essentials(cutter, found) ?? unread, null)
}

/** A count in a paragraph of its own, below its row. */
function takeLateCount(cutter: Cutter, { passage }: Chunk, words: readonly Word[]): boolean {
  const row = cutter.rows.at(-1)
  if (row === undefined || row.stated !== null || row.content === null || passage.form === 'cell') return false
  const stated = lateCount(words, cutter.vocabulary)
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

function beginsAnew(cutter: Cutter, state: SectionState, { label }: Prepared): boolean {
  if (state.title === null || label?.numbers.kind !== 'list') return false
  const number = label.numbers.items[0]?.[0] ?? null
  const last = cutter.rows
    .slice(state.first)
    .findLast((row) => row.label?.numbers.kind === 'list' && row.label.name === label.name && row.piece === state.piece)
  const before = last?.label?.numbers.kind === 'list' ? (last.label.numbers.items.at(-1)?.[0] ?? null) : null
  return number !== null && before !== null && number <= before
}

/** A name in the middle of a section: what follows it begins anew where its numbers do. */
function takeTitle(state: SectionState, text: string): void {
  state.title = text
    .replace(/[*_#:.]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
}

function takeProse(cutter: Cutter, state: SectionState, found: Found, read: Read): void {
  const { chunk, prepared } = found
  const words = wordsOf(prepared)
  if (words.length > 0) state.broken = true
  if (/^(?:fasten|finish|break|cut|fo)$/.test(words[0]?.text ?? '')) state.ended = true
  if (prepared.title !== null) takeTitle(state, prepared.title)
  else if (isTitle(chunk.text, cutter, () => prepared)) takeTitle(state, chunk.text)
  if (soundsLikeFoundation(words) || (state.rows === 0 && soundsLikeOtherPiece(words))) state.beginning = found
  state.leading = state.rows > 0 && leadsOn(read.content) ? read : null
}

/** Reads a chunk with its label, or that of the passage before it. */
function takeRow(cutter: Cutter, state: SectionState, found: Found): boolean {
  const { prepared } = found
  const { label } = prepared
  const read = readPrepared(prepared, cutter.vocabulary, cutter.stitch)
  const leads = label === null && state.rows > 0 && leadsOn(read.content)
  if (leads || !(isLabelledRow(cutter, state, found, read) || isUnlabelledRow(cutter, state, found, read))) {
    takeProse(cutter, state, found, read)
    return false
  }
  if (prepared.title !== null) takeTitle(state, prepared.title)
  if (beginsAnew(cutter, state, prepared)) {
    state.piece = state.title ?? state.piece
    state.rows = 0
    state.title = null
  }
  if (isFoundation(read.content)) state.beginning = null
  addBeginning(cutter, state)
  const unknown = prepared.unknownSizes && label !== null
  const own = unknown
    ? unreadAt({ at: label.at, words: 'only', expected: 'the name of a size of this draft', mark: null })
    : read
  addRow(cutter, state, found, own, prepared.only)
  return true
}

/** Takes one chunk as a row, or gives false where it is none. */
export function takeChunk(cutter: Cutter, state: SectionState, chunk: Chunk, further: readonly Chunk[]): boolean {
  const plain = prepare(chunk, cutter)
  if (plain.opens !== null && plain.alone) {
    restrict(cutter, state, plain.only, chunk, further)
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
    state.waiting = { chunk, prepared, further }
    return true
  }
  if (prepared.label === null && chunk.passage.form === 'cell') return false
  return takeRow(cutter, state, { chunk, prepared, further })
}

export function endSection(cutter: Cutter, state: SectionState): void {
  addEmpty(cutter, state)
}
