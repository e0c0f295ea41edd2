import { entry } from '../../entry.ts'
import { short } from './wording.ts'

const afterOperator = 'an operator or the end of the formula'

/** Ways of writing that other notations have and this one does not. */
const habits: Readonly<Record<string, string>> = {
  '%': 'A percentage is a number with its sign, `95 %`; a name is multiplied: `stretch * 1 %`.',
  of: 'To take a percentage of something, multiply: `5 % * bust`.',
  '^': 'Powers are written out: `a * a`.',
}

function habitHint(found: string, expected: string): string | undefined {
  if (found === ',' && expected === afterOperator) return 'Decimals are written with a point: `5.5`.'
  return found === '=' ? 'Equal is written with one sign: `a = b`.' : habits[found]
}

/** Findings about how a formula is written. */
export const writingFindings = {
  'formula-empty': entry<Record<never, never>>({
    severity: 'error',
    says: () => 'There is nothing between the curly brackets.',
    hint: () => 'Write a name or a formula, such as `{{rim_sts}}`.',
  }),
  'formula-unreadable': entry<{ found: string; expected: string }>({
    severity: 'error',
    says: ({ found, expected }) =>
      found === ''
        ? `The formula ends where ${expected} was expected.`
        : `Found \`${short(found)}\` where ${expected} was expected.`,
    hint: ({ found, expected }) => habitHint(found, expected),
  }),
  'formula-too-long': entry<Record<never, never>>({
    severity: 'error',
    says: () => 'This formula is too long to be read.',
    hint: () => 'Give its parts names of their own, one a line.',
  }),
  'formula-too-deep': entry<{ deepest: number }>({
    severity: 'error',
    says: ({ deepest }) => `Brackets stand inside each other more than ${deepest} deep.`,
    hint: () => 'Give the inner parts names of their own, one a line.',
  }),
  'operator-missing': entry<{ before: string; after: string }>({
    severity: 'error',
    says: ({ before, after }) => `There is no sign between \`${before}\` and \`${after}\`.`,
    hint: ({ before, after }) => `To multiply, write \`${before} * ${after}\`.`,
  }),
  'bracket-open': entry<{ bracket: string }>({
    severity: 'error',
    says: ({ bracket }) => `A bracket is not closed: \`${bracket}\` is missing.`,
    hint: () => 'Close it on the same line: a formula stands on one line.',
  }),
  'text-open': entry<{ afterNumber: boolean }>({
    severity: 'error',
    says: () => 'These words have no closing quote.',
    hint: ({ afterNumber }) =>
      afterNumber ? 'If inches are meant, write `in` after the number.' : 'Put a quote at their end.',
  }),
  'number-unreadable': entry<{ number: string }>({
    severity: 'error',
    says: ({ number }) => `\`${short(number)}\` is not a number that can be used.`,
    hint: () => 'Write a number such as `12`, `6.5`, `1/2` or `20 1/2`.',
  }),
  'unknown-unit': entry<{ unit: string; before: string; nearest: string | null }>({
    severity: 'error',
    says: ({ unit }) => `\`${short(unit)}\` is not a unit.`,
    hint: ({ unit, before, nearest }) =>
      nearest === null
        ? `Units are mm, cm, m, in, yd, g, kg, oz, lb and %; to multiply, write \`${before} * ${unit}\`.`
        : `Write \`${nearest}\`.`,
  }),
  'statement-unreadable': entry<Record<never, never>>({
    severity: 'error',
    says: () => 'This line of the grading block is neither a value nor a need.',
    hint: () => 'Write `name = formula` or `need condition`, one a line; a comment starts with `#`.',
  }),
  'format-misplaced': entry<{ word: string }>({
    severity: 'error',
    says: ({ word }) => `\`as ${word}\` says how a value is printed, and nothing is printed here.`,
    hint: ({ word }) => `Leave it out here and write it in the text: \`{{ name as ${word} }}\`.`,
  }),
  'fineness-unreadable': entry<{ text: string }>({
    severity: 'error',
    says: ({ text }) => `\`${text}\` is not a fineness to which a measure can be rounded.`,
    hint: () => 'Write a number above zero, such as `as in to 1/8`.',
  }),
  'made-unreadable': entry<{ word: string }>({
    severity: 'error',
    says: ({ word }) => `It is not clear which row \`${word}\` asks about.`,
    hint: ({ word }) =>
      word === 'total'
        ? 'Write `total`, `total("Rnd 4")` or `total("Sleeve", "Row 3")`.'
        : 'Write `count(dc)`, `count(dc, "Rnd 4")` or `count(dc, "Sleeve", "Row 3")`.',
  }),
} as const
