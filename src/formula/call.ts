import Fraction from 'fraction.js'
import type { Numeric, PerSize, Value } from '../measure/index.ts'
import { eachPair, eachSize, sameForAll, sizesWhere } from '../measure/index.ts'
import { evaluateCondition } from './condition.ts'
import { bounded, evaluateNumeric, evaluateValue, numberKind } from './evaluate.ts'
import type { FunctionName } from './functions.ts'
import { isFunction, nameGiven } from './functions.ts'
import type { Scope } from './scope.ts'
import { sizeByName, skipping } from './scope.ts'
import { evaluateShaping, shareOfTotal } from './shape-call.ts'
import type { ShapingName } from './shaping.ts'
import { joinSorts, sortOf } from './sort.ts'
import type { CallNode, Expression } from './tree.ts'

type Call = (node: CallNode, scope: Scope) => Value | null

/** How each function is calculated, for arguments that have been checked. */
const calls: Readonly<Record<FunctionName, Call>> = {
  stitches: (node, scope) => byGauge(node, scope, 'stitches', 'count'),
  rows: (node, scope) => byGauge(node, scope, 'rows', 'count'),
  width: (node, scope) => byGauge(node, scope, 'stitches', 'length'),
  height: (node, scope) => byGauge(node, scope, 'rows', 'length'),
  repeats: (node, scope) => byRepeat(node, scope, 'count'),
  repeats_width: (node, scope) => byRepeat(node, scope, 'length'),
  min: (node, scope) => fold(node.arguments, scope, (a, b) => (a.lte(b) ? a : b)),
  max: (node, scope) => fold(node.arguments, scope, (a, b) => (a.gte(b) ? a : b)),
  abs: (node, scope) =>
    fold(
      node.arguments,
      scope,
      (a) => a,
      (a) => a.abs(),
    ),
  sum,
  body,
  ease,
  at: atSize,
  if: choose,
  share_of: shareOfTotal,
  shares: shaped('shares'),
  evenly: shaped('evenly'),
  spaced: shaped('spaced'),
  taper: shaped('taper'),
  waist_taper: shaped('waist_taper'),
  armhole_steps: shaped('armhole_steps'),
  neck_steps: shaped('neck_steps'),
  shoulder_steps: shaped('shoulder_steps'),
  yoke_rounds: shaped('yoke_rounds'),
}

function shaped(name: ShapingName): Call {
  return (node, scope) => evaluateShaping(name, node, scope)
}

export function evaluateCall(node: CallNode, scope: Scope): Value | null {
  return isFunction(node.name) ? calls[node.name](node, scope) : null
}

function byGauge(node: CallNode, scope: Scope, what: 'stitches' | 'rows', gives: 'count' | 'length'): Numeric | null {
  const [argument, swatch] = node.arguments
  const value = argument === undefined ? null : evaluateNumeric(argument, scope)
  const found = scope.environment.gauge(nameGiven(swatch))
  const perCentimetre = found.kind === 'found' ? found.gauge[what] : null
  if (value === null || found.kind !== 'found' || perCentimetre === null) return null
  const work = (cell: Fraction) => (gives === 'count' ? cell.mul(perCentimetre) : cell.div(perCentimetre))
  const unit = gives === 'count' ? null : found.gauge.unit
  return bounded({ kind: gives, unit, bySize: eachSize(value.bySize, work) }, node, scope)
}

function byRepeat(node: CallNode, scope: Scope, gives: 'count' | 'length'): Numeric | null {
  const [argument, repeat] = node.arguments
  const value = argument === undefined ? null : evaluateNumeric(argument, scope)
  const found = scope.environment.repeat(nameGiven(repeat) ?? '')
  const across = found.kind === 'found' ? found.across : null
  if (value === null || found.kind !== 'found' || across === null) return null
  const work = (cell: Fraction) => (gives === 'count' ? cell.mul(across) : cell.div(across))
  const unit = gives === 'count' ? null : found.unit
  return bounded({ kind: gives, unit, bySize: eachSize(value.bySize, work) }, node, scope)
}

