import { entry } from '../../entry.ts'

/** Findings about numbers that the words of a row, or of rows like it, contradict. */
export const contradictionFindings = {
  'unlike-other-rows': entry<{ row: string; how: string; write: string }>({
    severity: 'warning',
    says: ({ row, how }) =>
      `${row} comes out only if ${how}, against what the other rows or the trade’s convention say.`,
    hint: ({ write }) => `Check its numbers, or write ${write}.`,
  }),
  'opening-unlike': entry<{ row: string; chains: number; others: number }>({
    severity: 'warning',
    says: ({ row, chains, others }) =>
      `${row} opens with ch ${chains}, where the other rows that begin with this stitch open with ch ${others}.`,
    hint: () => 'Check the number of chains.',
  }),
  'ordinal-ending': entry<{ words: string; instead: string }>({
    severity: 'warning',
    says: ({ words }) => `“${words}”: the number and its ending do not go together.`,
    hint: ({ instead }) => `Write ${instead}, or check the number.`,
  }),
  'chain-sum': entry<{ words: string; chains: number; needs: number }>({
    severity: 'warning',
    says: ({ words, chains, needs }) =>
      `“${words}”: a chain of ${chains} is not what it is said to count as, which takes ${needs}.`,
    hint: () => 'Check both numbers.',
  }),
  'chain-named': entry<{ row: string; words: string; chains: number; made: readonly number[] }>({
    severity: 'warning',
    says: ({ row, words, chains }) =>
      `${row}: “${words}” names a chain of ${chains}, but none opens this row or the one below.`,
    hint: ({ made }) => (made.length === 0 ? undefined : `The chain there is one of ${made.join(' or ')}.`),
  }),
  'together-over': entry<{ words: string; together: number; stitches: number }>({
    severity: 'error',
    says: ({ words, together, stitches }) =>
      `“${words}”: ${together} stitches are worked together, but over ${stitches}.`,
    hint: () => 'Check both numbers.',
  }),
} as const
