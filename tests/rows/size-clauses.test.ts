import { describe, expect, it } from 'vitest'
import { row, totals, work } from './draft.ts'

const sizes = ['S', 'M', 'L']
const start = '## A\nCh 41 (45, 49).\nRow 1: Sc in 2nd ch from hook and in each ch across. (40, 44, 48)\n'
const inc = 'Ch 1, 2 sc in first st, sc to last st, 2 sc in last st.'
const after = '\nRow 3: Sc in each st across. (40, 46, 50)'

describe('a row for some sizes', () => {
  it.each([
    'Row 2 (M and L only):',
    'Row 2 (M, L only):',
    'Row 2 (M, L):',
    'Row 2 [M/L only]:',
    'Row 2 (Sizes M and L only):',
    'Row 2, sizes M and L:',
    'Row 2 for sizes M and L:',
    'Row 2 – M and L only:',
    'Row 2: (M and L only)',
    'Row 2: Sizes M and L only:',
    'Row 2: For sizes M and L only,',
    '**Row 2 (M and L only):**',
    'Sizes M and L only: Row 2:',
    'For sizes M (L) only: Row 2:',
    'M and L only: Row 2:',
    'Medium and Large only: Row 2:',
    'Sizes – (M, L) only: Row 2:',
    'Sizes M–L: Row 2:',
    'Sizes M and up: Row 2:',
    'All sizes except S: Row 2:',
    '2nd and 3rd sizes only: Row 2:',
    'Two largest sizes only: Row 2:',
    'Sizes M and L only:\nRow 2:',
    '**Sizes M and L only**\nRow 2:',
    '*For M and L:*\n\nRow 2:',
  ])('%s', (label) => {
    const draft = work(`${start}${label} ${inc}${after}`, { sizes })
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 2').total).toEqual([null, 46, 50])
  })

  it.each(['(46, 50)', '46 (50) sc', '(46/50)'])('may have a list for these alone: %s', (count) => {
    const draft = work(`${start}Row 2 (M and L only): ${inc} ${count}${after}`, { sizes })
    expect([draft.codes, row(draft, 'Row 2').agrees]).toEqual([[], true])
  })

  it.each(['Row 2 (XXL only):', 'Row 2, sizes XL and XXL only:', 'Larger sizes only: Row 2:'])(
    'is not worked for all where they are not known: %s',
    (label) => {
      expect(work(`${start}${label} ${inc}`, { sizes }).codes).toEqual(['row-unread'])
    },
  )

  it.each(['Row 2 (RS only):', 'Row 2 (4 sts):', 'Row 2 (MC):'])('is none by other words: %s', (label) => {
    expect(row(work(`${start}${label} Sc in each st.`, { sizes }), 'Row 2').total).toEqual([40, 44, 48])
  })
})

describe('sizes named above rows', () => {
  const further = 'Row 3: Sc in each st. (46, 50)'

  it.each([
    `Sizes M and L only:\nRow 2: ${inc} (46, 50)\n${further}\nAll sizes:\nRow 4: Sc across.`,
    `**Sizes M and L only**\n\nRow 2: ${inc} (46, 50)\n\n${further}\n\n**All sizes**\n\nRow 4: Sc across.`,
    `**Sizes M and L only**\n\nRow 2: ${inc} (46, 50)\n\n${further}\n\nAll sizes: Row 4: Sc across.`,
    // What a row states shows that it is still for these.
    `Sizes M and L only:\nRow 2: ${inc} (46, 50)\n${further}\nRow 4: Sc across. (40, 46, 50)`,
  ])('hold until all sizes go on: %s', (rows) => {
    const draft = work(start + rows, { sizes })
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 4').total).toEqual([40, 46, 50])
  })

  it('hold for one row where nothing tells', () => {
    const draft = work(`${start}Size L only:\nRow 2: ${inc}\nRow 3: Sc across.`, { sizes })
    expect(totals(draft).slice(2)).toEqual(['Row 2:   50', 'Row 3: 40 44 50'])
  })
})

describe('words for each size', () => {
  it.each([
    ['Size S: Ch 41.\nSize M: Ch 45.\nSize L: Ch 49.'],
    ['S: Ch 41. M: Ch 45. L: Ch 49.'],
    ['Sizes S: ch 41. Sizes M, L: ch 45 (49).'],
    ['For size S, ch 41; for size M, ch 45; for size L, ch 49.'],
    ['- Size S: Ch 41.\n- Size M: Ch 45.\n- Size L: Ch 49.'],
  ])('a foundation: %s', (beginning) => {
    const draft = work(`## A\n${beginning}\nRow 1: Sc in 2nd ch from hook and in each ch. (40, 44, 48)`, { sizes })
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 1').agrees).toBe(true)
  })

  it.each([
    [`Row 2: Size S: Sc in each st. Sizes M and L: ${inc}`],
    [`Row 2:\nSize S: Sc in each st. (40)\nSizes M and L: ${inc} (46, 50)`],
  ])('a row: %s', (text) => {
    const draft = work(`${start}${text}${after}`, { sizes })
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 2').total).toEqual([40, 46, 50])
  })

  it.each([
    [
      'each on a line of its own, the first beside the label',
      `Row 2: Size S: Sc in each st.;\nSize M: ${inc};\nSize L: ${inc}`,
    ],
    [
      'with a count for all behind the last',
      `Row 2: Size S: Sc in each st;\nSize M: ${inc}\nSize L: ${inc} (40, 46, 50)`,
    ],
  ])('%s', (_, text) => {
    const draft = work(`${start}${text}${after}`, { sizes })
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 2').total).toEqual([40, 46, 50])
    expect(row(draft, 'Row 2').stated).toEqual(text.includes('(40') ? { total: [40, 46, 50] } : null)
  })

  it('and a count behind the last that is its own', () => {
    const draft = work(`${start}Row 2: Sizes S and M: Sc in each st.\nSize L: ${inc} (50)`, { sizes })
    expect([draft.codes, row(draft, 'Row 2').stated]).toEqual([[], { total: [null, null, 50] }])
  })

  it('a range that is shaped by size', () => {
    const rows =
      'Rows 2–5: Size S: dec 1 st at each end of every 4th row once;\nSize M: dec 1 st at each end of every 2nd row twice;\nSize L: work 4 rows even. (38, 40, 48)'
    const draft = work(start + rows, { sizes })
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.slice(2).map(({ total, agrees }) => [...total, agrees])).toEqual([
      [40, 44, 48, true],
      [40, 42, 48, true],
      [40, 42, 48, true],
      [38, 40, 48, true],
    ])
  })

  it('rows that differ in number', () => {
    const draft = work(
      `${start}For Small: Work 1 row even.\nFor Medium: Work 2 rows even.\nFor Large: Work 3 rows even.`,
      {
        sizes,
      },
    )
    expect(totals(draft).slice(2)).toEqual(['–: 40 44 48', '–:  44 48', '–:   48'])
  })

  it('may be talk for some', () => {
    const draft = work(`${start}Size S: Go on to Row 3.\nSizes M and L only:\nRow 2: ${inc}\nAll sizes:${after}`, {
      sizes,
    })
    expect(draft.codes).toEqual([])
  })
})
