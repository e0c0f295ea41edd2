import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { formulaFindings } from '../../src/diagnostic/catalogue/formula.ts'
import type { Diagnostic } from '../../src/diagnostic/index.ts'
import { type FileBeside, readFits, readGauge, readSwatches } from '../../src/grading/index.ts'
import { loadSolver } from '../../src/solver/index.ts'
import { environment, marked, nowhere, sheet, show, written } from './workbench.ts'

const solver = await loadSolver()

interface Sample {
  readonly code: keyof typeof formulaFindings
  /** A grading block or a placeholder with the place of the finding marked; `read` for lines of the front matter. */
  readonly grading?: string
  readonly read?: () => readonly Diagnostic[]
  readonly placeholder?: string
  readonly message: string
  readonly hint?: string
  readonly sizes?: readonly number[]
  readonly facts?: ReturnType<typeof environment>
}

/** A swatch that knows only how high a shell is. */
const high = environment({
  swatches: [{ name: 'shell', gauge: { stitches: null, rows: null, unit: 'cm' } }],
  repeats: [{ name: 'shell', gauge: { stitches: null, rows: null, unit: 'cm' }, across: null, up: new Fraction(1, 3) }],
})

const deep = `${'('.repeat(61)}‹(›${'('.repeat(900)}`

const needHint = 'Change a value that it speaks of for these sizes, or the need where it asks for too much.'

