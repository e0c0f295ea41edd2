import { entry } from '../../entry.ts'
import { short } from './wording.ts'

/** A number of one size that something is said about. */
export interface Case {
  readonly size: string
  readonly said: string
}

const casesOf = (cases: readonly Case[]) => cases.map(({ size, said }) => `${size}: ${said}`).join('; ')

/** Findings about shaping phrases. */
export const shapingFindings = {
  'shaping-word': entry<{ phrase: string; word: string; nearest: string | null; known: readonly string[] }>({
    severity: 'error',
    says: ({ phrase, word }) => `\`${phrase}\` does not know the words \`"${short(word)}"\`.`,
    hint: ({ nearest, known }) =>
      nearest === null
        ? `It knows ${known.map((word) => `\`"${word}"\``).join(', ')}.`
        : `Did you mean \`"${nearest}"\`?`,
  }),
  'shaping-stitch': entry<{ found: string }>({
    severity: 'error',
    says: ({ found }) => `\`"${short(found)}"\` is not the abbreviation of a stitch.`,
    hint: () => 'Write one as it stands in the rows, such as `"sc"` or `"dc"`.',
  }),
  'shaping-range': entry<{ argument: string; least: number; most: number; cases: readonly Case[] }>({
    severity: 'error',
    says: ({ argument, least, most, cases }) =>
      `\`${argument}\` must be from ${least} to ${most} here (${casesOf(cases)}).`,
    hint: () => 'A size to which the shaping does not apply is left out with `none` or `if(…)`.',
  }),
  'shaping-rows': entry<{ formula: string; cases: readonly Case[] }>({
    severity: 'error',
    says: ({ formula, cases }) => `\`${formula}\` has more rows to shape than rows (${casesOf(cases)}).`,
    hint: () => 'Give it more rows, or change fewer stitches.',
  }),
  'shaping-stitches': entry<{ formula: string; cases: readonly Case[] }>({
    severity: 'error',
    says: ({ formula, cases }) => `\`${formula}\` needs more stitches than there are (${casesOf(cases)}).`,
    hint: () =>
      'An increase takes a stitch of its own, a decrease two, and every shaped row at least one: change fewer stitches, or change them in several rows.',
  }),
  'shaping-odd': entry<{ formula: string; phrase: string; cases: readonly Case[] }>({
    severity: 'error',
    says: ({ formula, cases }) =>
      `\`${formula}\` changes an odd number of stitches, which two ends cannot share (${casesOf(cases)}).`,
    hint: ({ phrase }) =>
      `Round both counts alike, \`as even\` or \`as odd\`${phrase === 'taper' ? ', or shape at one end only: `taper(from, to, over_rows, "one end")`' : ''}.`,
  }),
  'shaping-direction': entry<{ formula: string; phrase: string; cases: readonly Case[] }>({
    severity: 'error',
    says: ({ formula, cases }) => `\`${formula}\` goes the wrong way (${casesOf(cases)}).`,
    hint: ({ phrase }) =>
      phrase === 'yoke_rounds'
        ? 'It widens from its first count to its second.'
        : 'Its second count is the waist, which is wider than neither of the others.',
  }),
} as const
