import type { PerSize } from '../../measure/index.ts'
import { evaluateCondition } from '../condition.ts'
import type { CompareNode, Comparison, Expression, IsNode, LogicNode, TrendNode } from '../tree.ts'
import type { Constraint } from './demand.ts'
import { follow, stepsOf } from './follow.ts'
import { addForms, type Form, negateForm, onlySum } from './form.ts'
import { add, constant, type Linear, negate, scale, subtract, unknown } from './linear.ts'
import type { Survey } from './survey.ts'
import { isLinked, lose } from './survey.ts'

/** Ways in which a condition can come true: each is a list of constraints that hold together. None: it cannot. */
export type Ways = readonly (readonly Constraint[])[]

/** More ways than any need has; the limit keeps `and` beside `or` from multiplying without end. */
const most = 64

const always: Ways = [[]]
const never: Ways = []

/**
 * The ways in which a checked condition comes out as `wanted` for one size; `none` where it does not apply,
 * `lost` where it cannot be followed to the linked counts.
 */
export function waysTo(wanted: boolean, node: Expression, size: number, survey: Survey): Ways | 'none' | 'lost' {
  if (!isLinked(node, survey)) return waysGiven(wanted, node, size, survey)
  switch (node.kind) {
    case 'compare':
      return waysToCompare(wanted, node, size, survey)
    case 'logic':
      return waysToJoin(wanted, node, size, survey)
    case 'not':
      return waysTo(!wanted, node.operand, size, survey)
    case 'is':
      return waysToFit(wanted, node, size, survey)
    case 'trend':
      return waysToTrend(wanted, node, survey)
    default:
      return lose(node, 'other', survey)
  }
}

function waysGiven(wanted: boolean, node: Expression, size: number, survey: Survey): Ways | 'none' | 'lost' {
  const truth = evaluateCondition(node, survey.scope)?.bySize[size]
  if (truth === undefined) return 'lost'
  return truth === null ? 'none' : truth === wanted ? always : never
}

const opposite: Readonly<Record<Comparison, Comparison>> = {
  '=': '!=',
  '!=': '=',
  '<': '>=',
  '>=': '<',
  '>': '<=',
  '<=': '>',
}

function waysToCompare(wanted: boolean, node: CompareNode, size: number, survey: Survey): Ways | 'none' | 'lost' {
  const left = follow(node.left, size, survey)
  const right = follow(node.right, size, survey)
  if (left === 'lost' || right === 'lost') return 'lost'
  const operator = wanted ? node.operator : opposite[node.operator]
  if (node.left.kind === 'none' || node.right.kind === 'none') {
    return (left === right) === (operator === '=') ? always : never
  }
  if (left === 'none' || right === 'none') return 'none'
  const difference = addForms(left, negateForm(right))
  return difference === null ? lose(node, 'extremes', survey) : compareWithZero(difference, operator)
}

/** What it takes that a form stands in a relation to 0: the largest is below it when all are, above when one is. */
export function compareWithZero(form: Form, operator: Comparison): Ways {
  if (form.takes === 'min') return compareWithZero(negateForm(form), mirrored[operator])
  const below = (relation: '<=' | '<') => form.of.map((sum): Constraint => ({ sum, relation }))
  const above = (relation: '<=' | '<') => form.of.map((sum): Constraint => ({ sum: negate(sum), relation }))
  const only = onlySum(form)
  switch (operator) {
    case '<=':
    case '<':
      return [below(operator)]
    case '>=':
      return above('<=').map((one) => [one])
    case '>':
      return above('<').map((one) => [one])
    case '=':
      return only === null ? above('<=').map((one) => [one, ...below('<=')]) : [[{ sum: only, relation: '=' }]]
    case '!=':
      return [below('<'), ...above('<').map((one) => [one])]
  }
}

const mirrored: Readonly<Record<Comparison, Comparison>> = {
  '=': '=',
  '!=': '!=',
  '<': '>',
  '<=': '>=',
  '>': '<',
  '>=': '<=',
}

function waysToJoin(wanted: boolean, node: LogicNode, size: number, survey: Survey): Ways | 'none' | 'lost' {
  const left = waysTo(wanted, node.left, size, survey)
  const right = waysTo(wanted, node.right, size, survey)
  if (left === 'lost' || right === 'lost') return 'lost'
  if (left === 'none' || right === 'none') return 'none'
  const both = (node.operator === 'and') === wanted
  if ((both ? left.length * right.length : left.length + right.length) > most) return lose(node, 'other', survey)
  return both ? left.flatMap((one) => right.map((other) => [...one, ...other])) : [...left, ...right]
}

/** `x is multiple of 6 + 1`: the number of sixes, rounded down, leaves nothing over, or something. */
function waysToFit(wanted: boolean, node: IsNode, size: number, survey: Survey): Ways | 'none' | 'lost' {
  const cell = follow(node.operand, size, survey)
  if (typeof cell === 'string') return cell
  const sum = onlySum(cell)
  if (sum === null) return lose(node, 'extremes', survey)
  const steps = stepsOf(node.grid, size, survey)
  if (typeof steps === 'string') return steps === 'linked' ? lose(node, 'other', survey) : steps
  const base = scale(add(sum, constant(steps.plus.neg())), steps.of.inverse())
  const id = survey.unknowns.push({ kind: 'quotient', base, direction: 'down' }) - 1
  const over = subtract(unknown(id), base)
  return [[{ sum: over, relation: wanted ? '=' : '<' }]]
}

/** Across sizes, so it is the same for every size. */
function waysToTrend(wanted: boolean, node: TrendNode, survey: Survey): Ways | 'lost' {
  const steps = trendSteps(node, survey)
  if (steps === 'lost') return 'lost'
  if (wanted) return [steps.flatMap(({ way }) => way)]
  return steps.flatMap(({ difference }) => compareWithZero({ takes: 'max', of: [difference] }, against[node.trend]))
}

const towards = { rises: '>', falls: '<', steady: '=' } as const
const against = { rises: '<=', falls: '>=', steady: '!=' } as const

export interface TrendStep {
  /** The size before, that has a number, and this one. */
  readonly sizes: readonly [number, number]
  /** What this size has more than the one before. */
  readonly difference: Linear
  readonly way: readonly Constraint[]
}

/** What a trend asks of each size and the one before; a size without a number is passed over. */
export function trendSteps(node: TrendNode, survey: Survey): readonly TrendStep[] | 'lost' {
  const cells: PerSize<Form | 'none' | 'lost'> = survey.scope.environment.sizes.map((_, size) =>
    follow(node.operand, size, survey),
  )
  const steps: TrendStep[] = []
  let before: { readonly size: number; readonly sum: Linear } | null = null
  for (const [size, cell] of cells.entries()) {
    if (cell === 'none') continue
    const sum = cell === 'lost' ? null : onlySum(cell)
    if (sum === null) return cell === 'lost' ? 'lost' : lose(node, 'extremes', survey)
    if (before !== null) steps.push(trendStep(node, before, { size, sum }))
    before = { size, sum }
  }
  return steps
}

function trendStep(
  { trend }: TrendNode,
  before: { readonly size: number; readonly sum: Linear },
  here: { readonly size: number; readonly sum: Linear },
): TrendStep {
  const difference = subtract(here.sum, before.sum)
  const [way = []] = compareWithZero({ takes: 'max', of: [difference] }, towards[trend])
  return { sizes: [before.size, here.size], difference, way }
}
