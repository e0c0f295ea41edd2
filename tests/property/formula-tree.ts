import fc from 'fast-check'
import Fraction from 'fraction.js'
import type { Expression } from '../../src/formula/index.ts'
import type { Grid } from '../../src/formula/tree.ts'

const at = { start: 0, end: 0 }

const word = fc.constantFrom('rim', 'rim_sts', 'größe', '_x', 'even', 'rises', 'up', 'm', 'in', 'マチ')

const fraction = fc
  .tuple(fc.integer({ min: 0, max: 9999 }), fc.constantFrom(1, 2, 3, 4, 7, 8, 10, 16, 100))
  .map(([above, below]) => new Fraction(above, below))

/** Without a unit, `1/3` is a division; a number of its own is a decimal or has a whole part. */
const plainNumber = fraction
  .map((value) => (value.lt(1) ? value.add(1) : value))
  .map((value): Expression => ({ kind: 'number', value, unit: null, at }))

const measuredNumber = fc
  .record({ value: fraction, unit: fc.constantFrom('mm', 'cm', 'm', 'in', 'yd', 'g', 'kg', 'oz', 'lb', '%') })
  .map(({ value, unit }): Expression => ({ kind: 'number', value, unit, at }))

const phrase = fc.constantFrom('Rnd 4', 'Row 12', 'long', 'it is so', '3-6 months')

const made = fc
  .record({ what: fc.constantFrom('total', 'dc', 'ch-2 sp'), row: fc.option(phrase), piece: fc.option(phrase) })
  .map(({ what, row, piece }): Expression => ({ kind: 'made', what, row, piece: row === null ? null : piece, at }))

const leaf: fc.Arbitrary<Expression> = fc.oneof(
  plainNumber,
  measuredNumber,
  word.map((name): Expression => ({ kind: 'name', name, at })),
  phrase.map((text): Expression => ({ kind: 'text', text, at })),
  fc.constant<Expression>({ kind: 'none', at }),
  made,
)

function branches(tie: fc.Arbitrary<Expression>): fc.Arbitrary<Expression> {
  const grid: fc.Arbitrary<Grid> = fc.oneof(
    fc.constantFrom<Grid>({ kind: 'whole' }, { kind: 'even' }, { kind: 'odd' }),
    fc.record({ kind: fc.constant('multiple' as const), of: tie, plus: fc.option(tie) }),
  )
  const pair = { left: tie, right: tie, at: fc.constant(at) }
  const single = { operand: tie, at: fc.constant(at) }
  const direction = fc.constantFrom('nearest' as const, 'up' as const, 'down' as const)
  return fc.oneof(
    fc.record({ kind: fc.constant('binary' as const), operator: fc.constantFrom('+', '-', '*', '/'), ...pair }),
    fc.record({ kind: fc.constant('negate' as const), ...single }),
    fc.record({ kind: fc.constant('round' as const), to: grid, direction, ...single }),
    fc.record({
      kind: fc.constant('withUnit' as const),
      unit: fc.constantFrom('cm' as const, 'oz' as const),
      ...single,
    }),
    fc.record({
      kind: fc.constant('compare' as const),
      operator: fc.constantFrom('=', '!=', '<', '<=', '>', '>='),
      ...pair,
    }),
    fc.record({ kind: fc.constant('logic' as const), operator: fc.constantFrom('and', 'or'), ...pair }),
    fc.record({ kind: fc.constant('not' as const), ...single }),
    fc.record({ kind: fc.constant('is' as const), grid, ...single }),
    fc.record({ kind: fc.constant('trend' as const), trend: fc.constantFrom('rises', 'falls', 'steady'), ...single }),
    fc.array(tie, { minLength: 1, maxLength: 3 }).map((items): Expression => ({ kind: 'list', items, at })),
    fc
      .array(tie, { maxLength: 3 })
      .chain((list) =>
        fc
          .constantFrom('stitches', 'max', 'if', 'nothing')
          .map((name): Expression => ({ kind: 'call', name, nameAt: at, arguments: list, at })),
      ),
    fc.tuple(tie, tie).map(
      ([a, b]): Expression => ({
        kind: 'bySize',
        entries: [
          { size: 'Child', at, value: a },
          { size: '3-6 months', at, value: b },
        ],
        at,
      }),
    ),
  )
}

/** Any formula that can be written, places aside. */
export const expression: fc.Arbitrary<Expression> = fc.letrec<{ tree: Expression }>((tie) => ({
  tree: fc.oneof({ maxDepth: 4, withCrossShrink: true }, leaf, branches(tie('tree'))),
})).tree

/** A tree without its places, with exact numbers as text, to be compared. */
export function withoutPlaces(node: unknown): unknown {
  if (node instanceof Fraction) return node.toFraction()
  if (Array.isArray(node)) return node.map(withoutPlaces)
  if (typeof node !== 'object' || node === null) return node
  const fields = Object.entries(node).filter(([name]) => name !== 'at' && name !== 'nameAt')
  return Object.fromEntries(fields.map(([name, value]) => [name, withoutPlaces(value)]))
}

/** Text that looks like formulas, and text that does not. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc
    .array(
      fc.constantFrom(
        ...'a b c = ~ need none total count ( ) [ ] { } , : + - * / < >= != 1 2.5 20 1/2 0 99999999999 cm in oz "x" “ \' # \n as is whole even odd multiple of up down and or not rises stitches width min sum at if body evenly Child'.split(
          / /,
        ),
        '"Adult S"',
        '[1, 2, 3]',
        '\r\n',
        ' ',
      ),
      { maxLength: 40 },
    )
    .map((words) => words.join(' ')),
)
