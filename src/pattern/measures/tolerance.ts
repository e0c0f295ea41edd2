import Fraction from 'fraction.js'
import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Draft } from '../draft.ts'
import { factValue } from '../fact-value.ts'
import type { Graded } from '../grade.ts'

/** How far (cm) a length of one size may be off what it was to be. */
export type Tolerance = (target: Fraction, size: number) => Fraction

/**
 * Where a draft says nothing: a tenth, for that is about what lies between two sizes of adults, and what is farther off
 * is another size; and a centimetre for small measures, where one stitch is more than that. Common practice, no source.
 */
const usualShare = new Fraction(1, 10)
const usualLeast = new Fraction(1)

const usual: Tolerance = (target) => {
  const share = target.abs().mul(usualShare)
  return share.gt(usualLeast) ? share : usualLeast
}

/** The tolerance that a draft states, or the usual one; what it states is reported where it is no length and no percentage. */
export function toleranceOf(draft: Draft, graded: Graded, findings: Diagnostic[]): Tolerance {
  const found = draft.facts.facts.tolerance === undefined ? null : factValue(['tolerance'], draft, graded, findings)
  if (found === null) return usual
  const { value, at } = found
  const fits = value.kind === 'length' || value.kind === 'share'
  if (!fits || value.bySize.some((cell) => cell !== null && cell.s < 0n)) {
    findings.push(diagnose('tolerance-unfit', at, {}))
    return usual
  }
  return (target, size) => {
    const own = value.bySize[size] ?? null
    if (own === null) return usual(target, size)
    return value.kind === 'share' ? own.mul(target.abs()) : own
  }
}
