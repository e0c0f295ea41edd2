import { describe, expect, test } from 'vitest'
import { easeFor, type Found, readMeasure, sizesFor } from '../../src/client/fit.ts'
import { fitWords } from '../../src/client/fit-words.ts'
import { lengthWords, rangeWords } from '../../src/client/measure-words.ts'
import type { Fit } from '../../src/pattern/pattern.ts'

describe('a measure as it is typed', () => {
  test.each([
    ['98', 98, 'cm'],
    [' 98.5 ', 98.5, 'cm'],
    ['98,5 cm', 98.5, 'cm'],
    ['38 1/2 in', 38.5, 'in'],
    ['38-1/2"', 38.5, 'in'],
    ['38½”', 38.5, 'in'],
    ['½ inch', 0.5, 'in'],
    ['3/4 in.', 0.75, 'in'],
    ['38 inches', 38, 'in'],
    ['98 centimetres', 98, 'cm'],
  ])('%j is %d %s', (text, amount, unit) => {
    expect(readMeasure(text, 'cm')).toEqual({ amount, unit })
  })

  test.each(['', 'cm', 'wide', '-5', '0', '1/0', '98 kg', '9999', '38 1/2 1/2', '1e3'])('%j is none', (text) => {
    expect(readMeasure(text, 'cm')).toBe(null)
  })

  test('is in the unit that was chosen where none is written', () => {
    expect(readMeasure('38', 'in')).toEqual({ amount: 38, unit: 'in' })
  })
})

const cm = (
  low: readonly (number | null)[],
  high: readonly (number | null)[],
  made: readonly number[] | null,
): Fit => ({
  label: 'Bust',
  unit: 'cm',
  low: { cm: low, in: low },
  high: { cm: high, in: high },
  made: made === null ? null : { cm: made, in: made },
})

const fit = cm([71, 81, 91], [76, 86, 96], [88, 98, 107])
const names = ['Small', 'Medium', 'Large']
const own = (amount: number) => ({ amount, unit: 'cm' }) as const

describe('the size for a measure', () => {
  test.each([
    [71, 'within', [0]],
    [76, 'within', [0]],
    [83, 'within', [1]],
    [77, 'between', [0, 1]],
    [80, 'between', [1, 0]],
    // As near to both: the larger.
    [78.5, 'between', [1, 0]],
    [60, 'below', [0]],
    [120, 'above', [2]],
  ])('%d cm lies %s', (amount, lies, sizes) => {
    expect(sizesFor(fit, own(amount))).toEqual({ lies, sizes })
  })

  test('is the larger of two that share it', () => {
    expect(sizesFor(cm([71, 76], [78, 86], null), own(77))).toEqual({ lies: 'within', sizes: [1, 0] })
  })

  test('leaves out sizes that are drawn on no body', () => {
    expect(sizesFor(cm([71, null, 91], [76, null, 96], null), own(84))).toEqual({ lies: 'between', sizes: [2, 0] })
    expect(sizesFor(cm([null], [null], null), own(84))).toBe(null)
  })

  test.each([
    [0, 80, 8],
    [0, 92, -4],
    [3, 80, null],
  ])('size %d at %d cm has %j of ease', (size, amount, ease) => {
    expect(easeFor(fit, size, own(amount))).toBe(ease)
  })
})

describe('what is said of a size', () => {
  const say = (amount: number, size: number, of = fit): string =>
    fitWords(of, names, sizesFor(of, own(amount)) ?? noSize, size, own(amount))
  const noSize: Found = { lies: 'within', sizes: [] }

  test.each([
    [83, 1, 'Medium has 15 cm of ease: it is wider than you. It is made for a bust of 81–86 cm and measures 98 cm.'],
    [
      78.5,
      0,
      'You are between Small and Medium. Small has 9.5 cm of ease: it is wider than you. It is made for a bust of 71–76 cm and measures 88 cm.',
    ],
    [
      110,
      2,
      'That is more than the largest size is made for. Large has 3 cm of negative ease: it stretches to fit. It is made for a bust of 91–96 cm and measures 107 cm.',
    ],
    [
      98,
      1,
      'That is more than the largest size is made for. Medium has no ease: it is as wide as you. It is made for a bust of 81–86 cm and measures 98 cm.',
    ],
  ])('%d cm, size %d', (amount, size, words) => {
    expect(say(amount, size)).toBe(words)
  })

  test('without a finished measure there is no ease', () => {
    expect(say(72, 0, cm([71], [76], null))).toBe('Small is yours. It is made for a bust of 71–76 cm.')
  })
})

describe('a length in words', () => {
  test.each([
    [98.26, 'cm', '98.5 cm'],
    [98, 'cm', '98 cm'],
    [38.5, 'in', '38½ in'],
    [38.9, 'in', '39 in'],
    [0.3, 'in', '¼ in'],
    [0, 'in', '0 in'],
  ] as const)('%d %s', (amount, unit, words) => {
    expect(lengthWords(amount, unit)).toBe(words)
  })

  test('from one to another', () => {
    expect(rangeWords(91.5, 96.5, 'cm')).toBe('91.5–96.5 cm')
    expect(rangeWords(20, 20, 'in')).toBe('20 in')
  })
})
