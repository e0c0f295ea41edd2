import type { Diagnostic } from '../../diagnostic/index.ts'
import { plainBySize, roundedIn, roundingsOf } from '../../formula/index.ts'
import type { Numeric, PerSize } from '../../measure/index.ts'
import type { Ledger } from '../../rows/ledger.ts'
import type { Draft } from '../draft.ts'
import type { FinishedMeasure } from '../finished.ts'
import type { Graded } from '../grade.ts'
import type { Measure } from '../pattern.ts'
import { claimFindings, claimOf } from './claims.ts'
import { foundationFalls } from './foundations.ts'
import { differenceOf, type HeldMeasure, heldMeasures, offTarget } from './held.ts'
import { headFinding, type OverHead, overHeads } from './over-head.ts'
import { fallOf, listFalls, sameSizes } from './rising.ts'
import { movingRoundings } from './roundings.ts'
import { toleranceOf } from './tolerance.ts'

interface Parts {
  readonly draft: Draft
  readonly graded: Graded
  readonly ledger: Ledger
  readonly finished: readonly FinishedMeasure[]
  /** Where findings go. */
  readonly findings: Diagnostic[]
}

/** The finished measures in numbers, held against what they were to be, against each other and against other sizes. */
export function measuresOf(parts: Parts): readonly Measure[] {
  const { draft, finished, graded, findings } = parts
  const held = heldMeasures(finished, graded)
  findings.push(...targetFindings(held, parts))
  for (const each of finished) {
    const claim = claimOf(each, graded)
    if (claim !== null) findings.push(...claimFindings(claim, graded))
  }
  findings.push(...risingFindings(held, parts))
  const heads = overHeads(draft, finished, graded)
  for (const [measure, over] of heads) {
    const finding = headFinding(measure, over, draft.facts.facts.sizes)
    if (finding !== null) findings.push(finding)
  }
  return held.map((each) => measureOf(each, heads.get(each.finished) ?? null))
}

function* targetFindings(held: readonly HeldMeasure[], { draft, graded, findings }: Parts): Generator<Diagnostic> {
  const tolerance = toleranceOf(draft, graded, findings)
  const roundings = roundingsOf(graded.settled, graded.environment)
  for (const each of held) {
    const finding = offTarget(each, tolerance, roundings, graded)
    if (finding !== null) yield finding
  }
  const behind = new Set(held.flatMap((each) => roundedIn(each.finished.formula.expression, roundings, graded.settled)))
  const others = roundings.filter((each) => !behind.has(each))
  yield* movingRoundings(others, tolerance, draft.facts.facts.sizes)
}

/** What falls as sizes grow, told once: by the finished measure, else by the row that a piece begins with, else by the list. */
function* risingFindings(
  held: readonly HeldMeasure[],
  { draft, graded, ledger, finished, findings }: Parts,
): Generator<Diagnostic> {
  // A need that does not hold tells of the same slip.
  const told = new Set(findings.flatMap(({ code, sizes }) => (code === 'need-failed' ? sizes : [])))
  const stages = [
    () => [...finished.map((each) => fallOf(each, graded)), sameSizes(held, graded)].filter((each) => each !== null),
    () => foundationFalls(ledger, draft.facts.facts.sizes),
    () => listFalls(graded),
  ]
  for (const stage of stages) {
    const found = stage().filter(({ sizes }) => !sizes.some((size) => told.has(size)))
    yield* found
    for (const { sizes } of found) told.add(sizes.at(-1) ?? 0)
  }
}

function measureOf(held: HeldMeasure, over: OverHead | null): Measure {
  const { made, target, finished } = held
  const difference = differenceOf(held)
  return {
    label: finished.label,
    unit: made.unit,
    target: target === null ? null : numbers(target),
    made: numbers(made),
    difference: difference === null ? null : numbers(difference),
    head:
      over === null ? null : { around: numbers(over.heads), stretch: over.stretch, stretched: numbers(over.stretched) },
  }
}

function numbers(value: Numeric): PerSize<number | null> {
  return plainBySize(value).map((cell) => (typeof cell === 'number' ? cell : null))
}
