import { describe, expect, it } from 'vitest'
import { type Finishing, finishYarn } from '../../src/yarn/finish.ts'

const bare: Finishing = {
  kind: '',
  length: null,
  across: null,
  strands: null,
  stitches: null,
  wraps: null,
  weight: null,
  count: null,
  worked: null,
}

// Common practice, no source: the geometry is reckoned here once more by hand.
describe('yarn of what is not worked in rows', () => {
  it.each<[string, Partial<Finishing>, Partial<Record<'units' | 'centimetres' | 'grams', number>>]>([
    [
      'fringe, 40 strands twice 15 cm and 2 cm for the knot',
      { kind: 'fringe', length: 15, strands: 40 },
      { centimetres: 1280 },
    ],
    ['cord of 100 chains', { kind: 'cord', stitches: 100 }, { units: 45 }],
    ['cord of 50 cm, two chains to a centimetre', { kind: 'cord', length: 50 }, { units: 45 }],
    ['cord of slip stitches', { kind: 'cord', stitches: 100, worked: 'slip stitch' }, { units: 95 }],
    [
      'twisted cord, two strands of three times its length',
      { kind: 'cord', length: 100, worked: 'twisted' },
      { centimetres: 600 },
    ],
    ['tassel wound 30 times over 10 cm', { kind: 'tassel', length: 10, wraps: 30 }, { centimetres: 640 }],
    ['pompom wound 150 times over 6 cm', { kind: 'pompom', across: 6, wraps: 150 }, { centimetres: 1800 }],
    ['two pompoms by weight', { kind: 'pompoms', weight: 8, count: 2 }, { grams: 16 }],
    ['embroidery, as long as its yarn', { kind: 'embroidery', length: 500 }, { centimetres: 500 }],
  ])('%s', (_, own, expected) => {
    expect(finishYarn({ ...bare, ...own }, 2)).toEqual({ units: 0, centimetres: 0, grams: 0, ...expected })
  })

  it('weighs a pompom of 6 cm at about 9 g, and one of twice that eight times as much', () => {
    const grams = [6, 12].map((across) => finishYarn({ ...bare, kind: 'pompom', across }, null))
    expect(grams.map((yarn) => (typeof yarn === 'string' ? yarn : Math.round(yarn.grams)))).toEqual([9, 72])
  })

  it('takes a chain for four times its length where no gauge tells its stitches', () => {
    const found = finishYarn({ ...bare, kind: 'cord', length: 100 }, null)
    expect(found).toEqual({ units: 0, centimetres: 400, grams: 0 })
  })

  it.each([
    ['fringe', { length: 15 }, 'strands'],
    ['fringe', { strands: 40 }, 'length'],
    ['pompom', {}, 'across'],
    ['tassel', { length: 10 }, 'wraps'],
    ['cord', {}, 'length'],
    ['lace', {}, 'length'],
  ])('%s with %j lacks its %s', (kind, own, missing) => {
    expect(finishYarn({ ...bare, ...own, kind }, null)).toBe(missing)
  })
})
