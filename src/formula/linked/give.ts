import type Fraction from 'fraction.js'
import type { Counts } from './choice.ts'
import { choose, findAny, leastOf } from './choose.ts'
import type { Constraint, Demand } from './demand.ts'
import { knownFrom } from './demand.ts'
import type { Problem } from './group.ts'
import { add, constant, evaluateSum, type Linear, negate } from './linear.ts'
import type { Solver } from './program.ts'

/** How one need would have to give way so that all others hold. */
export interface GivingWay {
  readonly need: number
  /** The counts that come nearest to holding it, and the size; null where nothing can be said but that it must go. */
  readonly nearest: { readonly counts: Counts; readonly size: number } | null
}

/** Those of the needs without which a problem would be possible, each with how near it can be met. */
export function givingWay(problem: Problem, needs: readonly number[], solver: Solver): readonly GivingWay[] {
  return needs.flatMap((need) => {
    const rest = { ...problem, demands: problem.demands.filter((demand) => demand.need !== need) }
    if (findAny(rest, solver) !== 'chosen') return []
    const own = problem.demands.filter((demand) => demand.need === need)
    return [{ need, nearest: nearestOf(rest, own, solver) }]
  })
}

/** Only for a need that asks one thing of one size: a sum at most, or exactly, 0. */
function nearestOf(rest: Problem, own: readonly Demand[], solver: Solver): GivingWay['nearest'] {
  const [demand, another] = own
  const [constraint, ...others] = demand?.ways[0] ?? []
  const [size, neighbour] = demand?.sizes ?? []
  const single = another === undefined && demand?.ways.length === 1 && others.length === 0 && neighbour === undefined
  if (!single || constraint === undefined || size === undefined) return null
  const missed = relaxations(constraint).flatMap((way) => missBy(rest, way, solver) ?? [])
  const ways = missed.filter(({ miss }) => missed.every((other) => miss.lte(other.miss))).map(({ way }) => way)
  const held: Demand = { need: demand?.need ?? -1, sizes: [size], ways }
  const choice = choose({ ...rest, demands: [...rest.demands, held] }, solver)
  return choice.kind === 'chosen' ? { counts: choice.counts, size } : null
}

/** An equation can be missed on either side. */
function relaxations({ sum, relation }: Constraint): readonly Linear[] {
  return relation === '=' ? [sum, negate(sum)] : [sum]
}

/** By how much a sum must pass 0 when all else holds. */
function missBy(rest: Problem, sum: Linear, solver: Solver): { miss: Fraction; way: readonly Constraint[] } | null {
  const aboveZero: Demand = { need: -1, sizes: [], ways: [[{ sum: negate(sum), relation: '<=' }]] }
  const counts = leastOf({ ...rest, demands: [...rest.demands, aboveZero] }, sum, solver)
  if (counts === null) return null
  const miss = evaluateSum(sum, knownFrom(rest.unknowns, counts))
  return { miss, way: [{ sum: add(sum, constant(miss.neg())), relation: '=' }] }
}
