import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

describe('the end of a round', () => {
  it.each([
    [
      'petals that end on the first stitch',
      '12 sc in magic ring, join.\nRnd 2: *Ch 4, 2 tr in same st, ch 4, sl st in same st, sl st in next st; rep from * 11 more times.',
      24,
    ],
    [
      'loops that end on the first stitch',
      '10 sc in magic ring, join.\nRnd 2: *Ch 3, skip 1, sl st in next st; rep from * 4 more times.',
      0,
    ],
  ])('%s', (_, rounds, made) => {
    expect(last(`## Flower\nRnd 1: ${rounds}`)).toBe(`Rnd 2: ${made}`)
  })

  it('is one time round, not two', () => {
    const draft = work(
      '## Flower\nRnd 1: 10 sc in magic ring, join.\nRnd 2: *Ch 3, skip 1, sl st in next st; rep from * 6 more times.',
    )
    expect(draft.codes).toEqual(['repeat-does-not-come-out'])
  })
})

describe('flat rows out of a ring', () => {
  it.each([
    [
      'Row 1: Ch 5 (counts as dc and ch-2), 3 dc in ring, ch 2, 3 dc in ring, ch 2, dc in ring, turn. (8 dc)\nRow 2: Ch 5, 3 dc in first ch-2 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in ch-5 sp, ch 2, dc in 3rd ch of ch-5, turn. (14 dc)',
      14,
    ],
    [
      'Row 1: Ch 4 (counts as dc and ch-1), 3 dc in ring, ch 2, 3 dc in ring, ch 1, dc in ring, turn. (8 dc)\nRow 2: Ch 4, 3 dc in first ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in last ch-1 sp, ch 1, dc in 3rd ch of ch-4, turn. (14 dc)',
      14,
    ],
  ])('%s', (rows, made) => {
    expect(last(`## Shawl\nCh 6, join with sl st to form ring.\n${rows}`)).toBe(`Row 2: ${made}`)
  })
})