const samples: readonly Sample[] = [
  {
    code: 'formula-empty',
    placeholder: '‹›',
    message: 'There is nothing between the curly brackets.',
    hint: 'Write a name or a formula, such as `{{rim_sts}}`.',
  },
  {
    code: 'formula-unreadable',
    grading: 'a = 3 +‹›',
    message: 'The formula ends where a number, a name or a bracket was expected.',
  },
  {
    code: 'formula-unreadable',
    grading: 'a = 5‹,›5 cm',
    message: 'Found `,` where an operator or the end of the formula was expected.',
    hint: 'Decimals are written with a point: `5.5`.',
  },
  {
    code: 'formula-unreadable',
    grading: 'a = 3 as multiple ‹6›',
    message: 'Found `6` where `of` and a number, as in `multiple of 6` was expected.',
  },
  {
    code: 'formula-unreadable',
    grading: 'need 3 =‹=› 3',
    message: 'Found `=` where a number, a name or a bracket was expected.',
    hint: 'Equal is written with one sign: `a = b`.',
  },
  {
    code: 'formula-unreadable',
    grading: 'b = 3\na = b ‹%› 2',
    message: 'Found `%` where an operator or the end of the formula was expected.',
    hint: 'A percentage is a number with its sign, `95 %`; a name is multiplied: `stretch * 1 %`.',
  },
  {
    code: 'formula-unreadable',
    grading: 'a = 5 % ‹of› 60 cm',
    message: 'Found `of` where an operator or the end of the formula was expected.',
    hint: 'To take a percentage of something, multiply: `5 % * bust`.',
  },
  {
    code: 'formula-unreadable',
    grading: 'a = {Child 10‹,› Adult S: 3}',
    message: 'Found `,` where the name of a size, then `:` and its value was expected.',
  },
  {
    code: 'number-unreadable',
    grading: `a = ‹${'1'.repeat(500)}›`,
    message: `\`${'1'.repeat(37)}…\` is not a number that can be used.`,
    hint: 'Write a number such as `12`, `6.5`, `1/2` or `20 1/2`.',
  },
  {
    code: 'function-unknown',
    grading: 'a = ‹ROUND›(7 / 2)',
    message: 'There is no function `ROUND`.',
    hint: 'Rounding is written after the value: `x as whole`, `x as whole up`, `x as multiple of 6`.',
  },
  {
    code: 'formula-too-long',
    grading: `‹a = 1${' + 1'.repeat(600)}›`,
    message: 'This formula is too long to be read.',
    hint: 'Give its parts names of their own, one a line.',
  },
  {
    code: 'formula-too-deep',
    placeholder: deep,
    message: 'Brackets stand inside each other more than 60 deep.',
    hint: 'Give the inner parts names of their own, one a line.',
  },
  {
    code: 'operator-missing',
    grading: 'b = 1\na = b ‹6›',
    message: 'There is no sign between `b` and `6`.',
    hint: 'To multiply, write `b * 6`.',
  },
  {
    code: 'bracket-open',
    grading: 'a = (1 + 2‹›',
    message: 'A bracket is not closed: `)` is missing.',
    hint: 'Close it on the same line: a formula stands on one line.',
  },
  {
    code: 'bracket-open',
    grading: 'a = [1, 2, 3‹› # three',
    message: 'A bracket is not closed: `]` is missing.',
    hint: 'Close it on the same line: a formula stands on one line.',
  },
  {
    code: 'text-open',
    grading: 'a = ‹"long›',
    message: 'These words have no closing quote.',
    hint: 'Put a quote at their end.',
  },
  {
    code: 'number-unreadable',
    grading: 'a = ‹1/0› in',
    message: '`1/0` is not a number that can be used.',
    hint: 'Write a number such as `12`, `6.5`, `1/2` or `20 1/2`.',
  },
  { code: 'unknown-unit', grading: 'a = 20 ‹inches›', message: '`inches` is not a unit.', hint: 'Write `in`.' },
  {
    code: 'unknown-unit',
    grading: 'b = 1\na = 2 ‹b›',
    message: '`b` is not a unit.',
    hint: 'Units are mm, cm, m, in, yd, g, kg, oz, lb and %; to multiply, write `2 * b`.',
  },
  {
    code: 'statement-unreadable',
    grading: '‹rim 52 cm›',
    message: 'This line of the grading block is neither a value nor a need.',
    hint: 'Write `name = formula` or `need condition`, one a line; a comment starts with `#`.',
  },
  {
    code: 'format-misplaced',
    grading: 'a = 3 ‹as words›',
    message: '`as words` says how a value is printed, and nothing is printed here.',
    hint: 'Leave it out here and write it in the text: `{{ name as words }}`.',
  },
  {
    code: 'fineness-unreadable',
    placeholder: '3 cm as in to ‹0›',
    message: '`0` is not a fineness to which a measure can be rounded.',
    hint: 'Write a number above zero, such as `as in to 1/8`.',
  },
  {
    code: 'made-unreadable',
    placeholder: '‹count(dc, sc)›',
    message: 'It is not clear which row `count` asks about.',
    hint: 'Write `count(dc)`, `count(dc, "Rnd 4")` or `count(dc, "Sleeve", "Row 3")`.',
  },
  {
    code: 'made-unreadable',
    placeholder: 'total(‹Rnd 4›)',
    message: 'It is not clear which row `total` asks about.',
    hint: 'Write `total`, `total("Rnd 4")` or `total("Sleeve", "Row 3")`.',
  },
  {
    code: 'name-unknown',
    grading: 'rim_sts = 60\na = ‹rim_stss› + 1',
    message: 'Nothing is called `rim_stss` in this draft.',
    hint: 'Did you mean `rim_sts`?',
  },
  {
    code: 'name-unknown',
    placeholder: '‹zzz› + 1',
    message: 'Nothing is called `zzz` in this draft.',
    hint: 'Define it in a grading block: `zzz = …`; words to be printed stand in quotes.',
  },
  {
    code: 'name-twice',
    grading: 'a = 1\n‹a› = 2',
    message: '`a` is defined twice; the first definition is used.',
    hint: 'Give one of the two another name, or take it out.',
  },
  {
    code: 'name-taken',
    grading: '‹width› = 2 cm',
    message: '`width` is a word of the formula language and cannot be a name.',
    hint: 'Choose another name, such as `width_1`.',
  },
  {
    code: 'name-circle',
    grading: 'd = a\n‹a› = b + 1\nb = c\nc = a',
    message: 'These are calculated from each other in a circle: `a`, `b`, `c`.',
    hint: 'Give one of them a value that does not need the others.',
  },
  {
    code: 'name-circle',
    grading: '‹a› = a + 1',
    message: '`a` is calculated from itself.',
    hint: 'Give one of them a value that does not need the others.',
  },
  {
    code: 'function-unknown',
    grading: 'a = ‹stiches›(52 cm)',
    message: 'There is no function `stiches`.',
    hint: 'Did you mean `stitches`?',
  },
  {
    code: 'function-unknown',
    grading: 'b = 1\na = ‹b›(2)',
    message: '`b` is a value and takes nothing in brackets.',
    hint: 'To multiply, write `b * (…)`.',
  },
  {
    code: 'function-arguments',
    grading: 'a = ‹stitches()›',
    message: '`stitches` cannot be used with 0 values in its brackets.',
    hint: 'It is written `stitches(length)`.',
  },
  {
    code: 'function-arguments',
    grading: 'a = ‹if(1 = 1, 2)›',
    message: '`if` cannot be used with 2 values in its brackets.',
    hint: 'It is written `if(condition, a, b)`.',
  },
  {
    code: 'name-in-quotes',
    grading: 'a = body(‹bust›)',
    message: '`body` takes a name in quotes here, and `bust` is none.',
    hint: 'Write `"bust"`.',
  },
  {
    code: 'name-in-quotes',
    grading: 'bust = body(‹bust›)',
    message: '`body` takes a name in quotes here, and `bust` is none.',
    hint: 'Write `"bust"`.',
  },
  {
    code: 'kinds-mix',
    grading: 'a = ‹52 cm + 6›',
    message: '`52 cm` (a length) and `6` (a count) cannot be added.',
    hint: 'Give the number its unit: `6 cm`.',
  },
  {
    code: 'kinds-mix',
    grading: 'n = 6\na = ‹n - 52 cm›',
    message: '`52 cm` (a length) cannot be taken from `n` (a count).',
    hint: 'Turn stitches into a length with `width(n)` and rows with `height(n)`, or the length into a count with `stitches(52 cm)` or `rows(52 cm)`.',
  },
  {
    code: 'kinds-mix',
    grading: 'a = ‹2 cm * 3 cm›',
    message: '`2 cm` (a length) cannot be multiplied by `3 cm` (a length).',
  },
  {
    code: 'kinds-mix',
    grading: 'a = ‹2 cm / 3 g›',
    message: '`2 cm` (a length) cannot be divided by `3 g` (a weight).',
  },
  {
    code: 'kinds-mix',
    grading: 'a = ‹60 / 5 cm›',
    message: '`60` (a count) cannot be divided by `5 cm` (a length).',
    hint: 'Give the number its unit: `60 cm`.',
  },
  {
    code: 'kinds-mix',
    grading: 'need ‹60 >= 48 cm›',
    message: '`60` (a count) cannot be compared with `48 cm` (a length).',
    hint: 'Give the number its unit: `60 cm`.',
  },
  {
    code: 'kinds-mix',
    grading: 'a = [1 cm, ‹2›, 3 cm]',
    message: '`1 cm` (a length) and `2` (a count) cannot stand side by side.',
    hint: 'Give the number its unit: `2 cm`.',
  },
  { code: 'kinds-mix', grading: 'a = ‹"long" + 1›', message: '`"long"` (words) and `1` (a count) cannot be added.' },
  {
    code: 'kind-wanted',
    grading: 'n = 60\na = stitches(‹n›)',
    message: '`stitches` takes a length, and `n` (a count) is none.',
    hint: 'Turn stitches into a length with `width(n)`, rows with `height(n)`.',
  },
  {
    code: 'kind-wanted',
    grading: 'a = ‹52 cm› as whole',
    message: 'Rounding takes a count, and `52 cm` (a length) is none.',
    hint: 'Turn the length into a count with `stitches(52 cm)` or `rows(52 cm)`.',
  },
  {
    code: 'kind-wanted',
    grading: 'a = 5 as multiple of ‹6 cm›',
    message: '`multiple of` takes a count, and `6 cm` (a length) is none.',
    hint: 'Turn the length into a count with `stitches(6 cm)` or `rows(6 cm)`.',
  },
  {
    code: 'condition-wanted',
    grading: 'need ‹5›',
    message: '`5` is a value where a condition was expected.',
    hint: 'Compare it with something: `5 > 0`, `5 is even`, `5 rises`.',
  },
  {
    code: 'value-wanted',
    grading: 'a = ‹5 > 3›',
    message: '`5 > 3` is a condition where a value was expected.',
    hint: 'Write `need 5 > 3` if it must hold, or choose by it: `if(5 > 3, …, …)`.',
  },
  {
    code: 'format-kind',
    placeholder: '‹52 cm as g›',
    message: '`as g` does not suit a length.',
    hint: 'A length is printed `as cm`, `as in`, `as m` or `as yd`.',
  },
  {
    code: 'linked-target-missing',
    grading: '‹front› ~',
    message: '`front` is a linked count with nothing that it is to be near to: any number would do.',
    hint: 'Say what it should come near to, such as `front ~ stitches(30 cm)`.',
  },
  {
    code: 'linked-target-linked',
    grading: 'front ~ 60\nneck ~ ‹2 * front›',
    message: '`neck` cannot be near to `front`, which is only known once `neck` is.',
    hint: 'Give it a target that can be calculated beforehand, and what binds the two as a need: `need neck <= front`.',
  },
  {
    code: 'linked-target-large',
    grading: 'front ~ ‹stitches(10000000 cm)›',
    message: '`front` is to be near to a count of more than 100000.',
    hint: 'Check the measure and its unit.',
    sizes: [0, 1, 2],
  },
  {
    code: 'linked-too-many',
    grading: `${Array.from({ length: 64 }, (_, index) => `a${index} ~ 60\n`).join('')}‹b ~ 60›`,
    message: 'The draft links 65 counts; up to 64 can be chosen together.',
    hint: 'Link only counts that must fit each other, and calculate the others with `=`.',
  },
  {
    code: 'linked-not-linear',
    grading: 'a ~ 60\nb ~ 40\nneed ‹a * b› > 20',
    message: 'Linked counts cannot be chosen by `a * b`: it multiplies linked counts with each other.',
    hint: 'Give one of the two a value of its own with `=`; a linked count may be multiplied by any number that is known.',
  },
  {
    code: 'linked-not-linear',
    grading: 'a ~ 60\nb ~ 40\nneed 80 / ‹(a - b)› <= 2',
    message: 'Linked counts cannot be chosen by `a - b`: it divides by a linked count.',
    hint: 'Multiply it out: instead of `a / b >= 2` write `a >= 2 * b`.',
  },
  {
    code: 'linked-not-linear',
    grading: 'a ~ 60\nb = ‹if(a > 50, 2, 4)›\nneed b + a = 62',
    message: 'Linked counts cannot be chosen by `if(a > 50, 2, 4)`: it chooses by linked counts.',
    hint: 'Choose by a measure or a target instead, or write one need for each case, joined by `or`.',
  },
  {
    code: 'linked-not-linear',
    grading: 'a ~ 60\nb ~ 40\nneed ‹max(a, b) - max(b, 50)› = 12',
    message: 'Linked counts cannot be chosen by `max(a, b) - max(b, 50)`: it sets a largest against a smallest.',
    hint: 'Write a need for each of the counts instead of one for all.',
  },
  {
    code: 'linked-not-linear',
    grading: 'a ~ 60\nb ~ 40\nneed ‹[a, a, b]› > 12',
    message: 'Linked counts cannot be chosen by `[a, a, b]`: it does more with linked counts than adding them up.',
    hint: 'Write the need with sums, differences and multiples of the linked counts.',
  },
  {
    code: 'linked-contradiction',
    grading: 'a ~ 60\nneed ‹2 * a = 121›',
    facts: environment({ solver }),
    message: 'No whole number meets `need 2 * a = 121`.',
    hint: 'It would come out if this gave way: `2 * a = 121` (nearest, Child: 120 against 121).',
    sizes: [0, 1, 2],
  },
  {
    code: 'linked-contradiction',
    grading: 'a ~ [60, 70, 80]\nb ~ 20\nneed ‹a + b <= 85›\nneed b >= [0, 0, 6]\nneed a >= [0, 0, 80]\nneed a >= 30',
    facts: environment({ solver }),
    message: 'No whole numbers meet all of these: `need a + b <= 85`, `need b >= [0, 0, 6]`, `need a >= [0, 0, 80]`.',
    hint: 'It would come out if one of these gave way: `a + b <= 85` (nearest, Adult L: 86 against 85); `b >= [0, 0, 6]` (nearest, Adult L: 5 against 6); `a >= [0, 0, 80]` (nearest, Adult L: 79 against 80).',
    sizes: [2],
  },
  {
    code: 'linked-contradiction',
    grading: '‹a ~ 5 as multiple of 10 + 7 down›',
    facts: environment({ solver }),
    message: 'No whole number meets `a ~ 5 as multiple of 10 + 7 down`.',
    hint: 'It would come out if this gave way: the rounding of `a`.',
    sizes: [0, 1, 2],
  },
  {
    code: 'linked-undecided',
    grading: '‹a ~ 60›\nneed a != 60',
    facts: environment({ solver: () => ({ kind: 'undecided' }) }),
    message: 'No choice of `a` was found, and none was ruled out: the needs on them are too many.',
    hint: 'Set some of these counts with `=`, or take out needs that follow from others.',
    sizes: [0, 1, 2],
  },
  {
    code: 'linked-solver-missing',
    grading: '‹a ~ 60›\nneed a != 60',
    message: '`a` cannot be chosen: this program was started without a solver for linked counts.',
    hint: 'Calculate them with `=` and a rounding clause, or start the program with a solver.',
  },
  {
    code: 'shaping-word',
    grading: 'a = taper(60, 42, 40, ‹"one ends"›)',
    message: '`taper` does not know the words `"one ends"`.',
    hint: 'Did you mean `"one end"`?',
  },
  {
    code: 'shaping-word',
    grading: 'a = armhole_steps(12, 7, ‹"left"›)',
    message: '`armhole_steps` does not know the words `"left"`.',
    hint: 'It knows `"one end"`.',
  },
  {
    code: 'shaping-stitch',
    grading: 'a = spaced(4, 40, ‹"sc, ch 1"›)',
    message: '`"sc, ch 1"` is not the abbreviation of a stitch.',
    hint: 'Write one as it stands in the rows, such as `"sc"` or `"dc"`.',
  },
  {
    code: 'name-in-quotes',
    grading: 'sc = 4\na = spaced(4, 40, ‹sc›)',
    message: '`spaced` takes a name in quotes here, and `sc` is none.',
    hint: 'Write `"sc"`.',
  },
  {
    code: 'shaping-range',
    grading: 'r = [10, 0, 0]\na = taper(60, 42, ‹r›)',
    message: '`r` must be from 1 to 2000 here (Adult S: 0; Adult L: 0).',
    hint: 'A size to which the shaping does not apply is left out with `none` or `if(…)`.',
    sizes: [1, 2],
  },
  {
    code: 'shaping-range',
    grading: 'a = share_of(92, 3, ‹4›)',
    message: '`4` must be from 1 to 3 here (Child: 4; Adult S: 4; Adult L: 4).',
    hint: 'A size to which the shaping does not apply is left out with `none` or `if(…)`.',
    sizes: [0, 1, 2],
  },
  {
    code: 'count-not-whole',
    grading: 'a = evenly(7, ‹[93, 93.5, 94]›)',
    message: '`[93, 93.5, 94]` must be a whole number and does not come out whole (Adult S: 93.5).',
    hint: 'Say how it is rounded where it is calculated: `as whole`, `as even`, `as odd` or `as multiple of 6`, with `up` or `down` if the nearest is not wanted; here: `[93, 93.5, 94] as whole`.',
    sizes: [1],
  },
  {
    code: 'shaping-rows',
    grading: 'a = ‹taper(60, [40, 20, 10], 20)›',
    message: '`taper(60, [40, 20, 10], 20)` has more rows to shape than rows (Adult L: 25 to shape in 20).',
    hint: 'Give it more rows, or change fewer stitches.',
    sizes: [2],
  },
  {
    code: 'shaping-stitches',
    grading: 'a = ‹evenly(-[10, 31, 20], 60)›',
    message: '`evenly(-[10, 31, 20], 60)` needs more stitches than there are (Adult S: 62 needed, 60 there).',
    hint: 'An increase takes a stitch of its own, a decrease two, and every shaped row at least one: change fewer stitches, or change them in several rows.',
    sizes: [1],
  },
  {
    code: 'shaping-odd',
    grading: 'a = ‹taper(43, 60, 40)›',
    message:
      '`taper(43, 60, 40)` changes an odd number of stitches, which two ends cannot share (Child: from 43 to 60; Adult S: from 43 to 60; Adult L: from 43 to 60).',
    hint: 'Round both counts alike, `as even` or `as odd`, or shape at one end only: `taper(from, to, over_rows, "one end")`.',
    sizes: [0, 1, 2],
  },
  {
    code: 'shaping-direction',
    grading: 'a = ‹yoke_rounds(100, [120, 90, 140], 10, 2)›',
    message: '`yoke_rounds(100, [120, 90, 140], 10, 2)` goes the wrong way (Adult S: from 100 to 90).',
    hint: 'It widens from its first count to its second.',
    sizes: [1],
  },
  {
    code: 'shaping-direction',
    grading: 'a = ‹waist_taper(90, 96, 90, 40)›',
    message:
      '`waist_taper(90, 96, 90, 40)` goes the wrong way (Child: from 90 to 96; Adult S: from 90 to 96; Adult L: from 90 to 96).',
    hint: 'Its second count is the waist, which is wider than neither of the others.',
    sizes: [0, 1, 2],
  },
  {
    code: 'list-length',
    grading: 'a = ‹[52, 60]› cm',
    message: 'This list has 2 values, and the draft has 3 sizes.',
    hint: 'Give one value for each of Child, Adult S, Adult L; `none` for a size to which it does not apply.',
  },
  {
    code: 'list-in-list',
    grading: 'b = [1, 2, 3]\na = [‹b›, 2, 3]',
    message: "`b` has a value for every size, and here only one size's is wanted.",
    hint: 'Pick one size\'s value with `at("…", b)`, or write the formula without the list.',
  },
  {
    code: 'size-unknown',
    grading: 'a = {Child: 1, ‹Adult M›: 2, Adult L: 3}',
    message: 'The draft has no size `Adult M`.',
    hint: 'Did you mean `Adult L`?',
  },
  {
    code: 'size-unknown',
    grading: 'a = at(‹"Toddler"›, 3)',
    message: 'The draft has no size `Toddler`.',
    hint: 'Its sizes are Child, Adult S, Adult L.',
  },
  {
    code: 'size-twice',
    grading: 'a = {Child: 1, ‹Child›: 2, Adult S: 4, Adult L: 3}',
    message: 'The size `Child` stands twice in this list.',
    hint: 'Give each size once.',
  },
  {
    code: 'sizes-missing',
    grading: 'a = ‹{Child: 1}›',
    message: 'This list has no value for Adult S and Adult L.',
    hint: 'Add it, or write `none` for a size to which it does not apply.',
    sizes: [1, 2],
  },
  {
    code: 'division-by-zero',
    grading: 'a = ‹12 / ([1, 2, 1] - 1)›',
    message: 'This divides by zero: `[1, 2, 1] - 1` is 0 for Child, Adult L.',
    hint: 'Leave that size out with `if(…)` or `none`, or divide by something else.',
    sizes: [0, 2],
  },
  {
    code: 'number-too-large',
    grading: 'b = 1000000000000000\na = ‹b * b * 10›',
    message: '`b * b * 10` comes to a number far beyond any measure.',
    hint: 'Check the numbers in it, and in the values that it uses.',
    sizes: [0, 1, 2],
  },
  {
    code: 'multiple-unfit',
    grading: 'b = 5 / 2\na = 60 as multiple of ‹b›',
    message: 'A count cannot be rounded by `b`, which is 2 1/2: whole numbers are needed, the multiple above 0.',
    hint: 'If `b` is calculated, round it first: `(b as whole)`.',
    sizes: [0, 1, 2],
  },
  {
    code: 'multiple-unfit',
    grading: 'a = 60 as multiple of ‹[1, 0, 2]›',
    message: 'A count cannot be rounded by `[1, 0, 2]`, which is 0: whole numbers are needed, the multiple above 0.',
    hint: 'If `[1, 0, 2]` is calculated, round it first: `([1, 0, 2] as whole)`.',
    sizes: [1],
  },
  {
    code: 'count-not-whole',
    placeholder: '‹stitches([52, 60, 68] cm)›',
    message:
      '`stitches([52, 60, 68] cm)` must be a whole number and does not come out whole (Child: 62.4; Adult L: 81.6).',
    hint: 'Say how it is rounded where it is calculated: `as whole`, `as even`, `as odd` or `as multiple of 6`, with `up` or `down` if the nearest is not wanted; here: `stitches([52, 60, 68] cm) as whole`.',
    sizes: [0, 2],
  },
  {
    code: 'need-failed',
    grading: 'a = [60, 60, 84]\nneed ‹a rises›',
    message: '`need a rises` does not hold (Child: 60; Adult S: 60; Adult L: 84).',
    hint: needHint,
    sizes: [1],
  },
  {
    code: 'need-failed',
    grading: 'a = [45, 50, 47] cm\nneed ‹a >= 48 cm›',
    message: '`need a >= 48 cm` does not hold (Child: 45 cm against 48 cm; Adult L: 47 cm against 48 cm).',
    hint: needHint,
    sizes: [0, 2],
  },
  {
    code: 'need-failed',
    grading: 'a = [12, 13, 18]\nneed a > 3 and ‹a is multiple of 6›',
    message: '`need a is multiple of 6` does not hold (Adult S: 13).',
    hint: needHint,
    sizes: [1],
  },
  {
    code: 'made-in-grading',
    grading: 'a = ‹total› - 2',
    message: '`total` is known only once the rows are worked, and cannot be used here.',
    hint: 'Write it in the text, `{{total}}`, or calculate the number from names.',
  },
  {
    code: 'made-unknown',
    placeholder: '‹total("Rnd 9")›',
    message: 'No worked row answers `total("Rnd 9")`.',
    hint: 'Check the names of piece and row as they stand in the draft, and that the row makes such stitches.',
    facts: { ...environment(), made: () => null },
  },
  {
    code: 'made-unknown',
    placeholder: '‹count(dc)›',
    message: 'This is in no row, so `count(dc)` has nothing to count.',
    hint: 'Name the row, as in `total("Rnd 4")`.',
    facts: { ...environment(), made: () => null },
  },
  {
    code: 'skein-unknown',
    placeholder: '‹200 g as skeins›',
    message: 'Skeins cannot be counted: the weight of a skein is not known.',
    hint: 'Give it in the front matter under `yarn`: `skein: {weight: 100 g}`.',
  },
  {
    code: 'swatch-missing',
    grading: 'a = ‹stitches(52 cm)›',
    message: '`stitches` needs a swatch, and the draft gives none.',
    hint: 'Add one to the front matter: `swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}`.',
    facts: environment({ swatches: [] }),
  },
  {
    code: 'swatch-unknown',
    grading: 'a = stitches(52 cm, ‹ribing›)',
    message: 'The draft has no swatch called `ribing`.',
    hint: 'Did you mean `ribbing`?',
  },
  {
    code: 'gauge-missing',
    grading: 'a = ‹rows(5 cm, ribbing)›',
    message: '`rows` needs the row gauge, and the swatch `ribbing` gives no rows.',
    hint: 'Add `rows: 8 per 10 cm` to the swatch, as measured.',
  },
  {
    code: 'body-table-missing',
    grading: 'a = body(‹"bust"›)',
    message: 'The body measure `bust` needs a table, and the draft names none.',
    hint: 'Add to the front matter: `fits: {table: women, sizes: [Small, Medium, Large]}`.',
    facts: environment({ body: null }),
  },
  {
    code: 'body-measure-unknown',
    grading: 'a = body(‹"head circumfrence"›)',
    message: 'The body table has no measure `head circumfrence`.',
    hint: 'Did you mean `head_circumference`?',
  },
  {
    code: 'fit-unknown',
    grading: 'a = ease(‹"clasic"›)',
    message: 'There is no published ease for a fit called `clasic`.',
    hint: 'Did you mean `classic`?',
  },
  {
    code: 'fit-unknown',
    grading: 'a = ease(‹"snug at the hem"›)',
    message: 'There is no published ease for a fit called `snug at the hem`.',
    hint: 'There are `very close`, `close`, `classic`, `loose`, `oversized`; ease of your own is added: `body("bust") + 5 cm`.',
  },
  {
    code: 'gauge-unreadable',
    read: () => stitchGauge('twelve to the hand'),
    message: 'The gauge `twelve to the hand` does not say how many stitches there are in what length.',
    hint: 'Write it like `stitches: 12 per 10 cm` or `stitches: 16 per 4 in`.',
  },
  {
    code: 'gauge-scatters',
    read: () => readGauge({ stitches: ['12 per 10 cm', '14 per 10 cm'].map(written), rows: [] }).diagnostics,
    message: 'Measurements of one swatch lie 15 % apart: `12 per 10 cm` and `14 per 10 cm`; the mean is used.',
    hint: 'Measure again in the middle of the swatch and over a longer stretch, or work a larger swatch.',
  },
  {
    code: 'gauge-named-twice',
    read: () => shells(['4.2 cm', '5 cm']),
    message: 'Two gauges are called `shell`, and a formula could not say which it means.',
    hint: 'Give the repeat another name.',
  },
  {
    code: 'repeat-unreadable',
    read: () => shells(['a thumb']),
    message: '`a thumb` is not the width of the repeat `shell`.',
    hint: 'Write that of one, `width: 4.2 cm`, or of several, `width: 5 per 21 cm`.',
  },
  {
    code: 'repeat-unknown',
    grading: 'a = repeats(60 cm, ‹shell›)',
    message: 'No swatch of the draft gives the width of a repeat called `shell`.',
    hint: 'Add it to the swatch: `repeats: {shell: {stitches: 6, width: 4.2 cm}}`.',
  },
  {
    code: 'repeat-unknown',
    grading: 'a = repeats_width(6, ‹shel›)',
    message: 'No swatch of the draft gives the width of a repeat called `shel`.',
    hint: 'Did you mean `shell`?',
    facts: high,
  },
  {
    code: 'repeat-without-width',
    grading: 'a = repeats(60 cm, ‹shell›)',
    message: '`repeats` needs the width of the repeat `shell`, and the swatch gives only its height.',
    hint: 'Add `width: 4.2 cm` to the repeat, as measured.',
    facts: high,
  },
  {
    code: 'gauge-missing',
    grading: 'a = ‹rows(60 cm, shell)›',
    message: '`rows` needs the row gauge, and the repeat `shell` gives no rows.',
    hint: 'Give the repeat both, as in `rows: 2, height: 3 cm`.',
    facts: high,
  },
  {
    code: 'gauge-not-positive',
    read: () => stitchGauge('-12 per 10 cm'),
    message: 'The gauge `-12 per 10 cm` has no stitches or no length: both must be above zero.',
    hint: 'Count the stitches in your swatch and write them like `12 per 10 cm`.',
  },
  {
    code: 'body-table-unknown',
    read: () => fits('woomen', ['S', 'M', 'L']),
    message: 'There is no body table `woomen`.',
    hint: 'Did you mean `women`?',
  },
  {
    code: 'table-file-path',
    read: () => fits('../m.csv', ['S', 'M', 'L']),
    message: '`../m.csv` is not a table in the draft’s own folder.',
    hint: 'Put a file that ends in `.csv` beside the draft and name it: `table: ./measures.csv`.',
  },
  {
    code: 'table-file-unreadable',
    read: () => fits('./m.csv', ['S', 'M', 'L'], { kind: 'missing' }),
    message: 'The table `m.csv` does not lie beside the draft.',
    hint: 'Put it into the draft’s folder, or check its name.',
  },
  {
    code: 'table-file-unreadable',
    read: () => fits('./m.csv', ['S', 'M', 'L'], { kind: 'not-text' }),
    message: 'The table `m.csv` is not text in UTF-8.',
    hint: 'Save it from your spreadsheet as CSV with the encoding “UTF-8”.',
  },
  {
    code: 'table-slip',
    read: () => fits('./m.csv', ['S', 'M', 'L'], { kind: 'text', text: 'measure,unit,S,M,L\nBust,cm,81,91,wide' }),
    message: 'm.csv, line 2, column 15: `wide` is not a measure.',
    hint: 'Write a number such as `86`, `33 1/2`, or from and to: `81-86`.',
  },
  {
    code: 'body-column-unknown',
    read: () => fits('head', ['Child', 'Womman', 'Man']),
    message: 'The body table `head` has no size `Womman`.',
    hint: 'Did you mean `Woman`?',
  },
  {
    code: 'body-columns-length',
    read: () => fits('head', ['Child', 'Man']),
    message: '`fits` names 2 sizes of the body table, and the draft has 3.',
    hint: 'Name one for each size of the draft, in the same order.',
  },
]

