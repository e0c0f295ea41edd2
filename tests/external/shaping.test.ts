import { describe, expect, it } from 'vitest'
import type { ShapingName } from '../../src/formula/index.ts'
import { shape } from '../../src/grading/shaping/shape.ts'
import { intervals } from '../../src/grading/shaping/spread.ts'
import { shareOf } from '../../src/measure/index.ts'
import { counts, totals, work } from '../rows/draft.ts'

function words(name: ShapingName, numbers: readonly number[], options: readonly string[] = []): string {
  return shape(name, numbers, options).words ?? 'refused'
}

/** Counts of the rounds that a phrase for each of them makes, from a ring. */
function rounds(first: number, phrases: readonly string[]): readonly number[] {
  const lines = phrases.map((phrase, index) => `Rnd ${index + 2}: ${phrase}.`)
  const draft = work(`## A\nRnd 1: {{first}} sc in ring.\n${lines.join('\n')}`, { holes: { first: counts(first) } })
  expect(draft.codes).toEqual([])
  return draft.ledger.rows.map(({ total }) => total[0] ?? 0)
}

describe('circles and hexagons, a round for each evenly spread increase', () => {
  it.each([
    // Single crochet: Crafty Maria, 2009; MK Carroll, 2009; Lucy Kate Crochet, “Crocheting a ball”.
    ['circle in sc', 6, 'sc', [6, 12, 18, 24, 30, 36, 42, 48, 54]],
    // Half double crochet: Crafty Maria, 2009; MK Carroll, 2009.
    ['circle in hdc', 8, 'hdc', [8, 16, 24, 32, 40]],
    // Double crochet: Crafty Maria, 2009; MK Carroll, 2009; Pink Mambo, hexagon rounds 1 and 2.
    ['circle in dc', 12, 'dc', [12, 24, 36, 48]],
    // Crochet Rochelle, “Hexagon dishcloth”, 2016; J. & P. Coats leaflet, hexagon mat no. 15 (rounds 1 to 4).
    ['hexagon in sc', 6, 'sc', [6, 12, 18, 24, 30, 36, 42, 48, 54, 60, 66, 72, 78, 84]],
  ] as const)('%s', (_, add, stitch, published) => {
    const below = published.slice(0, -1)
    expect(
      rounds(
        add,
        below.map((count) => words('evenly', [add, count])),
      ),
    ).toEqual(published)
    expect(
      rounds(
        add,
        below.map((count) => words('spaced', [add, count], [stitch])),
      ),
    ).toEqual(published)
  })

  // UK-terms any-size ball: round 4 from 18 is 1, 2 in 1, (2, 2 in 1) 5 times, 1 – increases off those of the round below.
  it('round 4 of a ball begins with half an interval', () => {
    expect(words('spaced', [6, 18], ['dc'])).toBe(
      'dc in next st, (2 dc in next st, dc in next 2 sts) 5 times, 2 dc in next st, dc in next st',
    )
  })

  // knittingday.com, ball of n = 6: rounds 1 to 6 to 36, 7 to 12 even, 13 to 17 down to 6.
  it('a sphere', () => {
    const changes = [6, 6, 6, 6, 6, 0, 0, 0, 0, 0, 0, -6, -6, -6, -6, -6]
    const published = [6, 12, 18, 24, 30, 36, 36, 36, 36, 36, 36, 36, 30, 24, 18, 12, 6]
    expect(
      rounds(
        6,
        changes.map((by, round) => words('evenly', [by, published[round] ?? 0])),
      ),
    ).toEqual(published)
  })
})

