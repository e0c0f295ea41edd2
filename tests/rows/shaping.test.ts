import { describe, expect, it } from 'vitest'
import type { HoleContent } from '../../src/rows/index.ts'
import { totals, work } from './draft.ts'

const panel = '## A\nFoundation: Ch 41.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n'

/** The counts of the rows after the first, size by size. */
function counts(rows: string, bySize?: readonly (string | null)[]) {
  const shaping: HoleContent = { kind: 'text', bySize: bySize ?? [] }
  const sizes = (bySize ?? ['']).map((_, size) => `Size ${size}`)
  const draft = work(`${panel}${rows}`, { sizes, holes: { shaping } })
  return { codes: draft.codes, totals: totals(draft).slice(2) }
}

describe('shaping over several rows', () => {
  it.each([
    ['dec 1 st at each end of every 2nd row twice', [40, 38, 38, 36]],
    ['Dec 1 st at each end of every row once, then of every 3rd row once.', [38, 38, 38, 36]],
    ['inc 1 st at one end of every other row 2 times, then work 1 row even', [40, 41, 41, 42, 42]],
    ['Dec 1 st at beg and end of every 2nd rnd once, then inc 1 st at beg of every rnd twice', [40, 38, 39, 40]],
    ['work 2 rows even, then dec 1 st at each end of every row twice', [40, 40, 38, 36]],
    ['dec at each end of every row 4 sts once, 2 sts twice, 1 st 3 times', [32, 28, 24, 22, 20, 18]],
    ['dec at neck edge of every 2nd row 5 sts once, 1 st twice; work even for 1 row', [40, 35, 35, 34, 34, 33, 33]],
    [
      'work 2 rnds even, increase 20 evenly to 60 sts; work 1 rnd even, increase 15 evenly to 75 sts',
      [40, 40, 60, 60, 75],
    ],
    ['increase 20 evenly to 60 sts; increase 15 evenly to 75 sts', [60, 75]],
    ['work 1 rnd even, inc 8 sts evenly in next rnd', [40, 48]],
    ['work 3 rows even', [40, 40, 40]],
  ])('%s', (text, expected) => {
    const last = expected.length + 1
    const found = counts(`Rows 2–${last}: ${text}`)
    expect(found.totals).toEqual(expected.map((total, index) => `Row ${index + 2}: ${total}`))
    expect(found.codes).toEqual([])
  })

  it.each([
    ['a chain before it and a turn after it', 'Ch 1, {{shaping}}, turn.'],
    ['the phrase alone', '{{shaping}}.'],
  ])('with %s, where sizes differ', (_, words) => {
    const bySize = ['dec 1 st at each end of every 2nd row twice', 'work 4 rows even', null]
    const found = counts(`Rows 2–5: ${words}\nRow 6: Sc in each st across.`, bySize)
    expect(found.codes).toEqual([])
    expect(found.totals).toEqual([
      'Row 2: 40 40 ',
      'Row 3: 38 40 ',
      'Row 4: 38 40 ',
      'Row 5: 36 40 ',
      'Row 6: 36 40 40',
    ])
  })

  it.each([
    ['more decreases than stitches', 'dec 5 sts at each end of every row 8 times', 'too-few-stitches'],
    ['a total that is not there', 'work 1 rnd even, increase 15 evenly to 90 sts', 'too-few-stitches'],
    ['other words after it', 'dec 1 st at each end of every row twice, then bobble', 'row-unread'],
    ['no number of stitches', 'dec at each end of every row 4 once', 'row-unread'],
  ])('not with %s', (_, text, code) => {
    expect(counts(`Rows 2–9: ${text}`).codes).toContain(code)
  })
})

const tall = '## A\nFoundation: Ch 42.\nRow 1: Dc in 4th ch from hook and in each ch across. (40 dc)\n'

