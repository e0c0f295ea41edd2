import { describe, expect, it } from 'vitest'
import { codesOf, proofed, sentenceOf } from './draft.ts'

/** The target of a measure whose formula is `made`; numbers to a tenth of a millimetre. */
function targetOf(grading: string, facts = ''): readonly (number | null)[] | null {
  const found = proofed({ grading, facts: `finished: {Width: made}\n${facts}` })
  expect(found.findings.filter(({ severity }) => severity === 'error')).toEqual([])
  const target = found.measures[0]?.target ?? null
  return target?.map((each) => (each === null ? null : Math.round(each * 100) / 100)) ?? null
}

describe('what a finished measure was to be', () => {
  it.each([
    [
      'the length before rounding',
      'rim = [52, 60, 68] cm\nsts = stitches(rim) as multiple of 6\nmade = width(sts)',
      [52, 60, 68],
    ],
    [
      'through several names',
      'rim = [52, 60, 68] cm\nexact = stitches(rim)\nsts = exact as multiple of 6\nhalf = sts / 2\nmade = width(2 * half)',
      [52, 60, 68],
    ],
    ['with rounding in the measure itself', 'made = width(stitches([52, 60, 68] cm) as even)', [52, 60, 68]],
    [
      'of rows that are rounded apart',
      'low = rows([35, 36, 37] cm) as even\nhigh = rows(20.4 cm) as even\nmade = height(low + high)',
      [55.4, 56.4, 57.4],
    ],
    [
      'of rounds with one taken off',
      'depth = 24 cm\nrnds = (rows(depth) - 1) as multiple of 4 + 1\nmade = height(rnds + 1)',
      [24, 24, 24],
    ],
    ['of a linked count', 'front ~ stitches([20, 25, 31] cm) as odd\nmade = width(front)', [20, 25, 31]],
    [
      'of a linked count that says nothing of rounding',
      'front ~ stitches([20.1, 25, 31] cm)\nmade = width(front)',
      [20.1, 25, 31],
    ],
    [
      'from a body and its ease',
      'around = body("head") + 5 %\nmade = width(stitches(around) as even)',
      [48.01, 53.34, 58.67],
    ],
    [
      'with a size that does not have it',
      'rim = [52, none, 68] cm\nmade = width(stitches(rim) as even)',
      [52, null, 68],
    ],
    [
      'with what cancels out',
      'sts = stitches([52, 60, 68] cm) as even\ndecs = (sts - 40) / 2 as whole\nmade = width(sts - 2 * decs)',
      [33.33, 33.33, 33.33],
    ],
    // The branch is the one that is taken, the count in it the one before rounding.
    [
      'in the branch that is taken',
      'rim = [52, 60, 68] cm\nsts = stitches(rim) as multiple of 10\nmade = if(sts > 60, width(sts), 10 cm)',
      [10, 60, 68],
    ],
    [
      'of words that choose by name',
      'rim = {S: 52 cm, M: 60 cm, L: 68 cm}\nmade = {S: width(stitches(at("S", rim)) as even), M: 60 cm, L: 70 cm}',
      [52, 60, 70],
    ],
  ])('%s', (_, grading, target) => {
    const facts = grading.includes('body("') ? 'fits: {table: head, sizes: [Child, Woman, Man]}' : ''
    expect(targetOf(grading, facts)).toEqual(target)
  })

  it.each([
    ['nothing is rounded', 'made = [52, 60, 68] cm'],
    ['a count is whole as it is', 'made = width([62, 70, 80])'],
    ['rounding only decides', 'sts = stitches(52 cm) as even\nmade = if(sts > 60, 40 cm, 50 cm)'],
    ['it is a count', 'made = stitches([52, 60, 68] cm) as even'],
  ])('is not told where %s', (_, grading) => {
    expect(targetOf(grading)).toBe(null)
  })

  it('is what a shaping phrase can’t do without, where that needs whole counts', () => {
    expect(targetOf('all = stitches(52 cm) as whole\nsts = share_of(all, 3, 1)\nmade = width(sts)')).toBe(null)
  })

  it('of many names that build on each other is found', () => {
    const steps = Array.from({ length: 3000 }, (_, step) => `a${step + 1} = a${step} + 1 cm`)
    const grading = ['a0 = 1 cm', ...steps, 'sts = stitches(a3000) as even', 'made = width(sts)'].join('\n')
    expect(targetOf(grading)).toEqual([3001, 3001, 3001])
  })

  it('has a difference, which is what is made less than that', () => {
    const [first] = proofed({
      facts: 'finished: {Width: made}',
      grading: 'rim = [51, none, 68] cm\nmade = width(stitches(rim) as multiple of 6)',
    }).measures
    expect(first).toEqual({
      label: 'Width',
      unit: 'cm',
      target: [51, null, 68],
      made: [50, null, 70],
      difference: [-1, null, 2],
      head: null,
    })
  })

  it('is in the unit that the measure is printed in', () => {
    const [first] = proofed({
      swatch: 'swatch: {stitches: 12 per 4 in}',
      facts: 'finished: {Width: made}',
      grading: 'rim = [50.8, 55.88, 60.96] cm\nmade = width(stitches(rim) as multiple of 9)',
    }).measures
    expect(first).toMatchObject({ unit: 'in', target: [20, 22, 24], made: [21, 21, 24], difference: [1, -1, 0] })
  })

  it.each([
    ['words', 'finished: {Shape: "\\"square\\""}'],
    ['a measure with an error', 'finished: {Width: nowhere}'],
  ])('leaves out %s', (_, facts) => {
    expect(proofed({ facts }).measures).toEqual([])
  })
})

