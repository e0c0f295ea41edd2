import type { ReaderData } from '../../html/reader-data.ts'

/** A row of the page as one size works it; one that stands for several has an entry for each. */
export interface WorkRow {
  readonly id: string
  readonly piece: string
  readonly word: string | null
  /** Number of the first; null where they are not numbered one by one. */
  readonly from: number | null
  /** Stitches of each; null where they are not known. */
  readonly stitches: readonly (number | null)[]
}

/** What one size works, in the order of the page. */
export interface Work {
  readonly rows: readonly WorkRow[]
  /** How often a piece is made. */
  readonly times: ReadonlyMap<string, number>
}

/** `size` is a position in the list of sizes. */
export function workFor({ pieces, rows }: ReaderData, size: number): Work {
  const times = new Map(pieces.map((piece) => [piece.name, Math.max(1, pick(piece.times, size) ?? 1)]))
  const own = rows.flatMap((row): WorkRow[] => {
    const work = pick(row.work, size)
    const piece = pieces[row.piece]?.name ?? ''
    return work === null
      ? []
      : [{ id: row.id, piece, word: row.word, from: pick(row.from, size), stitches: unrolled(work) }]
  })
  return { rows: own, times }
}

function pick<T extends string | number>(value: T | null | readonly (T | null)[], size: number): T | null {
  return typeof value === 'object' ? (value?.[size] ?? null) : value
}

/** `60*16+72` as sixteen times 60, and 72. */
function unrolled(work: string): readonly (number | null)[] {
  return work.split('+').flatMap((run) => {
    const [total = '', times = '1'] = run.split('*')
    return Array.from({ length: Number(times) }, () => (total === '?' ? null : Number(total)))
  })
}
