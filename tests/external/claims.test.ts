import { describe, expect, it } from 'vitest'
import { codesOf, proofed } from '../pattern/measures/draft.ts'

/*
 * Facts of the trade. Common practice, no source: 66, 72 and 78 foundation stitches worked in groups over a multiple of
 * six give 10, 11 and 12 groups a side of a two-point piece; the same three counts measured as 21, 25 and 27 inches imply
 * unequal gauges, and the first stands out.
 */
describe('a two-point piece of 66, 72 and 78 stitches', () => {
  const facts = 'finished: {Neck: {claims: "[21, 25, 27] in", over: sts}}'
  const grading = 'groups = [10, 11, 12]\nsts = 6 * (groups + 1)\nneed sts = [66, 72, 78]'

  it('has 10, 11 and 12 groups a side, and unequal gauges of which the first stands out', () => {
    const found = proofed({ swatch: '', facts, grading })
    expect(codesOf(found)).toEqual(['claims-uneven 0'])
    expect(found.findings[0]?.message).toBe(
      '“Neck” implies different gauges in stitches of one fabric: S 66 over 21 in, 12.6 in 4 in; M 72 over 25 in, 11.5 in 4 in; L 78 over 27 in, 11.6 in 4 in. S stands out.',
    )
    expect(found.findings[0]?.hint).toContain('S 22⅞ in')
  })

  it('is found in an old pattern without a grading block or swatch', () => {
    const over = 'finished: {Neck: {claims: "[21, 25, 27] in", over: "[66, 72, 78]"}}'
    expect(codesOf(proofed({ swatch: '', facts: over }))).toEqual(['claims-uneven 0'])
  })

  it('would be of one gauge at 23 inches', () => {
    expect(codesOf(proofed({ swatch: '', facts: facts.replace('21', '23'), grading }))).toEqual([])
  })
})
