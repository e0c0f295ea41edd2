import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { spaced } from '../../src/drawing/chart/spacing.ts'
import type { FlatRow } from '../../src/drawing/flat/laid.ts'
import { layFlat } from '../../src/drawing/flat/laid.ts'
import { flatPlan } from '../../src/drawing/flat/plan.ts'
import { type Charted, flatChart, placesOf, roundChart } from '../drawing/laid.ts'
import { work } from '../rows/draft.ts'

const seed = 20_260_512
const density = { stitches: 1.4, rows: 1.1 }

/** How a row changes at its beginning and its end, in stitches. */
type Change = readonly [beginning: -1 | 0 | 1, end: -1 | 0 | 1]

const beginnings = { '-1': 'sc2tog', 0: 'sc in first st', 1: '2 sc in first st' } as const
const ends = { '-1': 'sc2tog', 0: 'sc in last st', 1: '2 sc in last st' } as const

function rowOf([beginning, end]: Change, number: number): string {
  const rest = end < 0 ? 2 : 1
  return `Row ${number}: Ch 1, ${beginnings[beginning]}, sc in each st to last ${rest} ${rest === 1 ? 'st' : 'sts'}, ${ends[end]}, turn.`
}

const change = fc.constantFrom<-1 | 0 | 1>(-1, 0, 1)
const changes: fc.Arbitrary<readonly Change[]> = fc.array(fc.tuple(change, change), { minLength: 1, maxLength: 14 })

function worked(stitches: number, rows: readonly Change[]) {
  const text = [
    `Foundation: Ch ${stitches + 1}.`,
    'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.',
    ...rows.map((each, index) => rowOf(each, index + 2)),
  ].join('\n')
  const { ledger, codes } = work(text)
  expect(codes).toEqual([])
  const flat = ledger.rows.flatMap(({ side }, index): FlatRow[] => {
    const row = ledger.fabric[index]?.[0] ?? null
    return row === null ? [] : [{ row, side }]
  })
  return { ledger, flat }
}

describe('a flat piece shaped at its edges', () => {
  it('has rows as wide as their stitch counts, each on the one before, its edges where the words put them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 34, max: 60 }), changes, (stitches, rows) => {
        const { ledger, flat } = worked(stitches, rows)
        const laid = layFlat(flat, ledger.kinds).slice(1)
        expect(laid.map(({ left, right }) => right - left)).toEqual(ledger.rows.slice(1).map(({ total }) => total[0]))
        expect(laid.map(({ top }) => top)).toEqual(laid.map((_, index) => index + 1))
        // Right-side rows begin at the right.
        rows.forEach(([beginning, end], index) => {
          const [before, row] = [laid[index], laid[index + 1]]
          const [right, left] = index % 2 === 1 ? [beginning, end] : [end, beginning]
          expect((row?.right ?? 0) - (before?.right ?? 0)).toBe(right)
          expect((before?.left ?? 0) - (row?.left ?? 0)).toBe(left)
        })
      }),
      { seed, numRuns: 60 },
    )
  })

  it('has measures that are its outline’s', () => {
    fc.assert(
      fc.property(fc.integer({ min: 34, max: 60 }), changes, (stitches, rows) => {
        const { ledger, flat } = worked(stitches, rows)
        const plan = flatPlan(flat, ledger.kinds, density)
        for (const { direction, from, to, count } of plan?.spans ?? []) {
          expect((to - from) * density[direction === 'across' ? 'stitches' : 'rows']).toBeCloseTo(count)
        }
        const lower = plan?.spans.find(({ key }) => key === 'lower')
        expect(lower?.count).toBe(stitches)
        expect((plan?.top ?? 0) * density.rows).toBeCloseTo(rows.length + 1)
      }),
      { seed, numRuns: 60 },
    )
  })
})

