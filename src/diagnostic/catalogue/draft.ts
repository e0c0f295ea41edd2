import { entry } from '../entry.ts'

type Nothing = Record<never, never>

const start =
  'A draft starts with a block between two lines of `---` that gives at least `title: …` and `sizes: [ … ]`.'

/** Findings about the file, its front matter and its Markdown. */
export const draftFindings = {
  'draft-empty': entry<Nothing>({
    severity: 'error',
    says: () => 'This draft is empty.',
    hint: () => start,
  }),
  'draft-too-long': entry<{ megabytes: string; limit: string }>({
    severity: 'error',
    says: ({ megabytes, limit }) => `This draft is ${megabytes} MB long; a draft may have up to ${limit} MB of text.`,
    hint: () => 'Keep pictures in files of their own beside the draft, and put each pattern in a draft of its own.',
  }),
  'draft-not-text': entry<Nothing>({
    severity: 'error',
    says: () => 'This file is not text in UTF-8, so it can’t be read as a draft.',
    hint: () => 'Save it again from your editor with the encoding “UTF-8”.',
  }),
  'front-matter-missing': entry<Nothing>({
    severity: 'error',
    says: () => 'This draft does not start with a front matter block.',
    hint: () => `${start} An old draft can be proofed as it is: name its sizes with \`--sizes "S, M, L"\`.`,
  }),
  'front-matter-unclosed': entry<Nothing>({
    severity: 'error',
    says: () => 'The front matter block that opens here is never closed.',
    hint: () => 'Put a line with only `---` after its last key.',
  }),
  'front-matter-unreadable': entry<{ problem: string }>({
    severity: 'error',
    says: ({ problem }) => `The front matter can’t be read here: ${problem}.`,
    hint: () => 'Write each fact as `key: value` on a line of its own; put text with a colon or a # in quotes.',
  }),
  'key-unknown': entry<{ key: string; within: string | null; nearest: string | null }>({
    severity: 'error',
    says: ({ key, within }) =>
      within === null ? `The front matter has no key “${key}”.` : `“${within}” has no key “${key}”.`,
    hint: ({ nearest }) =>
      nearest === null ? 'Remove it, or move it into the text.' : `Write \`${nearest}\` instead.`,
  }),
  'key-missing': entry<{ key: string }>({
    severity: 'error',
    says: ({ key }) => `“${key}” is missing from the front matter.`,
    hint: ({ key }) => `Add a line \`${key.split(' ').at(-1) ?? key}: …\`.`,
  }),
  'fact-wrong': entry<{ key: string; problem: string }>({
    severity: 'error',
    says: ({ key, problem }) => `“${key}” ${problem}.`,
  }),
  'accepted-unknown': entry<{ code: string; nearest: string | null }>({
    severity: 'warning',
    says: ({ code }) => `There is no finding called “${code}” that could be accepted.`,
    hint: ({ nearest }) =>
      nearest === null ? 'Write the name that the proof gives it.' : `Write \`${nearest}\` instead.`,
  }),
  'accepted-nothing': entry<{ code: string; place: string }>({
    severity: 'warning',
    says: ({ code, place }) =>
      `Nothing called “${code}” is found at “${place}” any more, so there is nothing to accept.`,
    hint: () => 'Remove this line from `accepted`, or correct its `at`: the label of a row, or words of the line.',
  }),
  'size-listed-twice': entry<{ size: string }>({
    severity: 'error',
    says: ({ size }) => `The size “${size}” is listed twice.`,
    hint: () => 'Give each size a name of its own.',
  }),
  'measure-unreadable': entry<{ key: string; text: string; kind: 'length' | 'mass' }>({
    severity: 'error',
    says: ({ key, text, kind }) => `“${text}” for “${key}” is not a ${kind === 'mass' ? 'weight' : 'length'}.`,
    hint: ({ kind }) =>
      kind === 'mass'
        ? 'Write a number with g, kg, oz or lb, such as `100 g`.'
        : 'Write a number with m, cm, yd or in, such as `200 m`.',
  }),
  'swatch-size-unreadable': entry<{ text: string }>({
    severity: 'error',
    says: ({ text }) => `“${text}” is not the size of a swatch.`,
    hint: () => 'Write width and height, each with its unit: `12 cm x 15 cm`.',
  }),
  'yarn-unknown': entry<{ name: string; nearest: string | null }>({
    severity: 'error',
    says: ({ name }) => `There is no yarn called “${name}” under \`yarn\`.`,
    hint: ({ nearest }) =>
      nearest === null ? 'Use the name that stands after `as:`.' : `Write \`${nearest}\` instead.`,
  }),
  'kind-unusual': entry<{ kind: string; usual: string }>({
    severity: 'note',
    says: ({ kind, usual }) => `Patterns of the kind “${kind}” are looked for as “${usual}”.`,
    hint: ({ usual }) => `Write \`kind: ${usual}\`, so that it stands with the others.`,
  }),
  'placeholder-unclosed': entry<Nothing>({
    severity: 'error',
    says: () => 'A placeholder opens here and is never closed.',
    hint: () => 'Close it with `}}`, or write `\\{{` to print two braces.',
  }),
  'passage-unclosed': entry<Nothing>({
    severity: 'error',
    says: () => 'This passage for some sizes is never closed, so the rest of the draft would be for those sizes only.',
    hint: () => 'Put a line with only `:::` after its last line.',
  }),
  'directive-without-sizes': entry<Nothing>({
    severity: 'error',
    says: () => 'This passage does not say for which sizes it is.',
    hint: () => 'Write `{only="…"}` with the names of the sizes, separated by commas.',
  }),
} as const
