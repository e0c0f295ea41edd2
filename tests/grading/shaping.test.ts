import { describe, expect, it } from 'vitest'
import type { ShapingName, ShapingProblem } from '../../src/formula/index.ts'
import { shape } from '../../src/grading/shaping/shape.ts'

type Case = readonly [name: ShapingName, counts: readonly number[], words: readonly string[], written: string]
type Refusal = readonly [
  name: ShapingName,
  counts: readonly number[],
  words: readonly string[],
  problem: ShapingProblem,
]

const written: readonly Case[] = [
  ['evenly', [7, 93], [], 'increase 7 evenly over 93'],
  ['evenly', [-9, 93], [], 'decrease 9 evenly over 93'],
  ['evenly', [0, 93], [], 'work even over 93'],
  ['evenly', [12, 12], [], 'increase 12 evenly over 12'],
  ['evenly', [-6, 12], [], 'decrease 6 evenly over 12'],

  ['spaced', [0, 12], ['dc'], 'dc in next 12 sts'],
  ['spaced', [1, 1], ['dc'], '2 dc in next st'],
  ['spaced', [6, 6], ['sc'], '(2 sc in next st) 6 times'],
  ['spaced', [1, 12], ['sc'], 'sc in next 6 sts, 2 sc in next st, sc in next 5 sts'],
  [
    'spaced',
    [4, 36],
    ['sc'],
    'sc in next 4 sts, (2 sc in next st, sc in next 8 sts) 3 times, 2 sc in next st, sc in next 4 sts',
  ],
  ['spaced', [-3, 12], ['hdc'], 'hdc in next st, (hdc2tog, hdc in next 2 sts) twice, hdc2tog, hdc in next st'],
  [
    'spaced',
    [6, 27],
    ['sc'],
    'sc in next 2 sts, (2 sc in next st, sc in next 3 sts, 2 sc in next st, sc in next 4 sts) twice, 2 sc in next st, sc in next 3 sts, 2 sc in next st, sc in next 2 sts',
  ],

  ['taper', [60, 42, 42], [], 'dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times'],
  ['taper', [42, 60, 36], [], 'inc 1 st at each end of every 4th row 9 times'],
  [
    'taper',
    [60, 42, 43],
    [],
    'dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times, then work 1 row even',
  ],
  [
    'taper',
    [60, 42, 43],
    ['either side'],
    'dec 1 st at each end of every 4th row twice, then of every 5th row 7 times',
  ],
  ['taper', [60, 42, 43], ['rounds'], 'dec 1 st at beg and end of every 4th rnd twice, then of every 5th rnd 7 times'],
  [
    'taper',
    [60, 51, 43],
    ['one end', 'rounds'],
    'dec 1 st at beg of every 4th rnd twice, then of every 5th rnd 7 times',
  ],
  ['taper', [60, 51, 18], ['one end'], 'dec 1 st at one end of every 2nd row 9 times'],
  ['taper', [60, 40, 12], [], 'dec 1 st at each end of every row 8 times, then of every 2nd row twice'],
  ['taper', [60, 58, 1], [], 'dec 1 st at each end of every row once'],
  ['taper', [60, 60, 40], [], 'work 40 rows even'],
  ['taper', [60, 60, 1], ['rounds'], 'work 1 rnd even'],

  [
    'waist_taper',
    [90, 80, 90, 40],
    [],
    'dec 1 st at each end of every 4th row 5 times, then inc 1 st at each end of every 4th row 5 times',
  ],
  [
    'waist_taper',
    [90, 80, 84, 43],
    [],
    'dec 1 st at each end of every 4th row 5 times, then inc 1 st at each end of every 10th row once, then of every 12th row once, then work 1 row even',
  ],
  [
    'waist_taper',
    [80, 80, 84, 20],
    ['rounds'],
    'work 10 rnds even, then inc 1 st at beg and end of every 5th rnd twice',
  ],

  ['armhole_steps', [15, 7], [], 'dec at each end of every row 5 sts once, 3 sts once, 2 sts twice, 1 st 3 times'],
  ['armhole_steps', [6, 2], ['one end'], 'dec at armhole edge of every row 4 sts once, 2 sts once'],
  ['armhole_steps', [4, 6], [], 'dec at each end of every row 1 st 4 times, then work 2 rows even'],
  ['neck_steps', [9, 6], [], 'dec at neck edge of every row 3 sts once, 2 sts once, 1 st 4 times'],
  ['shoulder_steps', [20, 3], [], 'dec at armhole edge of every row 7 sts twice, 6 sts once'],

  [
    'yoke_rounds',
    [60, 100, 10, 2],
    [],
    'work 4 rnds even, increase 20 evenly to 80 sts; work 4 rnds even, increase 20 evenly to 100 sts',
  ],
  ['yoke_rounds', [60, 100, 3, 2], [], 'increase 20 evenly to 80 sts; work 1 rnd even, increase 20 evenly to 100 sts'],
  ['yoke_rounds', [60, 100, 2, 2], [], 'increase 20 evenly to 80 sts; increase 20 evenly to 100 sts'],

  ['shares', [92, 3], [], '31, 30, 31'],
  ['shares', [93, 3], [], '31, 31, 31'],
  ['shares', [2, 3], [], '1, 0, 1'],
]