describe('shaping with words around it', () => {
  it.each([
    'Rows 2–5: Ch 3 (counts as dc), dec 1 st at each end of every 2nd row twice, turn. (36 dc)',
    'Rows 2–5: Ch 1, turn, dec 1 st at each end of every 2nd row twice. (36 dc)',
    'Rows 2–5: Working in dc, dec 1 st at each end of every 2nd row twice. (36 dc)',
    'Rows 2–5: Dc in each st across, dec 1 st at each end of every 2nd row twice. (36 dc)',
    'Rows 2–5: Dec 1 st at each end of every 2nd row twice. (36 dc) Fasten off.',
    'Next 4 rows: Dec 1 st at each end of every 2nd row twice. (36 dc)',
  ])('%s', (rows) => {
    const draft = work(`${tall}${rows}`)
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.slice(2).map(({ total }) => total[0])).toEqual([40, 38, 38, 36])
  })

  it.each([
    ['the chain that counts is one of them', 'Ch 3 (counts as dc), increase 7 evenly over 40, turn.', 47],
    ['it is none of them', 'Ch 3 (counts as dc), increase 7 evenly over 39, turn.', 47],
    ['half of them are closed', 'Ch 3 (counts as dc), decrease 20 evenly over 40, turn.', 20],
    ['nothing changes', 'Ch 3 (counts as dc), work even over 40, turn.', 40],
  ])('stitches named after an opening chain: %s', (_, row, total) => {
    const draft = work(`${tall}Row 2: ${row}`)
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.at(-1)?.total).toEqual([total])
  })
})

describe('a range and the shaping in it', () => {
  it('may begin with the first shaped row', () => {
    expect(counts('Rows 2–4: Dec 1 st at each end of every 2nd row twice.')).toEqual({
      codes: [],
      totals: ['Row 2: 38', 'Row 3: 38', 'Row 4: 36'],
    })
  })

  it('may go on after it, which is said', () => {
    expect(counts('Rows 2–6: Dec 1 st at each end of every 2nd row twice.\nRow 7: Sc in each st.')).toEqual({
      codes: ['shaping-rows-differ'],
      totals: ['Row 2: 40', 'Row 3: 38', 'Row 4: 38', 'Row 5: 36', 'Row 6: 36', 'Row 7: 36'],
    })
  })

  it('must have room for it, for every size', () => {
    const bySize = ['dec 1 st at each end of every row 3 times', 'dec 1 st at each end of every row twice']
    const draft = work(`${panel}Rows 2 and 3: {{shaping}}.`, {
      sizes: ['S', 'M'],
      holes: { shaping: { kind: 'text', bySize } },
    })
    expect(draft.found.map(({ message, hint, sizes }) => ({ message, hint, sizes }))).toEqual([
      {
        message: 'These are 2 rows, and their shaping takes 3.',
        hint: 'Change the numbers of the rows, or how often they are shaped.',
        sizes: [0],
      },
    ])
  })
})

describe('shaping within a row', () => {
  it.each([
    ['increase 7 evenly over 40', 47],
    ['decrease 7 evenly over 40, turn', 33],
    ['increase 40 evenly to 80 sts', 80],
    ['work even over 40', 40],
    ['work even over 10, decrease 6 evenly over 30', 34],
    ['sc in next 5 sts, (2 sc in next st, sc in next 9 sts) 3 times, 2 sc in next st, sc in next 4 sts', 44],
    ['sc in next 2 sts, (sc2tog, sc in next 6 sts) 4 times, sc2tog, sc in next 4 sts', 35],
  ])('%s', (text, total) => {
    expect(counts(`Row 2: ${text}.`)).toEqual({ codes: [], totals: [`Row 2: ${total}`] })
  })

  it.each([
    ['increase 7 evenly over 41', 'too-few-stitches'],
    ['decrease 21 evenly over 40', 'too-few-stitches'],
    ['work even over 39', 'stitches-left'],
  ])('not %s of 40', (text, code) => {
    expect(counts(`Row 2: ${text}.`).codes).toEqual([code])
  })
})
