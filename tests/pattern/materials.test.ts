import { describe, expect, it } from 'vitest'
import { codesOf, proofed, sentenceOf } from './measures/draft.ts'

describe('hooks with a letter or number and millimetres', () => {
  it.each([
    ['H-8 5 mm', true],
    ['5 mm (US H-8)', true],
    ['5.0mm/H', true],
    ['H/8, 5 mm', true],
    ['US 7 (4.5 mm)', true],
    ['K-10 1/2 (6.5 mm)', true],
    ['K-10.5 / 6.5 mm', true],
    ['size G (4 mm)', true],
    ['size G (4.25 mm)', true],
    // By some makers.
    ['K-10½ (7 mm)', true],
    ['M-13 (9 mm)', true],
    ['N-13 (9 mm)', true],
    ['Q (16 mm)', true],
    // The name is not on any chart.
    ['Z (40 mm)', true],
    ['6 mm', true],
    ['H-8', true],
    ['H-8 6 mm', false],
    ['6 mm (US H-8)', false],
    ['5.5mm/H', false],
    ['H-9 (5 mm)', false],
    ['US 7 (5 mm)', false],
    ['J-10 (5,5 mm)', false],
    ['size G (5 mm)', false],
  ])('“%s” are one hook: %s', (hook, isOne) => {
    const codes = isOne ? [] : ['hook-sizes-disagree']
    expect(codesOf(proofed({ facts: `hooks: ["${hook}"]` }))).toEqual(codes)
    expect(codesOf(proofed({ swatch: `swatch: {stitches: 12 per 10 cm, hook: "${hook}"}` }))).toEqual(codes)
  })

  it.each([
    ['Use a 6 mm (US H-8) hook.', false],
    ['Hook: H-8/6 mm.', false],
    ['You need a size J/10 (5 mm) hook.', false],
    ['Use a 5 mm (US H-8) hook.', true],
    // Colors have letters as well.
    ['With A, 5 mm hook, make a loop.', true],
    ['C (2 mm beads), D (4 mm beads).', true],
    ['Beads of 6 mm and 8 mm.', true],
    ['After row 3, 5 mm will do.', true],
  ])('in the text “%s” are one hook: %s', (body, isOne) => {
    expect(codesOf(proofed({ body }))).toEqual(isOne ? [] : ['hook-sizes-disagree'])
  })

  it('are told with what each of them is, at their place', () => {
    const found = proofed({ body: 'Use a 6 mm (US H-8) hook.' })
    expect(sentenceOf(found, 'hook-sizes-disagree')).toBe(
      '“6 mm (US H-8)” are two hooks: H-8 is 5 mm, and 6 mm is J-10.',
    )
    const { start = 0, end = 0 } = found.findings[0]?.at ?? {}
    expect(found.text.slice(start, end)).toBe('6 mm (US H-8)')
  })

  it('are told where letter and number are two sizes themselves', () => {
    expect(sentenceOf(proofed({ facts: 'hooks: [H-9 5 mm]' }), 'hook-sizes-disagree')).toBe(
      '“H-9 5 mm” are two hooks: H-9 is 5 mm by its letter and 5.5 mm by its number, and 5 mm is H-8.',
    )
  })
})

describe('yarn categories by name and number', () => {
  it.each([
    ['{category: bulky (5)}', true],
    ['{category: Worsted}', true],
    ['{category: 4 medium}', true],
    ['{category: "#1 fingering"}', true],
    ['{category: "#0 fingering"}', true],
    ['{category: super bulky (6)}', true],
    ['{category: 4, fibre: aran weight wool}', true],
    ['{category: 2, fibre: worsted-spun merino}', true],
    ['{category: 1, fibre: fine merino}', true],
    ['{category: bulky (4)}', false],
    ['{category: 5 medium}', false],
    ['{category: "#3 worsted"}', false],
    ['{category: super bulky (5)}', false],
    ['{category: 5, fibre: worsted wool}', false],
    ['{category: 4, fibre: DK cotton}', false],
  ])('%s is one yarn: %s', (yarn, isOne) => {
    expect(codesOf(proofed({ facts: `yarn: [${yarn}]`, swatch: '' }))).toEqual(isOne ? [] : ['yarn-category-disagrees'])
  })

  it.each([
    ['Any worsted weight (4) yarn.', true],
    ['Use #4 medium yarn.', true],
    ['Sizes: Small (2), Medium (4), Large (6).', true],
    ['Work a fine (3) stitch.', true],
    ['Any worsted weight (3) yarn.', false],
    ['Any bulky yarn (4) will do.', false],
    ['Yarn: Chunky (#6).', false],
    ['Use #5 medium yarn.', false],
    ['Category 3 (worsted) yarn.', false],
    ['Fine weight (3) yarn.', false],
  ])('in the text “%s” is one yarn: %s', (body, isOne) => {
    expect(codesOf(proofed({ body }))).toEqual(isOne ? [] : ['yarn-category-disagrees'])
  })

  it('are told with what each of them is', () => {
    expect(sentenceOf(proofed({ body: 'Any worsted weight (3) yarn.' }), 'yarn-category-disagrees')).toBe(
      '“worsted weight (3)” are two yarns: “worsted” is category 4, and category 3 is Light.',
    )
  })
})

