import { describe, expect, it } from 'vitest'
import { loadSolver } from '../../src/solver/index.ts'
import { calculated, environment, printed, sheet, show } from './workbench.ts'

const given = `
rim = [50, 60, 80] cm
stretch = 5 %
made = 63 cm
`

describe('a percentage', () => {
  const cases: readonly (readonly [string, string, readonly (number | null)[]])[] = [
    ['is added to a length as a part of it', 'rim + 5 %', [52.5, 63, 84]],
    ['is taken from a length', 'rim - 10%', [45, 54, 72]],
    ['by name as if it stood there', 'rim - stretch', [47.5, 57, 76]],
    ['for every size', 'rim + [5, 10, 0] %', [52.5, 66, 80]],
    ['for no size', 'rim + [5 %, none, 0 %]', [52.5, null, 80]],
    ['is a part of what stands before it, sums included', 'rim + 10 cm + 10 %', [66, 77, 99]],
    ['one after the other', '100 cm + 10 % + 10 %', [121, 121, 121]],
    ['with another', '100 cm + (10 % + 10 %)', [120, 120, 120]],
    ['below zero', 'rim + -10 %', [45, 54, 72]],
    ['of inches', '40 in + 5 %', [42, 42, 42]],
    ['of a weight', '100 g + 10 %', [110, 110, 110]],
    ['of a count', '60 - 5 %', [57, 57, 57]],
    ['of one', '1 - 5 %', [0.95, 0.95, 0.95]],
    ['multiplies', 'rim * 105 %', [52.5, 63, 84]],
    ['multiplies from the left, and the measure keeps its unit', '105 % * 40 in', [42, 42, 42]],
    ['multiplies a count', '60 * 5 %', [3, 3, 3]],
    ['divides', '63 cm / 105 %', [60, 60, 60]],
    ['with decimals', 'rim * 102.5 %', [51.25, 61.5, 82]],
    ['with a fraction', '100 cm * 12 1/2 %', [12.5, 12.5, 12.5]],
    ['of its own is kept in per cent', '5 % + 3 %', [8, 8, 8]],
    ['halved', '5 % / 2', [2.5, 2.5, 2.5]],
    ['to a percentage', '10 % / 5 %', [2, 2, 2]],
    ['made of a number', '(made / 60 cm - 1) * 100 %', [5, 5, 5]],
    ['the larger', 'max(5 %, 8 %)', [8, 8, 8]],
    ['chosen', 'rim - if(rim > 55 cm, 10 %, 0 %)', [50, 54, 72]],
  ]
  it.each(cases)('%s: %s', (what, formula, expected) => {
    const found = calculated(formula, given)
    // A number times a percentage is a number.
    expect(what === 'made of a number' ? found?.map((cell) => Number(cell) * 100) : found).toEqual(expected)
  })

  it.each([
    ['{{ stretch }}', 'stretch', '5%'],
    ['by size', '[5, 7.5, 10] %', '5 (7.5, 10)%'],
    ['to a tenth', '100 % / 3', '33.3%'],
    ['a part, as a percentage', '(made - 60 cm) / 60 cm as %', '5%'],
    ['a part of stitches', '45 / 60 as %', '75%'],
    ['finer', '100 % / 3 as % to 0.01', '33.33%'],
    ['none', '[5 %, none, none]', '5 (–, –)%'],
  ])('is printed: %s', (_, formula, text) => {
    expect(printed(formula, given)).toBe(text)
  })

  it.each([
    ['need made / 60 cm - 1 <= 5 %', []],
    ['need stretch = 5/100', []],
    ['need stretch > 5 %', ['need-failed']],
  ])('is compared: %s', (need, codes) => {
    expect(sheet(`${given}\n${need}`).diagnostics.map(({ code }) => code)).toEqual(codes)
  })

  it.each([
    [
      '5 % + rim',
      '`5 %` (a percentage) and `rim` (a length) cannot be added.',
      'A percentage comes after what it is taken of: `rim + 5 %`.',
    ],
    [
      '5 % + 60',
      '`5 %` (a percentage) and `60` (a count) cannot be added.',
      'A percentage comes after what it is taken of: `60 + 5 %`.',
    ],
    ['5 % - rim', '`rim` (a length) cannot be taken from `5 %` (a percentage).', undefined],
    ['5 % / rim', '`5 %` (a percentage) cannot be divided by `rim` (a length).', undefined],
    ['[5 %, 3, 4]', '`5 %` (a percentage) and `3` (a count) cannot stand side by side.', undefined],
    ['stitches(5 %)', '`stitches` takes a length, and `5 %` (a percentage) is none.', undefined],
    ['5 % as whole', 'Rounding takes a count, and `5 %` (a percentage) is none.', undefined],
    ['5 percent', '`percent` is not a unit.', 'Write `%`.'],
  ])('is refused: %s', (formula, message, hint) => {
    const [finding, ...others] = sheet(`${given}\na = ${formula}`).diagnostics
    expect(others).toEqual([])
    expect([finding?.message, finding?.hint]).toEqual([message, hint])
  })

  it.each([
    ['rim as %', 'format-kind'],
    ['"long" as %', 'format-kind'],
    ['stretch as cm', 'format-kind'],
  ])('is refused as a way to print: %s', (formula, code) => {
    expect(show(formula, given).diagnostics.map((finding) => finding.code)).toEqual([code])
  })
})

describe('a percentage of a linked count', async () => {
  const facts = environment({ solver: await loadSolver() })

  it.each([
    ['a + 5 %', 'a ~ 60\nb ~ 60\nneed a = 60\nneed b >= a + 5 %', 60, 63],
    ['a - 10 %', 'a ~ 60\nb ~ 50\nneed a = 60\nneed b >= a - 10 %', 60, 54],
    ['a * 110 %', 'a ~ 60\nb ~ 60\nneed a = 60\nneed b >= a * 110 %', 60, 66],
  ])('%s', (_, text, a, b) => {
    const { settled, diagnostics } = sheet(text, facts)
    expect(diagnostics).toEqual([])
    expect(['a', 'b'].map((name) => settled.values.get(name)?.bySize[0]?.valueOf())).toEqual([a, b])
  })

  it('refused: a percentage that is linked itself', () => {
    const { diagnostics } = sheet('a ~ 60\nneed 100 + (a) % > 150', facts)
    expect(diagnostics.map(({ code }) => code)).toEqual(['linked-not-linear'])
  })
})
