import type { Work, WorkRow } from './rows.ts'

/** How far a reader has come with one size. Plain data, kept on the device. */
export interface Place {
  /** Rows done, by the id of the page's row: of one that stands for several, how many of them. */
  readonly done: Readonly<Record<string, number>>
  /** Pieces finished of those that are made several times, by name. */
  readonly finished: Readonly<Record<string, number>>
  /** The row that was worked on last. */
  readonly at: string | null
}

export const nothingDone: Place = { done: {}, finished: {}, at: null }

/** The row in hand, and how many of the rows it stands for are done. */
export interface Current {
  readonly row: WorkRow
  readonly done: number
}

export function doneOf({ done }: Place, row: WorkRow): number {
  return Math.min(done[row.id] ?? 0, row.stitches.length)
}

export function isDone(place: Place, row: WorkRow): boolean {
  return doneOf(place, row) === row.stitches.length
}

/** The row to work next: the one in hand, else the next one that is not done, from the beginning again at the end. */
export function currentRow(work: Work, place: Place): Current | null {
  const from = Math.max(
    0,
    work.rows.findIndex(({ id }) => id === place.at),
  )
  const inOrder = [...work.rows.slice(from), ...work.rows.slice(0, from)]
  const row = inOrder.find((each) => !isDone(place, each))
  return row === undefined ? null : { row, done: doneOf(place, row) }
}

/**
 * The place after so many of a row's rows are done. When that finishes a piece which is made several times, the next of
 * them is begun: its rows are open again.
 */
export function withDone(work: Work, place: Place, row: WorkRow, count: number): Place {
  const within = Math.max(0, Math.min(count, row.stitches.length))
  const next: Place = { ...place, done: { ...place.done, [row.id]: within }, at: row.id }
  const own = work.rows.filter(({ piece }) => piece === row.piece)
  const finished = next.finished[row.piece] ?? 0
  const more = finished + 1 < (work.times.get(row.piece) ?? 1)
  if (!more || !own.every((each) => isDone(next, each))) return next
  const open = Object.fromEntries(own.map(({ id }) => [id, 0]))
  return {
    done: { ...next.done, ...open },
    finished: { ...next.finished, [row.piece]: finished + 1 },
    at: own[0]?.id ?? null,
  }
}
