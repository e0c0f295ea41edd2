import { describe, expect, it } from 'vitest'
import { codesOf, proofed, sentenceOf } from './draft.ts'

const heads = 'fits: {table: head, sizes: [Baby, Child, Woman]}'

describe('measures that should rise with size', () => {
  it.each([
    ['rise', 'finished: {Width: "[40, 50, 60] cm"}', []],
    ['stay', 'finished: {Depth: "[20, 20, 22] cm"}', []],
    ['are none for a size', 'finished: {Width: "[40, none, 60] cm"}', []],
    ['fall', 'finished: {Width: "[40, 50, 49] cm"}', ['measure-falls 1,2']],
    ['fall over a size that has none', 'finished: {Width: "[40, none, 39] cm"}', ['measure-falls 0,2']],
    ['fall as a count', 'finished: {Squares: "[12, 16, 14]"}', ['measure-falls 1,2']],
    ['fall as a claim', 'finished: {Neck: {claims: "[60, 50, 65] cm", over: "[72, 60, 78]"}}', ['measure-falls 0,1']],
    ['are ease', 'finished: {Ease at bust: "[10, 8, 5] cm"}', []],
  ])('%s', (_, facts, codes) => {
    expect(codesOf(proofed({ facts }))).toEqual(codes)
  })

  it('are named with both sizes and what they come to', () => {
    expect(sentenceOf(proofed({ facts: 'finished: {Width: "[40, 50, 49] cm"}' }), 'measure-falls')).toBe(
      '“Width” is less in L than in M: 49 cm after 50 cm.',
    )
  })
})

describe('two sizes that come to one', () => {
  const hat = (formula: string) =>
    proofed({ facts: `${heads}\nfinished: {Circumference: made}`, grading: `made = ${formula}` })
  it.each([
    ['by rounding', 'width(stitches([44, 46, 56] cm) as multiple of 6)', ['measure-same 0,1']],
    ['with a finer multiple do not', 'width(stitches([44, 46, 56] cm) as multiple of 2)', []],
    ['as typed', '[40, 45, 45] cm', ['measure-same 1,2']],
    ['in all sizes', '50 cm', []],
    ['because they were to', 'width(stitches([45, 45, 56] cm) as multiple of 6)', []],
  ])('%s', (_, formula, codes) => {
    expect(codesOf(hat(formula))).toEqual(codes)
  })

  it.each([
    [
      'whose bodies are the same',
      'fits: {table: head, sizes: [Child, Child, Woman]}\nfinished: {Circumference: "[45, 45, 51] cm"}',
    ],
    ['in a measure of another place', `${heads}\nfinished: {Depth: "[20, 20, 22] cm"}`],
    ['without a body table', 'finished: {Circumference: "[45, 45, 51] cm"}'],
  ])('may do so %s', (_, facts) => {
    expect(codesOf(proofed({ facts }))).toEqual([])
  })
})

const foundation = (counts: string) =>
  `## Mat\n\nFoundation: Ch ${counts}.\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.`

describe('pieces that should begin wider', () => {
  it.each([
    ['rise', '60 (72, 84)', []],
    ['stay', '60 (60, 72)', []],
    ['fall', '60 (72, 70)', ['foundation-falls 1,2']],
    ['fall at once', '72 (60, 84)', ['foundation-falls 0,1']],
  ])('%s', (_, counts, codes) => {
    expect(codesOf(proofed({ body: foundation(counts) }))).toEqual(codes)
  })

  it('are named with row, piece, sizes and counts', () => {
    expect(sentenceOf(proofed({ body: foundation('60 (72, 70)') }), 'foundation-falls')).toBe(
      'Foundation of Mat has fewer stitches in L than in M: 70 after 72.',
    )
  })

  it('are told each, not the rows above them', () => {
    const body = `${foundation('60 (72, 70)')}\n\nRow 2: Ch 1, sc in each st across, turn.\n\n## Band\n\nFoundation: Ch 9 (8, 10).`
    expect(codesOf(proofed({ body }))).toEqual(['foundation-falls 1,2', 'foundation-falls 0,1'])
  })
})

describe('typed lists', () => {
  const sizes = '[S, M, L, XL, XXL]'
  it.each([
    ['that rise', 'depth = [20, 22, 24, 26, 28] cm', []],
    ['with one step back', 'depth = [20, 22, 42, 26, 28] cm', ['list-falls 2,3']],
    ['by name', 'depth = {S: 20 cm, M: 22 cm, L: 42 cm, XL: 26 cm, XXL: 28 cm}', ['list-falls 2,3']],
    ['with two steps back', 'depth = [20, 22, 21, 26, 25] cm', []],
    ['that mostly stay', 'depth = [20, 20, 19, 20, 20] cm', []],
    ['of counts', 'extra = [2, 4, 6, 5, 8]', []],
    ['that are calculated', 'depth = rim / 2\nrim = [20, 22, 24, 26, 28] cm', []],
  ])('%s', (_, grading, codes) => {
    expect(codesOf(proofed({ sizes, grading }))).toEqual(codes)
  })
})

describe('one slip is told once', () => {
  const grading = 'rim = [40, 60, 50] cm\nsts = stitches(rim) as even\nmade = width(sts)'
  const body = '## Mat\n\nFoundation: Ch {{sts}}.'
  it.each([
    ['by the finished measure', 'finished: {Width: made}', grading, ['measure-falls 1,2']],
    ['by the row where no measure tells', '', grading, ['foundation-falls 1,2']],
    ['by the need that it breaks', 'finished: {Width: made}', `${grading}\nneed sts rises`, ['need-failed 2']],
  ])('%s', (_, facts, lines, codes) => {
    expect(codesOf(proofed({ facts, grading: lines, body }))).toEqual(codes)
  })

  it('and another one beside it too', () => {
    const facts = 'finished: {Width: "[40, 60, 50] cm", Depth: "[20, 18, 22] cm"}'
    expect(codesOf(proofed({ facts }))).toEqual(['measure-falls 1,2', 'measure-falls 0,1'])
  })
})
