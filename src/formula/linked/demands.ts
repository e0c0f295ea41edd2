import type { Expression } from '../tree.ts'
import { trendSteps, type Ways, waysTo } from './condition.ts'
import type { Constraint, Demand, Unknown } from './demand.ts'
import { holds } from './demand.ts'
import { isConstant } from './linear.ts'
import type { Survey } from './survey.ts'

/**
 * What the needs ask of the linked counts; null stands for one that is unsound. A need that holds or fails whatever the counts are asks nothing of them;
 * one that cannot be followed is left out, which has been reported or will be when it is checked.
 */
export function demandsOf(needs: readonly (Expression | null)[], survey: Survey): readonly Demand[] {
  return needs.flatMap((need, index) => (need === null ? [] : demandsOfNeed(need, index, survey))).flatMap(simplify)
}

function demandsOfNeed(need: Expression, index: number, survey: Survey): readonly Demand[] {
  if (need.kind === 'trend') {
    const steps = trendSteps(need, survey)
    return steps === 'lost' ? [] : steps.map(({ sizes, way }) => ({ need: index, sizes, ways: [way] }))
  }
  return survey.scope.environment.sizes.flatMap((_, size) => {
    const ways = waysTo(true, need, size, survey)
    return typeof ways === 'string' ? [] : [{ need: index, sizes: [size], ways }]
  })
}

/** Leaves out what is settled without the counts; nothing is left of a demand that is settled as a whole. */
function simplify(demand: Demand): readonly Demand[] {
  const ways = simplifyWays(demand.ways)
  return ways.length === 0 || ways.some((way) => way.length === 0) ? [] : [{ ...demand, ways }]
}

function simplifyWays(ways: Ways): Ways {
  const settled = (constraint: Constraint) => isConstant(constraint.sum)
  const open = ways.filter((way) => way.every((one) => !settled(one) || holds(one, () => one.sum.constant)))
  return open.map((way) => way.filter((one) => !settled(one)))
}

/** Every unknown that a demand speaks of. */
export function reachOf({ ways }: Demand, unknowns: readonly Unknown[]): ReadonlySet<number> {
  const found = new Set<number>()
  const visit = (ids: Iterable<number>) => {
    for (const id of ids) {
      if (found.has(id)) continue
      found.add(id)
      const one = unknowns[id]
      if (one?.kind === 'quotient') visit(one.base.terms.keys())
    }
  }
  for (const way of ways) for (const { sum } of way) visit(sum.terms.keys())
  return found
}
