import { describe, expect, it } from 'vitest'
import { plainBySize } from '../../src/formula/index.ts'
import { loadSolver } from '../../src/solver/index.ts'
import { environment, sheet } from './workbench.ts'

const solver = await loadSolver()
const facts = environment({ solver })

function chosen(text: string, names: readonly string[]) {
  const { settled, diagnostics } = sheet(text, facts)
  expect(diagnostics.map(({ message }) => message)).toEqual([])
  return names.map((name) => {
    const value = settled.values.get(name)
    return value === undefined ? null : plainBySize(value)
  })
}

/** Names and what they come to, for the first size or for all. */
type Case = readonly [what: string, text: string, counts: Readonly<Record<string, number | readonly (number | null)[]>>]

function each(cases: readonly Case[]) {
  it.each(cases)('%s', (_, text, counts) => {
    const found = chosen(text, Object.keys(counts))
    const wanted = Object.values(counts)
    const compared = found.map((bySize, index) => (typeof wanted[index] === 'number' ? bySize?.[0] : bySize))
    expect(compared).toEqual(wanted)
  })
}

describe('a linked count with no needs on it is the nearest to its target', () => {
  each([
    ['whole numbers', 'a ~ stitches([52, 60, 68] cm)', { a: [62, 72, 82] }],
    ['odd', 'a ~ stitches([52, 60, 68] cm) as odd', { a: [63, 71, 81] }],
    ['of two as near, the smaller', 'a ~ 61 as even', { a: 60 }],
    ['a multiple and more', 'a ~ 62 as multiple of 12 + 1', { a: 61 }],
    ['a multiple for each size', 'a ~ 62 as multiple of [4, 5, 6] + 1', { a: [61, 61, 61] }],
    ['not below the target', 'a ~ 62 as multiple of 12 up', { a: 72 }],
    ['not above the target', 'a ~ 70 as multiple of 12 down', { a: 60 }],
    ['none for a size', 'a ~ [60, none, 80] as odd\nb = a + 1', { a: [59, null, 79], b: [60, null, 80] }],
    ['a target of 0', 'a ~ 0', { a: 0 }],
    ['a target below 0', 'a ~ 0 - 5', { a: 0 }],
  ])
})

describe('needs move linked counts as little as can be', () => {
  each([
    ['the larger count, where one must move', 'a ~ 20\nb ~ 60\nneed a + b = 82', { a: 20, b: 62 }],
    ['spread, where the sum of errors is the same', 'a ~ 60\nb ~ 60\nneed a + b = 122', { a: 61, b: 61 }],
    ['the first smaller, where all else is the same', 'a ~ 60\nb ~ 60\nneed a + b = 121', { a: 60, b: 61 }],
    [
      'through a definition',
      'a ~ 60\nb ~ 20\nneck = 2 * a + 2 * b\nneed neck is multiple of 12',
      { a: 58, b: 20, neck: 156 },
    ],
    ['a definition that is rounded', 'a ~ 60\nhalf = a / 2 as multiple of 4\nneed half = 36', { a: 68, half: 36 }],
    ['a measure', 'a ~ 60\nneed width(a) >= 52 cm', { a: 63 }],
    ['rows', 'a ~ 10 as even\nneed height(a) > 15 cm', { a: 14 }],
    ['another swatch', 'a ~ 10\nneed width(a, ribbing) >= 10 cm', { a: 16 }],
    ['not equal', 'a ~ 60\nb ~ 60\nneed a != b', { a: 59, b: 60 }],
    ['strictly more', 'a ~ 60\nb ~ 60\nneed a > b', { a: 60, b: 59 }],
    ['the largest', 'a ~ 60\nb ~ 50\nneed max(a, b) <= 55', { a: 55, b: 50 }],
    ['the largest, from below', 'a ~ 60\nb ~ 58\nneed max(a, b) >= 62', { a: 62, b: 58 }],
    ['the smallest', 'a ~ 60\nb ~ 50\nneed min(a, b) = 52', { a: 60, b: 52 }],
    ['a distance', 'a ~ 60\nb ~ 50\nneed abs(a - b) <= 6', { a: 56, b: 50 }],
    ['either', 'a ~ 60\nneed a < 50 or a > 64', { a: 65 }],
    ['not', 'a ~ 60\nneed not (a >= 58 and a <= 63)', { a: 57 }],
    ['not a multiple', 'a ~ 60\nneed a is not multiple of 6', { a: 59 }],
    ['a choice by what is known', 'a ~ 60\nneed if([1, 2, 3] > 1, a, a + 3) = 62', { a: [59, 62, 62] }],
    ['a need that names its sizes', 'a ~ 60\nneed a >= [61, none, 63]', { a: [61, 60, 63] }],
    ['a sum of a list', 'a ~ 60\nb ~ 40\nneed sum([a, b, b]) = 142', { a: 60, b: 41 }],
    ['a unit after a bracket', 'a ~ 60\nneed (a * 2) cm >= 121 cm', { a: 61 }],
    ['with `and`, two needs', 'a ~ 60\nneed a is odd and a is multiple of 7', { a: 63 }],
    ['the grid of the count beside a need', 'a ~ 60 as odd\nneed a is multiple of 3', { a: 57 }],
    ['far from the target', 'a ~ 3\nneed a > 5000', { a: 5001 }],
  ])
})