describe('gauge and hook beside what is published for the yarn', () => {
  const gauge = 'gauge-outside-category'
  const hook = 'hook-outside-category'
  it.each([
    ['a gauge within', 'in: sc, stitches: 14 per 10 cm', '[{category: 4}]', '', []],
    ['a gauge within, in inches', 'in: sc, stitches: 14 per 4 in', '[{category: 4}]', '', []],
    ['a gauge that rounds to one within', 'in: sc, stitches: 14.4 per 10 cm', '[{category: 4}]', '', []],
    ['a gauge that is too fine', 'in: sc, stitches: 18 per 10 cm', '[{category: 4}]', '', [gauge]],
    [
      'a gauge that is too coarse',
      'in: single crochet in rounds, stitches: 8 per 10 cm',
      '[{category: 4}]',
      '',
      [gauge],
    ],
    ['a gauge of another stitch', 'in: shell pattern, stitches: 18 per 10 cm', '[{category: 4}]', '', []],
    ['a gauge of shells in it', 'in: shells in single crochet, stitches: 18 per 10 cm', '[{category: 4}]', '', []],
    ['a gauge that does not say its stitch', 'stitches: 18 per 10 cm', '[{category: 4}]', '', []],
    ['lace in double crochet', 'in: dc, stitches: 28 per 10 cm', '[{category: 0}]', '', [gauge]],
    ['lace in single crochet', 'in: sc, stitches: 20 per 10 cm', '[{category: 0}]', '', []],
    ['a category by its name', 'in: sc, stitches: 18 per 10 cm', '[{category: worsted}]', '', [gauge]],
    ['a category of the older table', 'in: sc, stitches: 6 per 10 cm', '[{category: 6}]', '', []],
    ['one yarn of several', 'in: sc, stitches: 18 per 10 cm', '[{category: 4}, {as: trim, category: 2}]', '', []],
    ['a yarn whose category is not known', 'in: sc, stitches: 18 per 10 cm', '[{category: 4}, {as: trim}]', '', []],
    ['yarn that is held double', 'in: sc with yarn held double, stitches: 8 per 10 cm', '[{category: 4}]', '', []],
    ['a hook within', 'stitches: 14 per 10 cm', '[{category: 4}]', 'hooks: [5.5 mm]', []],
    ['a hook that is too thin', 'stitches: 14 per 10 cm', '[{category: 4}]', 'hooks: [3.5 mm]', [hook]],
    ['a hook that is too thick', 'stitches: 14 per 10 cm', '[{category: 4}]', 'hooks: [I-9 5.5 mm, 9 mm]', []],
    ['hooks that are all too thick', 'stitches: 14 per 10 cm', '[{category: 4}]', 'hooks: [9 mm, 8 mm]', [hook]],
    ['a hook for the thickest', 'stitches: 5 per 10 cm', '[{category: 7}]', 'hooks: [25 mm]', []],
    ['a hook by its letter alone', 'stitches: 14 per 10 cm', '[{category: 4}]', 'hooks: [E-4]', []],
    ['a firm toy', 'in: sc, stitches: 14 per 10 cm', '[{category: 4}]', 'hooks: [3.5 mm]\nkind: toy', []],
  ])('%s', (_, swatch, yarn, facts, codes) => {
    const found = codesOf(proofed({ swatch: `swatch: {${swatch}}`, facts: `yarn: ${yarn}\n${facts}` }))
    expect(found.filter((code) => code.endsWith('-category'))).toEqual(codes)
  })

  it('is told in the terms of the draft', () => {
    const draft = { swatch: 'swatch: {in: dc, stitches: 18 per 10 cm}', facts: 'terms: uk\nyarn: [{category: 4}]' }
    expect(sentenceOf(proofed(draft), gauge)).toBe(
      '18 stitches in 10 cm are outside of what is published for Medium (category 4): 11 to 14 in double crochet.',
    )
  })

  it('takes a swatch without words to be of rows that are all of one stitch', () => {
    const body = '## Mat\n\nFoundation: Ch 20.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.'
    const draft = { swatch: 'swatch: {stitches: 18 per 10 cm}', facts: 'yarn: [{category: 4}]' }
    expect(codesOf(proofed({ ...draft, body }))).toContain(gauge)
    expect(codesOf(proofed({ ...draft, body: body.replace('Sc in', 'Dc in') }))).not.toContain(gauge)
  })
})
