import Fraction from 'fraction.js'

/** Where the nearest is not wanted. */
export type Direction = 'nearest' | 'up' | 'down'

const half = new Fraction(1, 2)

/**
 * The number nearest to `value` among `plus`, `plus ± of`, `plus ± 2 × of` …; halfway goes up. `of` is greater than 0.
 * `up` and `down` take the neighbour on that side, `value` itself where it fits.
 */
export function roundToMultiple(value: Fraction, of: Fraction, plus: Fraction, direction: Direction): Fraction {
  const steps = value.sub(plus).div(of)
  return whole(steps, direction).mul(of).add(plus)
}

/** The nearest multiple of a step, as used for printing: inches to ¼, centimetres to 0.5. */
export function roundToStep(value: Fraction, step: Fraction): Fraction {
  return whole(value.div(step), 'nearest').mul(step)
}

function whole(value: Fraction, direction: Direction): Fraction {
  if (direction === 'up') return value.ceil()
  return direction === 'down' ? value.floor() : value.add(half).floor()
}

export function isWhole(value: Fraction): boolean {
  return value.d === 1n
}

/** Above zero; the sign alone does not tell, for zero has one too. */
export function isPositive(value: Fraction): boolean {
  return value.s > 0n && value.n !== 0n
}
