import Fraction from 'fraction.js'
import type { Numeric, PerSize, Value } from '../../measure/index.ts'
import { wantValue } from '../check.ts'
import { evaluateValue } from '../evaluate.ts'
import type { Scope } from '../scope.ts'
import type { Sort } from '../sort.ts'
import type { Expression } from '../tree.ts'
import type { Counts } from './choice.ts'

/** The same scope with room for more names, and with findings that go nowhere. */
function aside(scope: Scope) {
  const values = new Map(scope.names.values)
  const unsound = new Set(scope.names.unsound)
  return { values, unsound, scope: { ...scope, findings: [], names: { ...scope.names, values, unsound } } }
}

/** A scope in which every name has a value of the right sort, so that formulas can be checked before the counts are known. */
export function standIns(
  counts: ReadonlyMap<string, PerSize<unknown>>,
  formulas: ReadonlyMap<string, Expression>,
  scope: Scope,
): Scope {
  const trial = aside(scope)
  for (const [name, bySize] of counts) trial.values.set(name, standIn('count', bySize))
  for (const [name, formula] of formulas) {
    const sort = wantValue(formula, trial.scope)
    if (sort === null) trial.unsound.add(name)
    else trial.values.set(name, standIn(sort, scope.environment.sizes))
  }
  return trial.scope
}

function standIn(sort: Sort, sizes: PerSize<unknown>): Value {
  if (sort === 'text') return { kind: 'text', unit: null, bySize: sizes.map(() => '') }
  const zero = sort === 'none' ? null : new Fraction(0)
  const kind = sort === 'none' || sort === 'condition' ? 'count' : sort
  return { kind, unit: null, bySize: sizes.map((one) => (one === null ? null : zero)) }
}

/** A scope in which linked counts have the given values, and all that follows from them is calculated. */
export function tryOut(
  counts: ReadonlyMap<string, Numeric>,
  formulas: ReadonlyMap<string, Expression>,
  scope: Scope,
): Scope {
  const trial = aside(scope)
  for (const [name, value] of counts) trial.values.set(name, value)
  for (const [name, formula] of formulas) {
    const value = wantValue(formula, trial.scope) === null ? null : evaluateValue(formula, trial.scope)
    if (value === null) trial.unsound.add(name)
    else trial.values.set(name, value)
  }
  return trial.scope
}

/** Chosen counts as values of their names; `ids` gives each name's positions, null for a size to which it does not apply. */
export function valuesOf(
  counts: Counts,
  ids: ReadonlyMap<string, PerSize<number | null>>,
): ReadonlyMap<string, Numeric> {
  const bySize = (of: PerSize<number | null>) => of.map((id) => (id === null ? null : (counts.get(id) ?? null)))
  return new Map([...ids].map(([name, of]) => [name, { kind: 'count', unit: null, bySize: bySize(of) }]))
}
