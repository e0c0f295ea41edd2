import type { Worked } from './attempt.ts'
import type { Book } from './book.ts'
import { habitFindings } from './check/habit.ts'
import type { ReadRow } from './cut.ts'
import type { EntryWork } from './entry-row.ts'
import { afterBroken, afterTrouble, ledgerRow } from './entry-row.ts'
import { workAsItOught, workEntry } from './entry-work.ts'
import type { EntryFound } from './gathered.ts'
import { gathered } from './gathered.ts'
import { goingBackTo } from './going-back.ts'
import { longestRange } from './label.ts'
import { labelFindings } from './label-findings.ts'
import type { Piece } from './piece.ts'
import { pieceFor } from './piece.ts'
import { lookBack } from './plan/look-back.ts'
import type { Entry } from './plan.ts'
import { planRow } from './plan.ts'
import { entryFindings, planFinding } from './report.ts'
import { countRows, followSides, sideFindings, watchSides } from './side-check.ts'
import type { Asked } from './troubles.ts'
import { follows, isWrong, troubleAfter } from './troubles.ts'
import { enterBackwards, enterEndless, enterUnread, enterUnworked, unreadEntries, withOwnCount } from './unworked.ts'

/** Sizes for which an entry is the last of its row: the stated count of a range belongs there. */
function lastFor(lasts: readonly number[], index: number): (size: number) => boolean {
  return (size) => lasts[size] === index
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

function enter(book: Book, piece: Piece, written: ReadRow, entries: readonly Entry[]): void {
  const sizes = book.settings.sizes.length
  const works = (size: number) => (entry: Entry) => (entry.steps[size] ?? null) !== null
  const lasts = Array.from({ length: sizes }, (_, size) => entries.findLastIndex(works(size)))
  const firsts = Array.from({ length: sizes }, (_, size) => entries.findIndex(works(size)))
  let wrong = false
  const entered: EntryFound[] = []
  const sides = watchSides(written)
  for (const [index, entry] of entries.entries()) {
    const row = withOwnCount(written, index)
    const checked = written.run.length > 0 ? () => true : lastFor(lasts, index)
    const work = workEntry(book, piece, row, entry, checked)
    const ought = workAsItOught(book, piece, work)
    const asked = (size: number): Asked => ({
      size,
      stated: work.checked(size) ? row.stated : null,
      steps: entry.steps[size] ?? null,
    })
    const found = entryFindings(book.reporting, work, (size) => isTold(piece, asked(size), work, ought))
    entered.push({ work, found })
    book.found.push(...habitFindings(work, piece.departed))
    book.departures.push(...work.departures)
    if (row.stated !== null) {
      const told = found.some(({ code }) => code === 'count-mismatch')
      book.evidence.push({ stated: row.stated, worked: work.worked, checked, told })
    }
    book.rows.push(ledgerRow(work, piece.broken, found[0]?.message ?? afterTrouble))
    book.fabric.push(work.worked.map((result) => (result?.stop === null ? (result.fabric.past?.last ?? null) : null)))
    followSides(piece, work, sides, { opens: (size) => firsts[size] === index, closes: lastFor(lasts, index) })
    const broken = entry.steps.some((steps, size) => steps !== null && piece.broken[size] === true)
    const faulty = work.worked.some((result, size) => result !== null && isWrong(asked(size), result))
    book.faulty ||= faulty
    wrong ||= broken || faulty
    remember(book, piece, asked, work, ought)
    goOn(book, piece, work)
  }
  if (wrong) book.wrong += 1
  const ownCounts = written.run.length > 0
  book.found.push(...(ownCounts ? entered.flatMap(({ found }) => found) : gathered(book.reporting, entered)))
  book.found.push(...sideFindings(piece, sides, entries, book.reporting))
  countRows(piece, written, entries)
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

/** Troubles of a plan that leave rows to be worked all the same. */
const passable = new Set<string>(['rows differ', 'no row gauge', 'on foundation'])

function enterRead(book: Book, piece: Piece, row: ReadRow, content: NonNullable<ReadRow['content']>): void {
  const plan = planRow(row, goingBackTo(content, row, piece), lookBack(piece, book.settings))
  const laidOut = plan.trouble === null || passable.has(plan.trouble.kind)
  const entries =
    laidOut || row.label?.numbers.kind !== 'list' ? plan.entries : unreadEntries(row, book.settings.sizes.length)
  book.found.push(...labelFindings(piece, row, entries, book.settings.sizes.length))
  plan.cycles.forEach((cycle, size) => {
    if (cycle !== null && cycle !== undefined) piece.cycles[size] = cycle
  })
  // After a row that could not be worked, a reference may miss its row without being wrong.
  const broken = piece.broken.every((each) => each)
  const finding = broken ? null : planFinding(book.reporting, piece, row, plan)
  if (finding !== null) book.found.push(finding)
  if (plan.trouble === null || laidOut) enter(book, piece, row, entries)
  else {
    const status = /^(?:unknown name|not as said)$/.test(plan.trouble.kind) && !broken ? 'unread' : 'not-worked'
    enterUnworked(book, piece, row, entries, status, finding?.message ?? afterBroken)
  }
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
