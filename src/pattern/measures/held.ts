import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Moved } from '../../formula/index.ts'
import { asAimed, roundedIn } from '../../formula/index.ts'
import type { Numeric } from '../../measure/index.ts'
import { eachPair, isLengthUnit, printDecimal, sizesWhere } from '../../measure/index.ts'
import type { FinishedMeasure } from '../finished.ts'
import type { Graded } from '../grade.ts'
import { claimMade, claimOf } from './claims.ts'
import type { Tolerance } from './tolerance.ts'
import { lengthWords } from './words.ts'

/** A finished measure beside what it was to be. */
export interface HeldMeasure {
  readonly finished: FinishedMeasure
  readonly made: Numeric
  /** A length, in the unit of `made`; null where nothing was rounded on the way to what was made. */
  readonly target: Numeric | null
}

/**
 * Finished measures that are numbers, each with what its formula comes to when nothing is rounded. A claimed one was to be
 * as claimed, and is made as its stitches come to by the swatch.
 */
export function heldMeasures(finished: readonly FinishedMeasure[], graded: Graded): HeldMeasure[] {
  const { settled, environment } = graded
  const targets = asAimed(
    finished.map(({ formula }) => formula.expression),
    settled,
    environment,
  )
  return finished.flatMap((each, index) => {
    if (each.value.kind === 'text') return []
    const claim = claimOf(each, graded)
    if (claim !== null) return [{ finished: each, made: claimMade(claim), target: claim.length }]
    const target = targets[index] ?? null
    const isLength = target?.kind === 'length' && each.value.kind === 'length'
    return [{ finished: each, made: each.value, target: isLength ? { ...target, unit: each.value.unit } : null }]
  })
}

/** How far (cm) each size is off; null for a size without the measure, and for all where there is no target. */
export function differenceOf({ made, target }: HeldMeasure): Numeric | null {
  return target === null ? null : { ...made, bySize: eachPair(made.bySize, target.bySize, (a, b) => a.sub(b)) }
}

/** A finished measure that is off what it was to be by more than the tolerance, with the rounding that moves it most. */
export function offTarget(
  held: HeldMeasure,
  tolerance: Tolerance,
  roundings: readonly Moved[],
  graded: Graded,
): Diagnostic | null {
  const { finished, target } = held
  if (finished.over !== null) return null
  const off = differenceOf(held)?.bySize ?? []
  const sizes = sizesWhere(off, (cell, size) => {
    const aim = target?.bySize[size] ?? null
    return cell !== null && aim !== null && cell.abs().gt(tolerance(aim, size))
  })
  if (sizes.length === 0) return null
  const details = { label: finished.label, cases: sizes.map((size) => caseOf(held, size, graded)) }
  const worst = sizes.reduce((most, size) => (distance(off, size) > distance(off, most) ? size : most))
  return diagnose('measure-off-target', finished.at, details, {
    sizes,
    related: relatedOf(roundedIn(finished.formula.expression, roundings, graded.settled), worst),
  })
}

function distance(off: Numeric['bySize'], size: number): number {
  return Math.abs(off[size]?.valueOf() ?? 0)
}

function caseOf({ made, target }: HeldMeasure, size: number, { environment }: Graded) {
  const [is, aim] = [made.bySize[size], target?.bySize[size]]
  const unit = made.unit !== null && isLengthUnit(made.unit) ? made.unit : 'cm'
  if (!is || !aim) return { size: environment.sizes[size] ?? '', made: '', target: '', off: '' }
  const off = is.sub(aim)
  return {
    size: environment.sizes[size] ?? '',
    made: lengthWords(is, unit),
    target: lengthWords(aim, unit),
    off: `${lengthWords(off.abs(), unit)} ${off.s < 0n ? 'less' : 'more'}`,
  }
}

function relatedOf(roundings: readonly Moved[], size: number): Diagnostic['related'] {
  const shift = ({ was, is }: Moved): number =>
    Math.abs((is.bySize[size]?.valueOf() ?? 0) - (was.bySize[size]?.valueOf() ?? 0))
  const [most] = roundings.toSorted((a, b) => shift(b) - shift(a))
  const [from, to] = [most?.from.bySize[size], most?.to.bySize[size]]
  if (most === undefined || !from || !to) return []
  return [{ at: most.at, note: `Rounding makes ${printDecimal(to, 2)} of ${printDecimal(from, 2)} here.` }]
}
