import Fraction from 'fraction.js'
import type { Constraint, Count, Quotient, Unknown } from './demand.ts'
import { countAt } from './demand.ts'
import type { Problem } from './group.ts'
import { add, constant, type Linear, negate, subtract, unknown } from './linear.ts'
import type { Column, Program, Row, Term } from './program.ts'
import { haveWholeSolution } from './whole.ts'

/** The largest count that is looked for. */
export const largestCount = 100_000

/** Errors are counted in thousandths of a target, so that the solver's nine digits tell them apart. */
export const perError = 1000

/** A problem as the solver takes it: a column for each count's steps, its error, and each quotient in use. */
export interface Stated {
  readonly columns: readonly Column[]
  readonly rows: readonly Row[]
  readonly columnOf: ReadonlyMap<number, number>
  /** The column of each member's error, in the order of members. */
  readonly errors: readonly number[]
}

interface Building {
  readonly unknowns: readonly Unknown[]
  readonly columns: Column[]
  readonly rows: Row[]
  readonly columnOf: Map<number, number>
}

/**
 * States a problem under the given constraints, no error larger than `window`; null when that cannot be met, whatever the
 * counts are. In a narrow window the solver is faster by far.
 */
export function state(problem: Problem, constraints: readonly Constraint[], window: Fraction): Stated | null {
  const { unknowns, members } = problem
  const building: Building = { unknowns, columns: [], rows: [], columnOf: new Map() }
  const counts = members.flatMap((id) => countAt(unknowns, id))
  for (const [position, count] of counts.entries()) {
    building.columnOf.set(members[position] ?? -1, building.columns.push(stepsColumn(count, window)) - 1)
  }
  const errors = counts.map((count, column) => addError(count, column, building))
  if (building.columns.some(({ lower, upper }) => lower > upper)) return null
  const possible = constraints.every((constraint) => addConstraint(constraint, building))
  return possible && haveWholeSolution(building.rows, building.columns.length) ? { ...building, errors } : null
}

function stepsColumn(count: Count, window: Fraction): Column {
  const { of, plus, target } = count
  const steps = (bound: Fraction) => bound.sub(plus).div(of)
  const away = window.div(weightOf(count))
  const lower = larger(count.lower, target.sub(away))
  const upper = larger(count.upper.neg(), target.add(away).neg()).neg()
  return { lower: steps(lower).ceil().valueOf(), upper: steps(upper).floor().valueOf(), whole: true, cost: 0 }
}

function larger(a: Fraction, b: Fraction): Fraction {
  return a.gt(b) ? a : b
}

/** An error of 1 is the whole target away; of a target of 0, one stitch. */
export function weightOf({ target }: Count): Fraction {
  return target.n === 0n ? new Fraction(1) : target.abs().inverse()
}

/**
 * The error is at least what the count is above its target and below it, and, between the two neighbours of the target,
 * at least what lies on the line between their errors: no whole step is cut off, and the solver needs fewer tries.
 */
function addError(count: Count, steps: number, { columns, rows }: Building): number {
  const weight = weightOf(count).mul(perError)
  const slope = weight.mul(count.of)
  const atZero = weight.mul(count.plus.sub(count.target))
  const ends = [columns[steps]?.lower ?? 0, columns[steps]?.upper ?? 0]
  const upper = Math.max(...ends.map((end) => Math.abs(slope.valueOf() * end + atZero.valueOf())))
  const error = columns.push({ lower: 0, upper, whole: false, cost: 0 }) - 1
  const below = atZero.div(slope).neg().floor()
  const [near, far] = [below, below.add(1)].map((step) => slope.mul(step).add(atZero).abs())
  const line = (rise: Fraction, height: Fraction): Row => ({
    lower: height.valueOf(),
    upper: Number.POSITIVE_INFINITY,
    terms: [
      [error, 1],
      [steps, -rise.valueOf()],
    ],
  })
  rows.push(line(slope, atZero), line(slope.neg(), atZero.neg()))
  if (near !== undefined && far !== undefined) {
    const rise = far.sub(near)
    rows.push(line(rise, near.sub(rise.mul(below))))
  }
  return error
}

/** False when the constraint cannot hold. */
function addConstraint(constraint: Constraint, building: Building): boolean {
  const row = rowOf(constraint, building)
  if (row === null) return false
  if (row.terms.length > 0) building.rows.push(row)
  return true
}

