import { describe, expect, it } from 'vitest'
import { yarnWeights } from '../../src/standards/yarn-weights.ts'
import { codesOf, proofed } from '../pattern/measures/draft.ts'

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

describe('drafts against published copies', () => {
  const draft = (category: number, stitches: number, hook: number) =>
    proofed({
      swatch: `swatch: {in: ${category === 0 ? 'dc' : 'sc'}, stitches: ${stitches} per 4 in}`,
      facts: `yarn: [{category: ${category}}]\nhooks: [${hook} mm]`,
    })

  it.each(seen)(
    'category %s, %s: both ends of its ranges are within',
    (category, _, fewest, most, hookFrom, hookTo) => {
      expect(codesOf(draft(category, fewest ?? most, hookFrom))).toEqual([])
      expect(codesOf(draft(category, most, hookTo ?? hookFrom))).toEqual([])
    },
  )

  // A tenth beyond is allowed, of hooks a quarter and at most 1 mm. Of 6 and 7 an older version circulates with 6 stitches and 16 mm.
  it.each(seen)(
    'category %s, %s: what is well beyond them is outside',
    (category, _, fewest, most, hookFrom, hookTo) => {
      const [tooFine, tooCoarse] = [
        draft(category, most * 1.1 + 1, hookFrom),
        draft(category, (fewest ?? 6) * 0.9 - 2, hookFrom),
      ]
      expect(codesOf(tooFine)).toEqual(['gauge-outside-category'])
      expect(codesOf(tooCoarse)).toEqual(fewest === null ? [] : ['gauge-outside-category'])
      expect(codesOf(draft(category, most, hookFrom - 1.25))).toEqual(['hook-outside-category'])
      expect(codesOf(draft(category, most, (hookTo ?? 99) + 3))).toEqual(
        hookTo === null ? [] : ['hook-outside-category'],
      )
    },
  )
})
