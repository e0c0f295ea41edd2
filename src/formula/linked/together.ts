import type Fraction from 'fraction.js'
import type { Choice, Counts } from './choice.ts'
import { choose } from './choose.ts'
import { countAt, type Demand, isMet, knownFrom, type Unknown } from './demand.ts'
import { reachOf } from './demands.ts'
import { type Problem, problemsOf } from './group.ts'
import type { Solver } from './program.ts'

/** All counts that could be chosen, and the problems that could not be solved. */
export interface Solved {
  readonly chosen: Counts
  readonly impossible: readonly Problem[]
  readonly undecided: readonly Problem[]
}

/**
 * Chooses the counts of each size by themselves. Where that breaks a need that compares sizes, its sizes are chosen
 * together: a need that holds anyway changes nothing.
 */
export function chooseAll(unknowns: readonly Unknown[], demands: readonly Demand[], solver: Solver | null): Solved {
  const reached = new Map(demands.map((demand) => [demand, reachOf(demand, unknowns)]))
  const apart = new Set(demands.filter((demand) => sizesAmong(reached.get(demand) ?? [], unknowns) > 1))
  const known = new Map<string, Choice>()
  for (;;) {
    const inForce = demands.filter((demand) => !apart.has(demand))
    const solved = solveEach(problemsOf(unknowns, inForce), known, solver)
    const value = knownFrom(unknowns, solved.chosen)
    const isChosen = (id: number) => unknowns[id]?.kind !== 'count' || solved.chosen.has(id)
    const broken = [...apart].filter(
      (demand) => [...(reached.get(demand) ?? [])].every(isChosen) && !isMet(demand, value),
    )
    if (broken.length === 0) return solved
    const needs = new Set(broken.map(({ need }) => need))
    for (const demand of apart) if (needs.has(demand.need)) apart.delete(demand)
  }
}

function sizesAmong(ids: Iterable<number>, unknowns: readonly Unknown[]): number {
  return new Set([...ids].flatMap((id) => countAt(unknowns, id).map(({ size }) => size))).size
}

/** Problems to which no need has been added keep what was chosen. */
function solveEach(problems: readonly Problem[], known: Map<string, Choice>, solver: Solver | null): Solved {
  const chosen = new Map<number, Fraction>()
  const failed: Record<'impossible' | 'undecided', Problem[]> = { impossible: [], undecided: [] }
  for (const problem of problems) {
    const key = `${problem.members.join()} ${problem.demands.length}`
    const choice = known.get(key) ?? choose(problem, solver)
    known.set(key, choice)
    if (choice.kind === 'chosen') for (const [id, count] of choice.counts) chosen.set(id, count)
    else failed[choice.kind].push(problem)
  }
  return { chosen, ...failed }
}
