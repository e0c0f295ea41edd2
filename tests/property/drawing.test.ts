import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { FlatRow } from '../../src/drawing/flat/laid.ts'
import { layFlat } from '../../src/drawing/flat/laid.ts'
import { flatPlan } from '../../src/drawing/flat/plan.ts'
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
