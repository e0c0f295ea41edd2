import { entry } from '../../entry.ts'

/** Findings about rows and stitches that can’t be read as they are written. */
export const readingFindings = {
  'row-unread': entry<{ row: string; words: string; expected: string; instead: string | null }>({
    severity: 'warning',
    says: ({ row, words, expected }) =>
      words === ''
        ? `${row} has no steps. It and the rows after it have not been checked.`
        : `${row} could not be read from “${words}” on, where ${expected} was expected. It and the rows after it have not been checked.`,
    hint: ({ instead }) => instead ?? undefined,
  }),
  'word-of-other-terms': entry<{ row: string; word: string; other: string; own: string }>({
    severity: 'warning',
    says: ({ row, word, other }) =>
      `“${word}” is a word of ${other} terms, which this draft is not written in. ${row} and the rows after it have not been checked.`,
    hint: ({ own }) => `Write “${own}”, or change \`terms\` at the top of the draft.`,
  }),
  'repeat-without-mark': entry<{ row: string; mark: string }>({
    severity: 'error',
    says: ({ row, mark }) => `${row} says to repeat from ${mark}, but no ${mark} stands before it.`,
    hint: ({ mark }) => `Put ${mark} where the repeat begins.`,
  }),
  'special-unread': entry<{ name: string; meaning: string | null }>({
    severity: 'warning',
    says: ({ name, meaning }) =>
      meaning === null
        ? `The definition of ${name} could not be read, so rows that use it can’t be worked.`
        : `The definition of ${name} could not be read; it has been worked as ${meaning}.`,
    hint: () => 'Write it in steps, such as “5 dc in same st”, or add “counts as 1 st”.',
  }),
  'special-undefined': entry<{ name: string; meaning: string }>({
    severity: 'note',
    says: ({ name, meaning }) => `${name} is not defined in this draft; it has been worked as ${meaning}.`,
    hint: ({ name }) => `Define ${name} in a list under a heading “Special stitches”.`,
  }),
} as const
