import { describe, expect, it } from 'vitest'
import { yarnWeights } from '../../src/standards/yarn-weights.ts'

// Craft Yarn Council, Standard Yarn Weight System; read in copies of Crochet World (October 2018), Mary Maxim's yarn
// guide and others. Stitches of single crochet (lace: double crochet) over 4 in, and hook in millimetres.
const seen: readonly (readonly [number, string, number | null, number, number, number | null])[] = [
  [0, 'Lace', 32, 42, 1.4, 2.25],
  [1, 'Super Fine', 21, 32, 2.25, 3.5],
  [2, 'Fine', 16, 20, 3.5, 4.5],
  [3, 'Light', 12, 17, 4.5, 5.5],
  [4, 'Medium', 11, 14, 5.5, 6.5],
  [5, 'Bulky', 8, 11, 6.5, 9],
  [6, 'Super Bulky', 7, 9, 9, 15],
  [7, 'Jumbo', null, 6, 15, null],
]

describe('yarn weights against published copies', () => {
  it.each(seen)('category %s, %s', (category, name, fewest, most, hookFrom, hookTo) => {
    const found = yarnWeights.find((weight) => weight.category === category)
    expect(found).toMatchObject({
      name,
      gauge: { min: fewest, max: most, stitch: category === 0 ? 'dc' : 'sc' },
      hookMm: { min: hookFrom, max: hookTo },
    })
  })
})
