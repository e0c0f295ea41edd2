import type { Diagnostic, Span } from '../diagnostic/index.ts'
import type { Numeric } from '../measure/index.ts'
import { namesBehind } from './aim.ts'
import type { Environment } from './environment.ts'
import { evaluateNumeric } from './evaluate.ts'
import { nameGiven } from './functions.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import type { Settled } from './settle.ts'
import type { CallNode, Expression, RoundNode } from './tree.ts'
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

type Through = (node: RoundNode) => boolean

/** The nearest call of `stitches` or `rows` that a count comes from, through names. */
function gaugeCall(node: Expression, settled: Settled, through: Through): CallNode | null {
  const seen = new Set<string>()
  const waiting: Expression[] = [node]
  for (const next of waiting) {
    if (next.kind === 'call' && (next.name === 'stitches' || next.name === 'rows')) return next
    if (next.kind === 'round' && !through(next)) continue
    if (next.kind === 'name' && !seen.has(next.name)) {
      seen.add(next.name)
      const formula = settled.formulas.get(next.name)
      if (formula !== undefined) waiting.push(formula)
    }
    waiting.push(...children(next))
  }
  return null
}

/** By which gauge a count was made from a length, and of which swatch. */
export interface CountedBy {
  readonly what: 'stitches' | 'rows'
  /** Null for the first. */
  readonly swatch: string | null
}

/** Null for a count that comes from no length. `through` tells through which roundings it is followed. */
export function countedBy(count: Expression, settled: Settled, through: Through = () => true): CountedBy | null {
  const call = gaugeCall(count, settled, through)
  if (call === null) return null
  return { what: call.name === 'rows' ? 'rows' : 'stitches', swatch: nameGiven(call.arguments[1]) }
}

function movedBy(name: string, node: RoundNode, settled: Settled, environment: Environment): Moved | null {
  const by = countedBy(node.operand, settled, () => false)
  const found = environment.gauge(by?.swatch ?? null)
  const perCentimetre = by === null || found.kind !== 'found' ? null : found.gauge[by.what]
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
  const across = by?.what === 'rows' ? 'height' : 'width'
  return { name, at: node.at, formula: excerpt(node), across, from, to, was: length(from), is: length(to) }
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
