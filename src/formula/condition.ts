import type Fraction from 'fraction.js'
import type { PerSize } from '../measure/index.ts'
import { eachPair, eachSize, isWhole, sameForAll } from '../measure/index.ts'
import { evaluateGrid, evaluateNumeric, evaluateTree } from './evaluate.ts'
import type { Scope } from './scope.ts'
import type { Truth } from './sort.ts'
import { isNumeric } from './sort.ts'
import type { CompareNode, Comparison, Expression, IsNode, LogicNode, Trend, TrendNode } from './tree.ts'

/** A checked condition for every size; null when a part of it cannot be calculated. */
export function evaluateCondition(node: Expression, scope: Scope): Truth | null {
  const bySize = cells(node, scope)
  return bySize && { kind: 'condition', unit: null, bySize }
}

type Cells = PerSize<boolean | null>

function cells(node: Expression, scope: Scope): Cells | null {
  switch (node.kind) {
    case 'compare':
      return compare(node, scope)
    case 'logic':
      return logic(node, scope)
    case 'not':
      return not(node.operand, scope)
    case 'is':
      return property(node, scope)
    case 'trend':
      return trend(node, scope)
    default:
      return null
  }
}

const holds: Readonly<Record<Comparison, (order: number) => boolean>> = {
  '=': (order) => order === 0,
  '!=': (order) => order !== 0,
  '<': (order) => order < 0,
  '<=': (order) => order <= 0,
  '>': (order) => order > 0,
  '>=': (order) => order >= 0,
}

function compare(node: CompareNode, scope: Scope): Cells | null {
  const left = evaluateTree(node.left, scope)
  const right = evaluateTree(node.right, scope)
  if (left === null || right === null) return null
  if (node.left.kind === 'none' || node.right.kind === 'none') {
    return left.bySize.map((cell, size) => holds[node.operator](cell === (right.bySize[size] ?? null) ? 0 : 1))
  }
  if (isNumeric(left) && isNumeric(right)) {
    return eachPair(left.bySize, right.bySize, (a, b) => holds[node.operator](a.compare(b)))
  }
  return left.bySize.map((cell, size) => holds[node.operator](cell === right.bySize[size] ? 0 : 1))
}

function logic(node: LogicNode, scope: Scope): Cells | null {
  const left = cells(node.left, scope)
  const right = cells(node.right, scope)
  if (left === null || right === null) return null
  return eachPair(left, right, (a, b) => (node.operator === 'and' ? a && b : a || b))
}

function not(operand: Expression, scope: Scope): Cells | null {
  const inner = cells(operand, scope)
  return inner && eachSize(inner, (cell) => !cell)
}

function property(node: IsNode, scope: Scope): Cells | null {
  const value = evaluateNumeric(node.operand, scope)
  const grid = evaluateGrid(node.grid, scope)
  if (value === null || grid === null) return null
  const steps = eachPair(grid.of, grid.plus, (of, plus) => ({ of, plus }))
  return eachPair(value.bySize, steps, (cell, { of, plus }) => isWhole(cell.sub(plus).div(of)))
}

/** Across sizes, so it is the same for every size. */
function trend(node: TrendNode, scope: Scope): Cells | null {
  const value = evaluateNumeric(node.operand, scope)
  return value && sameForAll(breaks(value.bySize, node.trend).length === 0, value.bySize.length)
}

const follows: Readonly<Record<Trend, (order: number) => boolean>> = {
  rises: (order) => order > 0,
  falls: (order) => order < 0,
  steady: (order) => order === 0,
}

/** The sizes whose number does not follow the trend from the size before; a size without a number is passed over. */
export function breaks(values: PerSize<Fraction | null>, trendWanted: Trend): readonly number[] {
  let before: Fraction | null = null
  return values.flatMap((value, size) => {
    const broken = value !== null && before !== null && !follows[trendWanted](value.compare(before))
    before = value ?? before
    return broken ? [size] : []
  })
}
