import { describe, expect, it } from 'vitest'
import type { FlatRow } from '../../src/drawing/flat/laid.ts'
import { polygon } from '../../src/drawing/round/motif.ts'
import { roundPlans } from '../../src/drawing/round/plan.ts'
import { work } from '../rows/draft.ts'

/** Single crochet: as high as it is wide, nearly. */
const density = { stitches: 1.4, rows: 1.6 }

/** The plan of all rows, or of those of one piece. */
function planOf(
  text: string,
  gauge = density,
  piece: string | null = null,
): NonNullable<ReturnType<typeof roundPlans>[number]> {
  const { ledger, codes } = work(text)
  expect(codes).toEqual([])
  const rows = ledger.rows.flatMap(({ side, piece: own }, index): FlatRow[] => {
    const row = ledger.fabric[index]?.[0] ?? null
    return row === null || (piece !== null && own !== piece) ? [] : [{ row, side }]
  })
  const [plan = null] = roundPlans([rows], 0, ledger.kinds, gauge)
  if (plan === null) throw new Error('no rounds')
  return plan
}

/** Increases of six in each round, as in the flat circle that every teaching text shows. */
function circle(rounds: number): string {
  const later = Array.from({ length: rounds - 1 }, (_, index) =>
    index === 0
      ? 'Rnd 2: 2 sc in each st around.'
      : `Rnd ${index + 2}: *Sc in next ${index} sts, 2 sc in next st; rep from * around.`,
  )
  return ['Rnd 1: 6 sc in magic ring.', ...later].join('\n')
}

const even = (first: number, last: number): string => `\nRnds ${first}–${last}: Sc in each st around.`

const ring = (stitches: number): string =>
  `Ch ${stitches}, join with sl st in first ch to form a ring.\nRnd 1: Sc in each ch around.`

const square = [
  'Ch 4, join with sl st in first ch to form a ring.',
  'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, join with sl st in top of beg ch-3.',
  'Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, ch 1, join with sl st in top of beg ch-3.',
].join('\n')

const hexagon = square.replaceAll('2 more times', '4 more times')

const measures = (text: string, gauge = density): readonly string[] =>
  planOf(text, gauge).spans.map(({ name, count, of, side }) => `${name}: ${count} ${of}, ${side}`)

describe('the kind of a piece in rounds, and what is measured on it', () => {
  const double = { stitches: 1.4, rows: 0.7 }
  it.each([
    ['a circle of six increases', circle(8), density, ['Across: 16 rows, below']],
    ['a square', square, double, ['Each side: 4 rows, below']],
    ['a hexagon', hexagon, double, ['From side to side: 4 rows, right']],
    ['a tube', ring(60) + even(2, 20), density, ['Around: 60 stitches, below', 'Height: 20 rows, right']],
    [
      'a hat from the crown',
      circle(8) + even(9, 20),
      density,
      [
        'Around: 48 stitches, below',
        'From center to edge: 20 rows, right',
        'Flat round, from its center: 8 rows, left',
        'Side: 12 rows, left',
      ],
    ],
    [
      'a skirt from the waist',
      `${ring(60)}${Array.from({ length: 10 }, (_, index) => `\nRnd ${index + 2}: Increase 6 evenly around.`).join('')}`,
      density,
      [
        'Around the upper edge: 60 stitches, above',
        'Around the lower edge: 120 stitches, below',
        'Height: 11 rows, right',
      ],
    ],
    [
      'a yoke that leaves its sleeves',
      `${ring(60)}${Array.from({ length: 10 }, (_, index) => `\nRnd ${index + 2}: Increase 12 evenly around.`).join('')}\nRnd 12: Sc in next 50 sts, sk next 40 sts, ch 6, sc in next 50 sts, sk next 40 sts, ch 6.\nRnds 13–30: Sc in each st and ch around.`,
      density,
      [
        'Around the upper edge: 60 stitches, above',
        'Around at the widest: 180 stitches, within',
        'Around the lower edge: 112 stitches, below',
        'Height: 30 rows, right',
        'First edge to shaping: 11 rows, left',
        'Shaping to last edge: 19 rows, left',
      ],
    ],
    [
      'a ball',
      `${circle(6)}${even(7, 12)}\nRnd 13: *Sc in next 4 sts, sc2tog; rep from * around.\nRnd 14: *Sc in next 3 sts, sc2tog; rep from * around.\nRnd 15: *Sc in next 2 sts, sc2tog; rep from * around.\nRnd 16: *Sc in next st, sc2tog; rep from * around.\nRnd 17: Sc2tog around.`,
      density,
      [
        'Around: 36 stitches, below',
        'Height: 17 rows, right',
        'Flat round, from its center: 6 rows, left',
        'Side: 5 rows, left',
        'Flat round, from its center: 6 rows, left',
      ],
    ],
  ])('%s', (_, text, gauge, expected) => {
    expect(measures(text, gauge)).toEqual(expected)
  })
})

