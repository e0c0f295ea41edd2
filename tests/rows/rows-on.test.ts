import { describe, expect, it } from 'vitest'
import { findRow } from '../../src/rows/index.ts'
import { counts, totals, work } from './draft.ts'

const twenty =
  'Foundation: Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Sc in each st across.\n'

function last(text: string, count: number) {
  return totals(work(`## A\n${twenty}${text}`)).slice(-count)
}

describe('rows that repeat rows', () => {
  it.each([
    ['Row 3: Rep Row 2.', ['Row 3: 20']],
    ['Row 3: As Row 2.', ['Row 3: 20']],
    ['Row 3: Work as for Row 2.', ['Row 3: 20']],
    ['Row 3: Same as the previous row.', ['Row 3: 20']],
    ['Row 3: Inc, sc across.\nRows 4–7: Rep Rows 2 and 3.', ['Row 4: 21', 'Row 5: 22', 'Row 6: 22', 'Row 7: 23']],
    ['Row 3: Inc, sc across.\nRows 4–8: Rep Rows 2–3.', ['Row 8: 23']],
    ['Row 3: Inc, sc across.\nRep Rows 2 and 3 twice more.', ['–: 22', '–: 23']],
    ['Row 3: Inc, sc across.\nRep last 2 rows 3 more times.', ['–: 23', '–: 24']],
    // 10 rows in 10 cm: two rows are there, three more make 5 cm.
    ['Rep Row 2 until piece measures 5 cm.\nNext row: Inc, sc across.', ['–: 20', '–: 20', '–: 20', 'Next row: 21']],
    ['Work even for 2 rows.\nNext 2 rows: Inc, sc across.', ['–: 20', '–: 20', 'Next row: 21', 'Next row: 22']],
    ['Work even in dc until piece measures 4 cm.', ['–: 20', '–: 20']],
    ['Rows 3–5: Work even.', ['Row 3: 20', 'Row 4: 20', 'Row 5: 20']],
    [
      'Dec 1 st at each end of every 2nd row 2 times, then of every row twice.',
      ['–: 20', '–: 18', '–: 18', '–: 16', '–: 14', '–: 12'],
    ],
    [
      'Rows 3–6: Inc 1 st at each end of every other row 2 times.',
      ['Row 3: 20', 'Row 4: 22', 'Row 5: 22', 'Row 6: 24'],
    ],
  ])('%s', (text, expected) => {
    expect(last(text, expected.length)).toEqual(expected)
  })

  it('by numbers that differ by size', () => {
    const draft = work(`## A\n${twenty}Rep Row 2 until piece measures {{depth}}.`, {
      sizes: ['S', 'M'],
      holes: { depth: { kind: 'length', bySize: [3, 4.4] } },
    })
    expect(totals(draft).slice(3)).toEqual(['–: 20 20', '–:  20'])
  })

  it('by rows that are numbered differently by size', () => {
    const draft = work(
      `## A\n${twenty}Rows 3–{{n}}: Sc in each st across.\nRow {{n + 1}}: Inc, sc across.\nRow {{n + 2}}: Sc across.
Rows {{n + 3}} and {{n + 4}}: Rep Rows {{n + 1}} and {{n + 2}}. (22)`,
      {
        sizes: ['S', 'M'],
        holes: {
          n: counts(3, 5),
          'n + 1': counts(4, 6),
          'n + 2': counts(5, 7),
          'n + 3': counts(6, 8),
          'n + 4': counts(7, 9),
        },
      },
    )
    expect(draft.codes).toEqual([])
    expect(findRow(draft.ledger, 'A', 'Row 7')?.total).toEqual([22, 21])
    expect(findRow(draft.ledger, 'A', 'Row 9')?.total).toEqual([null, 22])
  })

  it('from shaping phrases that read differently by size', () => {
    const draft = work(`## A\n${twenty}\n{{taper}}.`, {
      sizes: ['S', 'M'],
      holes: {
        taper: {
          kind: 'text',
          bySize: ['dec 1 st at each end of every 2nd row 1 times', 'dec 1 st at each end of every row 3 times'],
        },
      },
    })
    expect(totals(draft).slice(3)).toEqual(['–: 20 18', '–: 18 16', '–:  14'])
  })

  it('from shaping phrases within a row', () => {
    const draft = work(`## A\n${twenty}Row 3: {{inc}}.`, {
      sizes: ['S', 'M'],
      holes: {
        inc: { kind: 'text', bySize: ['(sc in next 4 sts, inc) 4 times', 'sc in next 10 sts, inc 2 evenly over 10'] },
      },
    })
    expect(totals(draft).slice(3)).toEqual(['Row 3: 24 22'])
  })
})

