import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { PerSize } from '../measure/value.ts'
import type { Worked } from './attempt.ts'
import { habitFindings } from './check/habit.ts'
import type { Count } from './count.ts'
import type { ReadRow } from './cut.ts'
import type { EntryWork } from './entry-row.ts'
import { afterBroken, afterTrouble, labelFor, ledgerRow, unworkedRow } from './entry-row.ts'
import type { Kinds } from './fabric.ts'
import { createKinds } from './fabric.ts'
import { rowName } from './findings.ts'
import { goingBackTo } from './going-back.ts'
import type { Departure, Habits } from './habits.ts'
import { habitOf } from './habits.ts'
import type { Label } from './label.ts'
import { longestRange } from './label.ts'
import { labelFindings } from './label-findings.ts'
import type { LedgerRow } from './ledger.ts'
import type { FabricRow } from './past.ts'
import type { Piece } from './piece.ts'
import { hasNoFoundation, pieceFor } from './piece.ts'
import { lookBack } from './plan/look-back.ts'
import type { Entry } from './plan.ts'
import { planRow } from './plan.ts'
import type { Choices, Reading, RowJob } from './readings.ts'
import { bestReading, choicesOf, departuresOf } from './readings.ts'
import type { Names, Reporting } from './report.ts'
import { entryFindings, planFinding, specialUnread, unreadFinding, wordsUnread } from './report.ts'
import { wordsOf } from './row-words.ts'
import { followSides } from './side-check.ts'
import type { Evidence } from './stated/rule.ts'
import type { Counting, Step } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'
import type { Asked } from './troubles.ts'
import { follows, isWrong, troubleAfter } from './troubles.ts'
import type { OpeningRules } from './work/state.ts'
import type { Settings } from './written.ts'

/** What grows while the rows are worked. */
export interface Book {
  readonly settings: Settings
  readonly reporting: Reporting
  readonly kinds: Kinds
  readonly said: Map<number, Counting>
  readonly rules: OpeningRules
  readonly habits: Habits
  /** Habits that came up, with how many ways each can be taken, and the rows that come out another way only. */
  readonly met: Map<string, number>
  readonly departures: Departure[]
  /** Rows as written that do not come out. */
  wrong: number
  /** How the steps of a row have been read, for other rows that repeat them. */
  readonly kept: WeakMap<readonly Step[], Choices>
  readonly rows: LedgerRow[]
  readonly fabric: PerSize<FabricRow | null>[]
  /** For each written row its first entry and the one after its last. */
  readonly entries: (readonly [number, number])[]
  readonly found: Diagnostic[]
  /** The rows that state a count. */
  readonly evidence: Evidence[]
  piece: Piece | null
  /** All pieces begun so far. */
  readonly pieces: Piece[]
  /** The order of the next row that begins a piece of its own. */
  order: number
}

/**
 * @param words the draft's own words at a place
 * @param names the special stitches of the draft
 */
export function createBook(
  settings: Settings,
  dictionary: Dictionary,
  rules: OpeningRules,
  words: (at: Span) => string,
  names: Names,
  habits: Habits,
): Book {
  return {
    settings,
    reporting: { sizes: settings.sizes, dictionary, words, names },
    kinds: createKinds(),
    said: new Map(rules.said),
    rules,
    habits,
    met: new Map(),
    departures: [],
    wrong: 0,
    kept: new WeakMap(),
    rows: [],
    fabric: [],
    entries: [],
    found: [],
    evidence: [],
    piece: null,
    pieces: [],
    order: 0,
  }
}

function learnSaid(book: Book, steps: readonly Step[]): void {
  for (const step of steps) {
    if (step.kind !== 'chain' || step.counting === null) continue
    const chains = step.count[0] ?? null
    if (chains !== null && step.count.every((count) => count === chains)) book.said.set(chains, step.counting)
  }
}

/** Sizes for which an entry is the last of its row: the stated count of a range belongs there. */
function lastFor(lasts: readonly number[], index: number): (size: number) => boolean {
  return (size) => lasts[size] === index
}

