import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Moved } from '../../formula/index.ts'
import { printDecimal, sizesWhere } from '../../measure/index.ts'
import type { Tolerance } from './tolerance.ts'
import { lengthWords } from './words.ts'

/** Roundings that move the length of a count by more than the tolerance. */
export function movingRoundings(
  roundings: readonly Moved[],
  tolerance: Tolerance,
  names: readonly string[],
): readonly Diagnostic[] {
  return roundings.flatMap((moved) => {
    const { name, formula, across, was, is } = moved
    const sizes = sizesWhere(was.bySize, (from, size) => {
      const to = is.bySize[size] ?? null
      return from !== null && to !== null && tolerance(from, size).lt(to.sub(from).abs())
    })
    if (sizes.length === 0) return []
    const cases = sizes.map((size) => ({ size: names[size] ?? '', ...figures(moved, size) }))
    return [diagnose('rounding-moves-measure', moved.at, { name, formula, across, cases }, { sizes })]
  })
}

function figures({ from, to, was, is }: Moved, size: number) {
  const [before, after, long, now] = [from.bySize[size], to.bySize[size], was.bySize[size], is.bySize[size]]
  if (!before || !after || !long || !now) return { from: '', to: '', was: '', is: '' }
  return {
    from: printDecimal(before, 2),
    to: printDecimal(after, 2),
    was: lengthWords(long, was.unit),
    is: lengthWords(now, is.unit),
  }
}
