import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import type { Format, Numeric, Unit } from '../../src/measure/index.ts'
import { cellsOf, printMeasure, readQuantity, textForAll, textForSize, toBase } from '../../src/measure/index.ts'

type Amount = number | string | null

function exact(amount: Amount): Fraction | null {
  return amount === null ? null : new Fraction(amount)
}

function counts(...amounts: readonly Amount[]): Numeric {
  return { kind: 'count', unit: null, bySize: amounts.map(exact) }
}

function measure(unit: Unit, ...amounts: readonly Amount[]): Numeric {
  const kind = ['g', 'kg', 'oz', 'lb'].includes(unit) ? 'mass' : 'length'
  return { kind, unit, bySize: amounts.map((amount) => (amount === null ? null : toBase(new Fraction(amount), unit))) }
}

function unit(name: Unit, step: string | null = null): Format {
  return { kind: 'unit', unit: name, step: step === null ? null : new Fraction(step) }
}

describe('a value is printed for all sizes', () => {
  const cases: readonly (readonly [string, Numeric, Format | null, string])[] = [
    ['counts side by side', counts(60, 72, 84), null, '60 (72, 84)'],
    ['two sizes', counts(60, 72), null, '60 (72)'],
    ['one size', counts(60), null, '60'],
    ['the same for all', counts(5, 5, 5), null, '5'],
    ['a size to which it does not apply', counts(60, null, 84), null, '60 (–, 84)'],
    ['no size to which it applies', counts(null, null), null, '–'],
    ['below zero', counts(-3), null, '−3'],
    ['a ratio', { kind: 'number', unit: null, bySize: [exact('13/6'), exact('1/2')] }, null, '2.17 (0.5)'],
    ['words', counts(0, 12, 21, 100), { kind: 'words' }, 'zero (twelve, twenty-one, one hundred)'],
    ['large words', counts(342), { kind: 'words' }, 'three hundred forty-two'],
    ['ordinals', counts(1, 2, 3, 4), { kind: 'ordinal' }, '1st (2nd, 3rd, 4th)'],
    ['ordinals of the teens', counts(11, 12, 13, 21), { kind: 'ordinal' }, '11th (12th, 13th, 21st)'],
    ['one length for all', measure('cm', 24, 24, 24), null, '24 cm (9½ in)'],
    ['lengths by size', measure('cm', 52, 60, 68), null, '52 (60, 68) cm [20½ (23½, 26¾) in]'],
    ['inches first where the draft has inches', measure('in', '19/2', '19/2'), null, '9½ in (24 cm)'],
    ['inches by size', measure('in', 20, 22), null, '20 (22) in [51 (56) cm]'],
    ['a small piece to an eighth', measure('cm', 4, 5, 6), null, '4 (5, 6) cm [1⅝ (2, 2⅜) in]'],
    ['a large piece among small ones', measure('cm', 4, 12), null, '4 (12) cm [1½ (4¾) in]'],
    ['centimetres to a half', measure('cm', '42.857'), null, '43 cm (16¾ in)'],
    ['a halfway centimetre goes up', measure('cm', '10.25'), null, '10.5 cm (4 in)'],
    ['a strap to a millimetre', measure('cm', '1.2', '2.5'), null, '1.2 (2.5) cm [½ (1) in]'],
    ['a length too small for half centimetres', measure('cm', '0.2'), null, '0.2 cm (⅛ in)'],
    ['a length of nothing', measure('cm', 0), null, '0 cm (0 in)'],
    ['sizes that agree in one system only', measure('cm', '50', '49.8'), null, '50 (50) cm [19¾ (19½) in]'],
    ['a hook stands in millimetres', measure('mm', '6.5'), null, '6.5 mm'],
    ['a hook of an odd size', measure('mm', '3.125'), null, '3.125 mm'],
    ['yarn in metres', measure('m', 110), null, '110 m (120 yd)'],
    ['yarn in yards', measure('yd', 120), null, '120 yd (110 m)'],
    ['a short length in metres', measure('m', '1.5'), null, '1.5 m (1¾ yd)'],
    ['a weight', measure('g', 100, 200), null, '100 (200) g [3½ (7) oz]'],
    ['a weight in ounces', measure('oz', '3.5'), null, '3½ oz (99 g)'],
    ['a weight in pounds', measure('lb', '2'), null, '2 lb (0.9 kg)'],
    ['as cm', measure('in', 10), unit('cm'), '25.5 cm'],
    ['as in', measure('cm', 52, 60), unit('in'), '20½ (23½) in'],
    ['as in to 1/8', measure('cm', 52, 60), unit('in', '1/8'), '20½ (23⅝) in'],
    ['as in to 1/16', measure('cm', '10'), unit('in', '1/16'), '3 15/16 in'],
    ['as yd', measure('m', 100), unit('yd'), '109 yd'],
    ['as m', measure('cm', 150), unit('m'), '1.5 m'],
    ['as oz', measure('g', 50), unit('oz'), '1¾ oz'],
    ['as g', measure('oz', 1), unit('g'), '28 g'],
    ['inches of a hook, when asked', measure('mm', 10), unit('in'), '⅜ in'],
    ['skeins', counts(2, 3), { kind: 'skeins' }, '2 (3) skeins'],
    ['one skein', counts(1, 1), { kind: 'skeins' }, '1 skein'],
    ['one skein or more', counts(1, 2), { kind: 'skeins' }, '1 skein (2 skeins)'],
  ]
  it.each(cases)('%s', (_, value, format, expected) => {
    expect(textForAll(printMeasure(value, format))).toBe(expected)
  })

  it('words stand by size', () => {
    const words = { kind: 'text', unit: null, bySize: ['short', null, 'long'] } as const
    expect(textForAll(printMeasure(words, null))).toBe('short (–, long)')
  })
})

describe('a value is picked for one size', () => {
  const cases: readonly (readonly [string, Numeric, number, string])[] = [
    ['a count', counts(60, 72, 84), 1, '72'],
    ['a length in both systems', measure('cm', 52, 60, 68), 1, '60 cm [23½ in]'],
    ['the last size', measure('cm', 52, 60, 68), 2, '68 cm [26¾ in]'],
    ['the same for all', measure('cm', 24, 24, 24), 2, '24 cm (9½ in)'],
    ['a size without', counts(60, null), 1, '–'],
  ]
  it.each(cases)('%s', (_, value, size, expected) => {
    expect(textForSize(printMeasure(value, null), size)).toBe(expected)
  })

  it('gives a cell for each size', () => {
    expect(cellsOf(printMeasure(measure('cm', 52, 60), null), 2)).toEqual(['52 cm [20½ in]', '60 cm [23½ in]'])
    expect(cellsOf(printMeasure(counts(7, 7), null), 2)).toEqual(['7', '7'])
  })
})

describe('a quantity is read', () => {
  const read: readonly (readonly [string, string, Unit])[] = [
    ['6.5 mm', '6.5', 'mm'],
    ['100g', '100', 'g'],
    ['20 1/2 in', '20.5', 'in'],
    ['20½ in', '20.5', 'in'],
    ['½ yd', '0.5', 'yd'],
    [' 12  cm ', '12', 'cm'],
  ]
  it.each(read)('%s', (text, amount, name) => {
    const quantity = readQuantity(text)
    expect(quantity?.unit).toBe(name)
    expect(quantity?.amount.equals(amount)).toBe(true)
  })
  it.each(['', '12', 'cm', '12 inches', '1/0 cm', '-3 cm', '12 cm x 12 cm', '1.2.3 cm'])('refused: %j', (text) => {
    expect(readQuantity(text)).toBeNull()
  })
})
