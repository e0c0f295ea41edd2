import { entry } from '../../entry.ts'
import { quoted } from './wording.ts'

const obstacles = {
  product: 'multiplies linked counts with each other',
  quotient: 'divides by a linked count',
  choice: 'chooses by linked counts',
  extremes: 'sets a largest against a smallest',
  other: 'does more with linked counts than adding them up',
} as const

const waysRound: Readonly<Record<keyof typeof obstacles, string>> = {
  product:
    'Give one of the two a value of its own with `=`; a linked count may be multiplied by any number that is known.',
  quotient: 'Multiply it out: instead of `a / b >= 2` write `a >= 2 * b`.',
  choice: 'Choose by a measure or a target instead, or write one need for each case, joined by `or`.',
  extremes: 'Write a need for each of the counts instead of one for all.',
  other: 'Write the need with sums, differences and multiples of the linked counts.',
}

/** Findings about linked counts: `front ~ stitches(across) as odd`. */
export const linkedFindings = {
  'linked-target-missing': entry<{ name: string }>({
    severity: 'error',
    says: ({ name }) => `\`${name}\` is a linked count with nothing that it is to be near to: any number would do.`,
    hint: ({ name }) => `Say what it should come near to, such as \`${name} ~ stitches(30 cm)\`.`,
  }),
  'linked-target-linked': entry<{ name: string; through: string }>({
    severity: 'error',
    says: ({ name, through }) =>
      `\`${name}\` cannot be near to \`${through}\`, which is only known once \`${name}\` is.`,
    hint: ({ name, through }) =>
      `Give it a target that can be calculated beforehand, and what binds the two as a need: \`need ${name} <= ${through}\`.`,
  }),
  'linked-target-large': entry<{ name: string; largest: number }>({
    severity: 'error',
    says: ({ name, largest }) => `\`${name}\` is to be near to a count of more than ${largest}.`,
    hint: () => 'Check the measure and its unit.',
  }),
  'linked-too-many': entry<{ count: number; most: number }>({
    severity: 'error',
    says: ({ count, most }) => `The draft links ${count} counts; up to ${most} can be chosen together.`,
    hint: () => 'Link only counts that must fit each other, and calculate the others with `=`.',
  }),
  'linked-not-linear': entry<{ formula: string; why: keyof typeof obstacles }>({
    severity: 'error',
    says: ({ formula, why }) => `Linked counts cannot be chosen by \`${formula}\`: it ${obstacles[why]}.`,
    hint: ({ why }) => waysRound[why],
  }),
  'linked-contradiction': entry<{ needs: readonly string[]; links: readonly string[]; ways: readonly string[] }>({
    severity: 'error',
    says: ({ needs, links }) => {
      const lines = [...needs.map((need) => `need ${need}`), ...links]
      return lines.length === 1
        ? `No whole number meets ${quoted(lines)}.`
        : `No whole numbers meet all of these: ${quoted(lines)}.`
    },
    hint: ({ ways }) => {
      if (ways.length === 0) return 'Other needs contradict each other too; take one of these out to see them.'
      return ways.length === 1
        ? `It would come out if this gave way: ${ways[0]}.`
        : `It would come out if one of these gave way: ${ways.join('; ')}.`
    },
  }),
  'linked-undecided': entry<{ names: readonly string[] }>({
    severity: 'error',
    says: ({ names }) =>
      `No choice of ${quoted(names)} was found, and none was ruled out: the needs on them are too many.`,
    hint: () => 'Set some of these counts with `=`, or take out needs that follow from others.',
  }),
  'linked-solver-missing': entry<{ names: readonly string[] }>({
    severity: 'error',
    says: ({ names }) =>
      `${quoted(names)} cannot be chosen: this program was started without a solver for linked counts.`,
    hint: () => 'Calculate them with `=` and a rounding clause, or start the program with a solver.',
  }),
} as const
