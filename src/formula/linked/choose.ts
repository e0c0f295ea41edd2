import Fraction from 'fraction.js'
import type { Choice, Counts } from './choice.ts'
import type { Constraint, Demand } from './demand.ts'
import { countAt, holds, isMet, knownFrom } from './demand.ts'
import { isBetter, sumOfErrors } from './errors.ts'
import type { Problem } from './group.ts'
import { add, constant, type Linear } from './linear.ts'
import type { Solver } from './program.ts'
import { countsFrom, leastErrors } from './stages.ts'
import { aim, state } from './state.ts'

/** More tries than needs with several ways ever take; beyond it a problem is given up. */
const mostTries = 100

/** Beyond every error, also where the target is a small part of a stitch. */
const widest = new Fraction(10n ** 30n)

/** How many targets a count may stray from its own. The first is enough for all but odd drafts, and the wider, the slower. */
const nearby = new Fraction(1)
const wider = [...[8, 64, 512].map((window) => new Fraction(window)), widest]

/**
 * The counts that meet all demands with the least sum of relative errors; of these, with the smallest largest error;
 * of these, the smaller count, in the order of members. Every answer of the solver is tested exactly.
 */
export function choose(problem: Problem, solver: Solver | null): Choice {
  const wish = nearest(problem)
  if (wish === null) return { kind: 'impossible' }
  if (unmet(problem, wish) === undefined) return { kind: 'chosen', counts: wish }
  return search(problem, solver, 'best')
}

/** Whether any counts meet all demands. */
export function findAny(problem: Problem, solver: Solver | null): Choice['kind'] {
  return search(problem, solver, 'any').kind
}

/** Each count nearest to its target on its grid, the smaller of two; null when a grid has nothing within bounds. */
function nearest({ unknowns, members }: Problem): Counts | null {
  const counts = new Map<number, Fraction>()
  for (const id of members) {
    for (const { target, of, plus, lower, upper } of countAt(unknowns, id)) {
      const steps = (count: Fraction) => count.sub(plus).div(of)
      const [least, most] = [steps(lower).ceil(), steps(upper).floor()]
      const wanted = steps(target).sub(new Fraction(1, 2)).ceil()
      if (least.gt(most)) return null
      const step = wanted.lt(least) ? least : wanted.gt(most) ? most : wanted
      counts.set(id, step.mul(of).add(plus))
    }
  }
  return counts
}

function unmet({ unknowns, demands }: Problem, counts: Counts): Demand | undefined {
  const known = knownFrom(unknowns, counts)
  return demands.find((demand) => !isMet(demand, known))
}

/** What must hold however the demands are met. */
function binding({ demands }: Problem): readonly Constraint[] {
  return demands.flatMap(({ ways }) => (ways.length === 1 ? (ways[0] ?? []) : []))
}

/** The counts, not too far from their targets, that meet all demands with the least value of a sum; null when there are none. */
export function leastOf(problem: Problem, sum: Linear, solver: Solver): Counts | null {
  const stated = state(problem, [...binding(problem), anything(sum)], nearby)
  if (stated === null) return null
  const costs = [...sum.terms].flatMap(([id, factor]) => {
    const column = stated.columnOf.get(id)
    const [count] = countAt(problem.unknowns, id)
    return column === undefined ? [] : [[column, factor.mul(count?.of ?? 1).valueOf()] as const]
  })
  const choice = countsFrom(problem, stated, solver(aim(stated, new Map(costs))))
  return choice.kind === 'chosen' && unmet(problem, choice.counts) === undefined ? choice.counts : null
}

/** Asks nothing, and gives every part of the sum its column. */
function anything(sum: Linear): Constraint {
  return { sum: add(sum, constant(new Fraction(-1e12))), relation: '<=' }
}

/**
 * Demands that can be met in one way only hold from the start. Where the best counts break one that can be met in
 * several, each way is tried in turn.
 */
function search(problem: Problem, solver: Solver | null, wanted: 'best' | 'any'): Choice {
  const open: (readonly Constraint[])[] = [binding(problem)]
  let best: Counts | null = null
  for (let tries = 0; open.length > 0; tries += 1) {
    const constraints = open.pop() ?? []
    const found: Choice = tries < mostTries ? tryWith(problem, constraints, solver, wanted) : { kind: 'undecided' }
    if (found.kind === 'undecided') return found
    if (found.kind === 'impossible' || (best !== null && !isBetter(problem, found.counts, best))) continue
    const broken = unmet(problem, found.counts)
    if (broken === undefined && wanted === 'any') return found
    if (broken === undefined) best = found.counts
    else open.push(...broken.ways.map((way) => [...constraints, ...way]).reverse())
  }
  return best === null ? { kind: 'impossible' } : { kind: 'chosen', counts: best }
}

/** What lies within a window is the best of all when even one error beyond it would be worse. */
function tryWith(
  problem: Problem,
  constraints: readonly Constraint[],
  solver: Solver | null,
  wanted: 'best' | 'any',
): Choice {
  const within = (window: Fraction, what: 'best' | 'any') => tryWithin(window, problem, constraints, solver, what)
  let found = within(nearby, wanted)
  if (found.kind === 'impossible') {
    const any = within(widest, 'any')
    if (any.kind !== 'chosen' || wanted === 'any') return any
  }
  for (const window of wider) if (found.kind === 'impossible') found = within(window, wanted)
  if (found.kind !== 'chosen' || wanted === 'any') return found
  const sum = sumOfErrors(problem, found.counts)
  return sum.lte(nearby) ? found : within(sum, 'best')
}

/** An answer that breaks a constraint when reckoned exactly is none. */
function tryWithin(
  window: Fraction,
  problem: Problem,
  constraints: readonly Constraint[],
  solver: Solver | null,
  wanted: 'best' | 'any',
): Choice {
  const stated = state(problem, constraints, window)
  if (stated === null) return { kind: 'impossible' }
  if (solver === null) return { kind: 'undecided' }
  const sound = (counts: Counts) => {
    const known = knownFrom(problem.unknowns, counts)
    return constraints.every((constraint) => holds(constraint, known))
  }
  if (wanted === 'any') return kept(countsFrom(problem, stated, solver(aim(stated, new Map()))), sound)
  const stages = leastErrors(problem, stated, solver, window)
  return stages.map((stage) => kept(stage, sound)).reduce((a, b) => betterOf(problem, a, b))
}

function kept(choice: Choice, sound: (counts: Counts) => boolean): Choice {
  return choice.kind === 'chosen' && !sound(choice.counts) ? { kind: 'undecided' } : choice
}

/** A later stage only refines an earlier one: what it cannot decide, or decides wrongly by a rounding, is left. */
function betterOf(problem: Problem, earlier: Choice, later: Choice): Choice {
  if (earlier.kind !== 'chosen' || later.kind !== 'chosen') return earlier
  return isBetter(problem, later.counts, earlier.counts) ? later : earlier
}
