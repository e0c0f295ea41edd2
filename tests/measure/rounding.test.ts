import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import type { Direction } from '../../src/measure/index.ts'
import { roundToMultiple } from '../../src/measure/index.ts'

describe('a number is rounded to a multiple', () => {
  const cases: readonly (readonly [string, string, number, number, Direction, number])[] = [
    ['the nearest', '62.4', 6, 0, 'nearest', 60],
    ['the nearest above', '81.6', 6, 0, 'nearest', 84],
    ['halfway goes up', '63', 6, 0, 'nearest', 66],
    ['halfway below zero goes up', '-3', 6, 0, 'nearest', 0],
    ['a multiple and some more', '215.25', 12, 14, 'nearest', 218],
    ['up', '61', 6, 0, 'up', 66],
    ['down', '65', 6, 0, 'down', 60],
    ['up stays where it fits', '66', 6, 0, 'up', 66],
    ['down stays where it fits', '67', 6, 1, 'down', 67],
    ['whole', '2.5', 1, 0, 'nearest', 3],
    ['odd', '8', 2, 1, 'nearest', 9],
  ]
  it.each(cases)('%s: %s', (_, value, of, plus, direction, expected) => {
    const rounded = roundToMultiple(new Fraction(value), new Fraction(of), new Fraction(plus), direction)
    expect(rounded.valueOf()).toBe(expected)
  })
})
