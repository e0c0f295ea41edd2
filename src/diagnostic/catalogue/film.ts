import { entry } from '../entry.ts'

/** Findings about the designer's own film. */
export const filmFindings = {
  'film-address': entry<{ url: string }>({
    severity: 'error',
    says: ({ url }) => `“${url}” is no address of a film that a page can lead to safely.`,
    hint: () => 'Write the whole address; it starts with `https://`.',
  }),
  'film-time': entry<{ time: string }>({
    severity: 'error',
    says: ({ time }) => `“${time}” is no time of a film.`,
    hint: () => 'Write minutes and seconds, `"8:13"`, or hours before them, `"1:02:03"`.',
  }),
  'film-row': entry<{ place: string; pieces: readonly string[]; nearest: string | null }>({
    severity: 'warning',
    says: ({ place, pieces }) =>
      pieces.length > 1
        ? `Several pieces have a “${place}”: ${pieces.join(', ')}. It is not known which of them the film shows.`
        : `The film shows “${place}”, but no row or heading is called so.`,
    hint: ({ nearest }) =>
      nearest === null ? 'Write the label of a row, such as `Rnd 2`, or a heading.' : `Write \`${nearest}\` instead.`,
  }),
}
