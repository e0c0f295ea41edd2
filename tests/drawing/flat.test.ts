import { describe, expect, it } from 'vitest'
import type { FlatRow } from '../../src/drawing/flat/laid.ts'
import { layFlat } from '../../src/drawing/flat/laid.ts'
import { outlineOf } from '../../src/drawing/flat/outline.ts'
import type { Part } from '../../src/drawing/flat/parts.ts'
import { partsOf } from '../../src/drawing/flat/parts.ts'
import { flatSpans } from '../../src/drawing/flat/spans.ts'
import { work } from '../rows/draft.ts'

interface Lain {
  readonly part: Part
  readonly rows: ReturnType<typeof layFlat>
}

function lain(text: string): Lain {
  const { ledger, codes } = work(text)
  expect(codes).toEqual([])
  const rows = ledger.rows.flatMap(({ side }, index): FlatRow[] => {
    const row = ledger.fabric[index]?.[0] ?? null
    return row === null ? [] : [{ row, side }]
  })
  const laid = layFlat(rows, ledger.kinds)
  const part = partsOf(laid)
  if (part === null) throw new Error('no row lies')
  return { part, rows: laid }
}

const corners = (text: string): string =>
  outlineOf(lain(text).part)
    .map(({ x, y }) => `${x},${y}`)
    .join(' ')

const foundation = 'Foundation: Ch 21.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n'
const even = (first: number, last: number): string => `Rows ${first}–${last}: Ch 1, sc in each st across, turn.\n`

const shapes: readonly (readonly [what: string, rows: string, outline: string])[] = [
  ['a rectangle', foundation + even(2, 10), '0,0 0,10 20,10 20,0'],
  [
    'a trapezium, a stitch at each end of every row',
    `${foundation}Rows 2–9: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn.`,
    '0,0 -8,9 28,9 20,0',
  ],
  [
    'a triangle from its point',
    'Row 1: Ch 2, 1 sc in 2nd ch from hook, turn.\nRows 2–10: Ch 1, 2 sc in first st, sc in each st across, turn.',
    '0,0 -5,10 5,10 1,0',
  ],
  [
    'slanted at the right edge only, where right-side rows begin',
    `${foundation}${Array.from({ length: 6 }, (_, pair) => `Row ${2 * pair + 2}: Ch 1, sc in each st across, turn.\nRow ${2 * pair + 3}: Ch 1, 2 sc in first st, sc in each st across, turn.\n`).join('')}`,
    '0,0 0,13 26,13 20,0',
  ],
  [
    'notched at both sides, as for armholes',
    `${foundation}${even(2, 10)}Row 11: Sl st in first 3 sts, ch 1, sc in next 14 sts, turn, leaving rem 3 sts unworked. (14 sc)\n${even(12, 18)}`,
    '0,0 0,10 3,10 3,18 17,18 17,10 20,10 20,0',
  ],
  [
    'wider by chains at its end',
    `${foundation}${even(2, 9)}Row 10: Ch 1, sc in each st across, ch 11, turn.\nRow 11: Sc in 2nd ch from hook and in each of next 9 ch, sc in each st across, turn. (30 sc)\n${even(12, 16)}`,
    '0,0 0,16 30,16 30,10 20,10 20,0',
  ],
  [
    'mesh, as wide as what it lies on',
    `${foundation}Row 2: Ch 4 (counts as dc and ch 1), sk first 2 sts, dc in next st, *ch 1, sk 1 st, dc in next st; rep from * to last st, dc in last st, turn.\n`,
    '0,0 0,2 20,2 20,0',
  ],
]

describe('the outline of a flat piece, from the right side, as its stitches go into each other', () => {
  it.each(shapes)('%s', (_, rows, outline) => {
    expect(corners(rows)).toBe(outline)
  })
})

/** Two sides of a neck over twenty stitches, the first worked at the right. */
const neck = [
  foundation + even(2, 10),
  'Row 11 (RS): Ch 1, sc in next 8 sts, turn, leaving rem sts unworked. (8 sc)',
  'Row 12: Ch 1, sc2tog, sc in each st across, turn. (7 sc)',
  'Row 13: Ch 1, sc in each st to last 2 sts, sc2tog, turn. (6 sc)',
  'Rows 14–16: Ch 1, sc in each st across, turn. (6 sc)',
  'Fasten off.',
  '### Second side',
  'Row 11 (RS): With RS facing, sk next 4 sts of Row 10, join yarn with sl st in next st, ch 1, sc in same st, sc in each st across, turn. (8 sc)',
  'Row 12: Ch 1, sc in each st to last 2 sts, sc2tog, turn. (7 sc)',
  'Row 13: Ch 1, sc2tog, sc in each st across, turn. (6 sc)',
  'Rows 14–16: Ch 1, sc in each st across, turn. (6 sc)',
].join('\n')

describe('a piece that parts', () => {
  it('has its parts from left to right', () => {
    const { part } = lain(neck)
    expect(part.parts.map(({ rows }) => [rows[0]?.left, rows[0]?.right, rows.length])).toEqual([
      [0, 8, 6],
      [12, 20, 6],
    ])
    expect(corners(neck)).toBe('0,0 0,10 0,16 6,16 6,12.5 8,10 12,10 14,12.5 14,16 20,16 20,10 20,0')
  })

  it('lies mirrored where the first row is a wrong-side row', () => {
    const mirrored = neck.replace('Row 1 (RS)', 'Row 1 (WS)').replaceAll('Row 11 (RS)', 'Row 11 (WS)')
    const [first, second] = lain(mirrored).part.parts
    expect([first?.rows[0]?.left, second?.rows[0]?.left]).toEqual([-20, -8])
  })
})

const spans = (text: string): readonly string[] =>
  flatSpans(lain(text).part).map(({ name, from, to }) => `${name} ${to - from}`)

describe('what is measured', () => {
  it.each([
    ['a rectangle', shapes[0]?.[1] ?? '', ['Width 20', 'Height 10']],
    ['a trapezium', shapes[1]?.[1] ?? '', ['Width at lower edge 20', 'Width at top 36', 'Height 9']],
    [
      'armholes',
      shapes[4]?.[1] ?? '',
      ['Width at lower edge 20', 'Width at top 14', 'Height 18', 'Lower edge to shaping 10', 'Shaping to top 8'],
    ],
    [
      'a waist',
      `${foundation}${even(2, 3)}${'Row {n}: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn.\n'.repeat(3)}${even(7, 8)}${'Row {n}: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn.\n'.repeat(3)}`
        .split('{n}')
        .map((part, index) => part + [4, 5, 6, 9, 10, 11, ''][index])
        .join(''),
      ['Width at lower edge 20', 'Width at the narrowest 14', 'Width at top 20', 'Height 11'],
    ],
    [
      'a neck',
      neck,
      [
        'Width at lower edge 20',
        'Width beside the opening 6',
        'Depth of the opening 6',
        'Width of the opening 8',
        'Height 16',
      ],
    ],
  ])('%s', (_, text, expected) => {
    expect(spans(text)).toEqual(expected)
  })

  it('is not what stands elsewhere: rows along the side', () => {
    const border = `${foundation}${even(2, 10)}Edging row 1: Working along side, sc in end of each row, turn. (10 sc)\n`
    expect(spans(border)).toEqual(['Width 20', 'Height 10'])
  })
})
