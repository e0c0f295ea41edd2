import { describe, expect, it } from 'vitest'
import { createEnvironment, readFits } from '../../src/grading/index.ts'
import { body, calculated, environment, gauge, nowhere, printed, sheet, written } from '../formula/workbench.ts'

/** Inches of one measure for one size of a table. */
function inchesOf(table: string, column: string, measure: string) {
  const facts = environment({ sizes: ['One'], body: body(table, [column]), swatches: [] })
  return calculated(`body("${measure}")`, '', facts)?.[0] ?? null
}

describe('a size of a body table is found', () => {
  const found: readonly (readonly [string, string, string, number])[] = [
    ['women', 'X-Small', 'bust', 29],
    ['women', 'XS', 'bust', 29],
    ['woman', 'x small', 'bust', 29],
    ['women', 'M', 'bust', 37],
    ['women', '1X', 'bust', 45],
    ['women', '2XL', 'bust', 49],
    ['men', '2X', 'chest', 51],
    ['men', 'xxl', 'chest', 51],
    ['child', '8', 'chest', 26.5],
    ['youth', '14', 'chest', 31.5],
    ['baby', '6 months', 'chest', 17],
    ['baby', '24 mo', 'chest', 20],
    ['baby', '3m', 'chest', 16],
    ['head', 'women', 'head circumference', 20],
    ['hand', 'Toddler', 'hand circumference', 4.75],
    ['child hand', '4-6 years', 'hand length', 4.25],
    ['foot', 'Woman 6-9', 'foot circumference', 8],
  ]
  it.each(found)('%s, %s, %s', (table, column, measure, inches) => {
    expect(inchesOf(table, column, measure)).toBe(inches)
  })

  it.each([
    ['women', 'Gigantic'],
    ['women', ''],
    ['women', 'X'],
    ['foot', 'Woman'],
  ])('refused: %s, %j', (table, column) => {
    const fits = { table: written(table), columns: [written(column)], at: nowhere }
    expect(readFits(fits, 1).diagnostics.map(({ code }) => code)).toEqual(['body-column-unknown'])
  })

  it('a size that is drawn on none has no measure', () => {
    const columns = [written('Child'), null, written('Man')]
    const fits = readFits({ table: written('head'), columns, at: nowhere }, 3).value
    expect(calculated('body("head circumference")', '', environment({ body: fits, swatches: [] }))).toEqual([
      18,
      null,
      22,
    ])
  })
})

describe('a body measure is found', () => {
  it.each([
    ['bust', 37],
    ['chest', 37],
    ['Bust', 37],
    ['upper arm', 11],
    ['upper_arm', 11],
    ['Upper arm', 11],
    ['arm length', 17],
    ['hip', 39],
  ])('%s', (measure, inches) => {
    expect(inchesOf('women', 'Medium', measure)).toBe(inches)
  })

  it.each(['back', 'thigh', ''])('refused: %j', (measure) => {
    const facts = environment({ sizes: ['One'], body: body('women', ['Medium']) })
    expect(sheet(`a = body("${measure}")`, facts).diagnostics.map(({ code }) => code)).toEqual(['body-measure-unknown'])
  })
})

describe('what a draft’s formulas look up', () => {
  it('body measures are printed first in the unit of the swatch', () => {
    const inches = createEnvironment({
      sizes: ['One'],
      swatches: [{ name: null, gauge: gauge('16 per 4 in', null) }],
      body: body('head', ['Child']),
      skein: null,
    })
    expect(printed('body("head")', '', inches)).toBe('18 in (45.5 cm)')
    expect(printed('body("head")')).toBe('45.5 (51, 56) cm [18 (20, 22) in]')
  })

  it('the first swatch is the default', () => {
    expect(calculated('stitches(10 cm)')).toEqual([12, 12, 12])
    expect(calculated('stitches(10.16 cm, ribbing)')).toEqual([16, 16, 16])
  })
})
