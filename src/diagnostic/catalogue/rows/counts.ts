import { entry } from '../../entry.ts'

/** Findings about stated counts. */
export const countFindings = {
  'count-mismatch': entry<{
    row: string
    kinds: readonly string[]
    stated: string
    worked: string
    sizes: string
    cause: string | null
  }>({
    severity: 'error',
    says: ({ row, stated, worked, sizes }) =>
      `${row} states ${stated}${sizes === '' ? '' : ` for ${sizes}`}, but its steps make ${worked}.`,
    hint: ({ cause }) =>
      cause ??
      'If the steps are right, correct the count; if the count is right, look for a number that slipped in the steps.',
  }),
  'count-unread': entry<{ row: string; noun: string; makes: string }>({
    severity: 'warning',
    says: ({ row, noun }) =>
      `${row} counts ${noun}, which fits nothing that it makes; this count has not been checked.`,
    hint: ({ makes }) =>
      makes === ''
        ? 'Count the stitches that the row makes, or define the name under a heading “Special stitches”.'
        : `The row makes ${makes}.`,
  }),
  'kind-counted-twice': entry<{ kind: string }>({
    severity: 'warning',
    says: ({ kind }) => `This count names ${kind} twice.`,
    hint: () => 'One of them may be another kind.',
  }),
  'count-of-other-row': entry<{ number: number; last: number }>({
    severity: 'warning',
    says: ({ number, last }) => `This count is said to be that of row ${number}, but stands at row ${last}.`,
    hint: () => 'Check both numbers.',
  }),
} as const
