import { describe, expect, it } from 'vitest'
import { chartRows, cutToStitches, namesOfRows, rowsAsked } from '../../src/drawing/chart/select.ts'
import { rowsOf } from './laid.ts'

const mat = [
  'Foundation: Ch 13.',
  'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (12 sc)',
  'Rows 2–5: Ch 1, sc in each st across, turn.',
  'Edging row 1: Ch 1, sc in each st across, turn.',
  'Edging row 2: Ch 1, sc in each st across.',
].join('\n')

const { ledger } = rowsOf(mat)
const all = [...ledger.rows.keys()]

/** Names of the rows that are chosen. */
function chosen(text: string): string | null {
  const entries = rowsAsked(ledger, all, text)
  return entries === null ? null : namesOfRows(chartRows(ledger, entries, 0))
}

describe('rows that a chart is asked for', () => {
  it.each([
    ['1–3', 'Rows 1–3'],
    ['2-4', 'Rows 2–4'],
    ['Rows 2 — 3', 'Rows 2–3'],
    ['row 3', 'Row 3'],
    ['Rnds 1–2', 'Rows 1–2'],
    ['1, 3, 4', 'Row 1 and Rows 3–4'],
    ['4–9', 'Rows 4–5'],
    ['Edging row 1', 'Edging row 1'],
    ['5, Edging rows 1–2', 'Row 5 and Edging rows 1–2'],
    ['1 and 2', 'Rows 1–2'],
    ['6', null],
    ['Border 1', null],
    ['all of them', null],
    ['', null],
  ])('“%s”: %s', (text, names) => {
    expect(chosen(text)).toBe(names)
  })

  it('are numbered in the chart by their number, those of another name by its letter too', () => {
    const rows = chartRows(ledger, rowsAsked(ledger, all, '5, Edging rows 1–2') ?? [], 0)
    expect(rows.map(({ label }) => label)).toEqual(['5', 'E1', 'E2'])
  })
})

describe('stitches that a chart is cut to', () => {
  const shells = [
    'Foundation: Ch 20.',
    'Row 1 (RS): Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn.',
    'Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, 5 dc in next sc; rep from * to last sc, sk 2 dc, sc in next dc, sk 2 dc, 3 dc in last sc, turn.',
  ].join('\n')
  const { ledger: worked, rows } = rowsOf(shells)
  const sizes = (from: number, to: number): readonly number[] | null =>
    cutToStitches(rows, worked.kinds, from, to)?.map(({ places }) => places?.size ?? -1) ?? null

  it.each([
    // The opening chain belongs to the first stitch; on seven stitches lie 3 dc, sc and a shell.
    [1, 7, [8, 9]],
    [2, 6, [5, 1]],
    [1, 99, [20, 19]],
    [30, 40, null],
  ])('from %i to %i', (from, to, expected) => {
    expect(sizes(from, to)).toEqual(expected)
  })
})
