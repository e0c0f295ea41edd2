import { describe, expect, it } from 'vitest'
import { assignYarns, type SpokenRow } from '../../src/yarn/assign.ts'
import type { Claim } from '../../src/yarn/claims.ts'

const plainRow: SpokenRow = { piece: 'Body', between: [], heading: null, label: '', steps: '', numbers: [null] }

/** For each row the yarns that it takes, with the strands where there are several; `?` where that is not told. */
function yarnsOf(
  names: readonly string[],
  rows: readonly Partial<SpokenRow>[],
  { opening = '', claims = [] }: { opening?: string; claims?: readonly Claim[] } = {},
): string[] {
  const found = assignYarns(
    names,
    opening,
    rows.map((row) => ({ ...plainRow, ...row })),
    claims,
  )
  return found.map((strands) =>
    strands === null
      ? '?'
      : names.filter((_, yarn) => strands[yarn]).join('+') + (Math.max(...strands) > 1 ? Math.max(...strands) : ''),
  )
}

const two = ['main', 'contrast']

describe('the yarn of a row by its words', () => {
  it.each<[readonly string[], readonly string[], readonly string[]]>([
    [two, ['sc in each st'], ['main']],
    [two, ['With CC, sc in each st across', 'sc in each st'], ['contrast', 'contrast']],
    [two, ['sc in each st across, change to CC in last st, turn', 'sc'], ['main', 'contrast']],
    [two, ['sc in last st changing to contrast color, turn. (24 sc)', 'sc'], ['main', 'contrast']],
    [two, ['sc in each st around, join with CC', 'sc'], ['main', 'contrast']],
    [two, ['sc in each st around in CC', 'sc'], ['contrast', 'contrast']],
    [two, ['Fasten off MC. Join CC with sl st in any corner, ch 3, 2 dc in same sp'], ['contrast']],
    [two, ['Drop MC, with CC, ch 1, sc in each st, drop CC', 'sc'], ['contrast', 'contrast']],
    [two, ['sc in each MC st, dc in each CC st'], ['main']],
    [
      ['A', 'B', 'C'],
      ['With A, ch 40', 'with color B, sc', 'In C, dc in each st', 'A shell in next st', 'Join A in first st, ch 3'],
      ['A', 'B', 'C', 'C', 'A'],
    ],
    [
      ['color 1', 'color 2'],
      ['With color 1, ch 20', 'C2: sc in each st', 'Change to Color 1, sc'],
      ['color 1', 'color 2', 'color 1'],
    ],
    [
      ['main', 'contrast 1', 'contrast 2'],
      ['With MC, ch 20', 'CC1: sc', 'Using CC2, sc'],
      ['main', 'contrast 1', 'contrast 2'],
    ],
    [
      ['Sea Glass', 'Drift'],
      ['With Sea Glass, ch 12', 'With drift, sc'],
      ['Sea Glass', 'Drift'],
    ],
    [
      ['sand', 'sea green'],
      ['With MC, ch 12', 'With CC, sc', 'With color A, sc'],
      ['sand', 'sea green', 'sand'],
    ],
    [
      ['body', 'trim'],
      ['ch 20', 'join to body, sc in each body st', 'With trim, sc'],
      ['body', 'body', 'trim'],
    ],
    [two, ['With MC held double, ch 20', 'sc', 'With one strand of MC, sc'], ['main2', 'main2', 'main']],
    [two, ['With MC and CC held together, ch 20', 'With MC, sc'], ['main+contrast', 'main']],
    [['main'], ['Holding two strands together, ch 20', 'sc', 'With a single strand, sc'], ['main2', 'main2', 'main']],
  ])('%j: %j is %j', (names, steps, expected) => {
    expect(
      yarnsOf(
        names,
        steps.map((each) => ({ steps: each })),
      ),
    ).toEqual(expected)
  })

  it.each([
    ['sc in next 3 sts, with CC sc in next 2, with MC sc to end'],
    ['With MC, *sc in next 3 sts, change to CC, sc in next 2, change to MC; rep from * across'],
    ['sc in each st, alternating colors'],
    ['working in stripes, dc in each st'],
  ])('%s is not told, until a row names its yarn', (steps) => {
    expect(yarnsOf(two, [{ steps }, { steps: 'sc' }, { steps: 'With CC, sc' }])).toEqual(['?', '?', 'contrast'])
  })

  it('knows a row that mixes colours by their names alone', () => {
    expect(
      yarnsOf(['dark blue', 'natural'], [{ steps: '3 sc natural, 2 sc dark blue' }, { steps: 'Natural. Sc' }]),
    ).toEqual(['?', 'natural'])
  })
})

describe('the yarn of a row by what stands around it', () => {
  it.each<[string, Partial<SpokenRow>, string]>([
    ['its label', { label: 'Rnd 2 (CC):' }, 'contrast'],
    ['its heading', { piece: 'Edging', heading: 'Contrast edging' }, 'contrast'],
    ['prose before it', { between: ['Fasten off MC. Join CC to the cuff.'] }, 'contrast'],
    ['a column of its table', { steps: 'sc in each st across | 10 | CC |' }, 'contrast'],
    ['prose that mentions a yarn in passing', { between: ['Carry CC along. The stripes of CC come later.'] }, 'main'],
    ['a piece begun afresh', { piece: 'Ear', heading: 'Ear', steps: 'Ch 20' }, 'main'],
  ])('%s', (_, row, expected) => {
    expect(yarnsOf(two, [{ steps: 'With MC, ch 20' }, { steps: 'sc', ...row }]).at(1)).toBe(expected)
  })

  it('says once more what a repeated row says', () => {
    const rows = [
      { steps: 'With MC, sc', numbers: [1] },
      { steps: 'With CC, sc', numbers: [2] },
      { steps: 'Rep Rows 1 and 2', numbers: [3, 4, 5] },
      { steps: 'With CC, rep Row 1', numbers: [6] },
    ]
    expect(yarnsOf(two, rows)).toEqual(['main', 'contrast', 'main', 'contrast', 'main', 'contrast'])
  })

  it('takes yarns that are held together throughout for every row', () => {
    expect(yarnsOf(two, [{ steps: 'ch 20' }], { opening: 'Hold both yarns together throughout.' })).toEqual([
      'main+contrast',
    ])
  })
})

describe('the yarn of a row by the facts', () => {
  it('comes before what the words say', () => {
    const claims: Claim[] = [
      { yarn: 1, piece: 'edging', rows: null },
      { yarn: 1, piece: 'Body', rows: { ranges: [[3, 4]], every: 4 } },
    ]
    const rows = [
      { steps: 'With MC, sc', numbers: [1, 2, 3, 4, 5, 6, 7, 8] },
      { piece: 'Edging', steps: 'With MC, sc' },
    ]
    const pair = ['main', 'main', 'contrast', 'contrast']
    expect(yarnsOf(two, rows, { claims })).toEqual([...pair, ...pair, 'contrast'])
  })
})
