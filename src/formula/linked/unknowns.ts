import Fraction from 'fraction.js'
import type { Count } from './demand.ts'
import type { Problem } from './group.ts'
import { largestCount } from './state.ts'

/** The same problem, some of its counts with no grid and no side of the target to keep to. */
export function free(problem: Problem, names: readonly string[]): Problem {
  const unknowns = problem.unknowns.map((one) =>
    one.kind === 'count' && names.includes(one.name) ? { ...one, ...anyWhole } : one,
  )
  return { ...problem, unknowns }
}

const anyWhole: Pick<Count, 'of' | 'plus' | 'lower' | 'upper'> = {
  of: new Fraction(1),
  plus: new Fraction(0),
  lower: new Fraction(0),
  upper: new Fraction(largestCount),
}
