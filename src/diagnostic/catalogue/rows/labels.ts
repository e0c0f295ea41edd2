import { entry } from '../../entry.ts'
import { plural } from './plural.ts'

/** Findings about the numbers, names and sides of rows. */
export const labelFindings = {
  'size-list-length': entry<{ given: number; sizes: number }>({
    severity: 'error',
    says: ({ given, sizes }) => `This list has ${plural(given, 'number')}, but the draft has ${plural(sizes, 'size')}.`,
    hint: () => 'Give one number for each size, in the order of `sizes`, or one number for all.',
  }),
  'row-label-twice': entry<{ row: string; piece: string }>({
    severity: 'warning',
    says: ({ row, piece }) => `${row} stands twice${piece === '' ? '' : ` in ${piece}`}.`,
    hint: () => 'Give one of the two its own number, or a heading of its own where another piece begins.',
  }),
  'row-number-gap': entry<{ row: string; expected: string }>({
    severity: 'warning',
    says: ({ row, expected }) => `${row} follows where ${expected} would be next.`,
    hint: ({ expected }) => `Write ${expected}, or add the rows that are missing.`,
  }),
  'first-row-number': entry<{ row: string; piece: string }>({
    severity: 'warning',
    says: ({ row, piece }) =>
      `${piece === '' ? 'The first row here' : `${piece}: the first row`} is ${row}, and no row comes before it.`,
    hint: () => 'Check its number, or add the rows that are missing.',
  }),
  'row-named-twice': entry<{ number: number }>({
    severity: 'warning',
    says: ({ number }) => `Row ${number} is named twice here.`,
    hint: () => 'Check the numbers of the rows.',
  }),
  'range-length': entry<{ rows: number; words: number }>({
    severity: 'warning',
    says: ({ rows, words }) => `The label stands for ${plural(rows, 'row')}, but the words say ${words}.`,
    hint: () => 'Check the label and the number of rows.',
  }),
  'range-backwards': entry<{ range: string }>({
    severity: 'error',
    says: ({ range }) => `${range}: the last number is lower than the first.`,
    hint: () => 'Put the lower number first.',
  }),
  'range-too-long': entry<{ most: number }>({
    severity: 'error',
    says: ({ most }) => `This stands for more than ${most} rows; a number in it must be wrong.`,
    hint: () => 'Check the numbers of the label.',
  }),
  'side-out-of-step': entry<{ row: string; said: 'RS' | 'WS'; worked: 'RS' | 'WS' }>({
    severity: 'warning',
    says: ({ row, said, worked }) =>
      `${row} is marked ${said}, but by the turns since the last row that is marked it is worked on the ${worked}.`,
    hint: () => 'Change the mark, or say “turn” or “do not turn” in the rows between.',
  }),
  'row-parity-differs': entry<{
    /** The label as it is written. */
    rows: string
    counts: string
    parity: 'odd' | 'even'
    names: readonly string[]
    next: string
    said: 'RS' | 'WS'
    worked: 'RS' | 'WS'
  }>({
    severity: 'warning',
    says: ({ rows, counts, parity, names, next, said, worked }) =>
      `“${rows}” is ${counts} rows, an ${parity} number for ${names.join(', ')}: there ${next} is worked on the ${worked}, and it is to be on the ${said}.`,
    hint: () => 'Let it be odd in every size, or even in every size: round the number of rows `as even` or `as odd`.',
  }),
  'ends-on-other-side': entry<{ rows: string; ends: 'RS' | 'WS'; worked: 'RS' | 'WS' }>({
    severity: 'warning',
    says: ({ rows, ends, worked }) =>
      `“${rows}” is to end with a ${ends} row, but its last row is worked on the ${worked}.`,
    hint: () => 'Add a row or take one away, or change the words; in a formula, round the rows `as even` or `as odd`.',
  }),
} as const
