import { entry } from '../entry.ts'

/** Findings about what a reader of the pattern needs beside the rows. */
export const readerNeedsFindings = {
  'abbreviation-unlisted': entry<{ abbreviation: string; meaning: string }>({
    severity: 'warning',
    says: ({ abbreviation }) => `“${abbreviation}” is used here, but the list of abbreviations does not have it.`,
    hint: ({ abbreviation, meaning }) =>
      `Add “${abbreviation}: ${meaning}” to the list, or leave the list out: page and print-out make their own.`,
  }),
  'abbreviation-unused': entry<{ abbreviation: string }>({
    severity: 'note',
    says: ({ abbreviation }) => `“${abbreviation}” is in the list of abbreviations, but nowhere else in the draft.`,
    hint: () => 'Take it out of the list, or look for a stitch that was written another way.',
  }),
  'abbreviation-of-other-terms': entry<{ name: string; other: string; own: string }>({
    severity: 'warning',
    says: ({ name, other }) => `“${name}” is a word of ${other} terms, which this draft is not written in.`,
    hint: ({ own }) => `Write “${own}”, or change \`terms\` at the top of the draft.`,
  }),
  'abbreviation-means-other': entry<{ abbreviation: string; meaning: string; name: string; terms: string }>({
    severity: 'warning',
    says: ({ abbreviation, meaning, name, terms }) =>
      `“${abbreviation}” is listed as “${meaning}”, but in ${terms} terms it is “${name}”.`,
    hint: ({ abbreviation, name }) =>
      `Write “${abbreviation}: ${name}”, or change \`terms\` at the top of the draft if the rows are written in the others.`,
  }),
  'text-list-length': entry<{ given: number; sizes: number }>({
    severity: 'warning',
    says: ({ given, sizes }) => `This list has ${given} numbers, but the draft has ${sizes} sizes.`,
    hint: () =>
      'Give one number for each size, in the order of `sizes`; for some sizes, say which: “for M and L only”.',
  }),
  'character-unprinted': entry<{ text: string; count: number }>({
    severity: 'warning',
    says: ({ text, count }) =>
      `The print-out can’t show “${text}”: ${count === 1 ? 'a question mark is' : 'question marks are'} printed instead.`,
    hint: () => 'Write it in words, or in Latin, Greek, Cyrillic or Japanese letters.',
  }),
  'section-missing': entry<{ what: string; key: string }>({
    severity: 'note',
    says: ({ what }) => `This pattern is published, but says nothing of its ${what}.`,
    hint: ({ key }) => `Say it at the top of the draft with \`${key}:\`.`,
  }),
}
