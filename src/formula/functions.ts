import type { Sort } from './sort.ts'
import type { Expression } from './tree.ts'

/**
 * `quoted`: a name in quotes. `choice`: one of the function's own words, in quotes. `swatch`: a swatch's name, with or
 * without quotes. `same`: like the first of these.
 */
export type Parameter = 'length' | 'count' | 'same' | 'condition' | 'quoted' | 'choice' | 'swatch'

export interface FunctionFact {
  readonly usage: string
  readonly parameters: readonly Parameter[]
  /** How many of the parameters must be given. */
  readonly required: number
  /** Whether the last parameter may be given any number of times. */
  readonly repeats: boolean
  /** The words that a `choice` may be. */
  readonly choices: readonly string[]
  /** What it gives; `same`: what its arguments are. */
  readonly result: Exclude<Sort, 'none'> | 'same'
  readonly does: string
  /** Run as a test, for sizes S and L, a swatch of 12 stitches and 8 rows per 10 cm, shells of 4.2 cm, and a head table. */
  readonly example: { readonly formula: string; readonly prints: string }
}

function fact(
  usage: string,
  parameters: readonly Parameter[],
  result: FunctionFact['result'],
  does: string,
  example: readonly [formula: string, prints: string],
  extra: { readonly required?: number; readonly repeats?: boolean; readonly choices?: readonly string[] } = {},
): FunctionFact {
  const required = extra.required ?? parameters.length
  const [formula, prints] = example
  const { repeats = false, choices = [] } = extra
  return { usage, parameters, required, repeats, choices, result, does, example: { formula, prints } }
}

