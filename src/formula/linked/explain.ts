import type { Related } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { PerSize } from '../../measure/index.ts'
import { describeCases } from '../need.ts'
import { excerpt, printStatement } from '../print.ts'
import type { Scope } from '../scope.ts'
import type { Expression } from '../tree.ts'
import type { Contradiction } from './contradiction.ts'
import { contradictionIn, isImpossible, limitedTo, stillImpossible } from './contradiction.ts'
import { type GivingWay, givingWay } from './give.ts'
import { type Problem, sizesOf } from './group.ts'
import type { Solver } from './program.ts'
import { tryOut, valuesOf } from './trial.ts'
import { free } from './unknowns.ts'
import type { Link } from './wish.ts'

/** What a contradiction is told with: the draft's own statements. */
export interface Telling {
  readonly links: ReadonlyMap<string, Link>
  readonly formulas: ReadonlyMap<string, Expression>
  readonly needs: readonly Expression[]
  /** Positions of each name's counts among the unknowns. */
  readonly counts: ReadonlyMap<string, PerSize<number | null>>
  readonly scope: Scope
}

interface Told {
  readonly contradiction: Contradiction
  /** The first problem in which it was found. */
  readonly problem: Problem
  readonly sizes: Set<number>
}

/** Reports why problems are impossible: one finding for each set of needs, with all sizes in which it contradicts itself. */
export function explain(problems: readonly Problem[], telling: Telling, solver: Solver): void {
  const found: Told[] = []
  for (const problem of problems) {
    const before = found.find(({ contradiction }) => stillImpossible(problem, contradiction, solver))
    if (before === undefined) {
      const contradiction = contradictionIn(problem, solver)
      found.push({ contradiction, problem, sizes: new Set(contradiction.sizes) })
    } else for (const size of sizesAgain(problem, before.contradiction, solver)) before.sizes.add(size)
  }
  for (const told of found) tell(told, telling, solver)
}

/** The sizes of another problem in which the same needs contradict each other. */
function sizesAgain(problem: Problem, { needs }: Contradiction, solver: Solver): readonly number[] {
  const sizes = sizesOf([problem])
  return sizes.length === 1 ? sizes : contradictionIn(limitedTo(problem, needs), solver).sizes
}

function tell({ contradiction, problem, sizes }: Told, telling: Telling, solver: Solver): void {
  const { needs, grids } = contradiction
  const parts = needs.flatMap((need) => telling.needs[need] ?? [])
  const links = grids.flatMap((name) => telling.links.get(name) ?? [])
  const [first, ...others] = [...parts, ...links]
  if (first === undefined) return
  const related = others.map(({ at }): Related => ({ at, note: 'This belongs to the contradiction.' }))
  const details = {
    needs: parts.map(excerpt),
    links: links.map(printStatement),
    ways: waysOut(contradiction, problem, telling, solver),
  }
  const all = [...sizes].sort((a, b) => a - b)
  telling.scope.findings.push(diagnose('linked-contradiction', first.at, details, { sizes: all, related }))
}

/** What of the contradiction could give way, each on its own, and for a comparison how far. */
function waysOut(
  { needs, grids }: Contradiction,
  problem: Problem,
  telling: Telling,
  solver: Solver,
): readonly string[] {
  const byNeed = givingWay(problem, needs, solver).flatMap((way) => describeWay(way, telling))
  const byGrid = grids.filter((name) => !isImpossible(free(problem, [name]), solver))
  return [...byNeed, ...byGrid.map((name) => `the rounding of \`${name}\``)]
}

function describeWay({ need, nearest }: GivingWay, telling: Telling): readonly string[] {
  const condition = telling.needs[need]
  if (condition === undefined) return []
  const text = `\`${excerpt(condition)}\``
  if (nearest === null) return [text]
  const trial = tryOut(valuesOf(nearest.counts, telling.counts), telling.formulas, telling.scope)
  return [`${text} (nearest, ${describeCases(condition, [nearest.size], trial)})`]
}