/** Combines the arguments from left to right, size by size. */
function fold(
  terms: readonly Expression[],
  scope: Scope,
  combine: (a: Fraction, b: Fraction) => Fraction,
  last: (a: Fraction) => Fraction = (a) => a,
): Numeric | null {
  const values = terms.map((term) => evaluateNumeric(term, scope))
  const [first, ...rest] = values
  if (first === null || first === undefined) return null
  let result: Numeric = first
  for (const value of rest) {
    if (value === null) return null
    result = beside(result, value, combine)
  }
  return { ...result, bySize: eachSize(result.bySize, last) }
}

function beside(a: Numeric, b: Numeric, combine: (a: Fraction, b: Fraction) => Fraction): Numeric {
  const kind = numberKind(joinSorts(sortOf(a), sortOf(b)))
  return { kind, unit: a.unit ?? b.unit, bySize: eachPair(a.bySize, b.bySize, combine) }
}

function sum(node: CallNode, scope: Scope): Numeric | null {
  const [only, ...others] = node.arguments
  const terms = others.length === 0 && only?.kind === 'list' ? only.items : node.arguments
  const total = fold(terms, scope, (a, b) => a.add(b))
  if (total === null) return null
  const across = terms === node.arguments && others.length === 0
  return bounded(across ? { ...total, bySize: acrossSizes(total.bySize) } : total, node, scope)
}

function acrossSizes(values: PerSize<Fraction | null>): PerSize<Fraction | null> {
  const total = values.reduce<Fraction>((all, value) => (value === null ? all : all.add(value)), new Fraction(0))
  return sameForAll(total, values.length)
}

function body(node: CallNode, scope: Scope): Numeric | null {
  const [measure] = node.arguments
  const found = measure?.kind === 'text' ? scope.environment.body(measure.text) : null
  return found?.kind === 'found' ? { kind: 'length', unit: found.unit, bySize: found.bySize } : null
}

function ease(node: CallNode, scope: Scope): Numeric | null {
  const [fit] = node.arguments
  const found = fit?.kind === 'text' ? scope.environment.ease(fit.text) : null
  if (found?.kind !== 'found') return null
  return { kind: 'length', unit: found.unit, bySize: sameForAll(found.length, scope.environment.sizes.length) }
}

function atSize(node: CallNode, scope: Scope): Value | null {
  const [size, argument] = node.arguments
  const value = argument === undefined ? null : evaluateValue(argument, scope)
  if (value === null || size?.kind !== 'text') return null
  const position = sizeByName(scope.environment, size.text)
  const sizes = value.bySize.length
  return value.kind === 'text'
    ? { ...value, bySize: sameForAll(value.bySize[position] ?? null, sizes) }
    : { ...value, bySize: sameForAll(value.bySize[position] ?? null, sizes) }
}

/** A branch is calculated only for the sizes that take it: `if(n = 0, 0, m / n)` divides by no zero. */
function choose(node: CallNode, scope: Scope): Value | null {
  const [condition, yes, no] = node.arguments
  const holds = condition === undefined ? null : evaluateCondition(condition, scope)
  if (holds === null || yes === undefined || no === undefined) return null
  const taken = (wanted: boolean) => sizesWhere(holds.bySize, (cell) => cell !== wanted)
  const ifYes = evaluateValue(yes, skipping(scope, taken(true)))
  const ifNo = evaluateValue(no, skipping(scope, taken(false)))
  return ifYes === null || ifNo === null ? null : pick(holds.bySize, ifYes, ifNo)
}

function pick(holds: PerSize<boolean | null>, yes: Value, no: Value): Value {
  if (yes.kind === 'text' || no.kind === 'text') {
    const texts = [no, yes].map((value) => (value.kind === 'text' ? value.bySize : []))
    const bySize = holds.map((cell, size) => (cell === null ? null : (texts[Number(cell)]?.[size] ?? null)))
    const isPhrase = [yes, no].some((value) => value.kind === 'text' && value.phrase)
    return { kind: 'text', unit: null, bySize, ...(isPhrase ? { phrase: true } : {}) }
  }
  const bySize = holds.map((cell, size) => (cell === null ? null : ((cell ? yes : no).bySize[size] ?? null)))
  return { ...beside(yes, no, (a) => a), bySize }
}