/** The pieces that a row may join, where its words name one: as they lie now, for each size. */
function finishedFor(book: Book, piece: Piece, steps: RowJob['steps']): RowJob['finished'] {
  return steps.map((each, size) => {
    if (each === null || !wordsOf(each).joinsPieces) return []
    return book.pieces.flatMap((other) => {
      const row = other.fabrics[size]?.row ?? null
      if (row === null || other === piece) return []
      return [{ name: other.name, row, here: row === piece.fabrics[size]?.row }]
    })
  })
}

/** The steps that all sizes share; null where they differ. */
function sharedSteps(steps: RowJob['steps']): readonly Step[] | null {
  const [first = null, ...rest] = new Set(steps.filter((each) => each !== null))
  return rest.length === 0 ? first : null
}

function keptFor(book: Book, steps: RowJob['steps']): Choices | null {
  const shared = sharedSteps(steps)
  return shared === null ? null : (book.kept.get(shared) ?? null)
}

/** Keeps how words were read, and what choices came up. */
function keep(book: Book, steps: RowJob['steps'], reading: Reading): void {
  const shared = sharedSteps(steps)
  if (shared !== null && !book.kept.has(shared)) book.kept.set(shared, choicesOf(reading))
  for (const [key, { options }] of reading.met) {
    const habit = habitOf(key)
    if (habit !== null) book.met.set(habit, Math.max(options, book.met.get(habit) ?? 0))
  }
}

function rowJob(
  book: Book,
  piece: Piece,
  row: ReadRow,
  number: Count | null,
  steps: RowJob['steps'],
  fabrics: RowJob['fabrics'],
  checked: RowJob['checked'],
): RowJob {
  return {
    kinds: book.kinds,
    sizes: book.settings.sizes.length,
    style: row.label?.style ?? null,
    // As they are now: a row may be worked once more, later.
    rules: { ...book.rules, said: new Map(book.said) },
    habits: book.habits,
    kept: keptFor(book, steps),
    steps,
    fabrics,
    resting: piece.resting.map((rest) => new Map(rest)),
    finished: finishedFor(book, piece, steps),
    number,
    stated: row.stated,
    checked,
  }
}

function workEntry(book: Book, piece: Piece, row: ReadRow, entry: Entry, checked: EntryWork['checked']): EntryWork {
  entry.steps.forEach((each, size) => {
    if (each !== null && piece.fabrics[size]?.row === null && hasNoFoundation(each, size)) piece.skipped[size] = true
  })
  const steps = entry.steps.map((each, size) => (piece.broken[size] || piece.skipped[size] ? null : each))
  for (const each of new Set(steps)) if (each !== null) learnSaid(book, each)
  const job = rowJob(book, piece, row, entry.number, steps, piece.fabrics, checked)
  const reading = bestReading(job)
  keep(book, steps, reading)
  const { worked } = reading
  const departures = departuresOf(reading)
  return {
    row,
    entry,
    worked,
    job,
    checked,
    departures,
    dictionary: book.reporting.dictionary,
    specials: book.reporting.names.known,
  }
}

/** The entry on the fabric as it ought to be, for the sizes of which an earlier row did not come out. */
function workAsItOught(book: Book, piece: Piece, work: EntryWork): readonly (Worked | null)[] {
  const { row, entry, checked } = work
  const steps = entry.steps.map((each, size) => (piece.troubles[size]?.fabric && work.worked[size] ? each : null))
  if (steps.every((each) => each === null)) return steps.map(() => null)
  const fabrics = piece.fabrics.map((fabric, size) => piece.troubles[size]?.fabric ?? fabric)
  return bestReading(rowJob(book, piece, row, entry.number, steps, fabrics, checked)).worked
}

function isTold(piece: Piece, asked: Asked, work: EntryWork, ought: readonly (Worked | null)[]): boolean {
  const result = work.worked[asked.size] ?? null
  return result !== null && follows(piece.troubles[asked.size] ?? null, asked, result, ought[asked.size] ?? null)
}

/** Keeps in mind what did not come out, so that what follows from it is not told again. */
function remember(
  book: Book,
  piece: Piece,
  asked: (size: number) => Asked,
  work: EntryWork,
  ought: readonly (Worked | null)[],
): void {
  work.worked.forEach((result, size) => {
    if (result === null) return
    const before = piece.troubles[size] ?? null
    const { at } = work.row
    piece.troubles[size] = troubleAfter(book.kinds, before, asked(size), result, ought[size] ?? null, at)
  })
}