describe('rows that come back to stitches left unworked', () => {
  const split = `## Front
Foundation: Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Sc in next 6 sts, turn, leaving rem sts unworked. (6 sc)
Row 3: Sc in each st. (6 sc)
`

  it.each([
    [
      'Row 2: Sk next 8 sts of Row 1, join yarn with sl st in next st, ch 1, sc in same st, sc in each st across. (6 sc)',
    ],
    ['Row 2: Join yarn with sl st in next unworked st, ch 1, sc in same st, sc in each st across. (14 sc)'],
  ])('%s', (row) => {
    expect(work(`${split}\n### Second side\n${row}\nRow 3: Sc in each st.`).codes).toEqual([])
  })

  it.each([
    // Row 2 has been worked into by Row 3 all along; Row 3 has six stitches.
    ['Row 2', 'no-such-place'],
    ['Row 3', 'too-few-stitches'],
  ])('but not where none were left: %s', (from, code) => {
    const row = `Row 2: Sk next 8 sts of ${from}, join yarn in next st, sc across.`
    expect(work(`${split}\n### Second side\n${row}`).codes).toEqual([code])
  })
})

describe('rows numbered differently by size', () => {
  it('are entered by number, and found as one', () => {
    const draft = work(`## A\n${twenty}Rows 3–{{end}}: Sc across.\nRow {{next}}: Inc, sc across. (21)`, {
      sizes: ['S', 'M'],
      holes: { end: { kind: 'number', bySize: [3, 4] }, next: { kind: 'number', bySize: [4, 5] } },
    })
    expect(draft.codes).toEqual([])
    expect(totals(draft).slice(3)).toEqual(['Row 3: 20 20', 'Row 4:  20', 'Row 4: 21 ', 'Row 5:  21'])
    expect(findRow(draft.ledger, 'A', 'Row 4')?.total).toEqual([21, 20])
  })
})

describe('opening chains', () => {
  it.each([
    ['Row 2: Ch 3, dc in next st and in each st across.', 20],
    ['Row 2: Ch 3 (does not count), dc in each st across.', 20],
    ['Row 2: Ch 3 (counts as dc), dc in first st, dc in each st across.', 21],
    ['Row 2: Ch 2, hdc in each st across. (20)', 20],
    ['Row 2: Ch 2, hdc in next st and in each st across. (20)', 20],
    [
      'Row 2: Ch 4 (counts as dc and ch-1), sk 1, dc in next st, *ch 1, sk 1, dc in next st; rep from * to last st, dc in last st.',
      11,
    ],
    // The chain stands on the first stitch, so that `first 2 sts` are that one and the next.
    ['Row 2: Ch 3 (counts as dc), sk first st, dc in next 19.', 20],
    ['Row 2: Ch 3 (counts as dc), sk first 2 sts, dc in next 18.', 19],
    ['Row 2: Ch 3 (does not count), sk first 2 sts, dc in next 18.', 18],
    [
      'Row 2: Ch 4 (counts as dc, ch 1), sk first 3 sts, dc in next 2 sts, *ch 1, sk 2 sts, dc in next st; rep from * across. (8 dc, 6 ch-1 sps)',
      8,
    ],
    ['Row 2: Ch 3, sk 1, sc in next st, *ch 3, sk 1, sc in next st; rep from * across. (10 sc, 10 ch-3 sps)', 10],
    ['Row 2: Ch 1 and turn, sc in each st.', 20],
  ])('%s', (text, made) => {
    const draft = work(`## A\nFoundation: Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n${text}`)
    expect([draft.codes, draft.ledger.rows.at(-1)?.total]).toEqual([[], [made]])
  })

  it.each([
    ['Turning ch-2 counts as a hdc throughout.', 20],
    ['The ch 2 at the beginning of a row does not count as a stitch.', 20],
  ])('by a note: %s', (note, made) => {
    const draft = work(
      `${note}\n\n## A\nFoundation: Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 2, hdc in each st across.`,
    )
    expect([draft.codes, draft.ledger.rows.at(-1)?.total]).toEqual([[], [made]])
  })

  it('at the end of a row belong to the next', () => {
    const draft = work(
      '## A\nCh 22.\nRow 1: Dc in 4th ch from hook and in each ch across, ch 3, turn.\nRow 2: Dc in next st and in each st across, ch 1, turn. (20)\nRow 3: Sc in each st across. (20)',
    )
    expect(draft.codes).toEqual([])
  })
})
