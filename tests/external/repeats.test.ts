import { describe, expect, it } from 'vitest'
import { createEnvironment, readSwatches } from '../../src/grading/index.ts'
import { calculated, nowhere, written } from '../formula/workbench.ts'

function inSwatch(repeat: { stitches: number | null; width: string }, formula: string) {
  const wave = {
    name: 'wave',
    at: nowhere,
    rows: null,
    height: [],
    stitches: repeat.stitches,
    width: [written(repeat.width)],
  }
  const swatch = { name: null, stitches: [], rows: [], unblocked: null, repeats: [wave] }
  const { value } = readSwatches([swatch])
  return calculated(formula, '', createEnvironment({ sizes: ['One'], ...value, body: null, skein: null }))?.[0]
}

describe('repeats as a gauge', () => {
  // Yarnspirations, “How to measure crochet gauge”: a ripple's gauge may be given from one point to the next, 5 in
  // [12.5 cm]. What a blanket of 60 in takes of them is our own arithmetic.
  it('points of a ripple, five inches apart', () => {
    expect(inSwatch({ stitches: null, width: '5 in' }, 'repeats(60 in, wave)')).toBe(12)
    expect(inSwatch({ stitches: null, width: '5 in' }, 'repeats_width(12, wave)')).toBe(60)
  })

  // My Mill House 2014: at 21 stitches to 4 in, 17 repeats of 12 and 14 more are 218 stitches for 41 in. A repeat of 12
  // stitches is 12 / 21 of 4 in.
  it('a repeat of twelve stitches at a published gauge', () => {
    const repeat = { stitches: 12, width: '21 per 48 in' }
    expect(inSwatch(repeat, 'stitches(41 in, wave)')).toBe(215.25)
    expect(inSwatch(repeat, 'stitches(41 in) as multiple of 12 + 14')).toBe(218)
    expect(inSwatch(repeat, '(stitches(41 in) as multiple of 12 + 14) - 17 * 12')).toBe(14)
  })
})
