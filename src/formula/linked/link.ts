import type { Numeric, PerSize } from '../../measure/index.ts'
import { wantCondition } from '../check.ts'
import type { Scope } from '../scope.ts'
import { report } from '../scope.ts'
import type { Expression } from '../tree.ts'
import type { Demand, Unknown } from './demand.ts'
import { demandsOf } from './demands.ts'
import { explain } from './explain.ts'
import { namesOf, type Problem, sizesOf } from './group.ts'
import type { Answer, Solver } from './program.ts'
import type { Survey } from './survey.ts'
import { chooseAll } from './together.ts'
import { standIns, valuesOf } from './trial.ts'
import { countsOf, type Link, type Wish, wishOf } from './wish.ts'

/** More linked counts than any piece has. */
const mostLinks = 64

/** What the choosing of linked counts needs of a draft. */
export interface Linkage {
  readonly links: ReadonlyMap<string, Link>
  /** Definitions that depend on linked counts, each after those that it uses. */
  readonly formulas: ReadonlyMap<string, Expression>
  readonly needs: readonly Expression[]
  /** All other names have been calculated. */
  readonly scope: Scope
}

/**
 * Chooses all linked counts of a draft together, so that every need on them holds. A name without a value in the result
 * is unsound, which has been reported; what is chosen may still break a need, where that need has a finding of its own.
 */
export function chooseLinked(linkage: Linkage): ReadonlyMap<string, Numeric> {
  const { links, formulas, scope } = linkage
  const waiting = new Set([...links.keys(), ...formulas.keys()])
  const wishes = [...links.values()].flatMap((link) => wishOf(link, waiting, scope) ?? [])
  const tooMany = wishes[mostLinks]
  if (tooMany !== undefined) {
    report(scope, 'linked-too-many', tooMany.link.at, { count: wishes.length, most: mostLinks })
    return new Map()
  }
  const laid = layOut(wishes, linkage)
  return laid === null ? new Map() : solveAll(laid, linkage)
}

/** The counts that are to be found, and what is asked of them. */
interface Laid {
  /** Positions of each name's counts among the unknowns. */
  readonly counts: ReadonlyMap<string, PerSize<number | null>>
  readonly unknowns: readonly Unknown[]
  readonly demands: readonly Demand[]
}

/** Null when a need cannot be followed to its linked counts, which is reported. */
function layOut(wishes: readonly Wish[], linkage: Linkage): Laid | null {
  const unknowns: Unknown[] = []
  const counts = new Map(wishes.map((wish) => [wish.link.name, idsOf(wish, unknowns)]))
  const survey = surveyOf(counts, unknowns, linkage)
  const needs = linkage.needs.map((need) => (wantCondition(need, survey.scope) === null ? null : need))
  const demands = demandsOf(needs, survey)
  return survey.obstacles.size > 0 ? null : { counts, unknowns, demands }
}

function idsOf(wish: Wish, unknowns: Unknown[]): PerSize<number | null> {
  return countsOf(wish).map((count) => (count === null ? null : unknowns.push(count) - 1))
}

function surveyOf(counts: Laid['counts'], unknowns: Unknown[], { links, formulas, scope }: Linkage): Survey {
  const broken = [...links.keys()].filter((name) => !counts.has(name))
  const names = { ...scope.names, unsound: new Set([...scope.names.unsound, ...broken]) }
  return {
    scope: standIns(counts, formulas, { ...scope, names }),
    aloud: scope,
    counts,
    formulas,
    unknowns,
    obstacles: new Set(),
    followed: new Map(),
    given: new Map(),
    depends: new Map(),
  }
}

/** A name has a value when all its sizes have been chosen. */
function solveAll({ counts, unknowns, demands }: Laid, linkage: Linkage): ReadonlyMap<string, Numeric> {
  const solver = patient(linkage.scope.environment.solver ?? null)
  const { chosen, impossible, undecided } = chooseAll(unknowns, demands, solver)
  const failed = [...undecided, ...impossible]
  if (solver !== null) explain(impossible, { ...linkage, counts }, solver)
  const unexplained = solver === null ? failed : undecided
  if (unexplained.length > 0) reportUndecided(unexplained, solver, linkage)
  const unsound = new Set(failed.flatMap(namesOf))
  return valuesOf(chosen, new Map([...counts].filter(([name]) => !unsound.has(name))))
}

/** Asked or given up so often, a solver is asked no more: a draft must end, whatever is in it. */
const limits = { asked: 2000, givenUp: 3 }

function patient(solver: Solver | null): Solver | null {
  let asked = 0
  let givenUp = 0
  const ask: Solver = (program) => {
    asked += 1
    const spent = solver === null || asked > limits.asked || givenUp >= limits.givenUp
    const answer: Answer = spent ? { kind: 'undecided' } : solver(program)
    if (answer.kind === 'undecided') givenUp += 1
    return answer
  }
  return solver && ask
}

function reportUndecided(problems: readonly Problem[], solver: Solver | null, { links, scope }: Linkage): void {
  const names = [...new Set(problems.flatMap(namesOf))]
  const at = links.get(names[0] ?? '')?.at
  if (at === undefined) return
  if (solver === null) report(scope, 'linked-solver-missing', at, { names })
  else report(scope, 'linked-undecided', at, { names }, sizesOf(problems))
}
