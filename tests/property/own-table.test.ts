import fc from 'fast-check'
import { describe, it } from 'vitest'
import { readOwnTable } from '../../src/grading/chart/own-table.ts'

const options = { seed: 20260314, numRuns: 300 }

const cell = fc.oneof(
  fc.constantFrom('', 'measure', 'unit', 'cm', 'in', 'S', 'M', 'Bust', '86', '81-86', '20 1/2', '"86,5"', 'none', '#'),
  fc.string({ maxLength: 12, unit: 'grapheme' }),
)

const text = fc
  .tuple(
    fc.constantFrom(',', ';', '\t'),
    fc.constantFrom('\n', '\r\n'),
    fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 8 }),
  )
  .map(([separator, end, rows]) => rows.map((row) => row.join(separator)).join(end))

const hundredths = fc.integer({ min: 1, max: 30_000 })

describe('a body table of one’s own', () => {
  it('never throws, and every slip stands within the text', () => {
    fc.assert(
      fc.property(text, (written) => {
        const lines = written.split(/\r\n|\n|\r/)
        return readOwnTable(written).slips.every(
          ({ line, column }) => line >= 1 && column >= 1 && column <= (lines[line - 1] ?? '').length + 1,
        )
      }),
      options,
    )
  })

  it('gives back what was written, whatever parts the cells', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(',', ';', '\t'),
        fc.array(hundredths, { minLength: 1, maxLength: 9 }),
        (separator, sizes) => {
          const header = ['measure', 'unit', ...sizes.map((_, index) => `S${index}`)]
          const line = ['Bust', 'cm', ...sizes.map((size) => (size / 100).toFixed(2))]
          const { chart } = readOwnTable([header, line].map((row) => row.join(separator)).join('\n'))
          const spans = chart?.measures[0]?.spans ?? []
          return (
            spans.length === sizes.length && spans.every((ends, index) => ends?.low.mul(100).equals(sizes[index] ?? 0))
          )
        },
      ),
      options,
    )
  })
})
