import Fraction from 'fraction.js'
import type { Numeric, PerSize, Unit, Value } from '../measure/index.ts'
import {
  eachPair,
  eachSize,
  isPositive,
  isSteady,
  isWhole,
  roundToMultiple,
  sameForAll,
  sizesWhere,
  toBase,
  units,
} from '../measure/index.ts'
import { evaluateCall } from './call.ts'
import { evaluateCondition } from './condition.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import { concerned, report, sizeByName } from './scope.ts'
import type { Evaluated, Sort } from './sort.ts'
import { addSorts, divideSorts, isNumeric, isShareOf, joinSorts, multiplySorts, sortOf } from './sort.ts'
import type { BinaryNode, BySizeNode, Expression, Grid, ListNode, MadeNode, RoundNode } from './tree.ts'

/**
 * Calculates a checked formula for every size. Null when a size divides by zero or the like, which is
 * reported. Always ends: a formula is a finite tree, and its numbers are bounded.
 */
export function evaluateTree(node: Expression, scope: Scope): Evaluated | null {
  const sizes = scope.environment.sizes.length
  switch (node.kind) {
    case 'number':
      return { ...measured(node.unit), bySize: sameForAll(inBase(node.value, node.unit), sizes) }
    case 'text':
      return { kind: 'text', unit: null, bySize: sameForAll(node.text, sizes) }
    case 'none':
      return { kind: 'count', unit: null, bySize: sameForAll(null, sizes) }
    case 'name':
      return scope.names.values.get(node.name) ?? null
    case 'list':
      return evaluateList(node, scope)
    case 'bySize':
      return evaluateBySize(node, scope)
    case 'withUnit':
      return evaluateWithUnit(node.operand, node.unit, scope)
    case 'negate':
      return mapNumbers(evaluateTree(node.operand, scope), (value) => value.neg())
    case 'binary':
      return evaluateBinary(node, scope)
    case 'call':
      return evaluateCall(node, scope)
    case 'round':
      return evaluateRound(node, scope)
    case 'made':
      return evaluateMade(node, scope)
    default:
      return evaluateCondition(node, scope)
  }
}

/** A value of a checked formula that is not a condition. */
export function evaluateValue(node: Expression, scope: Scope): Value | null {
  const value = evaluateTree(node, scope)
  return value === null || value.kind === 'condition' ? null : value
}

/** A number for every size of a checked formula that gives numbers. */
export function evaluateNumeric(node: Expression, scope: Scope): Numeric | null {
  const value = evaluateTree(node, scope)
  return value !== null && isNumeric(value) ? value : null
}

function measured(unit: Unit | null): Pick<Numeric, 'kind' | 'unit'> {
  if (unit === null) return { kind: 'count', unit }
  return { kind: units[unit].kind, unit }
}

function inBase(value: Fraction, unit: Unit | null): Fraction {
  return unit === null ? value : toBase(value, unit)
}

function mapNumbers(value: Evaluated | null, work: (value: Fraction) => Fraction): Numeric | null {
  if (value === null || !isNumeric(value)) return null
  return { ...value, bySize: eachSize(value.bySize, work) }
}

function evaluateWithUnit(operand: Expression, unit: Unit, scope: Scope): Numeric | null {
  const value = mapNumbers(evaluateTree(operand, scope), (number) => toBase(number, unit))
  return value && { ...value, ...measured(unit) }
}

function evaluateList(node: ListNode, scope: Scope): Value | null {
  const items = node.items.map((item) => evaluateItem(item, scope))
  return pickEach(items)
}

function evaluateBySize(node: BySizeNode, scope: Scope): Value | null {
  const bySize: (Value | null)[] = scope.environment.sizes.map(() => null)
  for (const { size, value } of node.entries) {
    bySize[sizeByName(scope.environment, size)] = evaluateItem(value, scope)
  }
  return pickEach(bySize)
}

/** An item stands for one size, so it must not have values of its own for several. */
function evaluateItem(item: Expression, scope: Scope): Value | null {
  const value = evaluateValue(item, scope)
  if (value === null) return null
  const steady = value.kind === 'text' ? value.bySize.every((cell) => cell === value.bySize[0]) : isSteady(value.bySize)
  return steady ? value : report(scope, 'list-in-list', item.at, { item: excerpt(item) })
}

/** One value made of the first size's from the first item, the second's from the second … */
function pickEach(items: readonly (Value | null)[]): Value | null {
  const values = items.flatMap((item) => (item === null ? [] : [item]))
  if (values.length < items.length) return null
  const counting = values.find((value) => sortOf(value) !== 'none')
  if (counting?.kind === 'text') {
    const isPhrase = values.some((value) => value.kind === 'text' && value.phrase)
    const bySize = values.map((value) => (value.kind === 'text' ? (value.bySize[0] ?? null) : null))
    return { kind: 'text', unit: null, bySize, ...(isPhrase ? { phrase: true } : {}) }
  }
  const kind = values.reduce<Sort>((sort, value) => joinSorts(sort, sortOf(value)) ?? sort, 'none')
  const bySize = values.map((value) => (value.kind === 'text' ? null : (value.bySize[0] ?? null)))
  return { kind: numberKind(kind), unit: counting?.unit ?? null, bySize }
}

/** The kind of the numbers of a sort; those of `none` pass for counts. */
export function numberKind(sort: Sort | null): Numeric['kind'] {
  return sort === 'length' || sort === 'mass' || sort === 'number' || sort === 'share' ? sort : 'count'
}

const combineSorts = { '+': addSorts, '-': addSorts, '*': multiplySorts, '/': divideSorts } as const