/** A swatch with a repeat for each width, all called shell. */
function shells(widths: readonly string[]): readonly Diagnostic[] {
  const shell = { name: 'shell', at: nowhere, stitches: 6, rows: null, height: [] }
  const repeats = widths.map((width) => ({ ...shell, width: [written(width)] }))
  return readSwatches([{ name: null, stitches: [], rows: [], unblocked: null, repeats }]).diagnostics
}

function stitchGauge(text: string): readonly Diagnostic[] {
  return readGauge({ stitches: [written(text)], rows: [] }).diagnostics
}

function fits(
  table: string,
  columns: readonly string[],
  file: FileBeside = { kind: 'nowhere' },
): readonly Diagnostic[] {
  return readFits({ table: written(table), columns: columns.map(written), at: nowhere }, 3, () => file).diagnostics
}

function findingsOf(sample: Sample): readonly Diagnostic[] {
  const facts = sample.facts ?? environment()
  if (sample.grading !== undefined) return sheet(marked(sample.grading).text, facts).diagnostics
  return sample.placeholder === undefined
    ? (sample.read?.() ?? [])
    : show(marked(sample.placeholder).text, '', facts).diagnostics
}

function named(sample: Sample): string {
  return `${sample.code}: ${(sample.grading ?? sample.placeholder ?? sample.message).slice(0, 60)}`
}