/** A step of a row with the stitches that it uses and, for a chart, what it leaves in the row: stitches only. */
const steps = [
  { uses: 1, text: 'sc in next st' },
  { uses: 1, text: 'dc in next st' },
  { uses: 1, text: '2 sc in next st' },
  { uses: 1, text: '(dc, ch 1, dc) in next st' },
  { uses: 1, text: '5 dc in next st' },
  { uses: 2, text: 'sc2tog' },
  { uses: 3, text: 'dc3tog' },
  { uses: 2, text: 'ch 1, sk next st, sc in next st' },
  { uses: 3, text: 'ch 4, sk next 2 sts, tr in next st' },
] as const

const recipe = fc.array(fc.integer({ min: 0, max: steps.length - 1 }), { minLength: 6, maxLength: 6 })
const recipes = fc.array(recipe, { minLength: 1, maxLength: 3 })

/** Steps of a row over so many stitches: those of the recipe over and over, single crochet where one does not fit. */
function stepsOver(stitches: number, wanted: readonly number[]): readonly string[] {
  const row: string[] = ['sc in first st']
  for (let used = 1, at = 0; used < stitches; at += 1) {
    const step = steps[wanted[at % wanted.length] ?? 0]
    const chosen = step !== undefined && step.uses <= stitches - used ? step : steps[0]
    row.push(chosen.text)
    used += chosen.uses
  }
  return row
}

/** Rows of a recipe each; between two of them one of single crochet, which counts the stitches anew. */
function rowsFrom(wanted: readonly (readonly number[])[], begin: string, label: 'Row' | 'Rnd', end: string): string {
  const text = [begin]
  let number = 1
  for (const each of wanted) {
    const made = work(text.join('\n')).ledger.rows.at(-1)?.total[0] ?? 0
    text.push(`${label} ${number + 1}: Ch 1, ${stepsOver(made, each).join(', ')}${end}.`)
    text.push(`${label} ${number + 2}: Ch 1, sc in each st${label === 'Row' ? ' across' : ' around'}${end}.`)
    number += 2
  }
  return text.join('\n')
}

/** Symbols of stitches, an opening chain that counts among them. */
function symbolsOf(chart: Charted, row: number): readonly string[] {
  return placesOf(chart, row).flatMap(({ at }) => {
    const kind = chart.ledger.kinds[chart.rows[row]?.row.row.places[at ?? -1] ?? -1]
    if (kind?.what === 'space') return [`ch-${kind.chains} sp`]
    return kind?.what === 'stitch' && kind.stitch !== null ? [kind.stitch.base] : []
  })
}

const byName = { sc: 'singleCrochet', dc: 'doubleCrochet', tr: 'treble' } as const

/** As many symbols of each kind as the ledger counts in the row, and as many stitches as its total. */
function expectCounted(chart: Charted): void {
  const { ledger } = chart
  const worked = ledger.rows.filter((_, entry) => chart.rows.some(({ row }) => ledger.fabric[entry]?.[0] === row))
  expect(worked).toHaveLength(chart.rows.length)
  worked.forEach(({ total, counts }, index) => {
    const found = symbolsOf(chart, index)
    const named = Object.entries(byName).map(([name, base]) => [name, found.filter((each) => each === base).length])
    expect(Object.fromEntries(named.map(([name]) => [name, counts[name ?? '']?.[0] ?? 0]))).toEqual(
      Object.fromEntries(named),
    )
    expect(found.filter((each) => !each.startsWith('ch-'))).toHaveLength(total[0] ?? -1)
  })
}

/** Each place of each row, once. */
function expectWhole(chart: Charted): void {
  chart.rows.forEach(({ row }, index) => {
    expect(placesOf(chart, index).map(({ at }) => at)).toEqual(row.row.places.map((_, at) => at))
  })
}

