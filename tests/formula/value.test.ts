import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { calculated, environment, printed, sheet } from './workbench.ts'

const given = `
rim = [52, 60, 68] cm
rim_sts = stitches(rim) as multiple of 6
depth = 24 cm
`

describe('a formula gives a value for every size', () => {
  const cases: readonly (readonly [string, string, readonly (number | string | null)[]])[] = [
    ['a whole number', '6', [6, 6, 6]],
    ['a decimal', '0.1 + 0.2', [0.3, 0.3, 0.3]],
    ['a decimal without a zero', '.5', [0.5, 0.5, 0.5]],
    ['a fraction', '1/4', [0.25, 0.25, 0.25]],
    ['a fraction with a unit', '1/2 in', [0.5, 0.5, 0.5]],
    ['a mixed number', '20 1/2 in', [20.5, 20.5, 20.5]],
    ['a fraction sign', '20½ in', [20.5, 20.5, 20.5]],
    ['a list', '[1, 2, 3]', [1, 2, 3]],
    ['a list with a unit', '[52, 60, 68] cm', [52, 60, 68]],
    ['a list of fractions', '[1/2, 3/4, 20 1/2] in', [0.5, 0.75, 20.5]],
    ['a list of measures', '[1 in, 2.54 cm, 1 in]', [1, 1, 1]],
    ['sizes by name', '{Child: 1, Adult S: 2, Adult L: 3}', [1, 2, 3]],
    ['sizes by name in another order', '{Adult L: 3, child: 1, "Adult S": 2} cm', [1, 2, 3]],
    ['a size to which it does not apply', '[4, none, 6]', [4, null, 6]],
    ['what does not apply stays so', '[4, none, 6] * 2 + 1', [9, null, 13]],
    ['nothing at all', 'none', [null, null, null]],
    ['words', '"long"', ['long', 'long', 'long']],
    ['words by size', '["short", "long", none]', ['short', 'long', null]],
    ['words in typographic quotes', '“long”', ['long', 'long', 'long']],
    ['product before sum', '1 + 2 * 3', [7, 7, 7]],
    ['brackets first', '(1 + 2) * 3', [9, 9, 9]],
    ['from left to right', '10 - 4 - 3', [3, 3, 3]],
    ['division from left to right', '24 / 4 / 2', [3, 3, 3]],
    ['below zero', '-2 * -3', [6, 6, 6]],
    ['typographic signs', '6 × 4 ÷ 3 − 1', [7, 7, 7]],
    ['a bracket with a unit', '(2 + 3) cm', [5, 5, 5]],
    ['a length times a count', 'rim * 2', [104, 120, 136]],
    ['a length by a count', 'rim / 2', [26, 30, 34]],
    ['a length by a length', 'rim / depth * 6', [13, 15, 17]],
    ['metric and imperial together', '10 cm + 1 in', [12.54, 12.54, 12.54]],
    ['the first unit counts', '1 in + 2.54 cm', [2, 2, 2]],
    ['a weight', '1 oz + 1 lb', [17, 17, 17]],
  ]
  it.each(cases)('%s: %s', (_, formula, expected) => {
    expect(calculated(formula, given)).toEqual(expected)
  })

  const rounded: readonly (readonly [string, readonly number[]])[] = [
    ['stitches(rim)', [62.4, 72, 81.6]],
    ['stitches(rim) as whole', [62, 72, 82]],
    ['stitches(rim) as even', [62, 72, 82]],
    ['stitches(rim) as odd', [63, 73, 81]],
    ['stitches(rim) as multiple of 6', [60, 72, 84]],
    ['stitches(rim) as multiple of 6 up', [66, 72, 84]],
    ['stitches(rim) as multiple of 6 down', [60, 72, 78]],
    ['stitches(rim) as multiple of 12 + 14', [62, 74, 86]],
    ['stitches(rim) as multiple of 6 - 1', [65, 71, 83]],
    ['stitches(rim) as multiple of [4, 5, 6]', [64, 70, 84]],
    ['stitches(rim) as multiple of 2 * 3 + 1', [61, 73, 79]],
    ['[2, 3, 5] / 2 as whole', [1, 2, 3]],
    ['10 + 5 as even', [16, 16, 16]],
    ['(5 as even) + 1', [7, 7, 7]],
    ['7 as even as multiple of 5', [10, 10, 10]],
  ]
  it.each(rounded)('rounding: %s', (formula, expected) => {
    expect(calculated(formula, given)).toEqual(expected)
  })

  const called: readonly (readonly [string, readonly (number | string | null)[]])[] = [
    ['rows(depth)', [19.2, 19.2, 19.2]],
    ['width(rim_sts)', [50, 60, 70]],
    ['height(20)', [25, 25, 25]],
    ['stitches(4 in, ribbing)', [16, 16, 16]],
    ['stitches(4 in, "ribbing")', [16, 16, 16]],
    ['width(8, ribbing)', [2, 2, 2]],
    ['min(rim_sts, 70, 100)', [60, 70, 70]],
    ['max(rim, 60 cm)', [60, 60, 68]],
    ['abs(rim - 60 cm)', [8, 0, 8]],
    ['sum(1, 2, rim_sts)', [63, 75, 87]],
    ['sum([4, 4, 2, 2])', [12, 12, 12]],
    ['sum([rim_sts, 1])', [61, 73, 85]],
    ['sum(rim_sts)', [216, 216, 216]],
    ['body("head circumference")', [45.72, 50.8, 55.88]],
    ['body("head_circumference") - 2.54 cm', [43.18, 48.26, 53.34]],
    ['at("Adult S", rim_sts)', [72, 72, 72]],
    ['at("adult s", ["a", "b", "c"])', ['b', 'b', 'b']],
    ['if(rim_sts > 60, 1, 2)', [2, 1, 1]],
    ['if(rim_sts is multiple of 8, "yes", "no")', ['no', 'yes', 'no']],
    ['if(not rim_sts = 60 and depth >= 24 cm, 1, none)', [null, 1, 1]],
    ['if(rim_sts < 70 or rim_sts > 80, rim, 0 cm)', [52, 0, 68]],
    ['if(60 < rim_sts <= 72, 1, 0)', [0, 1, 0]],
    ['if([1, none, 3] = none, 0, 1)', [1, 0, 1]],
    ['if([1, none, 3] > 2, 5, 6)', [6, null, 5]],
    ['if(rim_sts = 60, 0, 12 / (rim_sts - 60))', [0, 1, 0.5]],
    ['if(rim_sts rises, 1, 0)', [1, 1, 1]],
    ['if("a" = "a", 1, 0)', [1, 1, 1]],
  ]
  it.each(called)('function: %s', (formula, expected) => {
    expect(calculated(formula, given)).toEqual(expected)
  })
})

