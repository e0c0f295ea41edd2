import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Beside, estimateYarn, type YarnQuestion } from '../../src/yarn/estimate.ts'
import { aliasesOf, mentionsIn } from '../../src/yarn/naming.ts'
import { spokenInRow } from '../../src/yarn/spoken.ts'
import { yarnDraft } from '../yarn/draft.ts'

const options = { seed: 20260314, numRuns: 300 }
const sizes = 3

const amount = fc.integer({ min: 1, max: 5000 })
const perSize = fc.array(amount, { minLength: sizes, maxLength: sizes })
const beside: fc.Arbitrary<Beside> = fc.record({ units: perSize, grams: perSize })
const swatch = fc.record({ grams: amount, units: amount })

/** Rows of two yarns, each worked with at least one strand; both yarns have a row. */
const rows = fc
  .array(fc.record({ units: perSize, strands: fc.constantFrom([1, 0], [0, 1], [1, 1], [2, 0]) }), { maxLength: 6 })
  .map((some) => [{ units: [10, 20, 30], strands: [1, 0] }, { units: [3, 4, 5], strands: [0, 1] }, ...some])

const question = fc.record<YarnQuestion>({
  sizes: fc.constant(sizes),
  rows,
  beside: fc.array(beside, { minLength: 2, maxLength: 2 }),
  swatch,
  samples: fc.constant([]),
})

/** Equal but for the last digits of the arithmetic. */
function expectSame(found: readonly number[] | null | undefined, expected: readonly number[]): void {
  expect(found?.length).toBe(expected.length)
  for (const [size, each] of expected.entries()) expect((found?.[size] ?? 0) / each).toBeCloseTo(1, 9)
}

const twice = (amounts: readonly number[]): number[] => amounts.map((each) => 2 * each)

describe('an estimate of yarn', () => {
  it('is twice as much for twice the stitches and twice the finish', () => {
    fc.assert(
      fc.property(question, (asked) => {
        const before = estimateYarn(asked)
        const doubled = estimateYarn({
          ...asked,
          rows: asked.rows.map((row) => ({ ...row, units: twice(row.units) })),
          beside: asked.beside.map(({ units, grams }) => ({ units: twice(units), grams: twice(grams) })),
        })
        for (const [yarn, grams] of before.byYarn.entries()) expectSame(doubled.byYarn[yarn], twice(grams ?? []))
      }),
      options,
    )
  })

  it('of the size that was weighed is what was weighed', () => {
    fc.assert(
      fc.property(question, fc.nat(sizes - 1), amount, amount, (asked, size, main, contrast) => {
        const { byYarn } = estimateYarn({ ...asked, samples: [{ size, grams: [main, contrast] }] })
        expect(byYarn.map((grams) => grams?.[size])).toEqual([main, contrast])
      }),
      options,
    )
  })

  it('by a sample goes with the worked stitches from size to size', () => {
    fc.assert(
      fc.property(perSize, fc.nat(sizes - 1), amount, (units, size, grams) => {
        const none = { units: [0, 0, 0], grams: [0, 0, 0] }
        const asked = { sizes, rows: [{ units, strands: [1] }], beside: [none], swatch: null }
        const { byYarn } = estimateYarn({ ...asked, samples: [{ size, grams: [grams] }] })
        expectSame(
          byYarn[0],
          units.map((each) => (grams * each) / (units[size] ?? 1)),
        )
      }),
      options,
    )
  })

  it('of all yarns is the sum of each', () => {
    fc.assert(
      fc.property(question, (asked) => {
        const { byYarn, total } = estimateYarn(asked)
        expectSame(
          total,
          [0, 1, 2].map((size) => byYarn.reduce((sum, grams) => sum + (grams?.[size] ?? 0), 0)),
        )
      }),
      options,
    )
  })

  it('of a piece parted into two yarns is that of the piece in one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(perSize, fc.boolean()), { minLength: 2, maxLength: 8 }),
        swatch,
        (parts, weighed) => {
          const none = { units: [0, 0, 0], grams: [0, 0, 0] }
          const parted = parts.map(([units, first], index) => ({
            units,
            strands: index === 0 || (first && index !== 1) ? [1, 0] : [0, 1],
          }))
          const asked = { sizes, swatch: weighed, samples: [] }
          const whole = estimateYarn({
            ...asked,
            rows: parts.map(([units]) => ({ units, strands: [1] })),
            beside: [none],
          })
          expectSame(estimateYarn({ ...asked, rows: parted, beside: [none, none] }).total, whole.total ?? [])
        },
      ),
      options,
    )
  })
})

describe('a draft with its counts doubled', () => {
  it('takes twice the yarn, from a sample', () => {
    const counts = fc.integer({ min: 2, max: 90 })
    fc.assert(
      fc.property(counts, fc.integer({ min: 1, max: 20 }), fc.constantFrom('sc', 'hdc', 'dc'), (sts, last, stitch) => {
        const body = `## Tube\n\nRnd 1: F${stitch} ${sts} (${2 * sts}), join.\nRnds 2-${last + 1}: ${stitch} in each st around, join.\n`
        const { grams } = yarnDraft('yarn: [{as: main}]\nsample: {size: S, used: {main: 500 g}}', body)
        expect(grams).toEqual({ main: [500, 1000] })
      }),
      { ...options, numRuns: 30 },
    )
  })
})

describe('words about yarns', () => {
  it('of any kind are read, and every mention lies within them', () => {
    const word = fc.constantFrom(
      'with',
      'MC',
      'CC',
      'A',
      'sc',
      '3',
      'change to',
      ',',
      '(',
      ')',
      '|',
      'main',
      '*',
      'in',
      'st.',
    )
    const words = fc.array(fc.oneof(word, fc.string({ maxLength: 6 })), { maxLength: 20 }).map((all) => all.join(' '))
    const aliases = aliasesOf(['main', 'contrast'])
    fc.assert(
      fc.property(words, (text) => {
        spokenInRow('Row 1:', text, { yarns: 2, aliases })
        return mentionsIn(text, aliases).every(({ start, end }) => 0 <= start && start < end && end <= text.length)
      }),
      options,
    )
  })
})
