import type Fraction from 'fraction.js'
import type { Direction } from '../measure/index.ts'
import type { Expression, Grid, NumberNode, Statement } from './tree.ts'

/** How tightly each form holds together; a looser part inside a tighter form stands in brackets. */
const levels = { either: 0, both: 1, not: 2, compare: 3, round: 4, sum: 5, product: 6, signed: 7, primary: 8 } as const

/** A formula as text, with no more brackets than it needs; reading it again gives the same tree. */
export function printExpression(node: Expression): string {
  switch (node.kind) {
    case 'number':
      return printNumber(node)
    case 'text':
      return quote(node.text)
    case 'none':
      return 'none'
    case 'name':
      return node.name
    case 'list':
      return `[${node.items.map(printExpression).join(', ')}]`
    case 'bySize':
      return `{${node.entries.map(({ size, value }) => `${size}: ${printExpression(value)}`).join(', ')}}`
    case 'withUnit':
      return `${printMeasured(node.operand)} ${node.unit}`
    case 'call':
      return `${node.name}(${node.arguments.map(printExpression).join(', ')})`
    case 'made':
      return printMade(node.what, node.piece, node.row)
    default:
      return printOperation(node)
  }
}

type Operation = Extract<
  Expression,
  { kind: 'negate' | 'binary' | 'round' | 'compare' | 'logic' | 'not' | 'is' | 'trend' }
>

function printOperation(node: Operation): string {
  switch (node.kind) {
    case 'negate':
      return `-${within(node.operand, levels.signed)}`
    case 'binary':
      return `${within(node.left, levelOf(node))} ${node.operator} ${rightOf(node.operator, node.right, levelOf(node))}`
    case 'round':
      return `${within(node.operand, levels.round)} as ${printGrid(node.to)}${printDirection(node.direction)}`
    case 'compare':
      return `${within(node.left, levels.round)} ${node.operator} ${within(node.right, levels.round)}`
    case 'logic':
      return `${within(node.left, levelOf(node))} ${node.operator} ${within(node.right, levelOf(node) + 1)}`
    case 'not':
      return `not ${within(node.operand, levels.not)}`
    case 'is':
      return `${within(node.operand, levels.round)} is ${printGrid(node.grid)}`
    case 'trend':
      return `${within(node.operand, levels.round)} ${node.trend}`
  }
}

function levelOf(node: Expression): number {
  switch (node.kind) {
    case 'logic':
      return node.operator === 'or' ? levels.either : levels.both
    case 'not':
      return levels.not
    case 'compare':
    case 'is':
    case 'trend':
      return levels.compare
    case 'round':
      return levels.round
    case 'binary':
      return node.operator === '+' || node.operator === '-' ? levels.sum : levels.product
    case 'negate':
      return levels.signed
    default:
      return levels.primary
  }
}

function within(node: Expression, level: number): string {
  const text = printExpression(node)
  return levelOf(node) < level ? `(${text})` : text
}

/** After a division sign a number with a unit stands in brackets: `1 / 2 in` would be half an inch. */
function rightOf(operator: string, node: Expression, level: number): string {
  const measured = operator === '/' && node.kind === 'number' && node.unit !== null
  return measured ? `(${printExpression(node)})` : within(node, level + 1)
}

function printMeasured(node: Expression): string {
  const text = printExpression(node)
  return node.kind === 'list' || node.kind === 'bySize' ? text : `(${text})`
}

function printGrid(grid: Grid): string {
  if (grid.kind !== 'multiple') return grid.kind
  const plus = grid.plus === null ? '' : ` + ${within(grid.plus, levels.product)}`
  return `multiple of ${within(grid.of, levels.product)}${plus}`
}

function printDirection(direction: Direction): string {
  return direction === 'nearest' ? '' : ` ${direction}`
}

function printNumber({ value, unit }: NumberNode): string {
  return unit === null ? exactly(value) : `${exactly(value)} ${unit}`
}

/** As a decimal where that is exact, as a fraction where not. */
function exactly(value: Fraction): string {
  const text = value.toFraction(true)
  return /^\d+$/.test(text) || !endsAsDecimal(value.d) ? text : value.toString()
}

function endsAsDecimal(below: bigint): boolean {
  let rest = below
  for (const factor of [2n, 5n]) while (rest % factor === 0n) rest /= factor
  return rest === 1n
}

function quote(text: string): string {
  return /["“”„]/.test(text) ? `'${text}'` : `"${text}"`
}

function printMade(what: string, piece: string | null, row: string | null): string {
  const place = [piece, row].flatMap((part) => (part === null ? [] : [quote(part)]))
  if (what !== 'total') return `count(${[what, ...place].join(', ')})`
  return place.length === 0 ? 'total' : `total(${place.join(', ')})`
}

/** A statement as one line of a grading block; a formula that could not be read is left out. */
export function printStatement(statement: Statement): string {
  if (statement.kind === 'need') return `need ${printExpression(statement.condition)}`
  const formula = statement.kind === 'define' ? statement.formula : statement.target
  const sign = statement.kind === 'define' ? '=' : '~'
  return `${statement.name} ${sign} ${formula === null ? '' : printExpression(formula)}`.trimEnd()
}

/** A formula as it is quoted in a message: cut where it is long. */
export function excerpt(node: Expression): string {
  const text = printExpression(node)
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}
