import { entry } from '../entry.ts'

/** Findings about pictures that lie beside a draft. */
export const pictureFindings = {
  'picture-missing': entry<{ src: string }>({
    severity: 'error',
    says: ({ src }) => `The picture “${src}” does not lie beside the draft.`,
    hint: () => 'Put it into the draft’s folder, or check its name: capitals and the ending count.',
  }),
  'cover-missing': entry<{ src: string }>({
    severity: 'warning',
    says: ({ src }) => `The cover “${src}” does not lie beside the draft: the page will have none.`,
    hint: () => 'Put it into the draft’s folder, or check its name: capitals and the ending count.',
  }),
  'picture-unreadable': entry<{ src: string }>({
    severity: 'error',
    says: ({ src }) => `“${src}” is no picture that a page can show.`,
    hint: () => 'Save it as JPEG, PNG, WebP, AVIF, GIF or SVG.',
  }),
  'picture-elsewhere': entry<{ src: string }>({
    severity: 'warning',
    says: ({ src }) =>
      `The picture “${src}” lies on another site, and a page asks no other site for anything: only its words are shown.`,
    hint: () => 'Put the file beside the draft, and write its name.',
  }),
  'picture-without-words': entry<{ src: string }>({
    severity: 'warning',
    says: ({ src }) => `The picture “${src}” has no words for a reader who can’t see it.`,
    hint: ({ src }) => `Say what it shows between the brackets: \`![The back, laid flat](${src})\`.`,
  }),
} as const
