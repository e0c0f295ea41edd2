import type Fraction from 'fraction.js'
import type { Choice } from './choice.ts'
import type { Count } from './demand.ts'
import { countAt } from './demand.ts'
import { largestError, sumOfErrors } from './errors.ts'
import type { Problem } from './group.ts'
import type { Answer, Row, Solver } from './program.ts'
import type { Stated } from './state.ts'
import { aim, perError, weightOf } from './state.ts'

/** Errors that differ by less, in thousandths of a target, are taken as equal by the solver; what it finds is compared exactly. */
const slack = 1e-7

/** Orders up to this many combinations of counts are told apart in one go: their weights stay exact. */
const mostCombinations = 1e6

/**
 * What the solver finds at each stage, each stage keeping what those before have reached: the least sum of errors, the
 * smallest largest error, the smallest counts in order. Ends with the first stage that finds nothing, and with the first
 * of all when its errors come to more than the window that bounds each: there may be better counts outside.
 */
export function leastErrors(problem: Problem, stated: Stated, solver: Solver, window: Fraction): readonly Choice[] {
  const { errors } = stated
  const sum = solver(aim(stated, new Map(errors.map((error) => [error, 1]))))
  const first = countsFrom(problem, stated, sum)
  if (sum.kind !== 'solved' || first.kind !== 'chosen' || sumOfErrors(problem, first.counts).gt(window)) return [first]
  const least = errors.reduce((total, error) => total + (sum.values[error] ?? 0), 0)
  const within = atMost(errors, least + slack)
  const second = countsFrom(problem, stated, solver(smallestLargest(stated, within)))
  if (second.kind !== 'chosen') return [first]
  const largest = largestError(problem, second.counts)
  return [first, second, smallestCounts(problem, stated, solver, within, largest)]
}

function atMost(columns: readonly number[], upper: number): Row {
  return { lower: Number.NEGATIVE_INFINITY, upper, terms: columns.map((column) => [column, 1]) }
}

/** One more column, no smaller than any error, made least. */
function smallestLargest(stated: Stated, within: Row) {
  const { errors, columns } = stated
  const largest = columns.length
  const above = errors.map(
    (error): Row => ({
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
      terms: [
        [largest, 1],
        [error, -1],
      ],
    }),
  )
  const program = aim(stated, new Map(), [within, ...above])
  const upper = Math.max(...errors.map((error) => columns[error]?.upper ?? 0))
  const column = { lower: 0, upper, whole: false, cost: 1 }
  return { ...program, columns: [...program.columns, column] }
}

/**
 * The smallest counts in order, as the digits of one number: with few steps left for each, several are found at once,
 * then held while the next are found.
 */
function smallestCounts(problem: Problem, stated: Stated, solver: Solver, within: Row, largest: Fraction): Choice {
  const limits = stated.errors.map((error) => atMost([error], largest.valueOf() * perError + slack))
  const steps = problem.members.flatMap((id) =>
    countAt(problem.unknowns, id).map((count) => stepsWithin(count, largest)),
  )
  let found: Choice = { kind: 'undecided' }
  let held: readonly Row[] = []
  for (let from = 0; from < steps.length; ) {
    const to = endOfRun(steps, from)
    const answer = solver(aim(stated, digits(steps, from, to), [within, ...limits, ...held]))
    found = countsFrom(problem, stated, answer)
    if (answer.kind !== 'solved') return found
    held = [...held, ...range(from, to).map((column) => exactly(column, Math.round(answer.values[column] ?? 0)))]
    from = to
  }
  return found
}

/** How many steps of a count, at most, lie within an error. */
function stepsWithin(count: Count, largest: Fraction): number {
  return largest.mul(2).div(weightOf(count)).div(count.of).valueOf() + 2
}

/** As many columns from here as can be weighed against each other; always one. */
function endOfRun(steps: readonly number[], from: number): number {
  let combinations = 1
  let to = from
  while (to < steps.length && (to === from || combinations * (steps[to] ?? 1) <= mostCombinations)) {
    combinations *= steps[to] ?? 1
    to += 1
  }
  return to
}

function digits(steps: readonly number[], from: number, to: number): ReadonlyMap<number, number> {
  const costs = new Map<number, number>()
  let weight = 1
  for (const column of range(from, to).reverse()) {
    costs.set(column, weight)
    weight *= Math.ceil(steps[column] ?? 1)
  }
  return costs
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from }, (_, index) => from + index)
}

function exactly(column: number, value: number): Row {
  return { lower: value, upper: value, terms: [[column, 1]] }
}

/** The members' counts; their columns come first, in their order. */
export function countsFrom({ unknowns, members }: Problem, stated: Stated, answer: Answer): Choice {
  if (answer.kind !== 'solved') return answer
  const counts = new Map<number, Fraction>()
  for (const id of members) {
    const steps = Math.round(answer.values[stated.columnOf.get(id) ?? -1] ?? 0)
    for (const { of, plus } of countAt(unknowns, id)) counts.set(id, of.mul(steps).add(plus))
  }
  return { kind: 'chosen', counts }
}
