import { describe, expect, it } from 'vitest'
import { body, calculated, environment } from '../formula/workbench.ts'

function row(table: string, columns: readonly string[], measure: string) {
  const facts = environment({ sizes: columns, body: body(table, columns), swatches: [] })
  return calculated(`body("${measure}")`, '', facts)
}

describe('body tables against published copies', () => {
  // Craft Yarn Council, Standard body measurements: Woman; bust ranges seen in size lists of Rowan, Yarnspirations and
  // Yay For Yarn. A range is taken at its middle.
  it('bust of women, X-Small to 5X', () => {
    const sizes = ['X-Small', 'Small', 'Medium', 'Large', 'X-Large', '2X', '3X', '4X', '5X']
    expect(row('women', sizes, 'bust')).toEqual([29, 33, 37, 41, 45, 49, 53, 57, 61])
  })

  // Craft Yarn Council, Standard body measurements: Child and Youth; chest of 2 to 10 seen in three Caron patterns.
  it('chest of children, 2 to 10', () => {
    expect(row('child', ['2', '4', '6', '8', '10'], 'chest')).toEqual([21, 23, 25, 26.5, 28])
  })

  // The same table; these rows agree number for number with a designer's table at crochetkitten.com.
  it.each([
    ['back waist length', [8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16]],
    ['cross back', [9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13]],
    ['arm length to underarm', [8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5]],
    ['upper arm', [7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5]],
    ['armhole depth', [4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5]],
  ])('%s of children and youth', (measure, inches) => {
    expect(row('child', ['2', '4', '6', '8', '10', '12', '14', '16'], measure)).toEqual(inches)
  })

  // Bernat pattern with baby sizes: 6 months 17 in, 24 months 20 in.
  it('chest of babies', () => {
    expect(row('baby', ['6 months', '24 months'], 'chest')).toEqual([17, 20])
  })

  // Craft Yarn Council, Head circumference chart, older booklet: from memory.
  it('heads', () => {
    expect(row('head', ['Preemie', 'Baby', 'Toddler', 'Child', 'Woman', 'Man'], 'head circumference')).toEqual([
      12, 14, 16, 18, 20, 22,
    ])
  })

  // Craft Yarn Council, Standard body measurements: Man, Small to 2X-Large: from memory.
  it('chest of men', () => {
    expect(row('men', ['S', 'M', 'L', 'XL', '2XL'], 'chest')).toEqual([35, 39, 43, 47, 51])
  })

  // Purls and Pixels, knitwear size guide: ranges of hand circumference; no standard could be found.
  it('hands', () => {
    expect(row('hand', ['Child', 'Woman', 'Man'], 'hand circumference')).toEqual([5.75, 6.75, 8.25])
  })

  // A retail blog on children's gloves by age: the ends of its ranges, 4 to 7.5 in around and 2.5 to 6 in long.
  it('children’s hands', () => {
    const ages = ['0-12 months', '10-12 years']
    expect(row('child hand', ages, 'hand circumference')).toEqual([4.25, 7.25])
    expect(row('child hand', ages, 'hand length')).toEqual([2.75, 5.75])
  })

  // The Craft Yarn Council publishes children and youth as one table; 12 to 16 from memory.
  it('chest of youth', () => {
    expect(row('youth', ['12', '14', '16'], 'chest')).toEqual([30, 31.5, 32.5])
  })
})