describe('needs across sizes choose the sizes together', () => {
  each([
    ['rises', 'a ~ [60, 60, 62]\nneed a rises', { a: [59, 60, 62] }],
    ['rises, some sizes left out', 'a ~ [60, none, 60]\nneed a rises', { a: [59, null, 60] }],
    ['falls', 'a ~ [60, 60, 60]\nneed a falls', { a: [61, 60, 59] }],
    ['steady', 'a ~ [60, 64, 64]\nneed a steady', { a: [64, 64, 64] }],
    ['one size beside another', 'a ~ [60, 70, 80]\nneed a - at("Child", a) is multiple of 6', { a: [60, 72, 78] }],
    ['all sizes together', 'a ~ [60, 70, 80]\nneed sum(a) = 213', { a: [60, 70, 83] }],
    ['in a condition', 'a ~ [60, 60, 60]\nneed a rises or a < 50', { a: [59, 60, 61] }],
  ])
})

describe('what follows from linked counts sees them as any count', () => {
  it('definitions before and after them, in any order of lines', () => {
    const text = 'c = b * 2\nneed b is even\nb = a + 1\na ~ twelve\ntwelve = 12'
    expect(chosen(text, ['a', 'b', 'c'])).toEqual([
      [11, 11, 11],
      [12, 12, 12],
      [24, 24, 24],
    ])
  })

  it('a draft without them asks no solver', () => {
    const forbidden = environment({
      solver: () => {
        throw new Error('asked')
      },
    })
    expect(sheet('a = 60 as odd\nneed a is odd', forbidden).diagnostics).toEqual([])
  })

  it('an answer that is wrong by a rounding is not believed', () => {
    const careless = environment({ solver: ({ columns }) => ({ kind: 'solved', values: columns.map(() => 0.4) }) })
    const { settled, diagnostics } = sheet('a ~ 60\nneed a > 60', careless)
    expect(diagnostics.map(({ code }) => code)).toEqual(['linked-undecided'])
    expect(settled.values.has('a')).toBe(false)
  })
})

describe('a contradiction is told once, with the sizes in which it stands', () => {
  const cases: readonly (readonly [string, string, readonly (readonly [string, readonly number[]])[]])[] = [
    ['in one size', 'a ~ 60\nneed a > [50, 70, 50]\nneed a < 65', [['`need a > [50, 70, 50]`, `need a < 65`', [1]]]],
    [
      'two of them',
      'a ~ 60\nb ~ 20\nneed a > 70\nneed a < 65\nneed b is odd\nneed b is even',
      [
        ['`need a > 70`, `need a < 65`', [0, 1, 2]],
        ['`need b is odd`, `need b is even`', [0, 1, 2]],
      ],
    ],
    [
      'another in each size',
      'a ~ 60\nneed a > [70, 0, 0]\nneed a < 65\nneed a = [60, 60, 61]\nneed a is even',
      [
        ['`need a > [70, 0, 0]`, `need a < 65`', [0]],
        ['`need a = [60, 60, 61]`, `need a is even`', [2]],
      ],
    ],
    [
      'a smaller set than leaving out one by one finds',
      'a ~ 60\nb ~ 60\nneed a + b > 150\nneed a - b = 0\nneed a < 70\nneed a > 80\nneed b < 60',
      [['`need a < 70`, `need a > 80`', [0, 1, 2]]],
    ],
    [
      'across sizes, only those that it takes',
      'a ~ [60, 62, 64]\nneed a rises\nneed a > [0, 70, 0]\nneed a < [99, 99, 71]',
      [['`need a rises`, `need a > [0, 70, 0]`, `need a < [99, 99, 71]`', [1, 2]]],
    ],
    [
      'with the rounding that has a part in it',
      'a ~ 60 as even\nb ~ 60 as odd\nc ~ 9 as odd\nneed a + 2 * b + c * 0 is odd',
      [['`need a + 2 * b + c * 0 is odd`, `a ~ 60 as even`', [0, 1, 2]]],
    ],
    [
      'by remainders',
      'a ~ 60\nb ~ 60\nneed a + b = 2 * b + 1\nneed a - b is even',
      [['`need a + b = 2 * b + 1`, `need a - b is even`', [0, 1, 2]]],
    ],
  ]
  it.each(cases)('%s', (_, text, wanted) => {
    const { settled, diagnostics } = sheet(text, facts)
    expect(diagnostics.map(({ code }) => code)).toEqual(wanted.map(() => 'linked-contradiction'))
    expect(diagnostics.map(({ message }) => message.replace(/^.*?(?=`)|\.$/g, ''))).toEqual(wanted.map(([set]) => set))
    expect(diagnostics.map(({ sizes }) => sizes)).toEqual(wanted.map(([, sizes]) => sizes))
    expect(settled.unsound.has('a')).toBe(true)
  })
})
