import { describe, expect, it } from 'vitest'
import { codesOf, type Draft, proofed, sentenceOf } from './draft.ts'

function claimed(claims: string, over: string, parts: Draft = {}) {
  const { facts = '', ...others } = parts
  return proofed({ swatch: '', ...others, facts: `finished: {Neck: {claims: "${claims}", over: "${over}"}}\n${facts}` })
}

const six = { sizes: '[XS, S, M, L, XL, XXL]' }

describe('claims over one fabric', () => {
  it.each([
    ['one gauge', '[55, 60, 65] cm', '[66, 72, 78]', {}, []],
    ['one gauge, rounded to half centimetres', '[47.5, 58.5, 63] cm', '[57, 70, 76]', {}, []],
    ['one gauge, rounded to whole inches', '[22, 24, 26] in', '[65, 72, 79]', {}, []],
    ['one that stands out at the beginning', '[21, 25, 27] in', '[66, 72, 78]', {}, ['claims-uneven 0']],
    ['one that stands out at the end', '[48, 58, 63] cm', '[58, 70, 82]', {}, ['claims-uneven 2']],
    ['two that stand out', '[40, 46, 50, 58, 60, 66] cm', '[48, 52, 60, 66, 72, 79]', six, ['claims-uneven 1,3']],
    ['two sizes, of which neither stands out', '[21, 27] in', '[66, 78]', { sizes: '[S, L]' }, ['claims-uneven 0,1']],
    [
      'as many for one gauge as for another',
      '[20, 24, 30, 36] in',
      '[60, 72, 75, 90]',
      { sizes: '[S, M, L, XL]' },
      ['claims-uneven 0,1,2,3'],
    ],
    ['a size that has none', '[none, 25, 27] in', '[66, 72, 78]', {}, []],
    ['a single size', '21 in', '66', { sizes: '[One size]' }, []],
    ['a number of stitches that is nothing', '[21, 25, 27] in', '[0, 72, 78]', {}, []],
    ['small measures, where rounding is much', '[8, 9, 10] cm', '[14, 16, 18]', {}, []],
    ['counts by formula', '[21, 25, 27] in', 'neck', { grading: 'neck = [66, 72, 78]' }, ['claims-uneven 0']],
  ] satisfies [string, string, string, Draft, string[]][])('%s', (_, claims, over, parts, codes) => {
    expect(codesOf(claimed(claims, over, parts))).toEqual(codes)
  })

  it('are told with counts, lengths and gauges, and what the others would make of it', () => {
    const found = claimed('[48, 58, 63] cm', '[58, 70, 82]')
    expect(sentenceOf(found, 'claims-uneven')).toBe(
      '“Neck” implies different gauges in stitches of one fabric: S 58 over 48 cm, 12.1 in 10 cm; M 70 over 58 cm, 12.1 in 10 cm; L 82 over 63 cm, 13 in 10 cm. L stands out.',
    )
    expect(found.findings[0]?.hint).toBe('Measure or count again: by the gauge of the others it is L 67.9 cm.')
  })

  it('are told every one, each by its label', () => {
    const claim = (lengths: string) => `{claims: "${lengths}", over: "[66, 72, 78]"}`
    const facts = `finished: {Neck: ${claim('[21, 25, 27] in')}, Hem: ${claim('[55, 60, 70] cm')}, Cuff: ${claim('[55, 60, 65] cm')}}`
    const { findings } = proofed({ swatch: '', facts })
    expect(findings.map(({ code, message, sizes }) => [code, message.slice(0, 6), sizes])).toEqual([
      ['claims-uneven', '“Neck”', [0]],
      ['claims-uneven', '“Hem” ', [2]],
    ])
  })
})

const swatch = 'swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}'

describe('claims and the swatch', () => {
  it.each([
    ['as the swatch has it', '[55, 60, 65] cm', '[66, 72, 78]', { swatch }, []],
    ['a little off', '[53, 58, 63] cm', '[66, 72, 78]', { swatch }, []],
    ['off', '[50, 54.5, 59] cm', '[66, 72, 78]', { swatch }, ['claims-unlike-swatch 0,1,2']],
    [
      'as another swatch has it',
      '[41, 45, 48.5] cm',
      '[66, 72, 78]',
      { swatch: 'swatch: {body: {stitches: 12 per 10 cm}, ribbing: {stitches: 16 per 10 cm}}' },
      [],
    ],
    ['uneven, and the others by the swatch', '[50, 60, 65] cm', '[66, 72, 78]', { swatch }, ['claims-uneven 0']],
    [
      'uneven, and the others off',
      '[55, 54.5, 59] cm',
      '[66, 72, 78]',
      { swatch },
      ['claims-uneven 0', 'claims-unlike-swatch 1,2'],
    ],
    [
      'two sizes, of which the swatch knows one',
      '[55, 48] cm',
      '[66, 72]',
      { swatch, sizes: '[S, M]' },
      ['claims-uneven 1'],
    ],
    [
      'rows by the row gauge',
      '[20, 25, 30] cm',
      'rnds',
      { swatch, grading: 'rnds = rows([20, 25, 30] cm) as even' },
      [],
    ],
    ['rows by the stitch gauge', '[20, 25, 30] cm', '[16, 20, 24]', { swatch }, ['claims-unlike-swatch 0,1,2']],
  ] satisfies [string, string, string, Draft, string[]][])('%s', (_, claims, over, parts, codes) => {
    const found = claimed(claims, over, parts)
    // Two of these claims fall from one size to the next.
    expect(codesOf(found).filter((code) => !code.startsWith('measure-falls'))).toEqual(codes)
  })

  it('are told with both gauges, and what the swatch makes of the stitches', () => {
    const found = claimed('[20, 22, 24] in', '[66, 72, 79]', { swatch: 'swatch: {stitches: 12 per 4 in}' })
    expect(sentenceOf(found, 'claims-unlike-swatch')).toBe(
      '“Neck” implies a gauge of 13.2 in 4 in, counted in stitches, and the swatch has 12 in 4 in.',
    )
    expect(found.findings[0]?.hint).toContain('By the swatch it is S 22 in; M 24 in; L 26⅜ in.')
  })

  it('are what was to be, and the stitches by the swatch what is made', () => {
    expect(
      claimed('[48, 58, 63] cm', '[58, 70, 76]', { swatch: 'swatch: {stitches: 12.5 per 10 cm}' }).measures,
    ).toEqual([
      {
        label: 'Neck',
        unit: 'cm',
        target: [48, 58, 63],
        made: [46.4, 56, 60.8],
        difference: [-1.6, -2, -2.2],
        head: null,
      },
    ])
  })

  it('come to nothing without a swatch', () => {
    const nothing = [null, null, null]
    expect(claimed('[48, 58, 63] cm', '[58, 70, 76]').measures).toEqual([
      { label: 'Neck', unit: 'cm', target: [48, 58, 63], made: nothing, difference: nothing, head: null },
    ])
  })
})

describe('claims that can’t be held against anything', () => {
  it.each([
    ['a claim without a unit', '[21, 25, 27]', '[66, 72, 78]', ['claim-unfit']],
    ['stitches with a unit', '[21, 25, 27] in', '[66, 72, 78] in', ['claim-unfit']],
    ['stitches that are nowhere', '[21, 25, 27] in', 'neck_sts', ['name-unknown']],
    ['a list that is too short', '[21, 25] in', '[66, 72, 78]', ['list-length']],
  ])('%s', (_, claims, over, codes) => {
    expect(codesOf(claimed(claims, over))).toEqual(codes)
  })
})
