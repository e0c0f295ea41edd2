import { type Work, type WorkRow, workFor } from '../../../src/client/place/rows.ts'
import type { ReaderData } from '../../../src/html/reader-data.ts'

/** A cowl in two sizes, a strap made twice by the larger one, and an edging without numbers. */
export const data: ReaderData = {
  slug: 'cowl',
  edition: '1.1',
  sizes: ['Child', 'Adult'],
  fit: null,
  pieces: [
    { name: 'Cowl', times: 1 },
    { name: 'Strap', times: [1, 2] },
  ],
  rows: [
    { id: 'foundation', piece: 0, word: 'Foundation', from: null, work: '0' },
    { id: 'rnd-1', piece: 0, word: 'Rnd', from: 1, work: ['60', '72'] },
    { id: 'rnd-2', piece: 0, word: 'Rnd', from: 2, work: ['60*3', '72*3+80'] },
    { id: 'rnd-6', piece: 0, word: 'Rnd', from: [null, 6], work: [null, '80'] },
    { id: 'strap-1', piece: 1, word: 'Row', from: 1, work: '10' },
    { id: 'strap-2', piece: 1, word: null, from: null, work: '?*2' },
  ],
}

export const child: Work = workFor(data, 0)
export const adult: Work = workFor(data, 1)

export function rowOf(work: Work, id: string): WorkRow {
  const row = work.rows.find((each) => each.id === id)
  if (row === undefined) throw new Error(`There is no row ${id}.`)
  return row
}
