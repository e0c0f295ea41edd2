import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { cover, diagnose } from '../diagnostic/index.ts'
import type { Content } from './content.ts'
import type { Label } from './label.ts'
import { readLabel } from './label.ts'
import type { Unread, Vocabulary } from './reader.ts'
import type { Read } from './row-reading.ts'
import { countsOf, isFoundation, isRow, lateCount, readWordsOfRow } from './row-reading.ts'
import type { SizeLists } from './sizelist.ts'
import { foldSizeLists } from './sizelist.ts'
import type { Stated } from './stated/item.ts'
import type { Stitch } from './terms/stitch.ts'
import { inTodaysWords } from './wording/index.ts'
import type { Word } from './words.ts'
import { readWords } from './words.ts'
import type { Hole, Passage, Section } from './written.ts'

/** A row as read from the draft, before it is worked. */
export interface ReadRow {
  readonly piece: string
  /** Whether it is the first row under its heading. */
  readonly opensSection: boolean
  readonly label: Label | null
  readonly only: readonly number[] | null
  readonly at: Span
  readonly steps: Span
  readonly content: Content | null
  readonly unread: Unread | null
  /** A placeholder or a size list in it is wrong, which has been said already. */
  readonly broken: boolean
  readonly stated: Stated | null
  /** A count for each row of a range, where there are several; else empty. */
  readonly run: readonly Stated[]
  readonly lists: SizeLists['lists']
  readonly words: readonly Word[]
}

interface Chunk {
  readonly text: string
  readonly start: number
}

interface Cutter {
  readonly vocabulary: Vocabulary
  readonly sizeNames: readonly string[]
  readonly rows: ReadRow[]
  readonly prose: string[]
  readonly found: Diagnostic[]
  stitch: Stitch | null
}

/** Words of a stretch of a passage, size lists folded; and what was wrong with them. */
interface Prepared {
  readonly words: readonly Word[]
  readonly label: Label | null
  readonly only: readonly number[] | null
  readonly lists: SizeLists
  /** Whether a word is the first of its line in the draft. */
  readonly opensLine: (word: Word) => boolean
}

function onlySizes(names: string, sizeNames: readonly string[]): readonly number[] | null {
  let rest = ` ${names.toLowerCase()} `
  const found: number[] = []
  // The longest names first: `Adult S` must not be found inside `Adult S Tall`.
  const order = sizeNames
    .map((name, at) => ({ name: name.toLowerCase(), at }))
    .sort((a, b) => b.name.length - a.name.length)
  for (const { name, at } of order) {
    const index = rest.search(new RegExp(`(?<=[\\s,(&])${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?=[\\s,)&])`))
    if (index < 0) continue
    found.push(at)
    rest = `${rest.slice(0, index)} ${rest.slice(index + name.length)}`
  }
  return found.length > 0 && /^[\s,&()]*(?:and[\s,&()]*)*$/.test(rest) ? found.sort((a, b) => a - b) : null
}

const onlyClause = /,?\s*\(?\bsizes?\s+([^:.\n]{1,200}?)\s+only\b\)?[\s*_]*[:,–-]?/i

/** `Sizes Adult S and Adult L only:`, before the label or after its number. */
function cutOnly(chunk: Chunk, sizeNames: readonly string[]): { only: readonly number[] | null; text: string } {
  const match = onlyClause.exec(chunk.text.slice(0, 300))
  const only = match === null ? null : onlySizes(match[1] ?? '', sizeNames)
  if (match === null || only === null) return { only: null, text: chunk.text }
  const before = chunk.text.slice(0, match.index)
  // Blanks keep every offset; a colon after the number of a label must stay one.
  const kept =
    /\d/.test(before) && match[0].endsWith(':') ? `${' '.repeat(match[0].length - 1)}:` : ' '.repeat(match[0].length)
  return { only, text: before + kept + chunk.text.slice(match.index + match[0].length) }
}

