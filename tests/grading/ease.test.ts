import { describe, expect, it } from 'vitest'
import { createEnvironment } from '../../src/grading/index.ts'
import { easeClasses, easeSource } from '../../src/standards/ease.ts'
import { body, calculated, environment, gauge, printed, sheet } from '../formula/workbench.ts'

const inInches = createEnvironment({
  sizes: ['S', 'M', 'L'],
  swatches: [{ name: null, gauge: gauge('16 per 4 in', null) }],
  body: body('women', ['Small', 'Medium', 'Large']),
  skein: null,
})

describe('the ease of a fit by its name', () => {
  it.each([
    ['very close', -3],
    ['very-close', -3],
    ['Very close fitting', -3],
    ['close', 0],
    ['close fit', 0],
    ['classic', 3],
    ['Classic Fit', 3],
    ['standard', 3],
    ['loose', 5],
    ['oversized', 6],
    ['Oversized fit', 6],
  ])('%s', (fit, inches) => {
    expect(calculated(`ease("${fit}")`, '', inInches)).toEqual([inches, inches, inches])
  })

  it.each(['', 'fit', 'classical', 'very', 'very loose'])('refused: %j', (fit) => {
    expect(sheet(`a = ease("${fit}")`).diagnostics.map(({ code }) => code)).toEqual(['fit-unknown'])
  })

  it.each([
    ['ease()', 'function-arguments'],
    ['ease("classic", 2)', 'function-arguments'],
    ['ease(classic)', 'name-in-quotes'],
  ])('refused: %s', (formula, code) => {
    expect(sheet(`a = ${formula}`).diagnostics.map((finding) => finding.code)).toEqual([code])
  })

  it('is printed first in the unit of the swatch', () => {
    expect(printed('ease("classic")', '', inInches)).toBe('3 in (7.5 cm)')
    expect(printed('ease("very close")')).toBe('−7.5 cm (−3 in)')
  })

  it('names its source, and goes from low to high', () => {
    expect(easeSource.publisher).not.toBe('')
    for (const { inches, how } of easeClasses) {
      expect(inches[1] === null || inches[0] <= inches[1]).toBe(true)
      expect(['seen', 'from memory']).toContain(how)
    }
  })
})

describe('ease on a body measure', () => {
  it.each([
    ['as a published fit', 'body("bust") + ease("classic")', [36, 40, 44]],
    ['as a length', 'body("bust") + 2 in', [35, 39, 43]],
    ['as a length for every size', 'body("bust") + [2, 3, 4] in', [35, 40, 45]],
    ['negative', 'body("bust") - 1 in', [32, 36, 40]],
    ['as a share', 'body("bust") + 10 %', [36.3, 40.7, 45.1]],
    ['as a share taken off', 'body("bust") - 10 %', [29.7, 33.3, 36.9]],
    ['as a factor', 'body("bust") * 110 %', [36.3, 40.7, 45.1]],
    ['as a plain factor', 'body("bust") * 1.1', [36.3, 40.7, 45.1]],
  ])('%s', (_, formula, inches) => {
    expect(calculated(formula, '', inInches)).toEqual(inches)
  })

  it('a value may be called ease all the same', () => {
    const text = 'ease = 2 in\naround = body("bust") + ease\nroomy = body("bust") + ease("loose")'
    expect(calculated('around', text, inInches)).toEqual([35, 39, 43])
    expect(calculated('roomy', text, inInches)).toEqual([38, 42, 46])
  })

  it.each([
    ['a plain number', 'body("bust") + 5', 'kinds-mix'],
    ['a percentage before the measure', '5 % + body("bust")', 'kinds-mix'],
    ['the name of a fit as words', 'body("bust") + "classic"', 'kinds-mix'],
  ])('refused: %s', (_, formula, code) => {
    expect(sheet(`a = ${formula}`, inInches).diagnostics.map((finding) => finding.code)).toEqual([code])
  })

  it('where there is no table, the fit alone is known', () => {
    expect(calculated('100 cm + ease("close")', '', environment({ body: null }))).toEqual([100, 100, 100])
  })
})
