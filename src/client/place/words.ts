import type { Current, Place } from './place.ts'
import type { Progress } from './progress.ts'
import type { Work, WorkRow } from './rows.ts'

/** `Rnd 9`, the row in hand; `Row 3 of 16` where its rows are not numbered. `done` of its rows lie behind. */
export function rowName({ row, done }: Current): string {
  const word = row.word ?? 'Row'
  if (row.from !== null) return `${word} ${row.from + done}`
  return row.stitches.length === 1 ? word : `${word} ${done + 1} of ${row.stitches.length}`
}

/** All that a row of the page stands for: `Rnds 6–21`. */
export function rowsName(row: WorkRow): string {
  const { length } = row.stitches
  if (length === 1) return rowName({ row, done: 0 })
  const word = `${row.word ?? 'Row'}s`
  return row.from === null ? `${length} ${word}` : `${word} ${row.from}–${row.from + length - 1}`
}

/** `Rnd 9, 4 of 16`, with the piece where it is made several times: `Rnd 9, 4 of 16, piece 2 of 2`. */
export function placeName({ times }: Work, { finished }: Place, current: Current): string {
  const { row, done } = current
  const within = row.stitches.length === 1 || row.from === null ? [] : [`${done + 1} of ${row.stitches.length}`]
  const all = times.get(row.piece) ?? 1
  const copy = all === 1 ? [] : [`piece ${(finished[row.piece] ?? 0) + 1} of ${all}`]
  return [rowName(current), ...within, ...copy].join(', ')
}

const grouped = new Intl.NumberFormat('en')

/** `34 %, 1,240 sts left` */
export function progressWords(progress: Progress): string {
  return saidProgress(progress)
    .replace(' done', '')
    .replace(/stitch(?:es)? left/, 'sts left')
}

/** `34 % done, 1,240 stitches left` */
function saidProgress({ made, all, of, percent }: Progress): string {
  const left = all - made
  const what = left === 1 ? of.replace(/(?<=row)s$|(?<=stitch)es$/, '') : of
  return `${percent} % done, ${grouped.format(left)} ${what} left`
}

/** What is said after a step, to those who hear the page: `Next: Rnd 9, 4 of 16. 34 % done, 1,240 stitches left.` */
export function toldNext(work: Work, place: Place, current: Current | null, progress: Progress): string {
  const next = current === null ? 'All rows are done.' : `Next: ${placeName(work, place, current)}.`
  return `${next} ${saidProgress(progress)}.`
}
