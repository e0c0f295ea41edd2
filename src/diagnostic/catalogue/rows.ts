import { entry } from '../entry.ts'

function plural(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : one.endsWith('ch') ? 'es' : 's'}`
}

/** Findings about rows. */
export const rowFindings = {
  'count-mismatch': entry<{
    row: string
    kinds: readonly string[]
    stated: string
    worked: string
    sizes: string
    cause: string | null
  }>({
    severity: 'error',
    says: ({ row, stated, worked, sizes }) =>
      `${row} states ${stated}${sizes === '' ? '' : ` for ${sizes}`}, but its steps make ${worked}.`,
    hint: ({ cause }) => cause ?? undefined,
  }),
  'unlike-other-rows': entry<{ row: string; how: string; write: string }>({
    severity: 'warning',
    says: ({ row, how }) =>
      `${row} comes out only if ${how}, against what the other rows or the trade’s convention say.`,
    hint: ({ write }) => `Check its numbers, or write ${write}.`,
  }),
  'ordinal-ending': entry<{ words: string; instead: string }>({
    severity: 'warning',
    says: ({ words }) => `“${words}”: the number and its ending do not go together.`,
    hint: ({ instead }) => `Write ${instead}, or check the number.`,
  }),
  'chain-sum': entry<{ words: string; chains: number; needs: number }>({
    severity: 'warning',
    says: ({ words, chains, needs }) =>
      `“${words}”: a chain of ${chains} is not what it is said to count as, which takes ${needs}.`,
    hint: () => 'Check both numbers.',
  }),
  'chain-named': entry<{ row: string; words: string; chains: number; made: readonly number[] }>({
    severity: 'warning',
    says: ({ row, words, chains }) =>
      `${row}: “${words}” names a chain of ${chains}, but none opens this row or the one below.`,
    hint: ({ made }) => (made.length === 0 ? undefined : `The chain there is one of ${made.join(' or ')}.`),
  }),
  'opening-unlike': entry<{ row: string; chains: number; others: number }>({
    severity: 'warning',
    says: ({ row, chains, others }) =>
      `${row} opens with ch ${chains}, where the other rows that begin with this stitch open with ch ${others}.`,
    hint: () => 'Check the number of chains.',
  }),
  'together-over': entry<{ words: string; together: number; stitches: number }>({
    severity: 'warning',
    says: ({ words, together, stitches }) =>
      `“${words}”: ${together} stitches are worked together, but over ${stitches}.`,
    hint: () => 'Check both numbers.',
  }),
  'row-named-twice': entry<{ number: number }>({
    severity: 'warning',
    says: ({ number }) => `Row ${number} is named twice here.`,
    hint: () => 'Check the numbers of the rows.',
  }),
  'range-length': entry<{ rows: number; words: number }>({
    severity: 'warning',
    says: ({ rows, words }) => `The label stands for ${plural(rows, 'row')}, but the words say ${words}.`,
    hint: () => 'Check the label and the number of rows.',
  }),
  'kind-counted-twice': entry<{ kind: string }>({
    severity: 'warning',
    says: ({ kind }) => `This count names ${kind} twice.`,
    hint: () => 'One of them may be another kind.',
  }),
  'count-of-other-row': entry<{ number: number; last: number }>({
    severity: 'warning',
    says: ({ number, last }) => `This count is said to be that of row ${number}, but stands at row ${last}.`,
  }),
  'first-row-number': entry<{ row: string; piece: string }>({
    severity: 'warning',
    says: ({ row, piece }) =>
      `${piece === '' ? 'The first row here' : `${piece}: the first row`} is ${row}, and no row comes before it.`,
    hint: () => 'Check its number, or add the rows that are missing.',
  }),
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
    hint: () => 'Where it begins on a chain, say of how many, as in `Ch 60.`',
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
  }),
  'count-below-zero': entry<{ row: string; number: number }>({
    severity: 'error',
    says: ({ row, number }) => `${row} asks for ${number} of something; a count can’t be less than 0.`,
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
  'row-unread': entry<{ row: string; words: string; expected: string; instead: string | null }>({
    severity: 'warning',
    says: ({ row, words, expected }) =>
      words === ''
        ? `${row} has no steps. It and the rows after it have not been checked.`
        : `${row} could not be read from “${words}” on, where ${expected} was expected. It and the rows after it have not been checked.`,
    hint: ({ instead }) => instead ?? undefined,
  }),
  'repeat-without-mark': entry<{ row: string; mark: string }>({
    severity: 'error',
    says: ({ row, mark }) => `${row} says to repeat from ${mark}, but no ${mark} stands before it.`,
    hint: ({ mark }) => `Put ${mark} where the repeat begins.`,
  }),
  'size-list-length': entry<{ given: number; sizes: number }>({
    severity: 'error',
    says: ({ given, sizes }) => `This list has ${plural(given, 'number')}, but the draft has ${plural(sizes, 'size')}.`,
    hint: () => 'Give one number for each size, in the order of `sizes`, or one number for all.',
  }),
  'row-label-twice': entry<{ row: string; piece: string }>({
    severity: 'warning',
    says: ({ row, piece }) => `${row} stands twice${piece === '' ? '' : ` in ${piece}`}.`,
  }),
  'row-number-gap': entry<{ row: string; expected: number }>({
    severity: 'warning',
    says: ({ row, expected }) => `${row} follows where ${expected} would be next.`,
  }),
  'side-out-of-step': entry<{ row: string; said: 'RS' | 'WS'; worked: 'RS' | 'WS' }>({
    severity: 'warning',
    says: ({ row, said, worked }) =>
      `${row} is marked ${said}, but by the turns since the last row that is marked it is worked on the ${worked}.`,
    hint: () => 'Change the mark, or say “turn” or “do not turn” in the rows between.',
  }),
  'unknown-row-reference': entry<{ row: string; number: number | null; rows: string }>({
    severity: 'error',
    says: ({ row, number }) =>
      number === null
        ? `${row} repeats a row before it, but there is none in this piece.`
        : `${row} repeats row ${number}, but this piece has no row ${number} before it.`,
    hint: ({ rows }) =>
      rows === '' ? undefined : `Before it ${/[–,]/.test(rows) ? 'stand rows' : 'stands row'} ${rows}.`,
  }),
  'row-gauge-missing': entry<{ row: string }>({
    severity: 'warning',
    says: ({ row }) =>
      `${row} is worked to a length, but the swatch gives no row gauge; one repeat of it has been worked.`,
    hint: () => 'Add `rows: … per 10 cm` to the swatch.',
  }),
  'range-too-long': entry<{ most: number }>({
    severity: 'error',
    says: ({ most }) => `This stands for more than ${most} rows; a number in it must be wrong.`,
  }),
  'shaping-rows-differ': entry<{ named: number; shaped: number }>({
    severity: 'warning',
    says: ({ named, shaped }) =>
      `These are ${named} rows, and their shaping takes ${shaped}${named > shaped ? '; the rows after it have been worked even' : ''}.`,
    hint: ({ named, shaped }) =>
      named > shaped
        ? `If that is meant, say so: “then work ${named - shaped} ${named - shaped === 1 ? 'row' : 'rows'} even”.`
        : 'Change the numbers of the rows, or how often they are shaped.',
  }),
  'repeated-rows-differ': entry<{ named: number; repeated: number }>({
    severity: 'warning',
    says: ({ named, repeated }) => `These are ${plural(named, 'row')}, and the repeats in them come to ${repeated}.`,
    hint: () => 'Change the numbers of the rows, or how often they are repeated.',
  }),
  'repeats-foundation-row': entry<{ row: string; number: number }>({
    severity: 'warning',
    says: ({ row, number }) =>
      `${row} repeats row ${number}, which is worked into the foundation chain; it has been worked into the stitches below instead.`,
    hint: () => 'Repeat a row that is worked into stitches, or write the row out.',
  }),
  'unknown-row-name': entry<{ row: string; called: string }>({
    severity: 'warning',
    says: ({ row, called }) => `${row} goes back to the ${called}, but no row before it in this piece is called so.`,
    hint: ({ called }) =>
      `Name the row by its number, or write “(${called})” after the number of the row that is meant.`,
  }),
  'shaping-never-there': entry<{ row: string; from: number; by: number; to: number }>({
    severity: 'error',
    says: ({ row, from, by, to }) =>
      `${row} goes on to ${plural(to, 'stitch')}, but from ${from} by steps of ${Math.abs(by)} it never comes there.`,
  }),
  'range-backwards': entry<{ range: string }>({
    severity: 'error',
    says: ({ range }) => `${range}: the last number is lower than the first.`,
    hint: () => 'Put the lower number first.',
  }),
  'special-unread': entry<{ name: string; meaning: string | null }>({
    severity: 'warning',
    says: ({ name, meaning }) =>
      meaning === null
        ? `The definition of ${name} could not be read, so rows that use it can’t be worked.`
        : `The definition of ${name} could not be read; it has been worked as ${meaning}.`,
    hint: () => 'Write it in steps, such as “5 dc in same st”, or add “counts as 1 st”.',
  }),
  'special-undefined': entry<{ name: string; meaning: string }>({
    severity: 'note',
    says: ({ name, meaning }) => `${name} is not defined in this draft; it has been worked as ${meaning}.`,
    hint: ({ name }) => `Define ${name} in a list under a heading “Special stitches”.`,
  }),
  'count-unread': entry<{ row: string; noun: string; makes: string }>({
    severity: 'warning',
    says: ({ row, noun }) =>
      `${row} counts ${noun}, which fits nothing that it makes; this count has not been checked.`,
    hint: ({ makes }) => (makes === '' ? undefined : `The row makes ${makes}.`),
  }),
} as const
