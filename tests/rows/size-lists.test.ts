import { describe, expect, it } from 'vitest'
import { row, work } from './draft.ts'

const sizes = ['S', 'M', 'L']
const flat = 'Row 1: Sc in 2nd ch from hook and in each ch across. (65, 71, 77)'

describe('a number for each size', () => {
  it.each([
    'Ch 66 (72, 78).',
    'Ch 66(72,78).',
    'Ch 66 (72) 78.',
    'Ch 66 [72:78].',
    'Ch 66 {72, 78}.',
    'Ch 66-72-78.',
    'Ch 66/72/78.',
    'Ch 66 | 72 | 78.',
    'Ch (66, 72, 78).',
    'Ch (66, 72, 78 sts).',
    'Ch (66) (72) (78).',
    'Ch 66, 72, 78.',
    'Ch 66, 72 and 78 sts.',
    'Ch S (M) L – 66 (72) 78.',
    'Ch S: 66, M: 72, L: 78.',
    'Ch L: 78, M: 72, S: 66.',
    'Ch S-66, M-72, L-78.',
    'Ch 66 for S, 72 for M and 78 for L.',
    'Ch 66 (S), 72 (M), 78 (L).',
  ])('%s', (beginning) => {
    const draft = work(`## A\n${beginning}\n${flat}`, { sizes })
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 1').agrees).toBe(true)
  })

  it('as ranges of rows', () => {
    const draft = work(`## A\nCh 21.\nRows 1–3 (1–4, 1–5): Sc in each st across.`, { sizes })
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.slice(1).map(({ total }) => total)).toEqual([
      [21, 21, 21],
      [21, 21, 21],
      [21, 21, 21],
      [null, 21, 21],
      [null, null, 21],
    ])
  })

  it.each([
    ['ch 3, 2 sc in next st, 3 sc in next st', ['S', 'M', 'L']],
    ['ch 1, 20 sc, turn', ['S', 'M']],
  ])('but not stitches after a chain: %s', (steps, names) => {
    expect(work(`## A\nCh 21.\nRow 1: Sc in each ch.\nRow 2: ${steps}.`, { sizes: names }).codes).not.toContain(
      'size-list-length',
    )
  })
})
