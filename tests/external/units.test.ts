import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import type { Unit } from '../../src/measure/index.ts'
import { fromBase, readQuantity, toBase, units } from '../../src/measure/index.ts'

// International yard and pound agreement, in force 1 July 1959: yard 0.9144 m, pound 0.45359237 kg.
// NIST, Special Publication 811, Appendix B, 2008: inch 0.0254 m. The ounce is a sixteenth of the pound.
const exact: readonly (readonly [Unit, string])[] = [
  ['in', '2.54'],
  ['yd', '91.44'],
  ['lb', '453.59237'],
  ['oz', '28.349523125'],
  ['cm', '1'],
  ['mm', '0.1'],
  ['m', '100'],
  ['g', '1'],
  ['kg', '1000'],
  // Per cent stands for 0.01: BIPM, The International System of Units (SI Brochure), 9th edition, 2019, 5.4.7; from memory.
  ['%', '0.01'],
]

describe('units are exact by definition', () => {
  it.each(exact)('1 %s is %s cm, g or wholes', (unit, base) => {
    expect(units[unit].inBase.equals(new Fraction(base))).toBe(true)
  })
  it('has no unit without a published value', () => {
    expect(Object.keys(units).sort()).toEqual(exact.map(([unit]) => unit).sort())
  })
  it('a pound is 16 ounces, a yard 36 inches', () => {
    expect(toBase(new Fraction(16), 'oz').equals(toBase(new Fraction(1), 'lb'))).toBe(true)
    expect(toBase(new Fraction(36), 'in').equals(toBase(new Fraction(1), 'yd'))).toBe(true)
  })
})

// Conversion factors of NIST Special Publication 811, 2008, and NIST Handbook 44, Appendix C, carried out to nine decimals.
const check: readonly (readonly [string, Unit, string])[] = [
  ['4 in', 'cm', '10.16'],
  ['10 cm', 'in', '3.937007874'],
  ['1 yd', 'cm', '91.44'],
  ['100 m', 'yd', '109.3613298'],
  ['1 oz', 'g', '28.349523125'],
  ['100 g', 'oz', '3.527396195'],
  ['50 g', 'oz', '1.763698097'],
]

describe('published conversions', () => {
  it.each(check)('%s in %s is %s', (from, unit, expected) => {
    const base = readQuantity(from)?.base ?? new Fraction(0)
    const places = expected.split('.')[1]?.length ?? 0
    expect(fromBase(base, unit).valueOf()).toBeCloseTo(Number(expected), places)
  })
})