describe('a chart of any rows', () => {
  it('has every place of its rows once, in their order, over what it goes into', () => {
    fc.assert(
      fc.property(fc.integer({ min: 6, max: 16 }), recipes, (stitches, wanted) => {
        const begin = `Foundation: Ch ${stitches + 1}.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.`
        const chart = flatChart(rowsFrom(wanted, begin, 'Row', ', turn'))
        expectWhole(chart)
        expectCounted(chart)
        chart.rows.forEach((_, index) => {
          const direction = index % 2 === 0 ? -1 : 1
          const stands = placesOf(chart, index).filter(({ sign }) => sign.what === 'stitch')
          const heads = stands.map(({ head }) => head.x * direction)
          const feet = stands.map(({ feet }) => (feet[0]?.x ?? 0) * direction)
          heads.slice(1).forEach((head, at) => {
            expect(head - (heads[at] ?? 0)).toBeGreaterThan(0.9)
          })
          feet.slice(1).forEach((foot, at) => {
            expect(foot - (feet[at] ?? 0)).toBeGreaterThan(-1e-6)
          })
        })
      }),
      { seed, numRuns: 40 },
    )
  })

  it('has them once in rounds too, each round around the middle once', () => {
    fc.assert(
      fc.property(fc.integer({ min: 6, max: 14 }), recipes, (stitches, wanted) => {
        const begin = `Rnd 1: ${stitches} sc in magic ring, join with sl st in first sc.`
        const chart = roundChart(rowsFrom(wanted, begin, 'Rnd', ', join with sl st in first sc'))
        expectWhole(chart)
        expectCounted(chart)
        chart.rows.forEach((_, index) => {
          const heads = placesOf(chart, index).flatMap(({ sign, head }) => (sign.what === 'stitch' ? [head] : []))
          // Of two or three, any order is right.
          if (heads.length < 4) return
          const turned = heads.map((head, at) => {
            const next = heads[(at + 1) % heads.length] ?? head
            const way = Math.atan2(next.y, next.x) - Math.atan2(head.y, head.x)
            return way - 2 * Math.PI * Math.round(way / (2 * Math.PI) - 0.25)
          })
          expect(turned.every((way) => way > -1e-6)).toBe(true)
          expect(turned.reduce((sum, way) => sum + way, 0)).toBeCloseTo(2 * Math.PI)
        })
      }),
      { seed, numRuns: 40 },
    )
  })
})

describe('places on a line', () => {
  const places = fc.array(fc.double({ min: -20, max: 20, noNaN: true }), { minLength: 1, maxLength: 12 })

  it('keep their order and their distance, and lie where they would be if that is far enough apart', () => {
    fc.assert(
      fc.property(places, fc.double({ min: 0.1, max: 3, noNaN: true }), (wanted, gap) => {
        const gaps = wanted.map(() => gap)
        const found = spaced(wanted, gaps)
        found.slice(1).forEach((place, at) => {
          expect(place - (found[at] ?? 0)).toBeGreaterThanOrEqual(gap - 1e-9)
        })
        spaced(found, gaps).forEach((place, at) => {
          expect(place).toBeCloseTo(found[at] ?? 0)
        })
      }),
      { seed, numRuns: 200 },
    )
  })

  it('are nowhere nearer to where they would be: no other places do better', () => {
    const off = (found: readonly number[], wanted: readonly number[]): number =>
      found.reduce((sum, place, at) => sum + (place - (wanted[at] ?? 0)) ** 2, 0)
    fc.assert(
      fc.property(places, fc.double({ min: -1, max: 1, noNaN: true }), fc.nat(), (wanted, by, which) => {
        const gaps = wanted.map(() => 1)
        const found = spaced(wanted, gaps)
        // A neighbour that keeps the distances: one place moved, with those that it would push.
        const moved = [...found]
        moved[which % moved.length] = (moved[which % moved.length] ?? 0) + by
        expect(off(found, wanted)).toBeLessThanOrEqual(off(spaced(moved, gaps), wanted) + 1e-6)
      }),
      { seed, numRuns: 200 },
    )
  })
})
