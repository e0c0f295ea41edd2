import type { Sort } from './sort.ts'
import type { Expression } from './tree.ts'

/** `quoted`: a name in quotes. `swatch`: a swatch's name, with or without quotes. `same`: like the first of these. */
export type Parameter = 'length' | 'count' | 'same' | 'condition' | 'quoted' | 'swatch'

export interface FunctionFact {
  readonly usage: string
  readonly parameters: readonly Parameter[]
  /** How many of the parameters must be given. */
  readonly required: number
  /** Whether the last parameter may be given any number of times. */
  readonly repeats: boolean
  /** What it gives; `same`: what its arguments are. */
  readonly result: Exclude<Sort, 'none'> | 'same'
  readonly does: string
  /** Run as a test, for sizes S and L, a swatch of 12 stitches and 8 rows per 10 cm, and a head table. */
  readonly example: { readonly formula: string; readonly prints: string }
}

function fact(
  usage: string,
  parameters: readonly Parameter[],
  result: FunctionFact['result'],
  does: string,
  example: readonly [formula: string, prints: string],
  extra: { readonly required?: number; readonly repeats?: boolean } = {},
): FunctionFact {
  const required = extra.required ?? parameters.length
  const [formula, prints] = example
  return { usage, parameters, required, repeats: extra.repeats ?? false, result, does, example: { formula, prints } }
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
  evenly: fact(
    'evenly(n, over)',
    ['count', 'count'],
    'text',
    'The steps of a row that spreads increases or decreases over its stitches.',
    ['evenly(4, 40)', ''],
  ),
  taper: fact(
    'taper(from, to, over_rows)',
    ['count', 'count', 'count'],
    'text',
    'The steps that take a piece from one stitch count to another over a number of rows.',
    ['taper(38, 60, 108)', ''],
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
