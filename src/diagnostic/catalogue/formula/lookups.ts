import { entry } from '../../entry.ts'
import { offer, quoted, short } from './wording.ts'

/** Why a table of the designer's own could not be read. */
const unreadable = {
  missing: { says: 'does not lie beside the draft', hint: 'Put it into the draft’s folder, or check its name.' },
  'not-text': { says: 'is not text in UTF-8', hint: 'Save it from your spreadsheet as CSV with the encoding “UTF-8”.' },
  'too-long': { says: 'is too long for a body table', hint: 'Keep only the measures that the draft uses.' },
  nowhere: {
    says: 'can’t be found: this draft lies in no folder',
    hint: 'Proof the draft by its file’s name, with the table beside it.',
  },
} as const

/** Findings about the swatch and the body table. */
export const lookupFindings = {
  'swatch-missing': entry<{ by: string }>({
    severity: 'error',
    says: ({ by }) => `\`${by}\` needs a swatch, and the draft gives none.`,
    hint: () => 'Add one to the front matter: `swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}`.',
  }),
  'swatch-unknown': entry<{ swatch: string; nearest: string | null; known: readonly string[] }>({
    severity: 'error',
    says: ({ swatch }) => `The draft has no swatch called \`${swatch}\`.`,
    hint: ({ nearest, known }) =>
      offer(nearest) ??
      (known.length === 0 ? 'It has one swatch without a name: leave the name out.' : `It has ${quoted(known)}.`),
  }),
  'gauge-missing': entry<{ what: 'stitches' | 'rows'; swatch: string | null; by: string; isRepeat: boolean }>({
    severity: 'error',
    says: ({ what, swatch, by, isRepeat }) =>
      `\`${by}\` needs the ${what === 'rows' ? 'row' : 'stitch'} gauge, and the ${isRepeat ? 'repeat' : 'swatch'}${swatch === null ? '' : ` \`${swatch}\``} gives no ${what}.`,
    hint: ({ what, isRepeat }) => {
      if (!isRepeat) return `Add \`${what}: 8 per 10 cm\` to the swatch, as measured.`
      return `Give the repeat both, as in ${what === 'rows' ? '`rows: 2, height: 3 cm`' : '`stitches: 6, width: 4.2 cm`'}.`
    },
  }),
  'gauge-scatters': entry<{ least: string; most: string; percent: string }>({
    severity: 'warning',
    says: ({ least, most, percent }) =>
      `Measurements of one swatch lie ${percent} % apart: \`${short(least)}\` and \`${short(most)}\`; the mean is used.`,
    hint: () => 'Measure again in the middle of the swatch and over a longer stretch, or work a larger swatch.',
  }),
  'gauge-named-twice': entry<{ name: string }>({
    severity: 'error',
    says: ({ name }) => `Two gauges are called \`${name}\`, and a formula could not say which it means.`,
    hint: () => 'Give the repeat another name.',
  }),
  'repeat-unreadable': entry<{ name: string; side: 'width' | 'height'; text: string }>({
    severity: 'error',
    says: ({ name, side, text }) => `\`${short(text)}\` is not the ${side} of the repeat \`${name}\`.`,
    hint: ({ side }) => `Write that of one, \`${side}: 4.2 cm\`, or of several, \`${side}: 5 per 21 cm\`.`,
  }),
  'repeat-unknown': entry<{ name: string; nearest: string | null; known: readonly string[] }>({
    severity: 'error',
    says: ({ name }) => `No swatch of the draft gives the width of a repeat called \`${short(name)}\`.`,
    hint: ({ name, nearest, known }) =>
      offer(nearest) ??
      (known.length > 0
        ? `There are ${quoted(known)}.`
        : `Add it to the swatch: \`repeats: {${short(name)}: {stitches: 6, width: 4.2 cm}}\`.`),
  }),
  'repeat-without-width': entry<{ name: string; by: string }>({
    severity: 'error',
    says: ({ name, by }) =>
      `\`${by}\` needs the width of the repeat \`${name}\`, and the swatch gives only its height.`,
    hint: () => 'Add `width: 4.2 cm` to the repeat, as measured.',
  }),
  'gauge-unreadable': entry<{ what: 'stitches' | 'rows'; text: string }>({
    severity: 'error',
    says: ({ what, text }) => `The gauge \`${text}\` does not say how many ${what} there are in what length.`,
    hint: ({ what }) => `Write it like \`${what}: 12 per 10 cm\` or \`${what}: 16 per 4 in\`.`,
  }),
  'gauge-not-positive': entry<{ what: 'stitches' | 'rows'; text: string }>({
    severity: 'error',
    says: ({ what, text }) => `The gauge \`${text}\` has no ${what} or no length: both must be above zero.`,
    hint: ({ what }) => `Count the ${what} in your swatch and write them like \`12 per 10 cm\`.`,
  }),
  'body-table-missing': entry<{ measure: string }>({
    severity: 'error',
    says: ({ measure }) => `The body measure \`${measure}\` needs a table, and the draft names none.`,
    hint: () => 'Add to the front matter: `fits: {table: women, sizes: [Small, Medium, Large]}`.',
  }),
  'body-table-unknown': entry<{ table: string; nearest: string | null; known: readonly string[] }>({
    severity: 'error',
    says: ({ table }) => `There is no body table \`${table}\`.`,
    hint: ({ nearest, known }) => offer(nearest) ?? `There are ${quoted(known)}.`,
  }),
  'body-column-unknown': entry<{ column: string; table: string; nearest: string | null; known: readonly string[] }>({
    severity: 'error',
    says: ({ column, table }) => `The body table \`${table}\` has no size \`${column}\`.`,
    hint: ({ nearest, known }) => offer(nearest) ?? `Its sizes are ${quoted(known)}.`,
  }),
  'body-columns-length': entry<{ given: number; sizes: number }>({
    severity: 'error',
    says: ({ given, sizes }) =>
      `\`fits\` names ${given} ${given === 1 ? 'size' : 'sizes'} of the body table, and the draft has ${sizes}.`,
    hint: () => 'Name one for each size of the draft, in the same order.',
  }),
  'body-measure-unknown': entry<{ measure: string; nearest: string | null; known: readonly string[] }>({
    severity: 'error',
    says: ({ measure }) => `The body table has no measure \`${measure}\`.`,
    hint: ({ nearest, known }) => offer(nearest) ?? `It has ${quoted(known)}.`,
  }),
  'table-file-path': entry<{ file: string }>({
    severity: 'error',
    says: ({ file }) => `\`${short(file)}\` is not a table in the draft’s own folder.`,
    hint: () => 'Put a file that ends in `.csv` beside the draft and name it: `table: ./measures.csv`.',
  }),
  'table-file-unreadable': entry<{ file: string; why: keyof typeof unreadable }>({
    severity: 'error',
    says: ({ file, why }) => `The table \`${short(file)}\` ${unreadable[why].says}.`,
    hint: ({ why }) => unreadable[why].hint,
  }),
  'table-slip': entry<{ file: string; line: number; column: number; says: string; wayOut: string | null }>({
    severity: 'error',
    says: ({ file, line, column, says }) => `${file}, line ${line}, column ${column}: ${says}.`,
    hint: ({ wayOut }) => wayOut ?? undefined,
  }),
  'fit-unknown': entry<{ fit: string; nearest: string | null; known: readonly string[] }>({
    severity: 'error',
    says: ({ fit }) => `There is no published ease for a fit called \`${short(fit)}\`.`,
    hint: ({ nearest, known }) =>
      offer(nearest) ?? `There are ${quoted(known)}; ease of your own is added: \`body("bust") + 5 cm\`.`,
  }),
} as const
