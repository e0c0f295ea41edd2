import { entry } from '../../entry.ts'
import { offer, quoted, short } from './wording.ts'

const roundingHabits = ['round', 'ceil', 'ceiling', 'floor', 'int', 'trunc', 'mround']

/** How a value is printed, by its kind. */
const ways: Readonly<Record<string, string>> = {
  'a length': 'A length is printed `as cm`, `as in`, `as m` or `as yd`.',
  'a weight': 'A weight is printed `as g`, `as oz` or `as skeins`.',
  'a count': 'A count is printed `as words` or `as ordinal`; to print a length, calculate it: `width(…)`.',
}

/** Findings about names, functions and what goes together. */
export const meaningFindings = {
  'name-unknown': entry<{ name: string; nearest: string | null }>({
    severity: 'error',
    says: ({ name }) => `Nothing is called \`${short(name)}\` in this draft.`,
    hint: ({ name, nearest }) =>
      offer(nearest) ?? `Define it in a grading block: \`${name} = …\`; words to be printed stand in quotes.`,
  }),
  'name-twice': entry<{ name: string }>({
    severity: 'error',
    says: ({ name }) => `\`${name}\` is defined twice; the first definition is used.`,
    hint: () => 'Give one of the two another name, or take it out.',
  }),
  'name-taken': entry<{ name: string }>({
    severity: 'error',
    says: ({ name }) => `\`${name}\` is a word of the formula language and cannot be a name.`,
    hint: ({ name }) => `Choose another name, such as \`${name}_1\`.`,
  }),
  'name-circle': entry<{ names: readonly string[] }>({
    severity: 'error',
    says: ({ names }) =>
      names.length === 1
        ? `${quoted(names)} is calculated from itself.`
        : `These are calculated from each other in a circle: ${quoted(names)}.`,
    hint: () => 'Give one of them a value that does not need the others.',
  }),
  'function-unknown': entry<{ name: string; nearest: string | null; isValue: boolean }>({
    severity: 'error',
    says: ({ name, isValue }) =>
      isValue ? `\`${name}\` is a value and takes nothing in brackets.` : `There is no function \`${name}\`.`,
    hint: ({ name, nearest, isValue }) => {
      if (isValue) return `To multiply, write \`${name} * (…)\`.`
      if (!roundingHabits.includes(name.toLowerCase())) return offer(nearest)
      return 'Rounding is written after the value: `x as whole`, `x as whole up`, `x as multiple of 6`.'
    },
  }),
  'function-arguments': entry<{ name: string; usage: string; given: number }>({
    severity: 'error',
    says: ({ name, given }) =>
      `\`${name}\` cannot be used with ${given === 1 ? '1 value' : `${given} values`} in its brackets.`,
    hint: ({ usage }) => `It is written \`${usage}\`.`,
  }),
  'name-in-quotes': entry<{ name: string; found: string }>({
    severity: 'error',
    says: ({ name, found }) => `\`${name}\` takes a name in quotes here, and \`${found}\` is none.`,
    hint: ({ found }) => `Write \`"${found}"\`.`,
  }),
  'kinds-mix': entry<{ says: string; wayOut: string | null }>({
    severity: 'error',
    says: ({ says }) => `${says}.`,
    hint: ({ wayOut }) => wayOut ?? undefined,
  }),
  'kind-wanted': entry<{ says: string; wayOut: string | null }>({
    severity: 'error',
    says: ({ says }) => `${says}.`,
    hint: ({ wayOut }) => wayOut ?? undefined,
  }),
  'condition-wanted': entry<{ found: string }>({
    severity: 'error',
    says: ({ found }) => `\`${found}\` is a value where a condition was expected.`,
    hint: ({ found }) => `Compare it with something: \`${found} > 0\`, \`${found} is even\`, \`${found} rises\`.`,
  }),
  'value-wanted': entry<{ found: string }>({
    severity: 'error',
    says: ({ found }) => `\`${found}\` is a condition where a value was expected.`,
    hint: ({ found }) => `Write \`need ${found}\` if it must hold, or choose by it: \`if(${found}, …, …)\`.`,
  }),
  'format-kind': entry<{ format: string; found: string }>({
    severity: 'error',
    says: ({ format, found }) => `\`${format}\` does not suit ${found}.`,
    hint: ({ found }) => ways[found] ?? 'Leave the format out: it is printed as it is.',
  }),
} as const
