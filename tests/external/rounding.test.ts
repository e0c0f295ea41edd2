import { describe, expect, it } from 'vitest'
import { calculated, environment, gauge, printed } from '../formula/workbench.ts'

// Size lists of Yarnspirations patterns (2015 to 2023): inches as published, and the centimetres beside them.
const pairs: readonly (readonly [number, number])[] = [
  [21, 53.5],
  [23, 58.5],
  [25, 63.5],
  [26, 66],
  [26.5, 67.5],
  [28, 71],
  [30, 76],
  [34, 86.5],
  [36, 91.5],
  [38, 96.5],
  [40, 101.5],
  [42, 106.5],
  [44, 112],
  [46, 117],
  [48, 122],
  [50, 127],
  [52, 132],
  [54, 137],
  [56, 142],
  [62, 157.5],
]

describe('published inches are printed with the published centimetres', () => {
  it.each(pairs)('%s in is %s cm', (inches, centimetres) => {
    expect(printed(`${inches} in as cm`)).toBe(`${centimetres} cm`)
  })
})

function swatch(stitches: string, rows: string | null = null) {
  return environment({ sizes: ['One'], body: null, swatches: [{ name: null, gauge: gauge(stitches, rows) }] })
}

describe('textbook gauge arithmetic', () => {
  // My Mill House, article on gauge, 2014: 41 in at 21 stitches to 4 in is 215.25; with a repeat of 12 plus 14, 218.
  it('41 inches at 21 stitches to 4 inches', () => {
    const facts = swatch('21 per 4 in')
    expect(calculated('stitches(41 in)', '', facts)).toEqual([215.25])
    expect(calculated('stitches(41 in) as multiple of 12 + 14', '', facts)).toEqual([218])
    expect(calculated('stitches(41 in) as multiple of 12 + 14 down', '', facts)).toEqual([206])
  })

  // The same article: 5.25 stitches to the inch over widths a quarter of an inch apart.
  it.each([
    [41, 215.25],
    [41.25, 216.5625],
    [41.5, 217.875],
    [41.75, 219.1875],
    [42, 220.5],
  ])('%s inches at 5.25 stitches to the inch', (inches, stitches) => {
    expect(calculated(`stitches(${inches} in)`, '', swatch('5.25 per 1 in'))).toEqual([stitches])
  })

  // angelhugs.ca, article on scarves: inputs as given, results by its two equations.
  it('a scarf of 8 by 45 inches at 4.5 stitches and 6 rows to the inch', () => {
    const facts = swatch('4.5 per 1 in', '6 per 1 in')
    expect(calculated('stitches(8 in)', '', facts)).toEqual([36])
    expect(calculated('rows(45 in)', '', facts)).toEqual([270])
  })

  // knittinghelp.com, forum: 200 stitches at 18 to 4 in, "about 44" inches.
  it('200 stitches at 18 to 4 inches', () => {
    const width = calculated('width(200)', '', swatch('18 per 4 in'))?.[0]
    expect(width).toBeCloseTo(44.44, 2)
    expect(printed('width(200)', '', swatch('18 per 4 in'))).toBe('44½ in (113 cm)')
  })

  // Common practice, no source: 16 stitches to 4 in are 15.75 to 10 cm, for 4 in is 10.16 cm.
  it('4 inches are not 10 centimetres', () => {
    expect(calculated('stitches(10 cm)', '', swatch('16 per 4 in'))?.[0]).toBeCloseTo(15.748, 3)
  })
})

describe('textbook ease', () => {
  // Yay For Yarn, Dotty pullover: busts from 30 to 62 in by 4 with 2 in of ease.
  it('busts with two inches of ease', () => {
    const sizes = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X']
    const facts = environment({ sizes, body: null })
    const finished = '[30, 34, 38, 42, 46, 50, 54, 58, 62] in + 2 in'
    expect(calculated(finished, '', facts)).toEqual([32, 36, 40, 44, 48, 52, 56, 60, 64])
  })

  // Caron, child's knit pullover and cardigan: body chests (also sizes 2 to 10 of the child table) and finished chests.
  it('finished chests of a children’s pattern against the body', () => {
    const sizes = ['2', '4', '6', '8', '10']
    const facts = environment({ sizes, body: null })
    expect(calculated('[26, 28, 30, 32, 34] in - [21, 23, 25, 26.5, 28] in', '', facts)).toEqual([5, 5, 5, 5.5, 6])
  })
})

describe('counts by size of a published pattern', () => {
  // Bernat, Mix It Up crochet throw: chain 103, a V-stitch in every third chain from the fifth, 33 of them.
  it('V-stitches over a foundation chain', () => {
    expect(calculated('(103 - 4) / 3')).toEqual([33, 33, 33])
  })

  // Caron, Crochet Boxy Cardigan: half double crochet from the third chain, in six sizes.
  it('half double crochet over foundation chains', () => {
    const facts = environment({ sizes: ['XS', 'S', 'M', 'L', 'XL', '2X'], body: null })
    expect(printed('[32, 32, 34, 36, 38, 42] - 2', '', facts)).toBe('30 (30, 32, 34, 36, 40)')
  })
})
