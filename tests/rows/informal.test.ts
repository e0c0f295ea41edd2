import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

/** The total of the last row; null where the reader stops or stitches are left. */
function last(text: string, terms: 'us' | 'uk' = 'us'): number | null {
  const row = work(`## A\n${text}`, { terms }).ledger.rows.at(-1)
  return row?.status === 'worked' && row.left[0] === 0 ? (row.total[0] ?? null) : null
}

/** Works one round on a spiral of twelve. */
function onTwelve(row: string): number | null {
  return last(`Rnd 1: 12 sc in magic ring.\nRnd 2: ${row}`)
}

describe('how often, in short', () => {
  it.each([
    ['inc x 12', 24],
    ['12x inc', 24],
    ['inc*12', 24],
    ['1sc 1inc x6', 18],
    ['sc, inc x6 (18)', 18],
    ['1 sc, inc (x6)', 18],
    ['< 1 sc, 1 inc (6x) >', 18],
    ['6x (1 sc, inc)', 18],
    ['(sc 1, inc 1) × 6', 18],
    ['(sc 1, dec 1) × 4', 8],
    ['dec 6', 6],
    ['sc 4, dec 4', 8],
    ['sc 6, inc x 6', 18],
    ['increase each stitch', 24],
    ['*1 sc in next sc, 2 sc in next sc* - repeat 6 times', 18],
    ['Single crochet 1, increase 1, and repeat that 6 times.', 18],
    // Not so many stitches, and no stitch at all.
    ['sc, inc x7', null],
    ['dec 7', null],
    ['6x wibble', null],
    ['inc*wibble', null],
  ])('%s', (row, made) => {
    expect(onTwelve(row)).toBe(made)
  })
})

describe('rings', () => {
  it.each([
    ['MR 6', 6],
    ['Rnd 1: MR6', 6],
    ['Rnd 1: Start with a magic ring and crochet 6 single crochets into it.', 6],
    ['Rnd 1: Start 5 sc in a magic ring.', 5],
    ['Rnd 1: Make 6 sc in an adjustable ring', 6],
    ['Rnd 1: 6 sc in a loop.', 6],
    ['Rnd 1: In MR: ch 3 (counts as dc), dc, ch 1, (2 dc, ch 1) 5 times, join.', 12],
    ['Ch 4, join.\nRnd 1: Ch 3 (counts as dc), 2 dc, (ch 2, 3 dc) x 3, ch 2, join. (12)', 12],
    ['Ch 5, join.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, (3 dc, ch 2) 3 times, join.', 12],
    ['Ch 5, join.\nRnd 1: In ring: ch 3 (counts as dc), 11 dc, join.', 12],
    ['Ch 6, sl st in first ch, 14 sc in ring.', 14],
    // A chain that is no ring takes one stitch in each chain.
    ['Ch 4.\nRow 1: Ch 1, 6 sc.', null],
    ['Rnd 1: 6 sc in a wibble.', null],
  ])('%s', (text, made) => {
    expect(last(text)).toBe(made)
  })

  it('the ring may be named after the chain that counts', () => {
    const text = 'Row 1: 4ch (counts as 1tr, 1ch), into a magic ring work 3tr, 1ch, 3tr, 1ch, 1tr. Turn.'
    expect(last(text, 'uk')).toBe(8)
  })
})

describe('a list before a space', () => {
  const mesh = 'Ch 22.\nRow 1: Sc in 2nd ch from hook, *ch 3, sk 3 ch, sc in next ch; rep from * across.\n'
  it.each([
    ['Row 2: *2 sc, picot in next ch-3 sp; rep from * across.', 10],
    ['Row 2: *Sc, 3 dc in next ch-3 sp; rep from * across, sc in last sc.', 21],
    ['Row 2: Sc in each sc across, working 3 sc in ch-3 sp.', 21],
    ['Row 2: *2 sc, wibble in next ch-3 sp; rep from * across.', null],
  ])('%s', (row, made) => {
    expect(last(mesh + row)).toBe(made)
  })
})
