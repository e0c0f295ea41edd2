import Fraction from 'fraction.js'
import type { Counts } from './choice.ts'
import { countAt } from './demand.ts'
import type { Problem } from './group.ts'
import { weightOf } from './state.ts'

/** Whether counts are nearer to their targets than others: by the sum of errors, the largest error, the counts in order. */
export function isBetter(problem: Problem, counts: Counts, than: Counts): boolean {
  const bySum = sumOfErrors(problem, counts).compare(sumOfErrors(problem, than))
  const byLargest = bySum || largestError(problem, counts).compare(largestError(problem, than))
  if (byLargest !== 0) return byLargest < 0
  const apart = problem.members.find((id) => !at(counts, id).equals(at(than, id)))
  return apart !== undefined && at(counts, apart).lt(at(than, apart))
}

function at(counts: Counts, id: number): Fraction {
  return counts.get(id) ?? new Fraction(0)
}

function errorsOf({ unknowns, members }: Problem, counts: Counts): readonly Fraction[] {
  return members.flatMap((id) =>
    countAt(unknowns, id).map((count) => at(counts, id).sub(count.target).abs().mul(weightOf(count))),
  )
}

/** How far, in targets, counts are from theirs, added up. */
export function sumOfErrors(problem: Problem, counts: Counts): Fraction {
  return errorsOf(problem, counts).reduce((sum, error) => sum.add(error), new Fraction(0))
}

export function largestError(problem: Problem, counts: Counts): Fraction {
  return errorsOf(problem, counts).reduce((largest, error) => (error.gt(largest) ? error : largest), new Fraction(0))
}