describe('a slip gives one finding, at its place, in the designer’s words', () => {
  it.each(samples.map((sample) => [named(sample), sample] as const))('%s', (_, sample) => {
    const findings = findingsOf(sample)
    const { code, message, hint, sizes = [] } = sample
    expect(findings.map((finding) => [finding.code, finding.message])).toEqual([[code, message]])
    expect(findings[0]?.hint).toBe(hint)
    expect(findings[0]?.sizes).toEqual(sizes)
    const source = sample.grading ?? sample.placeholder
    if (source !== undefined) expect(findings[0]?.at).toEqual(marked(source).at)
  })

  it('has a sample of every code', () => {
    const shown = new Set<string>(samples.map(({ code }) => code))
    expect(Object.keys(formulaFindings).filter((code) => !shown.has(code))).toEqual([])
  })
})

describe('one cause gives one finding', () => {
  const single: readonly (readonly [string, string, string])[] = [
    ['what depends on an unknown name', 'a = zzz\nb = a + 1\nc = b + a\nneed c > 3', 'name-unknown'],
    ['what depends on a line that cannot be read', 'a = 3 +\nb = a * 2', 'formula-unreadable'],
    ['what depends on a circle', 'a = b\nb = a\nc = a + b + 3 cm', 'name-circle'],
    [
      'what depends on a linked count without a value',
      'a ~ 60\nb = a + 1\nneed a != 60\nneed b > 99',
      'linked-solver-missing',
    ],
    [
      'what depends on a target that cannot be calculated',
      'a ~ zzz\nb = a + 1\nc ~ 5\nneed a + c > 99',
      'name-unknown',
    ],
    ['what depends on a count in a circle', 'a ~ b as odd\nb = a + 1', 'linked-target-linked'],
    ['a target that is no count', 'a ~ 60 cm\nneed a > 3', 'kind-wanted'],
    ['a linked name defined again', 'a ~ 60\na ~ 62', 'name-twice'],
    ['a need that mixes kinds', 'a ~ 60\nneed a > 3 cm', 'kinds-mix'],
    ['a need that divides by zero', 'a ~ 60\nb = a / 0\nneed b > 3', 'division-by-zero'],
    ['a need that fails whatever the counts are', 'a ~ 60\nneed a - a = 1', 'need-failed'],
    ['what depends on a broken list', 'a = [1, 2]\nb = a + 1', 'list-length'],
    ['what depends on a division by zero', 'a = 1 / 0\nb = a + 1\nneed b > 1', 'division-by-zero'],
  ]
  it.each(single)('%s', (_, text, code) => {
    expect(sheet(text).diagnostics.map((finding) => finding.code)).toEqual([code])
  })

  it('a broken swatch is not reported by every formula that uses it', () => {
    const facts = environment({ swatches: [{ name: null, gauge: null }] })
    expect(sheet('a = stitches(52 cm)\nb = a', facts).diagnostics).toEqual([])
  })

  it('a broken body table is not reported by every formula that uses it', () => {
    expect(sheet('a = body("bust")', environment({ body: 'broken' })).diagnostics).toEqual([])
  })

  it('two slips give two findings, in the order of the text', () => {
    const { diagnostics } = sheet('a = zzz\nb = 3 +\nc = yyy')
    expect(diagnostics.map(({ at }) => at.start).length).toBe(3)
  })

  it('a circle points to all its members', () => {
    const [finding] = sheet('a = b\nb = c\nc = a').diagnostics
    expect(finding?.related.map(({ at }) => at)).toEqual([
      { start: 6, end: 7 },
      { start: 12, end: 13 },
    ])
  })

  it('a second definition points to the first', () => {
    expect(sheet('a = 1\na = 2').diagnostics[0]?.related[0]?.at).toEqual({ start: 0, end: 1 })
  })
})

describe('a need that holds says nothing', () => {
  it.each([
    'need 60 >= 48',
    'need 1 < 2 < 3',
    'need [1, 2, 3] rises',
    'need [1, none, 3] rises',
    'need [3, 2, 1] falls',
    'need [2, 2, 2] steady',
    'need [6, 12, 18] is multiple of 6',
    'need [7, 13, 19] is multiple of 6 + 1',
    'need 3 is not even',
    'need 3 is whole and 3 is odd',
    'need not 3 = 4 or 1 = 2',
    'need [1, none, 3] > 0',
  ])('%s', (text) => {
    expect(sheet(text).diagnostics).toEqual([])
  })
})
