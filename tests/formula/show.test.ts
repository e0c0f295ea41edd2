import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { evaluate, readFormula, usesLedger, wholeBySize } from '../../src/formula/index.ts'
import { environment, printed, sheet } from './workbench.ts'

function wholeOf(formula: string) {
  const value = sheet(`a = ${formula}`).settled.values.get('a')
  return value === undefined ? 'no value' : wholeBySize(value)
}

describe('a value is ready to be worked when it is whole for every size', () => {
  const cases: readonly (readonly [string, readonly (number | null)[] | null])[] = [
    ['[60, 72, 84]', [60, 72, 84]],
    ['[60, none, 84]', [60, null, 84]],
    ['[60, 72, 84] / 12', [5, 6, 7]],
    ['20 cm / 5 cm', [4, 4, 4]],
    ['[60, 72, 84] / 5', null],
    ['52 cm', null],
    ['"long"', null],
  ]
  it.each(cases)('%s', (formula, expected) => {
    expect(wholeOf(formula)).toEqual(expected)
  })
})

describe('placeholders that ask the worked rows', () => {
  it.each([
    ['total', true],
    ['{Child: 1, Adult S: 2, Adult L: total - 2}', true],
    ['max(count(dc), 3) as words', true],
    ['"total"', false],
    ['3 + 4', false],
  ] as const)('%s', (text, expected) => {
    const { value } = readFormula(text, 0)
    expect(value === null ? null : usesLedger(value)).toBe(expected)
  })

  const made = ({ what, piece, row }: { what: string; piece: string | null; row: string | null }) =>
    what === 'dc' && row === 'Rnd 4' && piece === null ? [12, 18, 24].map((number) => new Fraction(number)) : null
  const facts = { ...environment(), made }

  it('stand inside arithmetic', () => {
    expect(printed('count(dc, "Rnd 4") / 6 + 1', '', facts)).toBe('3 (4, 5)')
  })

  it('give nothing where there is no such row', () => {
    expect(printed('count(dc, "Rnd 5")', '', facts)).toBeNull()
  })

  it('are silent about a name that is already reported', () => {
    const { settled } = sheet('a = zzz')
    const { value } = readFormula('a + 1', 0)
    const outcome = value === null ? null : evaluate(value, settled, environment())
    expect(outcome).toEqual({ value: null, diagnostics: [] })
  })
})
