import { doneOf, type Place } from './place.ts'
import type { Work, WorkRow } from './rows.ts'

/** How far along a piece of work is. In stitches, for rows differ; in rows where no stitches are known. */
export interface Progress {
  readonly made: number
  readonly all: number
  readonly of: 'stitches' | 'rows'
  /** Whole per cent, 100 only when nothing is left. */
  readonly percent: number
}

export function progressOf(work: Work, place: Place): Progress {
  const stitches = counted(work, place, (row, until) => sum(row.stitches.slice(0, until)))
  const { made, all } = stitches.all > 0 ? stitches : counted(work, place, (_, until) => until)
  const percent = all === 0 ? 0 : Math.floor((100 * made) / all)
  return { made, all, of: stitches.all > 0 ? 'stitches' : 'rows', percent }
}

/** `amount` is what the first so many of a row's rows come to. */
function counted(
  { rows, times }: Work,
  place: Place,
  amount: (row: WorkRow, until: number) => number,
): { readonly made: number; readonly all: number } {
  let made = 0
  let all = 0
  for (const row of rows) {
    const whole = amount(row, row.stitches.length)
    const finished = place.finished[row.piece] ?? 0
    made += whole * finished + amount(row, doneOf(place, row))
    all += whole * (times.get(row.piece) ?? 1)
  }
  return { made, all }
}

function sum(numbers: readonly (number | null)[]): number {
  return numbers.reduce<number>((total, number) => total + (number ?? 0), 0)
}
