import { nearestTo } from '../diagnostic/index.ts'
import { type Unit, units } from '../measure/index.ts'
import { checkCall } from './check-call.ts'
import { checkBySize, checkList } from './check-list.ts'
import { reportMix, reportWanted } from './mixing.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import { report } from './scope.ts'
import type { Sort } from './sort.ts'
import { addSorts, canCompare, divideSorts, isCalculable, isCount, multiplySorts, sortOf } from './sort.ts'
import type { BinaryNode, CompareNode, Expression, Grid, NameNode } from './tree.ts'

/**
 * Finds what a formula gives before anything is calculated: names, functions, kinds and sizes. Null when
 * that cannot be said; the reason has then been reported, here or where a name was defined.
 */
export function check(node: Expression, scope: Scope): Sort | null {
  switch (node.kind) {
    case 'number':
      return checkNumber(node.unit)
    case 'text':
    case 'none':
      return node.kind
    case 'name':
      return checkName(node, scope)
    case 'list':
      return checkList(node, scope)
    case 'bySize':
      return checkBySize(node, scope)
    case 'withUnit':
      return checkCount(node.operand, scope, 'A unit') && checkNumber(node.unit)
    case 'negate':
      return checkCalculable(node.operand, scope)
    case 'binary':
      return checkBinary(node, scope)
    case 'call':
      return checkCall(node, scope)
    case 'round':
      return bothSound(checkCount(node.operand, scope, 'Rounding'), checkGrid(node.to, scope), 'count')
    case 'made':
      return scope.inGrading ? report(scope, 'made-in-grading', node.at, { word: excerpt(node) }) : 'count'
    default:
      return checkCondition(node, scope)
  }
}

type Condition = Extract<Expression, { kind: 'compare' | 'logic' | 'not' | 'is' | 'trend' }>

function checkCondition(node: Condition, scope: Scope): Sort | null {
  switch (node.kind) {
    case 'compare':
      return checkCompare(node, scope)
    case 'logic':
      return bothSound(wantCondition(node.left, scope), wantCondition(node.right, scope), 'condition')
    case 'not':
      return wantCondition(node.operand, scope)
    case 'is':
      return bothSound(checkCount(node.operand, scope, '`is`'), checkGrid(node.grid, scope), 'condition')
    case 'trend':
      return checkCalculable(node.operand, scope) && 'condition'
  }
}

function bothSound(a: unknown, b: unknown, sort: Sort): Sort | null {
  return a === null || b === null ? null : sort
}

function checkNumber(unit: Unit | null): Sort {
  return unit === null ? 'count' : units[unit].kind
}

function checkName(node: NameNode, scope: Scope): Sort | null {
  const { values, unsound, known } = scope.names
  const value = values.get(node.name)
  if (value !== undefined) return sortOf(value)
  if (unsound.has(node.name)) return null
  return report(scope, 'name-unknown', node.at, { name: node.name, nearest: nearestTo(node.name, known) })
}

function checkBinary(node: BinaryNode, scope: Scope): Sort | null {
  const left = check(node.left, scope)
  const right = check(node.right, scope)
  if (left === null || right === null) return null
  const joined = { '+': addSorts, '-': addSorts, '*': multiplySorts, '/': divideSorts }[node.operator](left, right)
  if (joined !== null) return joined
  return reportMix(scope, node.operator, { node: node.left, sort: left }, { node: node.right, sort: right }, node.at)
}

function checkCompare(node: CompareNode, scope: Scope): Sort | null {
  const left = check(node.left, scope)
  const right = check(node.right, scope)
  if (left === null || right === null) return null
  const ordered = node.operator !== '=' && node.operator !== '!='
  const fits = canCompare(left, right) && left !== 'condition' && !(ordered && left === 'text')
  if (fits) return 'condition'
  return reportMix(scope, node.operator, { node: node.left, sort: left }, { node: node.right, sort: right }, node.at)
}

/** A condition, as `if` and `need` want one. */
export function wantCondition(node: Expression, scope: Scope): Sort | null {
  const sort = check(node, scope)
  if (sort === null || sort === 'condition') return sort
  return report(scope, 'condition-wanted', node.at, { found: excerpt(node) })
}

/** A value that can be stored or printed. */
export function wantValue(node: Expression, scope: Scope): Sort | null {
  const sort = check(node, scope)
  return sort === 'condition' ? report(scope, 'value-wanted', node.at, { found: excerpt(node) }) : sort
}

function checkCount(node: Expression, scope: Scope, by: string): Sort | null {
  const sort = check(node, scope)
  if (sort === null || isCount(sort)) return sort
  return reportWanted(scope, 'count', { node, sort }, by)
}

function checkCalculable(node: Expression, scope: Scope): Sort | null {
  const sort = check(node, scope)
  return sort === null || isCalculable(sort) ? sort : reportWanted(scope, 'number', { node, sort }, 'This')
}

/** True when the grid's numbers are sound; null when not. */
function checkGrid(grid: Grid, scope: Scope): true | null {
  if (grid.kind !== 'multiple') return true
  const of = checkCount(grid.of, scope, '`multiple of`')
  const plus = grid.plus === null ? 'none' : checkCount(grid.plus, scope, '`multiple of`')
  return of === null || plus === null ? null : true
}
