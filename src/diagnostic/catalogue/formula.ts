import { entry } from '../entry.ts'
import { linkedFindings } from './linked.ts'

const offer = (nearest: string | null) => (nearest === null ? undefined : `Did you mean \`${nearest}\`?`)

const quoted = (names: readonly string[]) => names.map((name) => `\`${name}\``).join(', ')

/** Words of the draft as they are quoted: cut where a slip has made them endless. */
const short = (text: string) => (text.length > 40 ? `${text.slice(0, 37)}…` : text)

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

const roundingHabits = ['round', 'ceil', 'ceiling', 'floor', 'int', 'trunc', 'mround']

/** Findings about how a formula is written. */
const writing = {
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

/** Findings about names, functions and what goes together. */
const meaning = {
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
  }),
} as const

/** Findings about the sizes of a value. */
const sizes = {
  'list-length': entry<{ given: number; sizes: readonly string[] }>({
    severity: 'error',
    says: ({ given, sizes }) =>
      `This list has ${given === 1 ? '1 value' : `${given} values`}, and the draft has ${sizes.length === 1 ? '1 size' : `${sizes.length} sizes`}.`,
    hint: ({ sizes }) =>
      `Give one value for each of ${sizes.join(', ')}; \`none\` for a size to which it does not apply.`,
  }),
  'list-in-list': entry<{ item: string }>({
    severity: 'error',
    says: ({ item }) => `\`${item}\` has a value for every size, and here only one size's is wanted.`,
    hint: ({ item }) => `Pick one size's value with \`at("…", ${item})\`, or write the formula without the list.`,
  }),
  'size-unknown': entry<{ size: string; nearest: string | null; sizes: readonly string[] }>({
    severity: 'error',
    says: ({ size }) => `The draft has no size \`${size}\`.`,
    hint: ({ nearest, sizes }) => offer(nearest) ?? `Its sizes are ${sizes.join(', ')}.`,
  }),
  'size-twice': entry<{ size: string }>({
    severity: 'error',
    says: ({ size }) => `The size \`${size}\` stands twice in this list.`,
    hint: () => 'Give each size once.',
  }),
  'sizes-missing': entry<{ names: string }>({
    severity: 'error',
    says: ({ names }) => `This list has no value for ${names}.`,
    hint: () => 'Add it, or write `none` for a size to which it does not apply.',
  }),
} as const

/** Findings that need the numbers. */
const calculation = {
  'division-by-zero': entry<{ divisor: string; sizes: readonly string[] }>({
    severity: 'error',
    says: ({ divisor, sizes }) =>
      `This divides by zero: \`${divisor}\` is 0${sizes.length === 0 ? '' : ` for ${sizes.join(', ')}`}.`,
    hint: () => 'Leave that size out with `if(…)` or `none`, or divide by something else.',
  }),
  'number-too-large': entry<{ formula: string }>({
    severity: 'error',
    says: ({ formula }) => `\`${formula}\` comes to a number far beyond any measure.`,
  }),
  'multiple-unfit': entry<{ formula: string; found: string }>({
    severity: 'error',
    says: ({ formula, found }) =>
      `A count cannot be rounded by \`${formula}\`, which is ${found}: whole numbers are needed, the multiple above 0.`,
    hint: ({ formula }) => `If \`${formula}\` is calculated, round it first: \`(${formula} as whole)\`.`,
  }),
  'count-not-whole': entry<{ formula: string; cases: string }>({
    severity: 'error',
    says: ({ formula, cases }) => `\`${formula}\` must be a whole number and does not come out whole (${cases}).`,
    hint: ({ formula }) =>
      `Say how it is rounded where it is calculated: \`as whole\`, \`as even\`, \`as odd\` or \`as multiple of 6\`, with \`up\` or \`down\` if the nearest is not wanted; here: \`${formula} as whole\`.`,
  }),
  'need-failed': entry<{ need: string; cases: string }>({
    severity: 'error',
    says: ({ need, cases }) => `\`need ${need}\` does not hold (${cases}).`,
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

/** A number of one size that something is said about. */
export interface Case {
  readonly size: string
  readonly said: string
}

const casesOf = (cases: readonly Case[]) => cases.map(({ size, said }) => `${size}: ${said}`).join('; ')

/** Findings about shaping phrases. */
const shaping = {
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
const lookups = {
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
    says: ({ given, sizes }) => `\`fits\` names ${given} sizes of the body table, and the draft has ${sizes}.`,
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

/** Findings about formulas, swatches and body tables. */
export const formulaFindings = {
  ...writing,
  ...meaning,
  ...sizes,
  ...calculation,
  ...shaping,
  ...lookups,
  ...linkedFindings,
} as const
