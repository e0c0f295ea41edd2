import { entry } from '../../entry.ts'
import { plural } from './plural.ts'

/** Findings about steps that the fabric has no room for, or too much. */
export const workingFindings = {
  'repeat-does-not-come-out': entry<{
    row: string
    /** `M and L`; empty where all sizes are meant. */
    sizes: string
    /** The size that the numbers are of, where several are meant. */
    first: string
    done: number
    asked: number | null
    left: number
    uses: number
    instead: string | null
    fewer: number | null
    more: number | null
    chains: boolean
  }>({
    severity: 'error',
    says: ({ row, sizes, first, done, asked, left, uses }) => {
      const each = uses > 0 ? `, and each uses ${plural(uses, 'stitch')}` : ''
      const wanted = asked === null ? '' : ` of the ${asked} written`
      const whose = sizes === '' ? '' : ` for ${sizes}`
      const of = first === '' ? '' : `for ${first} `
      return `${row}: the repeat does not come out${whose}: ${of}${plural(done, 'whole repeat')}${wanted} fit${done === 1 ? 's' : ''}, ${plural(left, 'stitch')} ${left === 1 ? 'is' : 'are'} left over${each}.`
    },
    hint: ({ first, instead, fewer, more, chains }) => {
      if (instead !== null) return instead
      const counts = [fewer, more].filter((count) => count !== null)
      if (counts.length === 0) return undefined
      const below = chains ? 'a foundation' : 'a row below'
      const it = first === '' ? 'It' : `For ${first} it`
      return `${it} would fit ${below} of ${counts.join(' or ')} ${chains ? 'chains' : 'stitches'}.`
    },
  }),
  'bare-repeat-left': entry<{ row: string; left: string }>({
    severity: 'warning',
    says: ({ row, left }) =>
      `${row}: the repeat leaves ${left} of the row below over, and no mark says where it begins.`,
    hint: () => 'Put * where the repeat begins and write “repeat from *”.',
  }),
  'too-few-stitches': entry<{ row: string; words: string; wanted: string; there: number }>({
    severity: 'error',
    says: ({ row, words, wanted, there }) =>
      `${row} uses more than there is: “${words}” asks for ${wanted}, and ${there === 0 ? 'none is' : `only ${there} ${there === 1 ? 'is' : 'are'}`} left in the row below.`,
    hint: () => 'Check the numbers of this row, and the count of the row below.',
  }),
  'no-such-place': entry<{ row: string; words: string; wanted: string; below: string; behind: boolean }>({
    severity: 'error',
    says: ({ row, words, wanted }) =>
      `${row}: “${words}” goes into ${wanted}, but there is no such place left in the row below.`,
    hint: ({ wanted, below, behind }) => {
      if (wanted === 'chains from the hook')
        return 'Only a foundation chain, or chains made in this row, can be counted from the hook.'
      if (behind) {
        return `The row below has ${below}, but those lie behind the stitches made before these words. To take places of both kinds as they come, write “in each … and in each …”, or begin with the first.`
      }
      return below === '' ? undefined : `The row below has ${below}.`
    },
  }),
  'nothing-below': entry<{ row: string }>({
    severity: 'error',
    says: ({ row }) => `${row} works into stitches, but nothing has been made before it.`,
    hint: () => 'Begin the piece with a foundation chain or a ring.',
  }),
  'base-unknown': entry<{ row: string }>({
    severity: 'warning',
    says: ({ row }) =>
      `${row} is worked on something that this draft does not make: it and the rows after it have not been checked.`,
    hint: () => 'Where it begins on a chain, say of how many: `Ch 60.` stands before it, as a row of its own.',
  }),
  'repeat-goes-nowhere': entry<{ row: string }>({
    severity: 'error',
    says: ({ row }) =>
      `${row}: the repeat to the end would never end, because one pass of it uses no stitch of the row below.`,
    hint: () => 'Say how many times it is worked.',
  }),
  'row-too-long': entry<{ row: string; most: number }>({
    severity: 'error',
    says: ({ row, most }) => `${row} makes more than ${most} stitches; a number in it must be wrong.`,
    hint: () => 'Look for a number with a digit too many.',
  }),
  'count-below-zero': entry<{ row: string; number: number }>({
    severity: 'error',
    says: ({ row, number }) => `${row} asks for ${number} of something; a count can’t be less than 0.`,
    hint: () => 'Let the formula come to 0 for a size that does not work these words: they are then left out.',
  }),
  'stitches-left': entry<{ row: string; left: string }>({
    severity: 'warning',
    says: ({ row, left }) => `${row} leaves ${left} of the row below unworked without saying so.`,
    hint: () => 'Work to the end of the row, or write “leave remaining stitches unworked”.',
  }),
  'left-otherwise': entry<{ row: string; said: string; left: string }>({
    severity: 'warning',
    says: ({ row, said, left }) => `${row} says that ${said} stitches are left, but its steps leave ${left}.`,
    hint: () => 'Check the number that is left, and those before it.',
  }),
} as const
