import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

const dcRow = '## A\nCh 22.\nRow 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)\n'

describe('where the last stitches of a repeat go', () => {
  it.each([
    ['Row 2: Ch 3, dc in each st across, working last dc in top of tch. (20 dc)', 20],
    ['Row 2: Ch 3, sk first st, dc in each dc across, last dc in top of tch. (20 dc)', 20],
    [
      'Row 2: Ch 3, dc in next st, *ch 1, sk 1, dc in next st; rep from * across, working last dc in top of turning ch. (11)',
      11,
    ],
    ['Row 2: Ch 3, *dc in next 2 dc, ch 1, sk 1; rep from * across, placing last dc in top of beg ch-3, turn.', null],
    ['Row 2: Ch 3, dc in each dc across to last st, last dc in top of tch. (20 dc)', 20],
    ['Row 2: Ch 3, dc in each dc across, making the last dc in the top of the turning chain. (20)', 20],
  ])('%s', (row, made) => {
    if (made === null) expect(work(dcRow + row).codes).not.toContain('row-unread')
    else expect(last(dcRow + row)).toBe(`Row 2: ${made}`)
  })

  it('does not hide a count that is one too many', () => {
    expect(work(`${dcRow}Row 2: Ch 3, dc in each st across, working last dc in top of tch. (21 dc)`).codes).toEqual([
      'count-mismatch',
    ])
  })
})

describe('words that add nothing before stitches', () => {
  it.each([
    ['Rnd 2: Ch 1, sc in each st around, working 3 sc in each corner ch-2 sp, join. (28 sc)', 28],
    ['Rnd 2: Working in sc, inc in next st, sc in each of next 15 dc, join. (17)', 17],
  ])('%s', (row, made) => {
    const square =
      '## Square\nCh 4, join.\nRnd 1: Ch 3 (counts as dc), 3 dc in ring, ch 2, (4 dc in ring, ch 2) 3 times, join. (16 dc)\n'
    expect(last(square + row)).toBe(`Rnd 2: ${made}`)
  })
})