const rim = (lengths: string, multiple: string) => `rim = [${lengths}] cm\nmade = width(stitches(rim) as ${multiple})`

describe('a finished measure that is off', () => {
  it.each([
    // A tenth, and never less than a centimetre.
    ['2.4 cm of 52', '52, 60, 70', 'multiple of 6', '', []],
    ['7 cm of 53', '53, 60, 80', 'multiple of 24', '', ['measure-off-target 0']],
    ['half a stitch of a small measure', '5.4, 6.2, 7.1', 'whole', '', []],
    ['2 cm where 1 cm is stated', '52, 60, 68', 'multiple of 6', 'tolerance: 1 cm', ['measure-off-target 0,2']],
    ['2 cm where 2 cm are stated', '52, 60, 68', 'multiple of 6', 'tolerance: 2 cm', []],
    ['3.8 % where 5 % are stated', '52, 60, 68', 'multiple of 6', 'tolerance: 5 %', []],
    ['3.8 % where 3 % are stated', '52, 60, 68', 'multiple of 6', 'tolerance: 3 %', ['measure-off-target 0']],
    ['a tolerance for each size', '52, 60, 68', 'multiple of 6', 'tolerance: "[2, 1, 1] cm"', ['measure-off-target 2']],
    ['a tolerance in inches', '52, 60, 68', 'multiple of 6', 'tolerance: 1/2 in', ['measure-off-target 0,2']],
    ['a tolerance that is a number', '52, 60, 68', 'multiple of 6', 'tolerance: 2', ['tolerance-unfit']],
    ['a tolerance below nothing', '52, 60, 68', 'multiple of 6', 'tolerance: -1 cm', ['tolerance-unfit']],
    ['a tolerance that is nothing', '52, 60, 68', 'multiple of 6', 'tolerance: 0 cm', ['measure-off-target 0,2']],
  ])('%s', (_, lengths, multiple, facts, codes) => {
    const found = proofed({ facts: `finished: {Width: made}\n${facts}`, grading: rim(lengths, multiple) })
    expect(codesOf(found)).toEqual(codes)
  })

  it('is told with all figures, and where it is rounded', () => {
    const found = proofed({
      facts: 'finished: {Width: made}\ntolerance: 1 cm',
      grading: 'rim = [52, 60, 68] cm\nsts = stitches(rim) as multiple of 6\nmade = width(sts)',
    })
    expect(sentenceOf(found, 'measure-off-target')).toBe(
      '“Width” does not come to what it was to be: S 50 cm instead of 52 cm, 2 cm less; L 70 cm instead of 68 cm, 2 cm more.',
    )
    const [related] = found.findings[0]?.related ?? []
    expect(found.text.slice(related?.at.start, related?.at.end)).toBe('stitches(rim) as multiple of 6')
    expect(related?.note).toBe('Rounding makes 60 of 62.4 here.')
  })

  it('is told in inches to an eighth where the swatch is in inches', () => {
    const found = proofed({
      swatch: 'swatch: {stitches: 12 per 4 in}',
      facts: 'finished: {Width: made}',
      grading: 'rim = [16, 20 7/8, 24] in\nmade = width(stitches(rim) as multiple of 24)',
    })
    expect(sentenceOf(found, 'measure-off-target')).toContain('M 24 in instead of 20⅞ in, 3⅛ in more')
  })
})

describe('rounding that moves a measure', () => {
  const coarse = 'multiple of 24'
  it.each([
    [
      'of which no finished measure tells',
      `sts = stitches([53, 60, 80] cm) as ${coarse}`,
      '',
      ['rounding-moves-measure 0'],
    ],
    ['by less than the tolerance', 'sts = stitches([53, 60, 80] cm) as multiple of 6', '', []],
    [
      'of which a finished measure tells',
      `sts = stitches([53, 60, 80] cm) as ${coarse}\nmade = width(sts)`,
      'finished: {Width: made}',
      ['measure-off-target 0'],
    ],
    ['of rows', 'rnds = rows([22, 24, 27] cm) as multiple of 8 up', '', ['rounding-moves-measure 0,1,2']],
    ['of a count that is no length', 'incs = 10 / 4 as multiple of 10', '', []],
    [
      'of a linked count',
      'front ~ stitches([53, 60, 80] cm)\nneed front is multiple of 24',
      '',
      ['rounding-moves-measure 0'],
    ],
    [
      'of a count of a rounded count',
      `sts = stitches([60, 60, 80] cm) as ${coarse}\nquarter = sts / 4 as multiple of 10`,
      '',
      [],
    ],
  ])('%s', (_, grading, facts, codes) => {
    expect(codesOf(proofed({ facts, grading }))).toEqual(codes)
  })

  it('is told with counts and lengths', () => {
    const found = proofed({ grading: `sts = stitches([53, 60, 80] cm) as ${coarse}` })
    expect(sentenceOf(found, 'rounding-moves-measure')).toBe(
      'Rounding `sts = stitches([53, 60, 80] cm) as multiple of 24` moves the width: S from 53 cm (63.6) to 60 cm (72).',
    )
  })
})
