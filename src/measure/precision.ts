import Fraction from 'fraction.js'
import type { PerSize, Unit } from './value.ts'

/** What a value is rounded to when it is printed in a unit, and the largest amount (cm or g) that this is for. */
interface Fineness {
  readonly below: Fraction | null
  readonly step: Fraction
}

const everything = null
const threeCentimetres = new Fraction(3)
const tenCentimetres = new Fraction(10)
const tenMetres = new Fraction(1000)
const tenGrams = new Fraction(10)

/**
 * Trade practice: centimetres to a half (a strap or a buttonhole, under 3 cm, to a millimetre); inches to a quarter for garments and an eighth for small pieces
 * (largest value under 10 cm). Yarn lengths and weights to whole metres, yards and grams, ounces to a
 * quarter. Millimetres are hook sizes and are printed as they are.
 */
const usual: Readonly<Record<Exclude<Unit, 'mm'>, readonly Fineness[]>> = {
  cm: [
    { below: threeCentimetres, step: new Fraction(1, 10) },
    { below: everything, step: new Fraction(1, 2) },
  ],
  in: [
    { below: tenCentimetres, step: new Fraction(1, 8) },
    { below: everything, step: new Fraction(1, 4) },
  ],
  m: [
    { below: tenMetres, step: new Fraction(1, 10) },
    { below: everything, step: new Fraction(1) },
  ],
  yd: [
    { below: tenMetres, step: new Fraction(1, 4) },
    { below: everything, step: new Fraction(1) },
  ],
  g: [
    { below: tenGrams, step: new Fraction(1, 2) },
    { below: everything, step: new Fraction(1) },
  ],
  kg: [{ below: everything, step: new Fraction(1, 20) }],
  oz: [
    { below: tenGrams, step: new Fraction(1, 8) },
    { below: everything, step: new Fraction(1, 4) },
  ],
  lb: [{ below: everything, step: new Fraction(1, 4) }],
  '%': [{ below: everything, step: new Fraction(1, 10) }],
}

/** Finer steps for values so small that the usual ones would print them as nothing. */
const fine: Readonly<Record<Exclude<Unit, 'mm'>, Fraction>> = {
  cm: new Fraction(1, 10),
  in: new Fraction(1, 16),
  m: new Fraction(1, 100),
  yd: new Fraction(1, 8),
  g: new Fraction(1, 10),
  kg: new Fraction(1, 1000),
  oz: new Fraction(1, 16),
  lb: new Fraction(1, 16),
  '%': new Fraction(1, 100),
}

/** The usual step, in the unit, for values given in centimetres or grams; `inUnit` are the same in the unit. */
export function usualStep(
  unit: Exclude<Unit, 'mm'>,
  bases: PerSize<Fraction | null>,
  inUnit: PerSize<Fraction | null>,
): Fraction {
  const largest = bases.reduce<Fraction>((most, base) => larger(most, base), new Fraction(0))
  const found = usual[unit].find(({ below }) => below === null || largest.lt(below))
  const step = found?.step ?? fine[unit]
  const half = step.div(2)
  const vanishes = inUnit.some((amount) => amount !== null && amount.n !== 0n && amount.abs().lt(half))
  return vanishes ? fine[unit] : step
}

function larger(most: Fraction, base: Fraction | null): Fraction {
  const size = base?.abs() ?? most
  return size.gt(most) ? size : most
}
