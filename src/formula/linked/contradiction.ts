import { findAny } from './choose.ts'
import { namesOf, type Problem, sizesOf } from './group.ts'
import type { Solver } from './program.ts'
import { free } from './unknowns.ts'

/** What cannot hold together: taking out any one of these leaves the rest possible. */
export interface Contradiction {
  /** Positions among the draft's needs, in the order of the draft. */
  readonly needs: readonly number[]
  /** Counts whose grid or bound has a part in it, by name. */
  readonly grids: readonly string[]
  readonly sizes: readonly number[]
}

/** Sets of needs that are tried in search of a smaller one; drafts with more keep a set from which nothing can be left out. */
const mostSets = 300

/** A smallest set of needs that no counts meet together, of a problem that is impossible. */
export function contradictionIn(problem: Problem, solver: Solver): Contradiction {
  const impossible = (needs: readonly number[]) => isImpossible(limitedTo(problem, needs), solver)
  const all = [...new Set(problem.demands.map(({ need }) => need))].sort((a, b) => a - b)
  const needs = smallest(leaveOut(all, impossible), all, impossible)
  const narrow = narrowed(limitedTo(problem, needs), solver)
  const sizes = [...new Set([...sizesIn(narrow), ...sizesAlone(limitedTo(problem, needs), solver)])]
  return { needs, grids: gridsIn(narrow, solver), sizes: sizes.sort((a, b) => a - b) }
}

export function isImpossible(problem: Problem, solver: Solver): boolean {
  return findAny(problem, solver) === 'impossible'
}

/** Whether another problem is impossible for the same reason. */
export function stillImpossible(problem: Problem, { needs, grids }: Contradiction, solver: Solver): boolean {
  const others = namesOf(problem).filter((name) => !grids.includes(name))
  return isImpossible(free(limitedTo(problem, needs), others), solver)
}

/** The problem without any but these needs. */
export function limitedTo(problem: Problem, needs: readonly number[]): Problem {
  return { ...problem, demands: problem.demands.filter(({ need }) => needs.includes(need)) }
}

/** Leaves out, from the last, everything without which the rest is still impossible. */
function leaveOut<T>(all: readonly T[], impossible: (kept: readonly T[]) => boolean): readonly T[] {
  return all.reduceRight((kept, one) => {
    const rest = kept.filter((other) => other !== one)
    return impossible(rest) ? rest : kept
  }, all)
}

/** A set from which nothing can be left out need not be the smallest: smaller ones are tried while there are few. */
function smallest(
  found: readonly number[],
  all: readonly number[],
  impossible: (kept: readonly number[]) => boolean,
): readonly number[] {
  let left = mostSets
  for (let size = 1; size < found.length; size += 1) {
    for (const set of subsets(all, size)) {
      if (left === 0) return found
      left -= 1
      if (impossible(set)) return set
    }
  }
  return found
}

function* subsets(all: readonly number[], size: number, from = 0): Generator<readonly number[]> {
  if (size === 0) yield []
  for (let index = from; index <= all.length - size && size > 0; index += 1) {
    const first = all[index]
    if (first === undefined) return
    for (const rest of subsets(all, size - 1, index + 1)) yield [first, ...rest]
  }
}

/** Only the sizes that it takes: where sizes are compared with each other, a need asks something of each. */
function narrowed(problem: Problem, solver: Solver): Problem {
  const demands = leaveOut(problem.demands, (kept) => isImpossible({ ...problem, demands: kept }, solver))
  return { ...problem, demands }
}

function sizesIn(problem: Problem): readonly number[] {
  const sizes = problem.demands.flatMap((demand) => demand.sizes)
  return sizes.length === 0 ? sizesOf([problem]) : [...new Set(sizes)].sort((a, b) => a - b)
}

/** Where sizes are compared with each other: those in which the needs contradict each other without the others. */
function sizesAlone(problem: Problem, solver: Solver): readonly number[] {
  const all = sizesOf([problem])
  return all.length < 2 ? [] : all.filter((size) => isImpossible(atSize(problem, size), solver))
}

function atSize(problem: Problem, size: number): Problem {
  return { ...problem, demands: problem.demands.filter(({ sizes }) => sizes.every((one) => one === size)) }
}

/** The counts that must keep their grid for the contradiction to stand. */
function gridsIn(problem: Problem, solver: Solver): readonly string[] {
  const names = namesOf(problem)
  return leaveOut(names, (kept) => {
    const others = names.filter((name) => !kept.includes(name))
    return isImpossible(free(problem, others), solver)
  })
}
