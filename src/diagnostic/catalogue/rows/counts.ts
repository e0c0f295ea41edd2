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
    hint: ({ cause }) => cause ?? undefined,
  }),
  'count-unread': entry<{ row: string; noun: string; makes: string }>({
    severity: 'warning',
    says: ({ row, noun }) =>
      `${row} counts ${noun}, which fits nothing that it makes; this count has not been checked.`,
    hint: ({ makes }) => (makes === '' ? undefined : `The row makes ${makes}.`),
  }),
  'kind-counted-twice': entry<{ kind: string }>({
    severity: 'warning',
    says: ({ kind }) => `This count names ${kind} twice.`,
    hint: () => 'One of them may be another kind.',
  }),
  'count-of-other-row': entry<{ number: number; last: number }>({
    severity: 'warning',
    says: ({ number, last }) => `This count is said to be that of row ${number}, but stands at row ${last}.`,
  }),
} as const
