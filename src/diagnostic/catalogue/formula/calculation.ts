import { entry } from '../../entry.ts'

/** Findings that need the numbers. */
export const calculationFindings = {
  'division-by-zero': entry<{ divisor: string; sizes: readonly string[] }>({
    severity: 'error',
    says: ({ divisor, sizes }) =>
      `This divides by zero: \`${divisor}\` is 0${sizes.length === 0 ? '' : ` for ${sizes.join(', ')}`}.`,
    hint: () => 'Leave that size out with `if(…)` or `none`, or divide by something else.',
  }),
  'number-too-large': entry<{ formula: string }>({
    severity: 'error',
    says: ({ formula }) => `\`${formula}\` comes to a number far beyond any measure.`,
    hint: () => 'Check the numbers in it, and in the values that it uses.',
  }),
  'multiple-unfit': entry<{ formula: string; found: string }>({
    severity: 'error',
    says: ({ formula, found }) =>
      `A count cannot be rounded by \`${formula}\`, which is ${found}: whole numbers are needed, the multiple above 0.`,
    hint: ({ formula }) => `If \`${formula}\` is calculated, round it first: \`(${formula} as whole)\`.`,
  }),
  'count-not-whole': entry<{
    formula: string
    /** The name whose own formula brings in the fraction; null where the formula does so itself. */
    name: string | null
    cases: string
  }>({
    severity: 'error',
    says: ({ formula, cases }) => `\`${formula}\` must be a whole number and does not come out whole (${cases}).`,
    hint: ({ formula, name }) =>
      `Say how ${name === null ? 'it' : `\`${name}\``} is rounded where it is calculated: \`as whole\`, \`as even\`, \`as odd\` or \`as multiple of 6\`, with \`up\` or \`down\` if the nearest is not wanted; here: \`${name === null ? formula : `${name} = …`} as whole\`.`,
  }),
  'need-failed': entry<{ need: string; cases: string }>({
    severity: 'error',
    says: ({ need, cases }) => `\`need ${need}\` does not hold (${cases}).`,
    hint: () => 'Change a value that it speaks of for these sizes, or the need where it asks for too much.',
  }),
  'made-in-grading': entry<{ word: string }>({
    severity: 'error',
    says: ({ word }) => `\`${word}\` is known only once the rows are worked, and cannot be used here.`,
    hint: ({ word }) => `Write it in the text, \`{{${word}}}\`, or calculate the number from names.`,
  }),
  'made-unknown': entry<{ word: string; row: string | null }>({
    severity: 'error',
    says: ({ word, row }) =>
      row === null ? `This is in no row, so \`${word}\` has nothing to count.` : `No worked row answers \`${word}\`.`,
    hint: ({ row }) =>
      row === null
        ? 'Name the row, as in `total("Rnd 4")`.'
        : 'Check the names of piece and row as they stand in the draft, and that the row makes such stitches.',
  }),
  'skein-unknown': entry<{ what: 'mass' | 'length' }>({
    severity: 'error',
    says: ({ what }) =>
      `Skeins cannot be counted: the ${what === 'mass' ? 'weight' : 'length'} of a skein is not known.`,
    hint: ({ what }) =>
      `Give it in the front matter under \`yarn\`: \`skein: {${what === 'mass' ? 'weight: 100 g' : 'length: 110 m'}}\`.`,
  }),
} as const
