import type { Diagnostic, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import { printCount } from './count.ts'
import type { ReadRow } from './cut.ts'
import type { EntryWork } from './entry-row.ts'
import { labelFor } from './entry-row.ts'
import { rowName } from './findings.ts'
import type { Piece } from './piece.ts'
import { type Entry, firstNumbers } from './plan.ts'
import type { Reporting } from './report.ts'
import type { SaidSides, Side } from './sides.ts'
import { other, saidSides, sideAfter, sideOf } from './sides.ts'

/** Rows as written since the last one that is marked with a side, and how many of them each size works. */
export interface CountedRows {
  /** Its label, or its words where it has none. */
  readonly at: Span
  readonly counts: readonly number[]
}

/** What a written row says of sides, and the sizes for which that is another one than the turns give. */
export interface SideWatch {
  readonly row: ReadRow
  readonly said: SaidSides
  /** By its label. */
  readonly marked: Set<number>
  /** By `ending with a WS row`. */
  readonly ended: Set<number>
  /** By `With RS facing`. */
  readonly faced: Set<number>
}

export function watchSides(row: ReadRow): SideWatch {
  return { row, said: saidSides(row), marked: new Set(), ended: new Set(), faced: new Set() }
}

/** Whether an entry is the first or the last of its row for a size. */
interface Ends {
  readonly opens: (size: number) => boolean
  readonly closes: (size: number) => boolean
}

/** Keeps count of the side that faces, by the turns that are worked. */
export function followSides(piece: Piece, { entry, worked }: EntryWork, watch: SideWatch, ends: Ends): void {
  const { row, said } = watch
  worked.forEach((result, size) => {
    const steps = entry.steps[size] ?? null
    const fabric = piece.fabrics[size]
    if (result === null || result.stop !== null || steps === null || fabric === undefined) return
    const next = piece.sides[size] ?? null
    const [opens, closes] = [ends.opens(size), ends.closes(size)]
    const mark = opens ? (row.label?.side ?? null) : null
    const faces = opens && mark === null ? said.faces : null
    const side = sideOf(row, said, steps, fabric, next)
    if (differ(mark, side)) watch.marked.add(size)
    if (differ(faces, next)) watch.faced.add(size)
    const own = mark ?? faces ?? side
    if (closes && said.counted && differ(said.ends, own)) watch.ended.add(size)
    piece.sides[size] = sideAfter(steps, result, (closes ? said.ends : null) ?? own)
  })
}

function differ(said: Side | null, worked: Side | null): boolean {
  return said !== null && worked !== null && said !== worked
}

/** Notes how many rows each size has worked, for rows that come after. */
export function countRows(piece: Piece, row: ReadRow, entries: readonly Entry[]): void {
  if ((row.label?.side ?? null) !== null) piece.unmarked.length = 0
  const sizes = entries[0]?.steps.length ?? 0
  const counts = Array.from(
    { length: sizes },
    (_, size) => entries.filter((entry) => (entry.steps[size] ?? null) !== null).length,
  )
  piece.unmarked.push({ at: row.label?.at ?? row.at, counts })
}

/** The rows whose number is odd for the sizes that are out of step and even for the others, or the other way round. */
function causeOf(
  rows: readonly CountedRows[],
  wrong: ReadonlySet<number>,
  working: readonly number[],
): CountedRows | null {
  const right = working.find((size) => !wrong.has(size))
  if (right === undefined || wrong.size === 0) return null
  const parity = (counts: readonly number[], size: number): number => (counts[size] ?? 0) % 2
  const parts = ({ counts }: CountedRows): boolean =>
    working.every((size) => (parity(counts, size) !== parity(counts, right)) === wrong.has(size))
  return rows.findLast(parts) ?? null
}

function inOrder(sizes: ReadonlySet<number>): readonly number[] {
  return [...sizes].sort((first, second) => first - second)
}

/** What a row says of sides where the turns give another: of its own making, or of rows before it that some sizes have more of. */
export function sideFindings(
  piece: Piece,
  { row, said, marked, ended, faced }: SideWatch,
  entries: readonly Entry[],
  reporting: Reporting,
): readonly Diagnostic[] {
  const working = (entries[0]?.steps ?? []).flatMap((_, size) =>
    entries.some((entry) => (entry.steps[size] ?? null) !== null) ? [size] : [],
  )
  const mark = row.label?.side ?? said.faces
  const name = rowName(labelFor(row, firstNumbers(entries)))
  const about = { row: name, at: row.label?.at ?? row.at, working, reporting }
  const wrong = marked.size > 0 ? marked : faced
  const cause = causeOf(piece.unmarked, wrong, working)
  return [
    ...(mark === null || cause === null ? [] : parityFinding(cause, mark, wrong, about)),
    // What rows before it cause is told of them.
    ...(mark === null || cause !== null || marked.size === 0 ? [] : [markFinding(mark, marked, about)]),
    ...(said.ends === null || ended.size === 0 ? [] : [endFinding(said.ends, ended, about)]),
  ]
}

interface About {
  readonly row: string
  readonly at: Span
  readonly working: readonly number[]
  readonly reporting: Reporting
}

function parityFinding(
  cause: CountedRows,
  said: Side,
  wrong: ReadonlySet<number>,
  { row, at, reporting }: About,
): readonly Diagnostic[] {
  const [first] = wrong
  if (first === undefined) return []
  const sizes = inOrder(wrong)
  const details = {
    rows: reporting.words(cause.at).replace(/[\s:.*]+$/, ''),
    counts: printCount(cause.counts),
    parity: (cause.counts[first] ?? 0) % 2 === 0 ? 'even' : 'odd',
    names: sizes.map((size) => reporting.sizes[size] ?? ''),
    next: row,
    said,
    worked: other(said),
  } as const
  const related = [{ at, note: `${row} is marked ${said} here.` }]
  return [diagnose('row-parity-differs', cause.at, details, { sizes, related })]
}

/** A label that says another side than the turns. */
function markFinding(said: Side, wrong: ReadonlySet<number>, { row, at, working }: About): Diagnostic {
  const sizes = wrong.size === working.length ? [] : inOrder(wrong)
  return diagnose('side-out-of-step', at, { row, said, worked: other(said) }, { sizes })
}

function endFinding(ends: Side, wrong: ReadonlySet<number>, { at, working, reporting }: About): Diagnostic {
  const rows = reporting.words(at).replace(/[\s:.*]+$/, '')
  const sizes = wrong.size === working.length ? [] : inOrder(wrong)
  return diagnose('ends-on-other-side', at, { rows, ends, worked: other(ends) }, { sizes })
}