/** An entry's own count, where the rows of a range have one each. */
function withOwnCount(row: ReadRow, index: number): ReadRow {
  const own = row.run[index]
  return own === undefined ? row : { ...row, stated: own }
}

function enter(book: Book, piece: Piece, written: ReadRow, entries: readonly Entry[]): void {
  const sizes = book.settings.sizes.length
  const lasts = Array.from({ length: sizes }, (_, size) =>
    entries.findLastIndex((entry) => (entry.steps[size] ?? null) !== null),
  )
  let wrong = false
  for (const [index, entry] of entries.entries()) {
    const row = withOwnCount(written, index)
    const checked = written.run.length > 0 ? () => true : lastFor(lasts, index)
    const work = workEntry(book, piece, row, entry, checked)
    const ought = workAsItOught(book, piece, work)
    const asked = (size: number): Asked => ({ size, stated: work.checked(size) ? row.stated : null })
    const found = entryFindings(book.reporting, work, (size) => isTold(piece, asked(size), work, ought))
    book.found.push(...found, ...habitFindings(work))
    book.departures.push(...work.departures)
    if (row.stated !== null) {
      const told = found.some(({ code }) => code === 'count-mismatch')
      book.evidence.push({ stated: row.stated, worked: work.worked, checked, told })
    }
    book.rows.push(ledgerRow(work, piece.broken, found[0]?.message ?? afterTrouble))
    book.fabric.push(work.worked.map((result) => (result?.stop === null ? (result.fabric.past?.last ?? null) : null)))
    const side = followSides(piece, work, index === 0)
    if (side !== null) book.found.push(side)
    const broken = entry.steps.some((steps, size) => steps !== null && piece.broken[size] === true)
    wrong ||= broken || work.worked.some((result, size) => result !== null && isWrong(asked(size), result))
    remember(book, piece, asked, work, ought)
    goOn(book, piece, work)
  }
  if (wrong) book.wrong += 1
}

function goOn(book: Book, piece: Piece, { row, entry, worked }: EntryWork): void {
  const called = row.label?.called ?? null
  piece.fastened = entry.steps.some((steps) => steps?.some((step) => step.kind === 'fastenOff') ?? false)
  worked.forEach((result, size) => {
    const number = entry.number?.[size] ?? null
    const steps = entry.steps[size] ?? null
    const rest = result?.rest ?? null
    if (rest !== null) piece.resting[size]?.set(rest.resumed ?? piece.last[size] ?? 0, rest.resting)
    if (number !== null) piece.last[size] = number
    if (number !== null && steps !== null) piece.steps[size]?.set(number, steps)
    if (called !== null && steps !== null) piece.called[size]?.set(called, steps)
    if (result === null) return
    if (result.stop !== null) {
      piece.broken[size] = true
      return
    }
    piece.fabrics[size] = result.fabric
    piece.history[size]?.push({ number, steps: steps ?? [], total: result.total })
    book.order = Math.max(book.order, result.fabric.order)
    if (result.total > 0) piece.rows[size] = (piece.rows[size] ?? 0) + 1
  })
}

/** Entries of a row that was not read: as many as its label names. */
function unreadEntries(row: ReadRow, sizes: number): readonly Entry[] {
  const steps = new Array<null>(sizes).fill(null)
  const numbers = row.label?.numbers
  if (numbers?.kind !== 'list') return [{ number: null, steps }]
  return numbers.items.map((number) => ({ number, steps }))
}

function enterUnmade(book: Book, row: LedgerRow): void {
  book.rows.push(row)
  book.fabric.push(row.total.map(() => null))
}

/** Nothing can be worked on a row that was not: the piece stops here for every size. */
function enterUnworked(
  book: Book,
  piece: Piece,
  row: ReadRow,
  entries: readonly Entry[],
  status: 'unread' | 'not-worked',
  reason: string,
): void {
  for (const [index, entry] of entries.entries()) {
    // The count of a range belongs to its last row.
    const last = index === entries.length - 1
    const own = last || row.run.length > 0 ? withOwnCount(row, index) : { ...row, stated: null }
    enterUnmade(book, unworkedRow(own, entry.number, book.settings.sizes.length, status, reason))
    entry.number?.forEach((number, size) => {
      if (number !== null) piece.last[size] = number
    })
  }
  piece.broken.fill(true)
}