describe('shaping phrases', () => {
  it.each(written)('%s(%j) %j is “%s”', (name, counts, words, text) => {
    expect(shape(name, counts, words)).toEqual({ words: text, problem: null })
  })
})

const range = (argument: number, found: number, least: number, most: number): ShapingProblem => ({
  kind: 'range',
  argument,
  found,
  least,
  most,
})

const refusals: readonly Refusal[] = [
  ['evenly', [13, 12], [], { kind: 'stitches', needed: 13, there: 12 }],
  ['evenly', [-7, 12], [], { kind: 'stitches', needed: 14, there: 12 }],
  ['evenly', [3, 0], [], range(1, 0, 1, 20_000)],
  ['spaced', [13, 12], ['sc'], { kind: 'stitches', needed: 13, there: 12 }],
  ['taper', [60, 43, 40], [], { kind: 'odd', from: 60, to: 43 }],
  ['taper', [60, 20, 19], [], { kind: 'rows', shaped: 20, rows: 19 }],
  ['taper', [60, 50, 9], ['one end'], { kind: 'rows', shaped: 10, rows: 9 }],
  ['taper', [7, 1, 10], [], { kind: 'stitches', needed: 2, there: 1 }],
  ['taper', [60, 42, 0], [], range(2, 0, 1, 2_000)],
  ['taper', [60, -2, 40], [], range(1, -2, 1, 20_000)],
  ['taper', [60, 42, 2_001], [], range(2, 2_001, 1, 2_000)],
  ['waist_taper', [80, 90, 80, 40], [], { kind: 'direction', from: 80, to: 90 }],
  ['waist_taper', [90, 86, 80, 40], [], { kind: 'direction', from: 80, to: 86 }],
  ['waist_taper', [90, 81, 90, 40], [], { kind: 'odd', from: 90, to: 81 }],
  ['waist_taper', [90, 60, 90, 20], [], { kind: 'rows', shaped: 15, rows: 10 }],
  ['armhole_steps', [0, 4], [], range(0, 0, 1, 20_000)],
  ['shoulder_steps', [2, 3], [], { kind: 'stitches', needed: 3, there: 2 }],
  ['yoke_rounds', [100, 60, 10, 2], [], { kind: 'direction', from: 100, to: 60 }],
  ['yoke_rounds', [60, 100, 2, 3], [], { kind: 'rows', shaped: 3, rows: 2 }],
  ['yoke_rounds', [60, 61, 10, 2], [], { kind: 'stitches', needed: 2, there: 1 }],
  ['yoke_rounds', [10, 40, 10, 1], [], { kind: 'stitches', needed: 30, there: 10 }],
  ['shares', [92, 0], [], range(1, 0, 1, 200)],
]

describe('shaping that cannot be worked', () => {
  it.each(refusals)('%s(%j) %j', (name, counts, words, problem) => {
    expect(shape(name, counts, words)).toEqual({ words: null, problem })
  })
})
