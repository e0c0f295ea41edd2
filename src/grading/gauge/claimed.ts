import Fraction from 'fraction.js'
import type { PerSize } from '../../measure/index.ts'

/** A length (cm) that is said to lie over so many stitches or rows, of one size. */
export interface ClaimedLength {
  readonly size: number
  readonly count: Fraction
  readonly length: Fraction
}

/** Lengths of one fabric, by what they say of its gauge. */
export interface ClaimedGauge {
  /** Those that one gauge can explain, most of all; none where as many speak for another gauge. */
  readonly alike: readonly ClaimedLength[]
  readonly odd: readonly ClaimedLength[]
}

/** Stitches in a centimetre, at least and at most. */
export interface Reach {
  readonly low: Fraction
  readonly high: Fraction
}

/**
 * How far apart gauges of one fabric may lie beyond what rounding explains, as a share. Common practice, no source: a
 * hand does not keep a gauge more closely than that.
 */
const hand = new Fraction(1, 50)

/**
 * The gauges that a claimed length allows, when it was rounded to a step.
 *
 * @param step in centimetres: 0.5 where all lengths are whole or half centimetres
 */
export function reachOf({ count, length }: Pick<ClaimedLength, 'count' | 'length'>, step: Fraction): Reach {
  const half = step.div(2)
  const least = length.gt(half) ? length.sub(half) : length
  return { low: count.div(length.add(half)), high: count.div(least) }
}

const one = new Fraction(1)

/**
 * Sorts claimed lengths of one fabric by the gauges that they imply. Of two gauges with as many lengths behind them the
 * one nearer to `known` counts, the swatch's; where none is known, nobody is odd and nobody alike.
 */
export function sortClaims(claims: readonly ClaimedLength[], step: Fraction, known: Fraction | null): ClaimedGauge {
  const slack = hand.div(2)
  const wide = claims.map((claim) => {
    const { low, high } = reachOf(claim, step)
    return { claim, low: low.mul(one.sub(slack)), high: high.mul(one.add(slack)) }
  })
  const holding = (gauge: Fraction) => wide.filter(({ low, high }) => low.lte(gauge) && high.gte(gauge))
  const groups = wide.map(({ low }) => holding(low).map(({ claim }) => claim))
  const most = Math.max(0, ...groups.map((group) => group.length))
  const best = chosen(
    groups.filter((group) => group.length === most),
    known,
  )
  return best === null ? { alike: [], odd: [] } : { alike: best, odd: claims.filter((claim) => !best.includes(claim)) }
}

function chosen(
  groups: readonly (readonly ClaimedLength[])[],
  known: Fraction | null,
): readonly ClaimedLength[] | null {
  const [first, ...others] = groups
  if (first === undefined) return null
  const sizes = (group: readonly ClaimedLength[]): string => group.map(({ size }) => size).join()
  if (others.every((other) => sizes(other) === sizes(first))) return first
  if (known === null) return null
  const away = (group: readonly ClaimedLength[]): number => Math.abs(gaugeOf(group).div(known).valueOf() - 1)
  return groups.reduce((best, group) => (away(group) < away(best) ? group : best))
}

/** Stitches in a centimetre of some lengths together; each weighs as much as it is long. */
export function gaugeOf(claims: readonly ClaimedLength[]): Fraction {
  const zero = new Fraction(0)
  const count = claims.reduce((sum, claim) => sum.add(claim.count), zero)
  return count.div(claims.reduce((sum, claim) => sum.add(claim.length), zero))
}

/** The coarsest of some steps, coarsest first, that all lengths are multiples of; the finest where none fits. */
export function stepOf(lengths: PerSize<Fraction>, steps: readonly Fraction[]): Fraction {
  const isMultiple = (length: Fraction, step: Fraction): boolean => length.div(step).d === 1n
  return steps.find((step) => lengths.every((length) => isMultiple(length, step))) ?? steps.at(-1) ?? one
}
