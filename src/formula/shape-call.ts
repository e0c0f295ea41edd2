import Fraction from 'fraction.js'
import type { Numeric, PerSize, Words } from '../measure/index.ts'
import { isWhole, shareOf, sizesWhere } from '../measure/index.ts'
import { describeCell } from './describe.ts'
import { evaluateNumeric } from './evaluate.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import { concerned, report } from './scope.ts'
import type { ShapingName, ShapingProblem } from './shaping.ts'
import type { CallNode, Expression } from './tree.ts'

/** The steps of a shaping phrase for every size. Null, with a finding, where some size's cannot be worked. */
export function evaluateShaping(name: ShapingName, node: CallNode, scope: Scope): Words | null {
  const counts = countsOf(node, scope)
  if (counts === null) return null
  const words = node.arguments.flatMap((argument) => (argument.kind === 'text' ? [argument.text] : []))
  const shaped = counts.map((own) => (own === null ? null : scope.environment.shape(name, own, words)))
  const problems = shaped.map((each) => each?.problem ?? null)
  if (reportProblems(problems, node, scope)) return null
  return { kind: 'text', unit: null, phrase: true, bySize: shaped.map((each) => each?.words ?? null) }
}

/** One share of a total: `share_of(92, 3, 2)` is the second of three. */
export function shareOfTotal(node: CallNode, scope: Scope): Numeric | null {
  const counts = countsOf(node, scope)
  if (counts === null) return null
  const problems = counts.map((own) => (own === null ? null : shareProblem(own)))
  if (reportProblems(problems, node, scope)) return null
  const bySize = counts.map((own, size) => {
    const [total = 0, parts = 1, which = 1] = own ?? []
    return own === null || problems[size] !== null ? null : new Fraction(shareOf(total, parts, which))
  })
  return { kind: 'count', unit: null, bySize }
}

function shareProblem([total = 0, parts = 1, which = 1]: readonly number[]): ShapingProblem | null {
  return outside(0, total, 0, mostStitches) ?? outside(1, parts, 1, mostParts) ?? outside(2, which, 1, parts)
}

function outside(argument: number, found: number, least: number, most: number): ShapingProblem | null {
  return found < least || found > most ? { kind: 'range', argument, found, least, most } : null
}

const mostStitches = 20_000
const mostParts = 200

/** Whole numbers of every size, in the order of the arguments; null for a size to which one of them does not apply. */
function countsOf(node: CallNode, scope: Scope): PerSize<readonly number[] | null> | null {
  const values: Numeric[] = []
  for (const argument of node.arguments) {
    if (argument.kind === 'text') continue
    const value = evaluateNumeric(argument, scope)
    if (value === null || !checkWhole(argument, value, scope)) return null
    values.push(value)
  }
  return scope.environment.sizes.map((_, size) => {
    const own = values.map(({ bySize }) => bySize[size] ?? null)
    const whole = own.flatMap((cell) => (cell !== null && isWhole(cell) ? [cell.valueOf()] : []))
    return whole.length === own.length ? whole : null
  })
}

function checkWhole(argument: Expression, value: Numeric, scope: Scope): boolean {
  const sizes = concerned(
    scope,
    sizesWhere(value.bySize, (cell) => cell !== null && !isWhole(cell)),
  )
  if (sizes.length === 0) return true
  const cases = sizes.map((size) => `${scope.environment.sizes[size]}: ${describeCell(value, size)}`).join('; ')
  report(scope, 'count-not-whole', argument.at, { formula: excerpt(argument), name: null, cases }, sizes)
  return false
}

/** One cause, one finding: the first size's, with all sizes that have the same. True when there was one. */
function reportProblems(problems: PerSize<ShapingProblem | null>, node: CallNode, scope: Scope): boolean {
  const troubled = concerned(
    scope,
    sizesWhere(problems, (problem) => problem !== null),
  )
  const first = problems[troubled[0] ?? -1] ?? null
  if (first === null) return false
  const sizes = troubled.filter((size) => isLike(first, problems[size] ?? null))
  const cases = sizes.flatMap((size) => {
    const problem = problems[size] ?? null
    return problem === null ? [] : [{ size: scope.environment.sizes[size] ?? '', said: said(problem) }]
  })
  reportProblem(first, cases, sizes, node, scope)
  return true
}

function reportProblem(
  problem: ShapingProblem,
  cases: readonly { readonly size: string; readonly said: string }[],
  sizes: readonly number[],
  node: CallNode,
  scope: Scope,
): void {
  if (problem.kind !== 'range') {
    report(scope, `shaping-${problem.kind}`, node.at, { formula: excerpt(node), phrase: node.name, cases }, sizes)
    return
  }
  const argument = node.arguments[problem.argument] ?? node
  const { least, most } = problem
  report(scope, 'shaping-range', argument.at, { argument: excerpt(argument), least, most, cases }, sizes)
}

function isLike(first: ShapingProblem, other: ShapingProblem | null): boolean {
  if (first.kind !== 'range') return other?.kind === first.kind
  return other?.kind === 'range' && other.argument === first.argument
}

function said(problem: ShapingProblem): string {
  switch (problem.kind) {
    case 'range':
      return String(problem.found)
    case 'rows':
      return `${problem.shaped} to shape in ${problem.rows}`
    case 'stitches':
      return `${problem.needed} needed, ${problem.there} there`
    case 'odd':
    case 'direction':
      return `from ${problem.from} to ${problem.to}`
  }
}
