import { describe, expect, it } from 'vitest'
import { estimateYarn } from '../../src/yarn/estimate.ts'
import { yarnDraft } from '../yarn/draft.ts'

const nothing = { units: [0], grams: [0] }

describe('yarn against published reckonings', () => {
  // Yarn Nomads, 2016: a swatch of 6 × 6 in takes 4 g of a ball of 50 g = 87 yd, so a blanket of 60 × 60 in takes 100
  // times as much: 400 g, 696 yd, 8 balls (its own roundings on the way come to 720 yd).
  it('a blanket from its swatch', () => {
    const perSquareInch = 20
    const { total } = estimateYarn({
      sizes: 1,
      rows: [{ units: [60 * 60 * perSquareInch], strands: [1] }],
      beside: [nothing],
      swatch: { grams: 4, units: 6 * 6 * perSquareInch },
      samples: [],
    })
    expect(total?.map(Math.round)).toEqual([400])
  })

  it('its length and its balls', () => {
    const facts = `margin: 0 %
yarn: [{as: main, skein: {weight: 50 g, length: 87 yd}}]
sample: {size: S, used: {main: 400 g}}`
    const { yarn } = yarnDraft(facts, '## Blanket\n\nRow 1: Fsc 100, turn.\n')
    expect(yarn.main).toMatchObject({ grams: [400, 400], yards: [696, 696], metres: [637, 637], skeins: [8, 8] })
  })

  // Own arithmetic, common practice, no source: a sample of 52 × 60 cm weighs 180 g; 60 × 66 cm of the same fabric take
  // 180 × 3960 / 3120 = 228.5 g, three balls of 100 g.
  it('a larger size from a weighed sample', () => {
    const { total } = estimateYarn({
      sizes: 2,
      rows: [{ units: [52 * 60, 60 * 66], strands: [1] }],
      beside: [{ units: [0, 0], grams: [0, 0] }],
      swatch: null,
      samples: [{ size: 0, grams: [180] }],
    })
    expect(total?.map((grams) => grams.toFixed(2))).toEqual(['180.00', '228.46'])
  })
})