const combine: Readonly<Record<BinaryNode['operator'], (a: Fraction, b: Fraction) => Fraction | null>> = {
  '+': (a, b) => a.add(b),
  '-': (a, b) => a.sub(b),
  '*': (a, b) => a.mul(b),
  '/': (a, b) => (b.n === 0n ? null : a.div(b)),
}

function evaluateBinary(node: BinaryNode, scope: Scope): Numeric | null {
  const left = evaluateNumeric(node.left, scope)
  const right = evaluateNumeric(node.right, scope)
  if (left === null || right === null) return null
  if (node.operator === '/' && !canDivide(node, right, scope)) return null
  const kind = numberKind(combineSorts[node.operator](sortOf(left), sortOf(right)) ?? left.kind)
  const unit = [left, right].find((side) => side.kind === kind)?.unit ?? null
  const bySize = eachPair(left.bySize, combinedWith(node.operator, left, right).bySize, combine[node.operator])
  return bounded({ kind, unit, bySize }, node, scope)
}

/** What stands after the sign, in the kind of what stands before it: 5 % of 60 cm is 3 cm. */
function combinedWith(operator: BinaryNode['operator'], left: Numeric, right: Numeric): Numeric {
  const isPart = (operator === '+' || operator === '-') && isShareOf(sortOf(left), sortOf(right))
  return isPart ? { ...right, bySize: eachPair(left.bySize, right.bySize, (of, share) => of.mul(share)) } : right
}

function canDivide(node: BinaryNode, divisor: Numeric, scope: Scope): boolean {
  const zero = concerned(
    scope,
    sizesWhere(divisor.bySize, (cell) => cell !== null && cell.n === 0n),
  )
  if (zero.length === 0) return true
  const sizes = zero.length === divisor.bySize.length ? [] : zero
  report(scope, 'division-by-zero', node.at, { divisor: excerpt(node.right), sizes: namesOf(scope, sizes) }, zero)
  return false
}

function namesOf(scope: Scope, sizes: readonly number[]): readonly string[] {
  return sizes.map((size) => scope.environment.sizes[size] ?? '')
}

/** Far beyond any measure; it keeps repeated multiplication from filling the memory. */
const limit = 10n ** 30n

/** The value, or a finding when its numbers have grown out of all proportion. */
export function bounded(value: Numeric, node: Expression, scope: Scope): Numeric | null {
  const grown = sizesWhere(value.bySize, isTooLarge)
  if (grown.length === 0) return value
  const bySize = value.bySize.map((cell) => (isTooLarge(cell) ? null : cell))
  const seen = concerned(scope, grown)
  return seen.length === 0
    ? { ...value, bySize }
    : report(scope, 'number-too-large', node.at, { formula: excerpt(node) }, seen)
}

function isTooLarge(cell: Fraction | null): boolean {
  return cell !== null && (cell.n > limit || cell.d > limit)
}

function evaluateRound(node: RoundNode, scope: Scope): Numeric | null {
  const operand = evaluateNumeric(node.operand, scope)
  const grid = evaluateGrid(node.to, scope)
  if (operand === null || grid === null) return null
  const steps = eachPair(grid.of, grid.plus, (of, plus) => ({ of, plus }))
  const bySize = eachPair(operand.bySize, steps, (value, { of, plus }) =>
    roundToMultiple(value, of, plus, node.direction),
  )
  return { kind: 'count', unit: null, bySize }
}

export interface GridSteps {
  /** Greater than 0. */
  readonly of: PerSize<Fraction | null>
  readonly plus: PerSize<Fraction | null>
}

const fixed = { whole: [1, 0], even: [2, 0], odd: [2, 1] } as const

/** The steps of a grid for every size: whole numbers, the first of them above 0. */
export function evaluateGrid(grid: Grid, scope: Scope): GridSteps | null {
  const sizes = scope.environment.sizes.length
  if (grid.kind !== 'multiple') {
    const [of, plus] = fixed[grid.kind]
    return { of: sameForAll(new Fraction(of), sizes), plus: sameForAll(new Fraction(plus), sizes) }
  }
  const of = evaluateNumeric(grid.of, scope)
  const plus = grid.plus === null ? null : evaluateNumeric(grid.plus, scope)
  if (of === null || (grid.plus !== null && plus === null)) return null
  const unfit = unfitFor(of, (cell) => isWhole(cell) && isPositive(cell), scope)
  if (unfit.length > 0) return reportGrid(grid.of, of, unfit, scope)
  const apart = plus === null ? [] : unfitFor(plus, isWhole, scope)
  if (plus !== null && grid.plus !== null && apart.length > 0) return reportGrid(grid.plus, plus, apart, scope)
  const usable = eachSize(of.bySize, (cell) => (isPositive(cell) ? cell : null))
  return { of: usable, plus: plus?.bySize ?? sameForAll(new Fraction(0), sizes) }
}

function unfitFor(value: Numeric, fits: (cell: Fraction) => boolean, scope: Scope): readonly number[] {
  return concerned(
    scope,
    sizesWhere(value.bySize, (cell) => cell !== null && !fits(cell)),
  )
}

function reportGrid(node: Expression, value: Numeric, sizes: readonly number[], scope: Scope): null {
  const found = value.bySize[sizes[0] ?? 0]?.toFraction(true) ?? ''
  return report(scope, 'multiple-unfit', node.at, { formula: excerpt(node), found }, sizes)
}

function evaluateMade(node: MadeNode, scope: Scope): Numeric | null {
  const { what, piece, row } = node
  const word = excerpt(node)
  const look = scope.environment.made
  if (look === undefined) return report(scope, 'made-in-grading', node.at, { word })
  const bySize = look({ what, piece, row })
  return bySize === null ? report(scope, 'made-unknown', node.at, { word, row }) : { kind: 'count', unit: null, bySize }
}
