import type { Diagnostic, Related, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Fabric, Worked } from './attempt.ts'
import { nothing } from './attempt.ts'
import type { Count } from './count.ts'
import { everySize, sizesWhere } from './count.ts'
import type { ReadRow } from './cut.ts'
import type { Kinds } from './fabric.ts'
import { createKinds } from './fabric.ts'
import type { Mismatch } from './findings.ts'
import { isEndless, leftFindings, mismatchFinding, mismatchOf, rowName, stopFindings } from './findings.ts'
import { labelText, longestRange } from './label.ts'
import type { LedgerRow } from './ledger.ts'
import { madeBy } from './made.ts'
import type { Before, Entry } from './plan.ts'
import { planRow } from './plan.ts'
import { printTally } from './print.ts'
import { agrees, bestReading } from './readings.ts'
import type { Stated } from './stated.ts'
import type { Counting, Step } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'
import type { OpeningRules } from './work/state.ts'
import type { Settings } from './written.ts'

/** A piece in the making, size by size. */
interface Piece {
  readonly name: string
  fabrics: Fabric[]
  /** Sizes that can't go on. */
  broken: boolean[]
  readonly steps: Map<number, readonly Step[]>[]
  readonly last: (number | null)[]
  readonly rows: number[]
  readonly labels: Set<string>
  /** By how much the row below missed its stated count: the same miss is not told twice. */
  missed: ReadonlyMap<number, number>
  missedAt: Span | null
}

/** What grows while the rows are worked. */
export interface Book {
  readonly settings: Settings
  readonly dictionary: Dictionary
  readonly kinds: Kinds
  readonly said: Map<number, Counting>
  readonly topsUsed: ReadonlySet<number>
  readonly rows: LedgerRow[]
  readonly entries: (readonly [number, number])[]
  readonly found: Diagnostic[]
  readonly words: (at: Span) => string
  piece: Piece | null
}

export function createBook(
  settings: Settings,
  dictionary: Dictionary,
  rules: OpeningRules,
  words: (at: Span) => string,
): Book {
  return {
    settings,
    dictionary,
    kinds: createKinds(),
    said: new Map(rules.said),
    topsUsed: rules.topsUsed,
    rows: [],
    entries: [],
    found: [],
    words,
    piece: null,
  }
}

function newPiece(name: string, sizes: number): Piece {
  return {
    name,
    fabrics: new Array<Fabric>(sizes).fill(nothing),
    broken: new Array<boolean>(sizes).fill(false),
    steps: Array.from({ length: sizes }, () => new Map()),
    last: new Array<number | null>(sizes).fill(0),
    rows: new Array<number>(sizes).fill(0),
    labels: new Set(),
    missed: new Map(),
    missedAt: null,
  }
}

const starters = new Set<Step['kind']>(['join', 'ring', 'turn', 'remark', 'fastenOff'])

/** Whether a row begins a piece: a foundation, a ring, foundation stitches. */
function startsPiece(row: ReadRow): boolean {
  if (row.content?.kind !== 'steps') return false
  const { steps } = row.content
  const at = steps.findIndex((step) => step.kind !== 'remark')
  const first = steps[at]
  if (first?.kind === 'ring') return true
  if (first?.kind === 'work') {
    if (first.parts.some((part) => part.kind === 'stitch' && part.stitch.style === 'foundation'))
      return row.opensSection
    return first.where.kind === 'ring' && row.opensSection
  }
  if (first?.kind !== 'chain') return false
  const rest = steps.slice(at + 1)
  if (rest.every((step) => starters.has(step.kind))) return true
  const [next] = rest.filter((step) => !(step.kind === 'remark' || step.kind === 'turn'))
  if (next?.kind === 'ring' || next?.kind === 'join') return true
  return row.opensSection && next !== undefined && 'where' in next && next.where.kind === 'fromHook'
}

function pieceFor(book: Book, row: ReadRow): Piece {
  const sizes = book.settings.sizes.length
  if (book.piece === null || startsPiece(row)) {
    const before = book.piece
    book.piece = newPiece(row.piece, sizes)
    // A second part under the same heading shares its labels: `Row 1` twice is worth a word.
    if (before?.name === row.piece) for (const label of before.labels) book.piece.labels.add(label)
  } else if (book.piece.name !== row.piece) {
    const { fabrics, broken, rows } = book.piece
    book.piece = { ...newPiece(row.piece, sizes), fabrics, broken, rows }
  }
  return book.piece
}

