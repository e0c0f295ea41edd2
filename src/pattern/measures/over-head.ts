import Fraction from 'fraction.js'
import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { headsOf } from '../../grading/index.ts'
import type { Numeric } from '../../measure/index.ts'
import { eachPair, eachSize, sizesWhere } from '../../measure/index.ts'
import type { Draft } from '../draft.ts'
import type { FinishedMeasure } from '../finished.ts'
import type { Graded } from '../grade.ts'
import { closedEdges, saysAround } from './closed.ts'
import { lengthWords } from './words.ts'

/** A closed edge beside the heads that it must pass, in the unit of the edge. */
export interface OverHead {
  readonly edge: Numeric
  readonly heads: Numeric
  /** Per cent. */
  readonly stretch: number
  readonly stretched: Numeric
}

/** Less than this share of a head is no neck, and a label that says nothing of around then means a width. */
const leastNeck = new Fraction(1, 2)

/** The closed edges of a draft by their finished measures; none where no head is known. */
export function overHeads(
  draft: Draft,
  finished: readonly FinishedMeasure[],
  { body }: Pick<Graded, 'body'>,
): ReadonlyMap<FinishedMeasure, OverHead> {
  const found = new Map<FinishedMeasure, OverHead>()
  const heads = body === null ? [] : headsOf(body)
  if (heads.every((head) => head === null)) return found
  const closed = closedEdges(
    draft,
    finished.map(({ label }) => label),
  )
  const { stretch } = draft.facts.facts
  for (const measure of finished) {
    const { label, value } = measure
    if (value.kind !== 'length' || !closed.has(label)) continue
    const around: Numeric = { kind: 'length', unit: value.unit, bySize: heads }
    if (!saysAround(label) && isWidth(value, around)) continue
    const wide = eachSize(value.bySize, (cell) => cell.mul(new Fraction(String(stretch)).div(100).add(1)))
    found.set(measure, { edge: value, heads: around, stretch, stretched: { ...value, bySize: wide } })
  }
  return found
}

function isWidth(edge: Numeric, heads: Numeric): boolean {
  return eachPair(edge.bySize, heads.bySize, (own, head) => own.div(head)).every(
    (share) => share === null || share.lt(leastNeck),
  )
}

/** A closed edge that does not pass over the heads that its sizes fit, even stretched. */
export function headFinding(
  { label, at }: FinishedMeasure,
  { edge, heads, stretch, stretched }: OverHead,
  names: readonly string[],
): Diagnostic | null {
  const sizes = sizesWhere(
    eachPair(stretched.bySize, heads.bySize, (wide, head) => head.sub(wide)),
    (short) => short !== null && short.s > 0n,
  )
  if (sizes.length === 0) return null
  const words = (value: Numeric, size: number): string => {
    const cell = value.bySize[size] ?? null
    return cell === null ? '' : lengthWords(cell, edge.unit)
  }
  const least = eachSize(heads.bySize, (head) => head.div(new Fraction(String(stretch)).div(100).add(1)))
  const cases = sizes.map((size) => ({
    size: names[size] ?? '',
    edge: words(edge, size),
    stretched: words(stretched, size),
    head: words(heads, size),
    least: words({ ...edge, bySize: least }, size),
  }))
  return diagnose('too-narrow-for-head', at, { label, stretch, cases }, { sizes })
}
