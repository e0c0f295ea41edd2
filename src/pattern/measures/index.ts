import type { Diagnostic } from '../../diagnostic/index.ts'
import { plainBySize, roundedIn, roundingsOf } from '../../formula/index.ts'
import type { Numeric, PerSize } from '../../measure/index.ts'
import type { Draft } from '../draft.ts'
import type { FinishedMeasure } from '../finished.ts'
import type { Graded } from '../grade.ts'
import type { Measure } from '../pattern.ts'
import { differenceOf, type HeldMeasure, heldMeasures, offTarget } from './held.ts'
import { movingRoundings } from './roundings.ts'
import { toleranceOf } from './tolerance.ts'

/** The finished measures in numbers, held against what they were to be. Findings go to `findings`. */
export function measuresOf(
  draft: Draft,
  graded: Graded,
  finished: readonly FinishedMeasure[],
  findings: Diagnostic[],
): readonly Measure[] {
  const tolerance = toleranceOf(draft, graded, findings)
  const roundings = roundingsOf(graded.settled, graded.environment)
  const held = heldMeasures(finished, graded)
  findings.push(...held.flatMap((each) => offTarget(each, tolerance, roundings, graded) ?? []))
  const behind = new Set(held.flatMap((each) => roundedIn(each.finished.formula.expression, roundings, graded.settled)))
  const others = roundings.filter((each) => !behind.has(each))
  findings.push(...movingRoundings(others, tolerance, draft.facts.facts.sizes))
  return held.map(measureOf)
}

function measureOf(held: HeldMeasure): Measure {
  const { made, target, finished } = held
  const difference = differenceOf(held)
  return {
    label: finished.label,
    unit: made.unit,
    target: target === null ? null : numbers(target),
    made: numbers(made),
    difference: difference === null ? null : numbers(difference),
  }
}

function numbers(value: Numeric): PerSize<number | null> {
  return plainBySize(value).map((cell) => (typeof cell === 'number' ? cell : null))
}
