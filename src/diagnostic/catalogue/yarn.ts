import { entry } from '../entry.ts'

const claim = 'Name it in the rows, `With {yarn}, …`, or say beside `as: {yarn}` what it is for'

const waysToWrite = {
  'a number': 'Write it without a unit: `40`, `[40, 48, 56]`.',
  'a length': 'Write it with its unit: `6 cm`, `[60, 70, 80] cm`.',
  'a weight': 'Write it with its unit: `5 g`, `[5, 6, 7] g`.',
} as const

/** Findings about the yarn that a pattern takes. */
export const yarnFindings = {
  'yarn-falls': entry<{ yarn: string; larger: string; smaller: string; grams: readonly [number, number] }>({
    severity: 'warning',
    says: ({ yarn, larger, smaller, grams: [before, after] }) =>
      `“${larger}” takes less of the yarn “${yarn}” than “${smaller}”: ${after} g after ${before} g.`,
    hint: () => 'Look at the counts of rows and stitches that shrink from one size to the next.',
  }),
  'yarn-without-rows': entry<{ yarn: string; instead: string }>({
    severity: 'note',
    says: ({ yarn, instead }) =>
      `No row says that it is worked in “${yarn}”, so yarns can’t be told apart: ${instead}.`,
    hint: ({ yarn }) => `${claim.replaceAll('{yarn}', yarn)}: \`pieces: [Edging]\` or \`rows: {Body: Rows 5-8}\`.`,
  }),
  'row-yarn-unclear': entry<{ row: string; piece: string; instead: string }>({
    severity: 'note',
    says: ({ row, instead }) => `How much of each yarn ${row} takes can’t be told from its words: ${instead}.`,
    hint: ({ piece }) =>
      `Say beside \`as: …\` which rows are worked in it: \`rows: {${piece}: Rows 3, 4 of every 4}\`; a row that mixes yarns needs a weighed \`sample\`.`,
  }),
  'yarn-piece-unknown': entry<{ piece: string; nearest: string | null }>({
    severity: 'warning',
    says: ({ piece }) => `No rows stand under a heading “${piece}”.`,
    hint: ({ nearest }) =>
      nearest === null ? 'Write the heading as it stands in the text.' : `Write \`${nearest}\` instead.`,
  }),
  'yarn-rows-unreadable': entry<{ text: string }>({
    severity: 'error',
    says: ({ text }) => `“${text}” does not say which rows are worked in the yarn.`,
    hint: () => 'Write their numbers, such as `Rnds 1-4, 7` or `Rows 3, 4 of every 4`.',
  }),
  'swatch-weight-alone': entry<{ missing: 'size' | 'gauge' }>({
    severity: 'note',
    says: ({ missing }) => `The swatch is weighed, but yarn can’t be estimated from it without its ${missing}.`,
    hint: ({ missing }) =>
      missing === 'size'
        ? 'Add its width and height, `size: 12 cm x 12 cm`.'
        : 'Add `stitches: … per 10 cm` and `rows: … per 10 cm`.',
  }),
  'finish-amount-missing': entry<{ kind: string; missing: string }>({
    severity: 'warning',
    says: ({ kind, missing }) => `The yarn of the ${kind} is not counted: its “${missing}” is not given.`,
    hint: ({ kind, missing }) =>
      `Add it: \`{${kind}: {${missing}: ${/^(?:length|across)$/.test(missing) ? '6 cm' : '40'}}}\`.`,
  }),
  'finish-amount-wrong': entry<{ key: string; wanted: keyof typeof waysToWrite }>({
    severity: 'error',
    says: ({ key, wanted }) => `“${key}” must be ${wanted}, for every size above 0.`,
    hint: ({ wanted }) => waysToWrite[wanted],
  }),
  'finish-needs-skein': entry<{ kind: string; yarn: string }>({
    severity: 'note',
    says: ({ kind, yarn }) =>
      `The length of yarn in the ${kind} is known, but not its weight: the skein of “${yarn}” lacks its weight or length. It is not counted.`,
    hint: () => 'Give both: `skein: {weight: 100 g, length: 200 m}`.',
  }),
} as const
