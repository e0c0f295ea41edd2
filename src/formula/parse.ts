import { cover, type Span } from '../diagnostic/index.ts'
import type { Direction } from '../measure/index.ts'
import type { Cursor } from './cursor.ts'
import { deeper, expected, peek, take, takeIf } from './cursor.ts'
import { isWord } from './keywords.ts'
import { parsePrimary } from './primary.ts'
import { plainSign } from './token.ts'
import type { Arithmetic, Comparison, Expression, Grid, Trend } from './tree.ts'

/**
 * The grammar. Each rule is a function of the same name that gives null when it cannot read on; the
 * cursor then holds the finding.
 *
 *     either     = both { "or" both }
 *     both       = negated { "and" negated }
 *     negated    = "not" negated | comparison
 *     comparison = rounded { ( "=" | "!=" | "<" | "<=" | ">" | ">=" ) rounded }
 *                | rounded "is" [ "not" ] grid
 *                | rounded ( "rises" | "falls" | "steady" )
 *     rounded    = sum { "as" grid [ "up" | "down" ] }
 *     grid       = "whole" | "even" | "odd" | "multiple" "of" product [ ( "+" | "-" ) product ]
 *     sum        = product { ( "+" | "-" ) product }
 *     product    = signed { ( "*" | "/" ) signed }
 *     signed     = "-" signed | primary                            primary: see primary.ts
 *
 * `a < b < c` is read as `a < b and b < c`.
 */
export function parseExpression(cursor: Cursor): Expression | null {
  return either(cursor)
}

function either(cursor: Cursor): Expression | null {
  return logic(cursor, 'or', () => logic(cursor, 'and', () => negated(cursor)))
}

function logic(cursor: Cursor, operator: 'and' | 'or', operand: () => Expression | null): Expression | null {
  let left = operand()
  while (left !== null && takeIf(cursor, operator) !== null) {
    const right = operand()
    if (right === null) return null
    left = { kind: 'logic', operator, left, right, at: cover(left.at, right.at) }
  }
  return left
}

function negated(cursor: Cursor): Expression | null {
  const word = takeIf(cursor, 'not')
  if (word === null) return comparison(cursor)
  const operand = deeper(cursor, () => negated(cursor))
  return operand && { kind: 'not', operand, at: cover(word.at, operand.at) }
}

const comparisons: ReadonlyMap<string, Comparison> = new Map(
  (['=', '!=', '<', '<=', '>', '>='] as const).map((sign) => [sign, sign]),
)

const trends: ReadonlyMap<string, Trend> = new Map((['rises', 'falls', 'steady'] as const).map((word) => [word, word]))

function comparison(cursor: Cursor): Expression | null {
  const left = rounded(cursor)
  if (left === null) return null
  if (takeIf(cursor, 'is') !== null) return property(cursor, left)
  const trend = trends.get(peek(cursor).text)
  if (trend !== undefined) return { kind: 'trend', operand: left, trend, at: cover(left.at, take(cursor).at) }
  return chain(cursor, left)
}

function chain(cursor: Cursor, first: Expression): Expression | null {
  let left = first
  let result: Expression | null = null
  for (let operator = comparisonAt(cursor); operator !== undefined; operator = comparisonAt(cursor)) {
    take(cursor)
    const right = rounded(cursor)
    if (right === null) return null
    const link: Expression = { kind: 'compare', operator, left, right, at: cover(left.at, right.at) }
    result =
      result === null
        ? link
        : { kind: 'logic', operator: 'and', left: result, right: link, at: cover(result.at, link.at) }
    left = right
  }
  return result ?? first
}

function comparisonAt(cursor: Cursor): Comparison | undefined {
  return comparisons.get(plainSign(peek(cursor).text))
}

function property(cursor: Cursor, operand: Expression): Expression | null {
  const not = takeIf(cursor, 'not')
  const read = grid(cursor)
  if (read === null) return null
  const is: Expression = { kind: 'is', operand, grid: read.grid, at: cover(operand.at, read.at) }
  return not === null ? is : { kind: 'not', operand: is, at: is.at }
}

function rounded(cursor: Cursor): Expression | null {
  let operand = sum(cursor)
  while (operand !== null && peek(cursor).text === 'as' && isWord('grid', peek(cursor, 1).text)) {
    take(cursor)
    const read = grid(cursor)
    if (read === null) return null
    const way = direction(cursor)
    operand = {
      kind: 'round',
      operand,
      to: read.grid,
      direction: way,
      at: { start: operand.at.start, end: lastEnd(cursor) },
    }
  }
  return operand
}

function direction(cursor: Cursor): Direction {
  if (takeIf(cursor, 'up') !== null) return 'up'
  return takeIf(cursor, 'down') === null ? 'nearest' : 'down'
}

/** Where the token just taken ends. */
function lastEnd(cursor: Cursor): number {
  return peek(cursor, -1).at.end
}

function grid(cursor: Cursor): { readonly grid: Grid; readonly at: Span } | null {
  const word = peek(cursor)
  if (word.text === 'multiple') return multiple(cursor)
  if (word.text !== 'whole' && word.text !== 'even' && word.text !== 'odd') {
    return expected(cursor, '`whole`, `even`, `odd` or `multiple of …`')
  }
  return { grid: { kind: word.text }, at: take(cursor).at }
}

function multiple(cursor: Cursor): { readonly grid: Grid; readonly at: Span } | null {
  const word = take(cursor)
  if (takeIf(cursor, 'of') === null) return expected(cursor, '`of` and a number, as in `multiple of 6`')
  const of = product(cursor)
  if (of === null) return null
  const sign = arithmeticAt(cursor, ['+', '-'])
  if (sign === undefined) return { grid: { kind: 'multiple', of, plus: null }, at: cover(word.at, of.at) }
  const signAt = take(cursor).at
  const amount = product(cursor)
  if (amount === null) return null
  const plus: Expression = sign === '+' ? amount : { kind: 'negate', operand: amount, at: cover(signAt, amount.at) }
  return { grid: { kind: 'multiple', of, plus }, at: cover(word.at, plus.at) }
}

function sum(cursor: Cursor): Expression | null {
  return leftToRight(cursor, ['+', '-'], () => product(cursor))
}

function product(cursor: Cursor): Expression | null {
  return leftToRight(cursor, ['*', '/'], () => signed(cursor))
}

function leftToRight(
  cursor: Cursor,
  operators: readonly Arithmetic[],
  operand: () => Expression | null,
): Expression | null {
  let left = operand()
  for (let operator = arithmeticAt(cursor, operators); left !== null && operator !== undefined; ) {
    take(cursor)
    const right = operand()
    if (right === null) return null
    left = { kind: 'binary', operator, left, right, at: cover(left.at, right.at) }
    operator = arithmeticAt(cursor, operators)
  }
  return left
}

function arithmeticAt(cursor: Cursor, operators: readonly Arithmetic[]): Arithmetic | undefined {
  const sign = plainSign(peek(cursor).text)
  return operators.find((operator) => operator === sign)
}

function signed(cursor: Cursor): Expression | null {
  if (plainSign(peek(cursor).text) !== '-') return parsePrimary(cursor, () => parseExpression(cursor))
  const sign = take(cursor)
  const operand = deeper(cursor, () => signed(cursor))
  return operand && { kind: 'negate', operand, at: cover(sign.at, operand.at) }
}