/** The functions of the language. There are no others: a formula can reach nothing else. */
export const functions = {
  stitches: fact(
    'stitches(length)',
    ['length', 'swatch'],
    'count',
    'Stitches in a length by the stitch gauge, not rounded.',
    ['stitches([50, 60] cm)', '60 (72)'],
    { required: 1 },
  ),
  rows: fact(
    'rows(length)',
    ['length', 'swatch'],
    'count',
    'Rows or rounds in a length by the row gauge, not rounded.',
    ['rows(25 cm)', '20'],
    { required: 1 },
  ),
  width: fact(
    'width(count)',
    ['count', 'swatch'],
    'length',
    'How wide a number of stitches is by the stitch gauge.',
    ['width([60, 72])', '50 (60) cm [19¾ (23½) in]'],
    { required: 1 },
  ),
  height: fact(
    'height(count)',
    ['count', 'swatch'],
    'length',
    'How high a number of rows or rounds is by the row gauge.',
    ['height(20)', '25 cm (9¾ in)'],
    { required: 1 },
  ),
  repeats: fact(
    'repeats(length, name)',
    ['length', 'swatch'],
    'count',
    'How many of a stitch repeat lie in a length, by the width that the swatch gives it; not rounded.',
    ['repeats([42, 84] cm, shell)', '10 (20)'],
  ),
  repeats_width: fact(
    'repeats_width(count, name)',
    ['count', 'swatch'],
    'length',
    'How wide a number of stitch repeats is, by the width that the swatch gives it.',
    ['repeats_width([10, 20], shell)', '42 (84) cm [16½ (33) in]'],
  ),
  min: fact('min(a, b)', ['same', 'same'], 'same', 'The smallest, size by size.', ['min([3, 8], 5)', '3 (5)'], {
    repeats: true,
  }),
  max: fact('max(a, b)', ['same', 'same'], 'same', 'The largest, size by size.', ['max([3, 8], 5)', '5 (8)'], {
    repeats: true,
  }),
  abs: fact('abs(a)', ['same'], 'same', 'The distance from zero, size by size.', ['abs(3 - 8)', '5']),
  sum: fact(
    'sum(a, b)',
    ['same'],
    'same',
    'Adds its arguments size by size; a list in square brackets item by item; one value alone across all sizes.',
    ['sum([4, 4, 2])', '10'],
    { repeats: true },
  ),
  body: fact(
    'body("measure")',
    ['quoted'],
    'length',
    'A body measure for every size, from the table that `fits` names.',
    ['body("head circumference") as in', '18 (20) in'],
  ),
  ease: fact(
    'ease("fit")',
    ['quoted'],
    'length',
    'How much wider than the bust or chest a fit is, as published: the middle of its range, and the least of `"oversized"`.',
    ['ease("classic")', '7.5 cm (3 in)'],
  ),
  at: fact('at("size", a)', ['quoted', 'same'], 'same', 'The value of one size, for all sizes.', [
    'at("L", [3, 8])',
    '8',
  ]),
  if: fact(
    'if(condition, a, b)',
    ['condition', 'same', 'same'],
    'same',
    'Size by size `a` where the condition holds and `b` where it does not.',
    ['if([3, 8] > 5, 1, 2)', '2 (1)'],
  ),
  share_of: fact(
    'share_of(total, parts, which)',
    ['count', 'count', 'count'],
    'count',
    'One of the shares that `shares` names, counted from 1.',
    ['share_of([92, 95], 3, 2)', '30 (31)'],
  ),
  shares: fact(
    'shares(total, parts)',
    ['count', 'count'],
    'text',
    'A total divided into parts that differ by one at most.',
    ['shares([92, 95], 3)', '31 (32), 30 (31), 31 (32)'],
  ),
  evenly: fact(
    'evenly(n, over)',
    ['count', 'count'],
    'text',
    'Increases, or decreases where `n` is below zero, spread over the stitches of a row.',
    ['evenly([7, 8], [93, 104])', 'increase 7 (8) evenly over 93 (104)'],
  ),
  spaced: fact(
    'spaced(n, over, "sc")',
    ['count', 'count', 'quoted'],
    'text',
    'The same with every step written out, in the stitch that is named.',
    [
      'spaced(3, [36, 42], "sc")',
      'sc in next 6 (7) sts, (2 sc in next st, sc in next 11 (13) sts) twice, 2 sc in next st, sc in next 5 (6) sts',
    ],
  ),
  taper: fact(
    'taper(from, to, over_rows)',
    ['count', 'count', 'count', 'choice'],
    'text',
    'Shaping from one stitch count to another, the last shaped row the last row; `"one end"`, `"rounds"` and `"either side"` may follow.',
    [
      'taper([60, 70], [42, 52], [42, 48])',
      'dec 1 st at each end of every 4th row 6 (3) times, then of every 6th row 3 (6) times',
    ],
    { required: 3, repeats: true, choices: ['one end', 'rounds', 'either side'] },
  ),
  waist_taper: fact(
    'waist_taper(from, waist, to, over_rows)',
    ['count', 'count', 'count', 'count', 'choice'],
    'text',
    'Shaping in to a waist and out again; `"rounds"` and `"either side"` may follow.',
    [
      'waist_taper([90, 96], [80, 86], [90, 96], 40)',
      'dec 1 st at each end of every 4th row 5 times, then inc 1 st at each end of every 4th row 5 times',
    ],
    { required: 4, repeats: true, choices: ['rounds', 'either side'] },
  ),
  armhole_steps: fact(
    'armhole_steps(n, over_rows)',
    ['count', 'count', 'choice'],
    'text',
    'Stitches taken off at each end in steps that fall along a curve; at one armhole edge with `"one end"`.',
    ['armhole_steps(15, 7)', 'dec at each end of every row 5 sts once, 3 sts once, 2 sts twice, 1 st 3 times'],
    { required: 2, choices: ['one end'] },
  ),
  neck_steps: fact(
    'neck_steps(n, over_rows)',
    ['count', 'count'],
    'text',
    'Stitches taken off at the neck edge in steps that fall along a curve.',
    ['neck_steps(9, 6)', 'dec at neck edge of every row 3 sts once, 2 sts once, 1 st 4 times'],
  ),
  shoulder_steps: fact(
    'shoulder_steps(n, over_rows)',
    ['count', 'count'],
    'text',
    'Stitches taken off at the armhole edge in equal steps.',
    ['shoulder_steps([21, 24], 3)', 'dec at armhole edge of every row 7 (8) sts 3 times'],
  ),
  yoke_rounds: fact(
    'yoke_rounds(from, to, over_rnds, times)',
    ['count', 'count', 'count', 'count'],
    'text',
    'Rounds of increases spaced over the depth of a yoke, with the count after each.',
    [
      'yoke_rounds([60, 66], [100, 106], 10, 2)',
      'work 4 rnds even, increase 20 evenly to 80 (86) sts; work 4 rnds even, increase 20 evenly to 100 (106) sts',
    ],
  ),
} as const satisfies Readonly<Record<string, FunctionFact>>

export type FunctionName = keyof typeof functions

export function isFunction(name: string): name is FunctionName {
  return Object.hasOwn(functions, name)
}

export function factOf(name: FunctionName): FunctionFact {
  return functions[name]
}

/** The parameter that the argument at a position fills; null for one too many. */
export function parameterAt(fact: FunctionFact, position: number): Parameter | null {
  return fact.parameters[position] ?? (fact.repeats ? (fact.parameters.at(-1) ?? null) : null)
}

/** The name that an argument gives where a name is wanted, `ribbing` or `"ribbing"`; null for any other formula. */
export function nameGiven(argument: Expression | undefined): string | null {
  if (argument?.kind === 'name') return argument.name
  return argument?.kind === 'text' ? argument.text : null
}
