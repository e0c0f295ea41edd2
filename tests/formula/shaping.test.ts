import { describe, expect, it } from 'vitest'
import { calculated, printed, sheet } from './workbench.ts'

describe('a shaping phrase among formulas', () => {
  it.each([
    [
      'of a size each',
      'evenly([7, 0, -3], 93)',
      ['increase 7 evenly over 93', 'work even over 93', 'decrease 3 evenly over 93'],
    ],
    [
      'where a number does not apply',
      'evenly([7, none, 3], 93)',
      ['increase 7 evenly over 93', null, 'increase 3 evenly over 93'],
    ],
    [
      'chosen by a condition',
      'if([1, 2, 1] > 1, taper(4, 2, 1), none)',
      [null, 'dec 1 st at each end of every row once', null],
    ],
    [
      'that a size not chosen could not work',
      'if([1, 0, 1] > 0, evenly(3, [3, 1, 3]), "work even")',
      ['increase 3 evenly over 3', 'work even', 'increase 3 evenly over 3'],
    ],
    ['by name', '{Child: none, Adult S: shares(3, 2), Adult L: none}', [null, '2, 1', null]],
    [
      'of one size for all',
      'at("Adult S", evenly([1, 2, 3], 9))',
      ['increase 2 evenly over 9', 'increase 2 evenly over 9', 'increase 2 evenly over 9'],
    ],
    ['without any', 'evenly(none, 93)', [null, null, null]],
  ])('%s', (_, formula, expected) => {
    expect(sheet(`result = ${formula}`).diagnostics).toEqual([])
    expect(calculated(formula)).toEqual(expected)
  })

  it.each([
    ['shares are counts', 'share_of([92, 93, 1], 3, 2)', [30, 31, 1]],
    ['none where there are no parts', 'if([1, 0, 1] > 0, share_of(9, [1, 0, 3], 1), none)', [9, null, 3]],
  ])('%s', (_, formula, expected) => {
    expect(calculated(formula)).toEqual(expected)
  })

  it.each([
    ['if([1, 2, 3] > 0, evenly([1, 2, 3], 9), none)', 'increase 1 (2, 3) evenly over 9'],
    ['{Child: evenly(1, 9), Adult S: evenly(2, 9), Adult L: evenly(2, 9)}', 'increase 1 (2, 2) evenly over 9'],
    ['"ch [1, 2]"', 'ch [1, 2]'],
    ['["ch 1", "ch 2", "ch 2"]', 'ch 1 (ch 2, ch 2)'],
  ])('%s prints what sizes share once', (formula, text) => {
    expect(printed(formula)).toBe(text)
  })

  it('has one finding where it cannot be worked, and none for what depends on it', () => {
    const found = sheet('a = taper(60, 41, 40)\nb = a\nc = if(1 = 1, b, "x")').diagnostics
    expect(found.map(({ code }) => code)).toEqual(['shaping-odd'])
  })
})
