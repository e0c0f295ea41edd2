import { describe, expect, it } from 'vitest'
import type { LedgerRow } from '../../src/rows/index.ts'
import { work } from './draft.ts'

const specials = '## Special stitches\n- **Shell:** 5 dc in same st.\n- **Puff:** loops drawn up; counts as 1 st.\n'
const start =
  '## A\nFoundation: Ch 61.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across, turn.'

function worked(row: string, after: string): readonly Pick<LedgerRow, 'total' | 'counts' | 'left' | 'status'>[] {
  const draft = work(`${specials}${start}\nRow 3: Ch 1, ${row}, turn.\nRow 4: Ch 1, ${after}, turn.`)
  return draft.ledger.rows.map(({ total, counts, left, status }) => ({ total, counts, left, status }))
}

describe('a repeat over many like places makes what its passes written out make', () => {
  it.each([
    ['stitches side by side', 'sc in next st, dc in next st', 30, 'sc in each dc across'],
    ['skipped stitches and spaces', 'dc in next st, ch 1, sk 1 st', 30, 'sc in each st and ch-1 sp across'],
    ['groups in one place', 'sk 1 st, (dc, ch 2, dc) in next st, sk 1 st', 20, '3 dc in each ch-2 sp across'],
    [
      'special stitches, found again by name',
      'sk 2 sts, shell in next st, sk 2 sts, sc in next st',
      10,
      'puff in each shell across',
    ],
    ['special stitches side by side', 'shell in next st, sk 2 sts', 20, 'puff in each shell across'],
    ['special stitches that are one stitch', 'puff in next st, ch 1, sk 1 st', 30, 'sc in each puff across'],
    ['stitches worked together', 'sc2tog, sc in next st', 20, 'sc in each st across'],
    ['the place used last', 'sc in next st, ch 2, dc in same st, sk 1 st', 30, 'sc in each ch-2 sp across'],
    ['groups in brackets', '[sc in next st, ch 1], hdc in next 2 sts', 20, 'sc in each hdc across'],
  ])('%s', (_, body, passes, after) => {
    const out = Array.from({ length: passes }, () => body).join(', ')
    expect(worked(`*${body}; rep from * across`, after)).toEqual(worked(out, after))
    expect(worked(`*${body}; rep from * ${passes - 1} more times`, after)).toEqual(worked(out, after))
  })

  it.each([
    [
      'to the last stitches',
      '*dc in next st, ch 1, sk 1 st; rep from * to last 4 sts, sc in last 4 sts',
      28,
      'sc in next 4 sts',
    ],
    [
      'given back to the words after it',
      '*dc in next st, ch 1, sk 1 st; rep from * across, sc in next 2 sts',
      29,
      'sc in next 2 sts',
    ],
  ])('%s', (_, repeated, passes, rest) => {
    const out = [...Array.from({ length: passes }, () => 'dc in next st, ch 1, sk 1 st'), rest].join(', ')
    const stated = `(${passes + (rest.includes('4') ? 4 : 2)} sts)`
    const draft = (row: string) => work(`${start}\nRow 3: Ch 1, ${row}, turn. ${stated}`)
    expect(draft(repeated).codes).toEqual(draft(out).codes)
    expect(draft(repeated).ledger.rows.at(-1)?.counts).toEqual(draft(out).ledger.rows.at(-1)?.counts)
  })

  it('looks again where the places ahead are not like those before', () => {
    const below = 'Ch 1, (sc in next st, ch 1, sk 1 st) 10 times, sc in next 40 sts, turn.'
    const draft = work(`${start}\nRow 3: ${below}\nRow 4: Ch 1, *sc in next 3 sts; rep from * across, turn.`)
    const row = draft.ledger.rows.at(-1)
    expect([row?.total, row?.left]).toEqual([[48], [2]])
  })
})