function holesIn(holes: readonly Hole[], at: Span): readonly Hole[] {
  return holes.filter((hole) => hole.at.start >= at.start && hole.at.end <= at.end)
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

function prepare(cutter: Cutter, passage: Passage, chunk: Chunk): Prepared {
  const { sizes } = cutter.vocabulary
  const { only, text } = cutOnly(chunk, cutter.sizeNames)
  const at = { start: chunk.start, end: chunk.start + chunk.text.length }
  const words = readWords({ at, text, holes: holesIn(passage.holes, at) }, sizes)
  const source = (span: Span): string => chunk.text.slice(span.start - chunk.start, span.end - chunk.start)
  const fold = (rows: number | null): SizeLists =>
    foldSizeLists(words, sizes, source, bothOnly(passage.only, only), rows)
  const folded = fold(null)
  const rows = folded.wrong.length === 0 ? 0 : rowsOf(readLabel(folded.words, source))
  // `Rnds 2–4: … (12, 18, 24)`: a count for each row.
  const lists = rows > 1 ? fold(rows) : folded
  const opensLine = (word: Word): boolean => opensLineIn(chunk, word.at.start)
  const modern = inTodaysWords(lists.words, cutter.vocabulary.dictionary.terms, source)
  return { words: modern, label: readLabel(modern, source), only, lists, opensLine }
}

/** Whether nothing but blanks stands before a place in its line. */
function opensLineIn({ text, start }: Chunk, at: number): boolean {
  const before = text.slice(Math.max(0, at - start - 40), at - start)
  return /\n[\s>]*$/.test(before)
}

/** How many rows a label names, 1 where it does not say. */
function rowsOf(label: Label | null): number {
  return label?.numbers.kind === 'list' ? label.numbers.items.length : 1
}

function bothOnly(first: readonly number[] | null, second: readonly number[] | null): readonly number[] | null {
  if (first === null) return second
  return second === null ? first : first.filter((size) => second.includes(size))
}

function spanOf(words: readonly Word[], fallback: Span): Span {
  const first = words[0]
  return first === undefined ? fallback : cover(first.at, words.at(-1)?.at ?? first.at)
}

function addRow(cutter: Cutter, piece: string, opens: boolean, prepared: Prepared, read: Read, passage: Passage): void {
  const { label, lists, words } = prepared
  const at = spanOf(words, passage.at)
  const from = label?.at.start ?? at.start
  for (const wrong of lists.wrong) {
    cutter.found.push(diagnose('size-list-length', wrong.at, { given: wrong.given, sizes: cutter.vocabulary.sizes }))
  }
  cutter.rows.push({
    piece,
    opensSection: opens,
    label,
    only: bothOnly(passage.only, prepared.only),
    at: { start: from, end: Math.max(from, at.end) },
    steps: spanOf(read.words, { start: at.end, end: at.end }),
    content: read.content,
    unread: read.unread,
    broken: words.some((word) => word.kind === 'broken'),
    ...countsOf(read, rowsOf(label), words, cutter.vocabulary.sizes),
    lists: lists.lists,
    words: [...read.words],
  })
  if (read.content !== null) cutter.stitch = read.stitch
}

/** A label that stands alone; its steps are the next passage or line. */
interface Waiting {
  readonly prepared: Prepared
  readonly passage: Passage
}

interface SectionState {
  readonly piece: string
  rows: number
  waiting: Waiting | null
}

function withLabel(waiting: Waiting, prepared: Prepared): Prepared {
  const { prepared: labelled } = waiting
  const { wrong } = prepared.lists
  const words = [...labelled.words, ...prepared.words]
  const lists = {
    words,
    lists: [...labelled.lists.lists, ...prepared.lists.lists],
    wrong: [...labelled.lists.wrong, ...wrong],
  }
  const { opensLine } = prepared
  return { words, label: labelled.label, only: bothOnly(labelled.only, prepared.only), lists, opensLine }
}

/** A label after which no steps have come. */
function addEmpty(cutter: Cutter, state: SectionState): void {
  const { waiting } = state
  const label = waiting?.prepared.label ?? null
  state.waiting = null
  if (waiting === null || label === null || label.name === '' || waiting.passage.form === 'cell') return
  const unread = { at: label.at, words: '', expected: 'steps', mark: null }
  const read = { content: null, unread, stated: null, run: [], words: [], stitch: null }
  addRow(cutter, state.piece, state.rows === 0, waiting.prepared, read, waiting.passage)
  state.rows += 1
}

/** A count in a paragraph or table cell of its own, below its row or beside it. */
function takeLateCount(cutter: Cutter, passage: Passage, words: readonly Word[]): boolean {
  const row = cutter.rows.at(-1)
  if (row === undefined || row.stated !== null || row.content === null) return false
  const stated = lateCount(words, cutter.vocabulary, passage.form === 'cell')
  if (stated === null) return false
  cutter.rows[cutter.rows.length - 1] = { ...row, stated }
  return true
}

function takeChunk(cutter: Cutter, state: SectionState, passage: Passage, chunk: Chunk): boolean {
  let prepared = prepare(cutter, passage, chunk)
  if (prepared.label !== null) addEmpty(cutter, state)
  if (prepared.label === null && state.waiting !== null && prepared.words.length > 0) {
    prepared = withLabel(state.waiting, prepared)
  }
  state.waiting = null
  const { label, words } = prepared
  if (label === null && state.rows > 0 && takeLateCount(cutter, passage, words)) return true
  const own = label === null ? words : withoutBold(words, label.end)
  if (label !== null && own.length === 0) {
    state.waiting = { prepared, passage }
    return true
  }
  if (label === null && passage.form === 'cell') return false
  const read = readWordsOfRow(own, cutter.vocabulary, cutter.stitch, prepared.opensLine)
  const reads = isRow(read.content)
  const unlabelled = label === null && reads && (state.rows > 0 || isFoundation(read.content))
  const labelled = label !== null && (label.sure || reads || (label.name === '' && state.rows > 0))
  if (!(unlabelled || labelled)) return false
  addRow(cutter, state.piece, state.rows === 0, prepared, read, passage)
  state.rows += 1
  return true
}

/** Rows without a label that a line of their own may hold: repetitions of earlier rows, and shaping. */
const goesOn =
  /^\s*(?:(?:rep|repeat) (?:rows?|rnds?|rounds?|last|the last)\b|work even\b|(?:inc|dec)(?:rease)? (?:\d+ sts? )?at\b)/i

function isOnlyClause(line: string): boolean {
  return line.length < 300 && onlyClause.exec(line)?.[0].length === line.trim().length
}

/** Pieces of a passage that each begin with a label; a line without one goes on with the row before it. */
function chunksOf(cutter: Cutter, passage: Passage): readonly Chunk[] {
  const chunks: { text: string; start: number }[] = []
  let start = passage.at.start
  for (const line of passage.text.split('\n')) {
    const chunk = { text: line, start }
    start += line.length + 1
    const last = chunks.at(-1)
    // `Sizes S and M only:` on a line of its own belongs to the row below it.
    if (last !== undefined && isOnlyClause(last.text)) {
      last.text += `\n${line}`
      continue
    }
    const opens =
      last === undefined ||
      isOnlyClause(line) ||
      goesOn.test(line) ||
      prepare(cutter, passage, { ...chunk, text: line.slice(0, 400) }).label !== null
    if (opens) chunks.push(chunk)
    else last.text += `\n${line}`
  }
  return chunks
}

function cutSection(cutter: Cutter, section: Section): void {
  const state: SectionState = { piece: section.title ?? '', rows: 0, waiting: null }
  for (const passage of section.passages) {
    for (const chunk of chunksOf(cutter, passage)) {
      if (!takeChunk(cutter, state, passage, chunk)) cutter.prose.push(chunk.text)
    }
  }
  addEmpty(cutter, state)
}

/** The rows of a draft in order, and its other words. */
export interface CutDraft {
  readonly rows: readonly ReadRow[]
  readonly prose: readonly string[]
  readonly diagnostics: readonly Diagnostic[]
}

/** Finds and reads the rows. Prose is left alone: only a labelled passage, or one that reads whole as steps, is a row. */
export function cutRows(sections: readonly Section[], vocabulary: Vocabulary, sizeNames: readonly string[]): CutDraft {
  const cutter: Cutter = { vocabulary, sizeNames, rows: [], prose: [], found: [], stitch: null }
  for (const section of sections) cutSection(cutter, section)
  return { rows: cutter.rows, prose: cutter.prose, diagnostics: cutter.found }
}