describe('how it is drawn', () => {
  it('a circle as wide as its rounds are high, twice', () => {
    const { left, right, top, bottom } = planOf(circle(8))
    expect([left, right, bottom, top]).toEqual([-5, 5, -5, 5])
  })

  it('a tube half as wide as it is around, for it lies folded', () => {
    const { left, right } = planOf(ring(56) + even(2, 20))
    expect(right - left).toBeCloseTo(20)
  })

  it('what grows from its first round hangs from the top', () => {
    const hat = planOf(circle(8) + even(9, 20))
    const crown = hat.spans.find(({ name }) => name.startsWith('Flat round'))
    expect(crown?.to).toBeCloseTo(20 / density.rows)
    const tapered = planOf(`${ring(60)}${even(2, 10)}\nRnd 11: Decrease 12 evenly around.${even(12, 20)}`)
    expect(tapered.spans.map(({ name, side }) => `${name} ${side}`)).toContain('Around the lower edge below')
  })

  it('many increases every few rounds as a slope, as many in one round alone as a step', () => {
    const grown = (times: number): string =>
      Array.from(
        { length: times },
        (_, index) => `\nRnd ${index * 4 + 4}: Increase 30 evenly around.${even(index * 4 + 5, index * 4 + 7)}`,
      ).join('')
    const corners = (text: string): number => {
      const [outline] = planOf(text).lines({ place: (x, y) => ({ x, y }), length: (length) => length })
      return outline?.path.split('L').length ?? 0
    }
    const tube = ring(60) + even(2, 3)
    expect(corners(tube + grown(5))).toBe(corners(tube))
    expect(corners(tube + grown(1))).toBeGreaterThan(corners(tube))
  })

  it('what narrows from stitches of another piece hangs from there, as a sleeve does', () => {
    const yoke = `## Yoke\n${ring(60)}${even(2, 10)}\nFasten off.`
    const sleeve = `## Sleeve\nRnd 1: Join yarn with sl st in any st of Rnd 10 of yoke, ch 1, sc in each st around. (60 sc)${even(2, 10)}\nRnd 11: Decrease 12 evenly around.${even(12, 20)}`
    const spans = planOf(`${yoke}\n${sleeve}`, density, 'Sleeve').spans.map(({ name, count }) => `${name} ${count}`)
    expect(spans).toEqual(expect.arrayContaining(['Around the upper edge 60', 'Around the lower edge 48']))
  })

  it.each([
    [3, 6, 3],
    [4, 2.83, 2],
    [6, 2.31, 2],
  ])('a motif of %i corners stands on a level side', (corners, outer, inner) => {
    const points = polygon(corners, inner === 3 ? 3 : 2)
    expect(points.map(({ x, y }) => Number(Math.hypot(x, y).toFixed(2)))).toEqual(points.map(() => outer))
    expect(points[0]?.y).toBeCloseTo(points.at(-1)?.y ?? 0)
    expect(Math.min(...points.map(({ y }) => y))).toBeCloseTo(-inner)
  })
})