function ledgerStated(stated: Stated | null, checked: (size: number) => boolean, row: LedgerRow): LedgerRow['stated'] {
  if (stated === null) return null
  const made = madeBy(row)
  const found: Record<string, readonly (number | null)[]> = {}
  for (const item of stated.items) {
    const counts = typeof item.count === 'function' ? item.count(made) : item.count
    found[item.shown] = counts.map((count, size) => (checked(size) && row.total[size] !== null ? count : null))
  }
  return found
}

function countsOf(book: Book, worked: readonly (Worked | null)[]): LedgerRow['counts'] {
  const counts: Record<string, number[]> = {}
  worked.forEach((result, size) => {
    if (result === null || result.stop !== null) return
    for (const [key, count] of result.tally) {
      if (count === 0) continue
      const shown = printTally(key, book.dictionary)
      const bySize = counts[shown] ?? new Array<number>(worked.length).fill(0)
      bySize[size] = (bySize[size] ?? 0) + count
      counts[shown] = bySize
    }
  })
  return counts
}

function blank(row: ReadRow, label: string | null, sizes: number): LedgerRow {
  return {
    piece: row.piece,
    label,
    side: row.label?.side ?? null,
    at: row.at,
    status: 'not-worked',
    reason: null,
    total: new Array<null>(sizes).fill(null),
    counts: {},
    stated: null,
    agrees: null,
    left: everySize(0, sizes).map((value) => value ?? 0),
  }
}

function styleOf(row: ReadRow): 'flat' | 'round' | null {
  return row.label?.style ?? null
}

/** How opening chains counted in a row that came out by its stated count holds from there on. */
function learn(book: Book, worked: readonly (Worked | null)[], isStated: boolean): void {
  if (!isStated) return
  for (const result of worked) {
    for (const [chains, counting] of result?.chosen ?? []) if (!book.said.has(chains)) book.said.set(chains, counting)
  }
}

function learnSaid(book: Book, steps: readonly Step[]): void {
  for (const step of steps) {
    if (step.kind !== 'chain' || step.counting === null) continue
    const chains = step.count[0] ?? null
    if (chains !== null && step.count.every((count) => count === chains)) book.said.set(chains, step.counting)
  }
}

/** Sizes whose miss is new: the row below did not miss by the same number. */
function newMisses(piece: Piece, misses: readonly Mismatch[]): readonly Mismatch[] {
  return misses.filter((miss) => piece.missed.get(miss.size) !== miss.by)
}

function reportCounts(
  book: Book,
  piece: Piece,
  row: ReadRow,
  name: string,
  worked: readonly (Worked | null)[],
  stated: Stated | null,
  checked: (size: number) => boolean,
): void {
  const misses: Mismatch[] = []
  worked.forEach((result, size) => {
    if (stated === null || result === null || result.stop !== null || !checked(size)) return
    // A repeat that does not come out is told as such, once.
    if (isEndless(result)) return
    const miss = mismatchOf(stated, result, size, book.dictionary)
    if (miss !== null) misses.push(miss)
  })
  const fresh = newMisses(piece, misses)
  const left = fresh.map((miss) => worked[miss.size]?.left ?? 0)[0] ?? 0
  const related: Related[] = []
  const at = stated?.at ?? row.at
  const finding = mismatchFinding(fresh, name, at, left, book.settings.sizes, related)
  if (finding !== null) book.found.push(finding)
  if (misses.length > 0 || stated !== null) {
    piece.missed = new Map(misses.map((miss) => [miss.size, miss.by]))
    piece.missedAt = misses.length > 0 ? at : null
  }
  const missing = new Set(misses.map((miss) => miss.size))
  book.found.push(...leftFindings(worked, name, row.steps, (size) => missing.has(size)))
  const unknown = stated?.items.find((item) => item.tally === 'unknown')
  if (unknown !== undefined) book.found.push(diagnose('count-unread', at, { row: name, noun: unknown.shown }))
}

function agreement(
  stated: Stated | null,
  worked: readonly (Worked | null)[],
  checked: (size: number) => boolean,
): boolean | null {
  if (stated === null) return null
  let compared = false
  for (const [size, result] of worked.entries()) {
    if (result === null || result.stop !== null || !checked(size)) continue
    compared = true
    if (!stated.items.every((item) => agrees(item, result, size))) return false
  }
  return compared ? true : null
}

/** Sizes for which an entry is the last of its row: the stated count of a range belongs there. */
function lastFor(entries: readonly Entry[], index: number): (size: number) => boolean {
  const next = entries[index + 1]
  return (size) => (entries[index]?.steps[size] ?? null) !== null && (next?.steps[size] ?? null) === null
}

