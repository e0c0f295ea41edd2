import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

function last(text: string): number | null {
  const row = work(`## A\n${text}`).ledger.rows.at(-1)
  return row?.status === 'worked' && row.left[0] === 0 ? (row.total[0] ?? null) : null
}

const twenty = 'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: '
const twelve = 'Ch 4, join.\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, join.\nRnd 2: '

describe('stitches that a row begins with, without a chain', () => {
  it.each([
    [twenty, 'Standing sc in first st, sc in each st across.', 20],
    [twenty, 'Chainless starting dc in first st, dc in each remaining st.', 20],
    [twenty, 'Join new color with a standing sc in first st, sc in each st across.', 20],
    [twelve, 'Join B with a standing dc in any st, dc in same st, 2 dc in each of next 11 sts, join.', 24],
    [twelve, 'Standing dc in any st, dc in same st, 2 dc in each st around, join.', 24],
    [twenty, 'Standing wibble in first st, sc in each st across.', null],
  ])('%s%s', (start, row, made) => {
    expect(last(start + row)).toBe(made)
  })
})

describe('words that name the last stitch after each of them', () => {
  it.each([
    ['Sc in each st across, 2 sc in last st.', 21],
    ['Ch 1, 2 sc in first st, sc in each st, 2 sc in last st.', 22],
    ['Sc first 2 sts together, sc across to last 2 sts, sc last 2 sts together.', 18],
    ['Sc in each st across, 2 sc in next st.', null],
  ])('%s', (row, made) => {
    expect(last(twenty + row)).toBe(made)
  })
})
