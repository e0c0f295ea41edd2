import { entry } from '../entry.ts'

/** Findings about what a reader may change. */
export const readerChangeFindings = {
  'reader-unknown': entry<{ name: string; nearest: string | null }>({
    severity: 'error',
    says: ({ name }) => `A reader can’t change “${name}”: the grading blocks define no such value.`,
    hint: ({ nearest }) =>
      nearest === null ? 'Name a value that a grading block defines.' : `Write \`${nearest}\` instead.`,
  }),
  'reader-not-length': entry<{ name: string }>({
    severity: 'error',
    says: ({ name }) => `A reader can change a length, and \`${name}\` is none.`,
    hint: () => 'Name the length that the count is calculated from, and let the formulas do the rest.',
  }),
  'reader-rounded': entry<{ name: string; count: string }>({
    severity: 'error',
    says: ({ name, count }) =>
      `A reader can’t change \`${name}\`: it is what the rounded \`${count}\` comes to, so no row would follow.`,
    hint: ({ count }) => `Name the length that \`${count}\` is calculated from.`,
  }),
  'reader-limits': entry<{ from: string; to: string }>({
    severity: 'error',
    says: ({ from, to }) => `A reader can’t go from “${from}” to “${to}”.`,
    hint: () => 'Give two lengths, the smaller first, such as `{from: 16 cm, to: 36 cm}`.',
  }),
  'reader-outside': entry<{ name: string; cases: string }>({
    severity: 'warning',
    says: ({ name, cases }) => `What \`${name}\` is lies outside of what a reader may make it (${cases}).`,
    hint: () => 'Widen what a reader may choose, so that every size lies within.',
  }),
  'reader-gauge-lines': entry<Record<never, never>>({
    severity: 'error',
    says: () => 'A reader can’t enter a gauge: the swatch gives neither stitches nor rows.',
    hint: () => 'Add them to the swatch, such as `stitches: 12 per 10 cm`.',
  }),
  'reader-gauge-fixed': entry<{ what: string }>({
    severity: 'error',
    says: ({ what }) => `${what} can’t follow the gauge of a reader’s own swatch.`,
    hint: () => 'Calculate it from the swatch’s stitches and rows, or take `gauge` out of what a reader may change.',
  }),
}
