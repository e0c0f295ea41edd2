import { entry } from '../../entry.ts'
import { plural } from './plural.ts'

/** Findings about rows that go back to others, and rows that shape. */
export const repeatFindings = {
  'unknown-row-reference': entry<{ row: string; number: number | null; rows: string }>({
    severity: 'error',
    says: ({ row, number }) =>
      number === null
        ? `${row} repeats a row before it, but there is none in this piece.`
        : `${row} repeats row ${number}, but this piece has no row ${number} before it.`,
    hint: ({ rows }) =>
      rows === '' ? undefined : `Before it ${/[–,]/.test(rows) ? 'stand rows' : 'stands row'} ${rows}.`,
  }),
  'unknown-row-name': entry<{ row: string; called: string }>({
    severity: 'warning',
    says: ({ row, called }) => `${row} goes back to the ${called}, but no row before it in this piece is called so.`,
    hint: ({ called }) =>
      `Name the row by its number, or write “(${called})” after the number of the row that is meant.`,
  }),
  'repeats-foundation-row': entry<{ row: string; number: number }>({
    severity: 'warning',
    says: ({ row, number }) =>
      `${row} repeats row ${number}, which is worked into the foundation chain; it has been worked into the stitches below instead.`,
    hint: () => 'Repeat a row that is worked into stitches, or write the row out.',
  }),
  'repeated-rows-differ': entry<{ named: number; repeated: number }>({
    severity: 'warning',
    says: ({ named, repeated }) => `These are ${plural(named, 'row')}, and the repeats in them come to ${repeated}.`,
    hint: () => 'Change the numbers of the rows, or how often they are repeated.',
  }),
  'row-gauge-missing': entry<{ row: string }>({
    severity: 'note',
    says: ({ row }) =>
      `${row} is worked to a length, but the swatch gives no row gauge; one repeat of it has been worked.`,
    hint: () => 'Add `rows: … per 10 cm` to the swatch.',
  }),
  'shaping-rows-differ': entry<{ named: number; shaped: number }>({
    severity: 'warning',
    says: ({ named, shaped }) =>
      `These are ${named} rows, and their shaping takes ${shaped}${named > shaped ? '; the rows after it have been worked even' : ''}.`,
    hint: ({ named, shaped }) =>
      named > shaped
        ? `If that is meant, say so: “then work ${named - shaped} ${named - shaped === 1 ? 'row' : 'rows'} even”.`
        : 'Change the numbers of the rows, or how often they are shaped.',
  }),
  'shaping-never-there': entry<{ row: string; from: number; by: number; to: number }>({
    severity: 'error',
    says: ({ row, from, by, to }) =>
      `${row} goes on to ${plural(to, 'stitch')}, but from ${from} by steps of ${Math.abs(by)} it never comes there.`,
    hint: ({ from, by, to }) => {
      const steps = Math.floor((to - from) / by)
      return steps < 0
        ? 'Check the number that is gone on to, and whether the rows increase or decrease.'
        : `Write ${from + steps * by} or ${from + (steps + 1) * by}, or shape fewer stitches at a time.`
    },
  }),
} as const
