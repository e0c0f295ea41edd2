import type { Diagnostic, Span } from '../diagnostic/index.ts'
import type { Numeric } from '../measure/index.ts'
import { namesBehind } from './aim.ts'
import type { Environment } from './environment.ts'
import { evaluateNumeric } from './evaluate.ts'
import { nameGiven } from './functions.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import type { Settled } from './settle.ts'
import type { Expression, RoundNode } from './tree.ts'
import { children } from './tree.ts'

/** A count that is rounded, and by how much that moves the measure that it stands for. */
export interface Moved {
  readonly name: string
  readonly at: Span
  /** The words of its formula: `stitches(rim) as multiple of 6`. */
  readonly formula: string
  readonly across: 'width' | 'height'
  /** The count before and after. */
  readonly from: Numeric
  readonly to: Numeric
  /** The same as lengths by the gauge that the count was made with. */
  readonly was: Numeric
  readonly is: Numeric
}

/** The first call of `stitches` or `rows` that a count comes from, through names that are not rounded again. */
function gaugeCall(node: Expression, settled: Settled): Extract<Expression, { kind: 'call' }> | null {
  const seen = new Set<string>()
  const waiting: Expression[] = [node]
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (next.kind === 'call' && (next.name === 'stitches' || next.name === 'rows')) return next
    if (next.kind === 'round') continue
    if (next.kind === 'name' && !seen.has(next.name)) {
      seen.add(next.name)
      const formula = settled.formulas.get(next.name)
      if (formula !== undefined) waiting.push(formula)
    }
    waiting.push(...children(next))
  }
  return null
}

function movedBy(name: string, node: RoundNode, settled: Settled, environment: Environment): Moved | null {
  const call = gaugeCall(node.operand, settled)
  const found = environment.gauge(nameGiven(call?.arguments[1]))
  const across = call?.name === 'stitches' ? 'stitches' : 'rows'
  const perCentimetre = call === null || found.kind !== 'found' ? null : found.gauge[across]
  if (found.kind !== 'found' || perCentimetre === null) return null
  const findings: Diagnostic[] = []
  const scope: Scope = {
    environment,
    names: { ...settled, known: [] },
    inGrading: true,
    findings,
    skipped: new Set(),
  }
  const from = evaluateNumeric(node.operand, scope)
  const to = settled.values.get(name)
  if (from === null || to === undefined || to.kind === 'text' || findings.length > 0) return null
  const length = (count: Numeric): Numeric => ({
    kind: 'length',
    unit: found.gauge.unit,
    bySize: count.bySize.map((cell) => cell?.div(perCentimetre) ?? null),
  })
  const direction = across === 'stitches' ? 'width' : 'height'
  return { name, at: node.at, formula: excerpt(node), across: direction, from, to, was: length(from), is: length(to) }
}

/** Names whose whole formula is rounded, by the measures that this moves; only counts made from a length by gauge. */
export function roundingsOf(settled: Settled, environment: Environment): readonly Moved[] {
  return [...settled.formulas].flatMap(([name, formula]) =>
    formula.kind === 'round' ? (movedBy(name, formula, settled, environment) ?? []) : [],
  )
}

/** Of some roundings those that a formula leads back to. */
export function roundedIn(formula: Expression, all: readonly Moved[], settled: Settled): readonly Moved[] {
  const behind = new Set(namesBehind([formula], settled))
  return all.filter(({ name }) => behind.has(name))
}
