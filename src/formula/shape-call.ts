import Fraction from 'fraction.js'
import type { Numeric, PerSize, Words } from '../measure/index.ts'
import { isWhole, shareOf, sizesWhere } from '../measure/index.ts'
import { describeCell } from './describe.ts'
import { evaluateNumeric } from './evaluate.ts'
import { excerpt } from './print.ts'
import type { Scope } from './scope.ts'
import { concerned, report } from './scope.ts'
import type { Shaped, ShapingName, ShapingProblem } from './shaping.ts'
import type { CallNode, Expression } from './tree.ts'

/** The steps of a shaping phrase for every size. Null, with a finding, where some size's cannot be worked. */
export function evaluateShaping(name: ShapingName, node: CallNode, scope: Scope): Words | null {
  const counts = countsOf(node, scope)
  if (counts === null) return null
  const words = node.arguments.flatMap((argument) => (argument.kind === 'text' ? [argument.text] : []))
  const shaped = counts.map((own) => (own === null ? null : scope.environment.shape(name, own, words)))
  const troubled = concerned(
    scope,
    sizesWhere(shaped, (each) => each !== null && each.problem !== null),
  )
  if (troubled.length > 0) return reportProblems(shaped, troubled, node, scope)
  return { kind: 'text', unit: null, phrase: true, bySize: shaped.map((each) => each?.words ?? null) }
}

/** One share of a total: `share_of(92, 3, 2)` is the second of three. */
export function shareOfTotal(node: CallNode, scope: Scope): Numeric | null {
  const counts = countsOf(node, scope)
  if (counts === null) return null
  const wrong = concerned(
    scope,
    sizesWhere(counts, (own) => own !== null && shareProblem(own) !== null),
  )
  if (wrong.length > 0) {
    const problems = counts.map((own) => ({ words: null, problem: own === null ? null : shareProblem(own) }))
    return reportProblems(problems, wrong, node, scope)
  }
  const bySize = counts.map((own) => {
    const [total = 0, parts = 1, which = 1] = own ?? []
    return own === null ? null : new Fraction(shareOf(total, parts, which))
  })
  return { kind: 'count', unit: null, bySize }
}

function shareProblem([total = 0, parts = 1, which = 1]: readonly number[]): ShapingProblem | null {
  if (total < 0 || total > mostStitches)
    return { kind: 'range', argument: 0, found: total, least: 0, most: mostStitches }
  if (parts < 1 || parts > mostParts) return { kind: 'range', argument: 1, found: parts, least: 1, most: mostParts }
  return which < 1 || which > parts ? { kind: 'range', argument: 2, found: which, least: 1, most: parts } : null
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
  report(scope, 'count-not-whole', argument.at, { formula: excerpt(argument), cases }, sizes)
  return false
}

type Found = PerSize<Shaped | { readonly problem: ShapingProblem | null } | null>

/** One cause, one finding: the first size's, with all sizes that have the same. */
function reportProblems(shaped: Found, troubled: readonly number[], node: CallNode, scope: Scope): null {
  const first = problemOf(shaped, troubled[0])
  if (first === null) return null
  const sizes = troubled.filter((size) => isLike(first, problemOf(shaped, size)))
  const cases = sizes.flatMap((size) => {
    const problem = problemOf(shaped, size)
    return problem === null ? [] : [{ size: scope.environment.sizes[size] ?? '', said: said(problem) }]
  })
  const details = { formula: excerpt(node), phrase: node.name, cases }
  if (first.kind !== 'range') return report(scope, `shaping-${first.kind}`, node.at, details, sizes)
  const argument = node.arguments[first.argument] ?? node
  const { least, most } = first
  return report(scope, 'shaping-range', argument.at, { argument: excerpt(argument), least, most, cases }, sizes)
}

function problemOf(shaped: Found, size: number | undefined): ShapingProblem | null {
  return shaped[size ?? -1]?.problem ?? null
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
