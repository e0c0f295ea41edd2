import { wantCondition } from './check.ts'
import { breaks } from './condition.ts'
import { describeCell } from './describe.ts'
import { evaluateNumeric, evaluateTree } from './evaluate.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import { report } from './scope.ts'
import type { Evaluated } from './sort.ts'
import type { Expression } from './tree.ts'

/** Reports a condition that does not hold, with the sizes and the values that break it. */
export function checkNeed(condition: Expression, scope: Scope): void {
  if (wantCondition(condition, scope) === null) return
  for (const need of needsIn(condition)) testNeed(need, scope)
}

/** `need a and b` is two needs, so that each names its own sizes. */
export function needsIn(condition: Expression): readonly Expression[] {
  return condition.kind === 'logic' && condition.operator === 'and'
    ? [...needsIn(condition.left), ...needsIn(condition.right)]
    : [condition]
}

function testNeed(condition: Expression, scope: Scope): void {
  const failing = failingSizes(condition, scope)
  if (failing.length === 0) return
  const cases = describeCases(condition, failing, scope)
  report(scope, 'need-failed', condition.at, { need: excerpt(condition), cases }, failing)
}

function failingSizes(condition: Expression, scope: Scope): readonly number[] {
  if (condition.kind === 'trend') {
    const value = evaluateNumeric(condition.operand, scope)
    return value === null ? [] : breaks(value.bySize, condition.trend)
  }
  const truth = evaluateTree(condition, scope)
  return (truth?.bySize ?? []).flatMap((cell, size) => (cell === false ? [size] : []))
}

/** `Child: 45 cm against 48 cm; Adult S: …`, or all values where sizes are compared with each other. */
export function describeCases(condition: Expression, failing: readonly number[], scope: Scope): string {
  const parts = partsOf(condition).flatMap((part) => evaluateTree(part, scope) ?? [])
  const shown = condition.kind === 'trend' ? scope.environment.sizes.map((_, size) => size) : failing
  return shown.map((size) => `${scope.environment.sizes[size]}: ${describeParts(parts, size)}`).join('; ')
}

function describeParts(parts: readonly Evaluated[], size: number): string {
  return parts.map((part) => describeCell(part, size)).join(' against ')
}

function partsOf(condition: Expression): readonly Expression[] {
  if (condition.kind === 'compare') return [condition.left, condition.right]
  if (condition.kind === 'is' || condition.kind === 'trend') return [condition.operand]
  if (condition.kind === 'not') return partsOf(condition.operand)
  return condition.kind === 'logic' ? [...partsOf(condition.left), ...partsOf(condition.right)] : []
}
