import Fraction from 'fraction.js'

/** A sum of unknown whole numbers, each times a factor, and a constant. Unknowns are named by their position. */
export interface Linear {
  readonly constant: Fraction
  /** No factor is 0. */
  readonly terms: ReadonlyMap<number, Fraction>
}

const none: ReadonlyMap<number, Fraction> = new Map()

export function constant(value: Fraction): Linear {
  return { constant: value, terms: none }
}

export function unknown(id: number): Linear {
  return { constant: new Fraction(0), terms: new Map([[id, new Fraction(1)]]) }
}

export function add(a: Linear, b: Linear): Linear {
  const sum = a.constant.add(b.constant)
  if (b.terms.size === 0) return { constant: sum, terms: a.terms }
  const terms = new Map(a.terms)
  for (const [id, factor] of b.terms) {
    const together = factor.add(terms.get(id) ?? 0)
    if (together.n === 0n) terms.delete(id)
    else terms.set(id, together)
  }
  return { constant: sum, terms }
}

export function scale(a: Linear, by: Fraction): Linear {
  if (by.n === 0n) return constant(new Fraction(0))
  const terms = new Map([...a.terms].map(([id, factor]) => [id, factor.mul(by)]))
  return { constant: a.constant.mul(by), terms }
}

export function negate(a: Linear): Linear {
  return scale(a, new Fraction(-1))
}

export function subtract(a: Linear, b: Linear): Linear {
  return add(a, negate(b))
}

export function isConstant(a: Linear): boolean {
  return a.terms.size === 0
}

/** What it comes to when the unknowns are known. */
export function evaluateSum(a: Linear, known: (id: number) => Fraction): Fraction {
  let sum = a.constant
  for (const [id, factor] of a.terms) sum = sum.add(factor.mul(known(id)))
  return sum
}
