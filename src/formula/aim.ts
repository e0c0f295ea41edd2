import type { Diagnostic } from '../diagnostic/index.ts'
import type { Numeric, Value } from '../measure/index.ts'
import type { Environment } from './environment.ts'
import { evaluateNumeric } from './evaluate.ts'
import { isOtherName, namesIn, orderOf } from './order.ts'
import type { Scope } from './scope.ts'
import type { Settled } from './settle.ts'
import type { CallNode, Expression } from './tree.ts'
import { children } from './tree.ts'

/*
 * What a formula was to come to: itself, calculated anew with every rounding on the way to it left out. For
 * `width(rim_sts)` with `rim_sts = stitches(rim) as multiple of 6` that is `rim`. Conditions are decided as they are in
 * the pattern, and a formula that can't do without whole counts keeps the value that it has.
 */

/** What formulas come to without rounding, so far. */
interface Aiming {
  readonly settled: Settled
  readonly environment: Environment
  /** The draft's own, and beside them what the names of `moved` come to, as `aimed` calls them. */
  readonly values: Map<string, Value>
  /** Names that come out otherwise without rounding. */
  readonly moved: Set<string>
}

/** No name of a draft has a blank in it. */
const aimed = (name: string): string => `${name} unrounded`

const conditions: ReadonlySet<Expression['kind']> = new Set(['compare', 'logic', 'not', 'is', 'trend'])

/** The same formula without its roundings, itself where it has none. */
function bare(node: Expression, moved: Aiming['moved']): Expression {
  const inside = (child: Expression): Expression => bare(child, moved)
  switch (node.kind) {
    case 'round':
      return inside(node.operand)
    case 'name':
      return moved.has(node.name) ? { ...node, name: aimed(node.name) } : node
    case 'list':
      return { ...node, items: node.items.map(inside) }
    case 'bySize':
      return { ...node, entries: node.entries.map((entry) => ({ ...entry, value: inside(entry.value) })) }
    case 'withUnit':
    case 'negate':
      return { ...node, operand: inside(node.operand) }
    case 'binary':
      return { ...node, left: inside(node.left), right: inside(node.right) }
    case 'call':
      return bareCall(node, moved)
    default:
      return node
  }
}

function bareCall(node: CallNode, moved: Aiming['moved']): CallNode {
  const parts = node.arguments.map((part, position) => (isOtherName(node, position) ? part : bare(part, moved)))
  return { ...node, arguments: parts }
}

/** Whether leaving roundings out can change what a formula comes to. */
function rounds(node: Expression, moved: Aiming['moved']): boolean {
  if (conditions.has(node.kind)) return false
  if (node.kind === 'round' || (node.kind === 'name' && moved.has(node.name))) return true
  return children(node).some((child, position) => !isOtherName(node, position) && rounds(child, moved))
}

function calculated(node: Expression, { settled, environment, values, moved }: Aiming): Numeric | null {
  if (!rounds(node, moved)) return null
  const findings: Diagnostic[] = []
  const names = { values, unsound: settled.unsound, known: [] }
  const scope: Scope = { environment, names, inGrading: true, findings, skipped: new Set() }
  const value = evaluateNumeric(bare(node, moved), scope)
  return findings.length > 0 ? null : value
}

/** The names that formulas lead to, each after those that it uses. */
export function namesBehind(formulas: readonly Expression[], settled: Settled): readonly string[] {
  const uses = new Map<string, ReadonlySet<string>>()
  const waiting = formulas.flatMap((formula) => [...namesIn(formula)])
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    const formula = settled.formulas.get(name)
    if (uses.has(name) || formula === undefined) continue
    const used = namesIn(formula)
    uses.set(name, used)
    waiting.push(...used)
  }
  return orderOf(uses).sorted
}

/** For each formula what it was to come to; null where nothing is rounded on the way to it, or that can't be told. */
export function asAimed(
  formulas: readonly Expression[],
  settled: Settled,
  environment: Environment,
): readonly (Numeric | null)[] {
  const aiming: Aiming = { settled, environment, values: new Map(settled.values), moved: new Set() }
  for (const name of namesBehind(formulas, settled)) {
    const formula = settled.formulas.get(name)
    const value = formula === undefined ? null : calculated(formula, aiming)
    if (value === null) continue
    aiming.values.set(aimed(name), value)
    aiming.moved.add(name)
  }
  return formulas.map((formula) => calculated(formula, aiming))
}