describe('the names of a draft are settled', () => {
  it('in any order of the text, and kept in that order', () => {
    const { settled, diagnostics } = sheet('c = b + 1\nb = a + 1\na = 1')
    expect(diagnostics).toEqual([])
    expect([...settled.values.keys()]).toEqual(['c', 'b', 'a'])
  })

  it('with names in any script', () => {
    expect(calculated('breite_größe + マチ', 'breite_größe = 1\nマチ = 2')).toEqual([3, 3, 3])
  })

  it('however a letter with an accent was typed', () => {
    expect(calculated('l\u00e4nge', 'la\u0308nge = 2')).toEqual([2, 2, 2])
  })

  it('with comments and empty lines', () => {
    expect(calculated('a', '# all sizes\n\n  a = 1 # one\r\n')).toEqual([1, 1, 1])
  })

  it('for a single size', () => {
    expect(calculated('[3] + 1', '', environment({ sizes: ['One size'], body: null }))).toEqual([4])
  })
})

describe('a placeholder prints', () => {
  const cases: readonly (readonly [string, string])[] = [
    ['rim_sts', '60 (72, 84)'],
    ['rim_sts - 2', '58 (70, 82)'],
    ['depth', '24 cm (9½ in)'],
    ['rim', '52 (60, 68) cm [20½ (23½, 26¾) in]'],
    ['rim as cm', '52 (60, 68) cm'],
    ['rim as in to 1/8', '20½ (23⅝, 26¾) in'],
    ['rim_sts as words', 'sixty (seventy-two, eighty-four)'],
    ['rim_sts / 6 as ordinal', '10th (12th, 14th)'],
    ['stitches(rim) as whole as words', 'sixty-two (seventy-two, eighty-two)'],
    ['rim / depth', '2.17 (2.5, 2.83)'],
    ['[1, none, 3]', '1 (–, 3)'],
    ['none', '–'],
    ['width(rim_sts)', '50 (60, 70) cm [19¾ (23½, 27½) in]'],
    ['body("head circumference")', '45.5 (51, 56) cm [18 (20, 22) in]'],
    ['6.5 mm', '6.5 mm'],
    ['"long"', 'long'],
    ['  rim_sts\n  - 2 ', '58 (70, 82)'],
  ]
  it.each(cases)('{{%s}}', (placeholder, expected) => {
    expect(printed(placeholder, given)).toBe(expected)
  })

  it('skeins by weight or by length, rounded up', () => {
    const facts = environment({ skein: { mass: new Fraction(100), length: new Fraction(11000) } })
    expect(printed('[120, 165, 215] g as skeins', '', facts)).toBe('2 (2, 3) skeins')
    expect(printed('110 m as skeins', '', facts)).toBe('1 skein')
  })
})