function enter(book: Book, piece: Piece, row: ReadRow, entries: readonly Entry[], index: number): void {
  const entry = entries[index]
  if (entry === undefined) return
  const sizes = book.settings.sizes.length
  const label = labelFor(row, entry.number)
  const name = rowName(label)
  const checked = lastFor(entries, index)
  const steps = entry.steps.map((each, size) => (piece.broken[size] ? null : each))
  for (const each of new Set(steps)) if (each !== null) learnSaid(book, each)
  const reading = bestReading({
    kinds: book.kinds,
    sizes,
    style: styleOf(row),
    rules: { said: book.said, topsUsed: book.topsUsed },
    steps,
    fabrics: piece.fabrics,
    stated: row.stated,
    checked,
  })
  const { worked } = reading
  const stated = row.stated
  const started = book.found.length
  book.found.push(...stopFindings(worked, name, book.words))
  reportCounts(book, piece, row, name, worked, stated, checked)
  learn(book, worked, stated !== null && sizesWhere(sizes, checked).length > 0)
  const stops = worked.some((result) => result?.stop != null)
  const skipped = sizesWhere(sizes, (size) => piece.broken[size] === true && (entry.steps[size] ?? null) !== null)
  const done: LedgerRow = {
    ...blank(row, label, sizes),
    status: stops || skipped.length > 0 ? 'not-worked' : 'worked',
    reason: stops
      ? (book.found[started]?.message ?? null)
      : skipped.length > 0
        ? 'A row before it could not be worked.'
        : null,
    total: worked.map((result) => (result === null || result.stop !== null ? null : result.total)),
    counts: countsOf(book, worked),
    left: worked.map((result) => (result === null || result.stop !== null ? 0 : result.left)),
    agrees: agreement(stated, worked, checked),
  }
  book.rows.push({ ...done, stated: shownStated(stated, checked, worked, done) })
  advance(piece, entry, worked)
}

/** For the rows of a range before its last the count is shown where it holds there too. */
function shownStated(
  stated: Stated | null,
  checked: (size: number) => boolean,
  worked: readonly (Worked | null)[],
  done: LedgerRow,
): LedgerRow['stated'] {
  if (stated === null) return null
  const holds = (size: number): boolean => {
    const result = worked[size] ?? null
    return (
      checked(size) ||
      (result !== null && result.stop === null && stated.items.every((item) => agrees(item, result, size)))
    )
  }
  const shown = ledgerStated(stated, holds, done)
  if (shown === null) return null
  return Object.values(shown).every((counts) => counts.every((count) => count === null)) ? null : shown
}

function advance(piece: Piece, entry: Entry, worked: readonly (Worked | null)[]): void {
  worked.forEach((result, size) => {
    const number = entry.number?.[size] ?? null
    const steps = entry.steps[size] ?? null
    if (number !== null) {
      piece.last[size] = number
      if (steps !== null) piece.steps[size]?.set(number, steps)
    }
    if (result === null) return
    if (result.stop !== null) piece.broken[size] = true
    else {
      piece.fabrics[size] = result.fabric
      if (result.total > 0) piece.rows[size] = (piece.rows[size] ?? 0) + 1
    }
  })
}

function labelFor(row: ReadRow, number: Count | null): string | null {
  if (row.label === null) return null
  return row.label.numbers.kind === 'list' ? labelText(row.label, number) : labelText(row.label, null)
}

function checkNumbers(book: Book, piece: Piece, row: ReadRow, entries: readonly Entry[]): void {
  const { label } = row
  if (label === null || label.numbers.kind !== 'list') return
  for (const entry of entries) {
    const text = labelText(label, entry.number)
    const key = `${text} ${row.only?.join(',') ?? ''}`
    if (text !== null && piece.labels.has(key)) {
      book.found.push(diagnose('row-label-twice', label.at, { row: text, piece: row.piece }))
      return
    }
    piece.labels.add(key)
  }
  const [first] = entries
  const gaps = sizesWhere(book.settings.sizes.length, (size) => {
    const number = first?.number?.[size] ?? null
    const last = piece.last[size] ?? null
    return number !== null && last !== null && last > 0 && number > last + 1 && (row.only?.includes(size) ?? true)
  })
  const [size] = gaps
  if (size === undefined || first === undefined) return
  const details = { row: labelText(label, first.number) ?? '', expected: (piece.last[size] ?? 0) + 1 }
  book.found.push(
    diagnose('row-number-gap', label.at, details, { sizes: gaps.length === book.settings.sizes.length ? [] : gaps }),
  )
}