function reasonUnread(words: string): string {
  return words === '' ? 'It has no steps.' : `The reader stopped at “${words}”.`
}

function enterUnread(book: Book, piece: Piece, row: ReadRow): void {
  const entries = unreadEntries(row, book.settings.sizes.length)
  const name = rowName(labelFor(row, entries[0]?.number ?? null))
  const finding = unreadFinding(book.reporting, row, name)
  if (finding !== null) book.found.push(finding)
  book.found.push(...labelFindings(piece, row, entries, book.settings.sizes.length))
  const reason =
    finding === null
      ? (specialUnread(book.reporting, row) ?? 'A placeholder or a size list in this row is wrong.')
      : reasonUnread(wordsUnread(book.reporting, row.unread))
  enterUnworked(book, piece, row, entries, 'unread', reason)
}

/** Troubles of a plan that leave rows to be worked all the same. */
const passable = new Set<string>(['rows differ', 'no row gauge', 'on foundation'])

function enterRead(book: Book, piece: Piece, row: ReadRow, content: NonNullable<ReadRow['content']>): void {
  const plan = planRow(row, goingBackTo(content, row, piece), lookBack(piece, book.settings))
  book.found.push(...labelFindings(piece, row, plan.entries, book.settings.sizes.length))
  plan.cycles.forEach((cycle, size) => {
    if (cycle !== null && cycle !== undefined) piece.cycles[size] = cycle
  })
  // After a row that could not be worked, a reference may miss its row without being wrong.
  const broken = piece.broken.every((each) => each)
  const finding = broken ? null : planFinding(piece, row, plan)
  if (finding !== null) book.found.push(finding)
  if (plan.trouble === null || passable.has(plan.trouble.kind)) enter(book, piece, row, plan.entries)
  else {
    const entries = row.label?.numbers.kind === 'list' ? unreadEntries(row, plan.cycles.length) : plan.entries
    const status = plan.trouble.kind === 'unknown name' && !broken ? 'unread' : 'not-worked'
    enterUnworked(book, piece, row, entries, status, finding?.message ?? afterBroken)
  }
}

/** A range past all bounds is entered once, by its first row. */
function enterEndless(book: Book, piece: Piece, row: ReadRow): void {
  book.found.push(diagnose('range-too-long', row.at, { most: longestRange }))
  const [first] = unreadEntries(row, book.settings.sizes.length)
  enterUnworked(book, piece, row, first === undefined ? [] : [first], 'not-worked', 'It stands for too many rows.')
}

/** A range that runs backwards stands for no row that could be worked: it is entered once, as it is written. */
function enterBackwards(book: Book, piece: Piece, row: ReadRow, label: Label, from: Count): void {
  const written = book.reporting.words(label.at).replace(/[\s.:]+$/, '')
  const finding = diagnose('range-backwards', label.at, { range: written })
  const sizes = book.settings.sizes.length
  book.found.push(finding)
  enterUnmade(book, { ...unworkedRow(row, null, sizes, 'not-worked', finding.message), label: written })
  from.forEach((number, size) => {
    if (piece.lasts !== null) piece.lasts[size] = Math.max(piece.lasts[size] ?? 0, number ?? 0)
  })
  piece.broken.fill(true)
}

function isEndless(row: ReadRow): boolean {
  return row.label?.numbers.kind === 'list' && row.label.numbers.items.length > longestRange
}

/** Works one written row for all sizes and enters what it makes. */
export function enterRow(book: Book, row: ReadRow): void {
  const first = book.rows.length
  const piece = pieceFor(book.piece, row, book.settings.sizes.length, book.order)
  if (piece !== book.piece) book.pieces.push(piece)
  book.piece = piece
  if (row.afterEnd) piece.fastened = true
  const { label } = row
  if (label?.numbers.kind === 'backwards') enterBackwards(book, piece, row, label, label.numbers.from)
  else if (isEndless(row)) enterEndless(book, piece, row)
  else if (row.content === null || row.broken) enterUnread(book, piece, row)
  else enterRead(book, piece, row, row.content)
  book.entries.push([first, book.rows.length])
}