/** The column of an unknown; a quotient gets one when it is first asked for, with what makes it the quotient. */
function columnFor(id: number, building: Building): number {
  const before = building.columnOf.get(id)
  if (before !== undefined) return before
  const one = building.unknowns[id]
  const range = one?.kind === 'quotient' ? rangeOf(one.base, building) : { lower: 0, upper: 0 }
  const column = building.columns.push({ ...range, whole: true, cost: 0 }) - 1
  building.columnOf.set(id, column)
  if (one?.kind === 'quotient') for (const bound of boundsOf(id, one)) addConstraint(bound, building)
  return column
}

/** Whole numbers that a sum and its rounding lie between: a solver is slow where a number could be anything. */
function rangeOf(sum: Linear, building: Building): { readonly lower: number; readonly upper: number } {
  const { terms, rest } = inSteps(sum, building)
  let [lower, upper] = [rest.valueOf(), rest.valueOf()]
  for (const [column, factor] of terms) {
    const { lower: least = 0, upper: most = 0 } = building.columns[column] ?? {}
    const ends = [least, most].map((end) => end * factor.valueOf())
    lower += Math.min(...ends)
    upper += Math.max(...ends)
  }
  return { lower: Math.floor(lower) - 1, upper: Math.ceil(upper) + 1 }
}

const half = new Fraction(1, 2)
const one = new Fraction(1)

/** Rounded down, a quotient is at most its base and more than its base less 1; a half goes up to the nearest. */
function boundsOf(id: number, { base, direction }: Quotient): readonly Constraint[] {
  const over = subtract(unknown(id), base)
  const allowed = { down: 0, nearest: half, up: one }[direction]
  const above: Linear = add(over, constant(new Fraction(allowed).neg()))
  return [
    { sum: above, relation: direction === 'up' ? '<' : '<=' },
    { sum: add(negate(above), constant(one.neg())), relation: direction === 'up' ? '<=' : '<' },
  ]
}

/** A constraint in whole numbers without a common divisor, exactly; null when no whole numbers can meet it. */
function rowOf({ sum, relation }: Constraint, building: Building): Row | null {
  const { terms, rest } = inSteps(sum, building)
  const scale = [...terms.values(), rest].reduce((least, { d }) => lcm(least, d), 1n)
  const whole = (value: Fraction) => value.s * value.n * (scale / value.d)
  const factors = [...terms].map(([column, factor]) => [column, whole(factor)] as const)
  const divisor = factors.reduce((common, [, factor]) => gcd(common, factor), 0n)
  const limit = -whole(rest) - (relation === '<' ? 1n : 0n)
  if (divisor === 0n) return limit === 0n || (limit > 0n && relation !== '=') ? { lower: 0, upper: 0, terms: [] } : null
  if (relation === '=' && limit % divisor !== 0n) return null
  const upper = Number(floorDivide(limit, divisor))
  return {
    lower: relation === '=' ? upper : Number.NEGATIVE_INFINITY,
    upper,
    terms: factors.map(([column, factor]): Term => [column, Number(factor / divisor)]),
  }
}

/** A sum of counts as a sum of their steps. */
function inSteps(sum: Linear, building: Building): { terms: ReadonlyMap<number, Fraction>; rest: Fraction } {
  const terms = new Map<number, Fraction>()
  let rest = sum.constant
  for (const [id, factor] of sum.terms) {
    const [count] = countAt(building.unknowns, id)
    terms.set(columnFor(id, building), count === undefined ? factor : factor.mul(count.of))
    if (count !== undefined) rest = rest.add(factor.mul(count.plus))
  }
  return { terms, rest }
}

function gcd(a: bigint, b: bigint): bigint {
  return b === 0n ? (a < 0n ? -a : a) : gcd(b, a % b)
}

function lcm(a: bigint, b: bigint): bigint {
  return (a / gcd(a, b)) * b
}

function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b
  return a % b < 0n ? quotient - 1n : quotient
}

/** The problem with something to be made least: a cost for some columns, and rows beside its own. */
export function aim(stated: Stated, costs: ReadonlyMap<number, number>, rows: readonly Row[] = []): Program {
  const columns = stated.columns.map((column, index) => ({ ...column, cost: costs.get(index) ?? 0 }))
  return { columns, rows: [...stated.rows, ...rows] }
}
