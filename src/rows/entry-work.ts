import type { Worked } from './attempt.ts'
import type { Book } from './book.ts'
import type { Count } from './count.ts'
import type { ReadRow } from './cut.ts'
import type { EntryWork } from './entry-row.ts'
import { habitOf } from './habits.ts'
import type { Piece } from './piece.ts'
import { hasNoFoundation } from './piece.ts'
import type { Entry } from './plan.ts'
import type { Choices, Reading, RowJob } from './readings.ts'
import { bestReading, choicesOf, departuresOf } from './readings.ts'
import { wordsOf } from './row-words.ts'
import type { Step } from './step.ts'

function learnSaid(book: Book, steps: readonly Step[]): void {
  for (const step of steps) {
    if (step.kind !== 'chain' || step.counting === null) continue
    const chains = step.count[0] ?? null
    if (chains !== null && step.count.every((count) => count === chains)) book.said.set(chains, step.counting)
  }
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

export function workEntry(
  book: Book,
  piece: Piece,
  row: ReadRow,
  entry: Entry,
  checked: EntryWork['checked'],
): EntryWork {
  entry.steps.forEach((each, size) => {
    if (each !== null && piece.fabrics[size]?.row === null && hasNoFoundation(each, size)) piece.skipped[size] = true
  })
  const steps = entry.steps.map((each, size) => (piece.broken[size] || piece.skipped[size] ? null : each))
  for (const each of new Set(steps)) if (each !== null) learnSaid(book, each)
  const job = rowJob(book, piece, row, entry.number, steps, [...piece.fabrics], checked)
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
export function workAsItOught(book: Book, piece: Piece, work: EntryWork): readonly (Worked | null)[] {
  const { row, entry, checked } = work
  const steps = entry.steps.map((each, size) => (piece.troubles[size]?.fabric && work.worked[size] ? each : null))
  if (steps.every((each) => each === null)) return steps.map(() => null)
  const fabrics = piece.fabrics.map((fabric, size) => piece.troubles[size]?.fabric ?? fabric)
  return bestReading(rowJob(book, piece, row, entry.number, steps, fabrics, checked)).worked
}
