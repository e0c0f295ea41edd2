import Fraction from 'fraction.js'
import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import { countedBy, type Environment } from '../../formula/index.ts'
import { type ClaimedLength, gaugeOf, reachOf, sortClaims, stepOf } from '../../grading/index.ts'
import type { Numeric } from '../../measure/index.ts'
import { eachSize, isPositive, printDecimal, toBase, units } from '../../measure/index.ts'
import type { FinishedMeasure } from '../finished.ts'
import type { Graded } from '../grade.ts'
import { lengthWords } from './words.ts'

type What = 'stitches' | 'rows'

/** A measure that was claimed, with the count that it is said to lie over. */
interface Claim {
  readonly label: string
  readonly at: FinishedMeasure['at']
  readonly length: Numeric
  readonly count: Numeric
  readonly what: What
  /** The draft's gauge for it, in a centimetre; null where no swatch says it. */
  readonly gauge: Fraction | null
}

/** Null for a measure that is calculated. */
export function claimOf({ label, at, value, over }: FinishedMeasure, { settled, environment }: Graded): Claim | null {
  if (over === null || value.kind === 'text' || over.value.kind === 'text') return null
  const by = countedBy(over.formula.expression, settled) ?? { what: 'stitches', swatch: null }
  const found = environment.gauge(by.swatch)
  const gauge = found.kind === 'found' ? found.gauge[by.what] : null
  return { label, at, length: value, count: over.value, what: by.what, gauge }
}

/** What the stitches under a claim come to by the swatch; for no size where there is none. */
export function claimMade({ length, count, gauge }: Claim): Numeric {
  const made = eachSize(count.bySize, (cell) => (gauge === null ? null : cell.div(gauge)))
  return { kind: 'length', unit: length.unit, bySize: made }
}

function isMetric({ length }: Claim): boolean {
  return length.unit === null || units[length.unit].system === 'metric'
}

const printed = {
  metric: [1, '1/2', '1/10'].map((step) => new Fraction(step)),
  imperial: [1, '1/2', '1/4', '1/8'].map((step) => toBase(new Fraction(step), 'in')),
} as const

function lengthsOf({ length, count }: Claim): readonly ClaimedLength[] {
  return length.bySize.flatMap((own, size) => {
    const over = count.bySize[size] ?? null
    return own !== null && over !== null && isPositive(own) && isPositive(over)
      ? [{ size, length: own, count: over }]
      : []
  })
}

/** Claims whose lengths and counts can't be of one fabric, and claims that are not by the swatch. */
export function claimFindings(claim: Claim, { environment }: Graded): readonly Diagnostic[] {
  const claims = lengthsOf(claim)
  const step = stepOf(
    claims.map(({ length }) => length),
    printed[isMetric(claim) ? 'metric' : 'imperial'],
  )
  const { alike, odd } = sortClaims(claims, step, claim.gauge)
  const uneven = alike.length < claims.length ? [unevenFinding(claim, claims, alike, odd, environment)] : []
  const strange = alike.length > 0 && !isBySwatch(claim, alike, step, environment)
  return strange ? [...uneven, swatchFinding(claim, alike, environment)] : uneven
}

/** Stitches or rows over the length that the trade counts them on. */
function rate(claim: Claim, perCentimetre: Fraction): string {
  const over = isMetric(claim) ? new Fraction(10) : toBase(new Fraction(4), 'in')
  return `${printDecimal(perCentimetre.mul(over), 1)} in ${isMetric(claim) ? '10 cm' : '4 in'}`
}

function unevenFinding(
  claim: Claim,
  claims: readonly ClaimedLength[],
  alike: readonly ClaimedLength[],
  odd: readonly ClaimedLength[],
  { sizes: names }: Environment,
): Diagnostic {
  const name = ({ size }: ClaimedLength): string => names[size] ?? ''
  const said = claims.map((each) => {
    const length = lengthWords(each.length, claim.length.unit)
    return `${name(each)} ${printDecimal(each.count, 1)} over ${length}, ${rate(claim, gaugeOf([each]))}`
  })
  const instead = odd.map((each) => {
    const own = each.count.div(gaugeOf(alike))
    return `${name(each)} ${lengthWords(own, claim.length.unit)}`
  })
  const details = { label: claim.label, what: claim.what, said, odd: odd.map(name), instead }
  const sizes = (odd.length > 0 ? odd : claims).map(({ size }) => size)
  return diagnose('claims-uneven', claim.at, details, { sizes })
}

/** As far as a claim may be off the swatch beyond what rounding explains: no farther than places of one swatch lie apart. */
const apart = new Fraction(1, 20)

function isBySwatch(
  { what }: Claim,
  claims: readonly ClaimedLength[],
  step: Fraction,
  { gauge, swatches }: Environment,
): boolean {
  const known = [null, ...swatches].flatMap((name) => {
    const found = gauge(name)
    return found.kind === 'found' ? (found.gauge[what] ?? []) : []
  })
  if (known.length === 0) return true
  const reaches = claims.map((claim) => reachOf(claim, step))
  return known.some((own) =>
    reaches.some(({ low, high }) => own.gte(low.mul(new Fraction(1).sub(apart))) && own.lte(high.mul(apart.add(1)))),
  )
}

function swatchFinding(claim: Claim, alike: readonly ClaimedLength[], { sizes: names }: Environment): Diagnostic {
  const { label, what, gauge, length, at } = claim
  const made = alike.map(({ size, count }) => {
    const own = gauge === null ? '' : lengthWords(count.div(gauge), length.unit)
    return `${names[size] ?? ''} ${own}`
  })
  const swatch = gauge === null ? '' : rate(claim, gauge)
  const details = { label, what, claimed: rate(claim, gaugeOf(alike)), swatch, made }
  return diagnose('claims-unlike-swatch', at, details, { sizes: alike.map(({ size }) => size) })
}