function before(book: Book, piece: Piece): Before {
  return {
    sizes: book.settings.sizes.length,
    stepsOf: (number, size) => piece.steps[size]?.get(number) ?? null,
    last: (size) => piece.last[size] ?? null,
    rows: (size) => piece.rows[size] ?? 0,
    rowsIn: book.settings.rowsIn,
  }
}

/** Entries of a row that was not read: as many as its label names. */
function unreadEntries(row: ReadRow, sizes: number): readonly Entry[] {
  const steps = new Array<null>(sizes).fill(null)
  const numbers = row.label?.numbers
  if (numbers?.kind !== 'list') return [{ number: null, steps }]
  return numbers.items.map((number) => ({ number, steps }))
}

function enterUnread(
  book: Book,
  piece: Piece,
  row: ReadRow,
  entries: readonly Entry[],
  status: 'unread' | 'not-worked',
  reason: string,
): void {
  const sizes = book.settings.sizes.length
  for (const entry of entries.slice(0, longestRange)) {
    const done = { ...blank(row, labelFor(row, entry.number), sizes), status, reason }
    const literal = row.stated?.items.every((item) => typeof item.count !== 'function') ?? false
    const stated: Record<string, Count> = {}
    for (const item of row.stated?.items ?? []) if (typeof item.count !== 'function') stated[item.shown] = item.count
    book.rows.push({ ...done, stated: literal ? stated : null })
    entry.number?.forEach((number, size) => {
      if (number !== null) piece.last[size] = number
    })
  }
  piece.broken = piece.broken.map(() => true)
}

function reportUnread(book: Book, row: ReadRow): string {
  const name = rowName(labelFor(row, unreadEntries(row, book.settings.sizes.length)[0]?.number ?? null))
  if (row.broken || row.unread === null) return 'A placeholder or a size list in this row is wrong.'
  const { at, words, expected, mark } = row.unread
  if (mark !== null) book.found.push(diagnose('repeat-without-mark', at, { row: name, mark }))
  else {
    const foreign = book.dictionary.foreign.get(
      words.split(' ').find((word) => book.dictionary.foreign.has(word)) ?? '',
    )
    const other = book.dictionary.terms === 'us' ? 'UK' : 'US'
    const instead =
      foreign === undefined ? null : `This looks like ${other} terms; in the draft’s terms it is “${foreign}”.`
    book.found.push(diagnose('row-unread', at, { row: name, words: book.words(at) || words, expected, instead }))
  }
  return `The reader stopped at “${words}”.`
}

function trouble(book: Book, row: ReadRow, plan: ReturnType<typeof planRow>): boolean {
  const name = rowName(labelFor(row, plan.entries[0]?.number ?? null))
  switch (plan.trouble?.kind) {
    case undefined:
      return false
    case 'unknown row':
      book.found.push(diagnose('unknown-row-reference', row.steps, { row: name, number: plan.trouble.number }))
      return true
    case 'no row gauge':
      book.found.push(diagnose('row-gauge-missing', row.steps, { row: name }))
      return false
    case 'too long':
      book.found.push(diagnose('range-too-long', row.at, { most: longestRange }))
      return true
  }
}

function isTooLong(row: ReadRow): boolean {
  return row.label?.numbers.kind === 'list' && row.label.numbers.items.length > longestRange
}

/** Works one written row for all sizes and enters what it makes. */
export function enterRow(book: Book, row: ReadRow): void {
  const first = book.rows.length
  const piece = pieceFor(book, row)
  const sizes = book.settings.sizes.length
  if (isTooLong(row)) {
    book.found.push(diagnose('range-too-long', row.at, { most: longestRange }))
    enterUnread(book, piece, row, unreadEntries(row, sizes).slice(0, 1), 'not-worked', 'It stands for too many rows.')
  } else if (row.content === null || row.broken) {
    const told = piece.broken.every((broken) => broken) && !row.broken
    const reason = told ? 'A row before it could not be worked.' : reportUnread(book, row)
    checkNumbers(book, piece, row, unreadEntries(row, sizes))
    enterUnread(book, piece, row, unreadEntries(row, sizes), 'unread', reason)
  } else {
    const plan = planRow(row, row.content, before(book, piece))
    checkNumbers(book, piece, row, plan.entries)
    const allBroken = piece.broken.every((broken) => broken)
    if (!allBroken && trouble(book, row, plan)) {
      enterUnread(book, piece, row, plan.entries, 'not-worked', book.found.at(-1)?.message ?? '')
    } else plan.entries.forEach((_, index) => enter(book, piece, row, plan.entries, index))
  }
  book.entries.push([first, book.rows.length])
}