describe('increases spread over a row', () => {
  // Positions after which an increase is made.
  const positions = (plain: readonly number[]) =>
    plain.slice(0, -1).map((_, index) => plain.slice(0, index + 1).reduce((sum, each) => sum + each, 0))

  it.each([
    // Woolpack Yarn, on increasing evenly: flat, 4 in 51, the first after half an interval.
    [51, 4, [6, 19, 32, 45]],
    // Teaching lesson on increasing evenly (unattributed copy): 12 in 48, 2 stitches, then after every 4, 2 at the end.
    [48, 12, [2, 6, 10, 14, 18, 22, 26, 30, 34, 38, 42, 46]],
  ])('over %i stitches, %i between them', (stitches, increases, published) => {
    expect(positions(intervals(stitches, increases))).toEqual(published)
  })

  it.each([
    // Dummies, “How to increase at several points in the same row”: 4 in 40 to 44.
    [40, 4, 44],
    // Woolpack Yarn: 4 in 51, 16 in 112.
    [51, 4, 55],
    [112, 16, 128],
    // Teaching lesson on increasing evenly (unattributed copy): 16 in 100, 21 in 140, 12 in 48.
    [100, 16, 116],
    [140, 21, 161],
    [48, 12, 60],
    // Knitting with Karma, 2011: 40 to 48, and 56 to 40.
    [40, 8, 48],
    [56, -16, 40],
    // Common practice, no source.
    [93, 7, 100],
  ])('%i and %i is %i', (over, by, published) => {
    expect(rounds(over, [words('evenly', [by, over])])).toEqual([over, published])
    expect(rounds(over, [words('spaced', [by, over], ['sc'])])).toEqual([over, published])
  })

  it.each([
    // Woolpack Yarn, in the round: 4 in 51 are intervals of 13, 13, 13 and 12.
    [51, 4, { 12: 1, 13: 3 }],
    // Dummies: 4 increases in 40 stitches leave 5 sections of 8.
    [40, 5, { 8: 5 }],
    // Common practice, no source: 7 in 93 in the round; between stitches of a flat row; 86 plain stitches in 8 sections.
    [93, 7, { 13: 5, 14: 2 }],
    [93, 8, { 11: 3, 12: 5 }],
    [86, 8, { 10: 2, 11: 6 }],
    // The same for the lesson's 16 in 100, which leaves 4 over.
    [100, 16, { 6: 12, 7: 4 }],
  ])('%i stitches in %i sections', (stitches, sections, published) => {
    const found: Record<number, number> = {}
    for (let which = 1; which <= sections; which += 1) {
      const share = shareOf(stitches, sections, which)
      found[share] = (found[share] ?? 0) + 1
    }
    expect(found).toEqual(published)
  })
})

describe('tapers', () => {
  it.each([
    // “Knitting and the magic formula” (teaching article, read in two copies): 36 increases on each side over 140 rows.
    [38, 110, 140, ['either side'], 'inc 1 st at each end of every 3rd row 4 times, then of every 4th row 32 times'],
    // Kristen TenDyke, on sleeve shaping, 2006/2014: 38 to 60 stitches in 108 rows.
    [38, 60, 108, ['either side'], 'inc 1 st at each end of every 9th row twice, then of every 10th row 9 times'],
    // Studio Miranda, on flat sleeves, 2015: 43 to 93 on right-side rows in the 160 rows that are left after 6 kept back.
    [43, 93, 160, [], 'inc 1 st at each end of every 6th row 20 times, then of every 8th row 5 times'],
    // Knitting Unplugged, 2016: 50 to 72 stitches are 11 pairs in 91 rows; the schedule is common practice.
    [50, 72, 91, ['either side'], 'inc 1 st at each end of every 8th row 8 times, then of every 9th row 3 times'],
  ] as const)('%i to %i in %i rows', (from, to, rows, options, published) => {
    const phrase = words('taper', [from, to, rows], options)
    expect(phrase).toBe(published)
    const draft = work(
      `## A\nFoundation: Ch {{chains}}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2–{{last}}: ${phrase}. ({{to}} sc)`,
      {
        holes: { chains: counts(from + 1), last: counts(rows + 1), to: counts(to) },
      },
    )
    expect(draft.codes).toEqual([])
    expect(totals(draft)).toHaveLength(rows + 2)
    expect(totals(draft).at(-1)).toBe(`Row ${rows + 1}: ${to}`)
  })
})
