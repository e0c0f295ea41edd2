import type { PastRow, Piece } from '../piece.ts'
import type { Step } from '../step.ts'
import type { Settings } from '../written.ts'
import type { Before } from './before.ts'

type Rows = readonly (readonly Step[])[]

/** Whether the last rows, as many as given, left the number of stitches as it was. */
function isSteady(history: readonly PastRow[], rows: number): boolean {
  const last = history.at(-1)?.total ?? null
  return last !== null && last > 0 && history.at(-1 - rows)?.total === last
}

/** What a size goes on with in pattern: what it has repeated last, or else its last two rows or one. */
function patternOf({ history, cycles }: Piece, size: number): Rows | null {
  const past = history[size] ?? []
  const cycle = cycles[size] ?? null
  if (cycle !== null) return isSteady(past, cycle.length) ? cycle : null
  for (const rows of [2, 1]) if (isSteady(past, rows)) return past.slice(-rows).map(({ steps }) => steps)
  return null
}

function lastRows(history: readonly PastRow[], count: number): Rows | null {
  const rows = history.filter(({ total }) => total > 0).slice(-count)
  return rows.length === count ? rows.map(({ steps }) => steps) : null
}

/** How many stitches more the rows from one number to another made when they were last worked. */
function gainedBy(history: readonly PastRow[], from: number, to: number): number | null {
  const last = history.findLastIndex((row) => row.number === to)
  const first = history.slice(0, last + 1).findLastIndex((row) => row.number === from)
  const [before, after] = [history[first - 1]?.total ?? null, history[last]?.total ?? null]
  return before === null || after === null ? null : after - before
}

/** What the rows of a piece so far tell those that go back to them. */
export function lookBack(piece: Piece, settings: Settings): Before {
  return {
    sizes: settings.sizes.length,
    stepsOf: (number, size) => piece.steps[size]?.get(number) ?? null,
    stepsCalled: (name, size) => piece.called[size]?.get(name) ?? null,
    pattern: (size) => patternOf(piece, size),
    lastRows: (count, size) => lastRows(piece.history[size] ?? [], count),
    last: (size) => piece.last[size] ?? null,
    rows: (size) => piece.rows[size] ?? 0,
    rowsHere: (size) => (piece.rows[size] ?? 0) - (piece.rowsBefore[size] ?? 0),
    stitches: (size) => piece.history[size]?.at(-1)?.total ?? 0,
    gained: (from, to, size) => gainedBy(piece.history[size] ?? [], from, to),
    rowsIn: settings.rowsIn,
  }
}
