import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

/** Labels and totals of the rows that have a label; `–` for a row that was not worked or leaves stitches. */
function made(text: string): string {
  const { rows } = work(`## A\n${text}`).ledger
  return rows
    .filter((row) => row.label !== null)
    .map((row) => (row.status === 'worked' && row.left[0] === 0 ? row.total[0] : '–'))
    .join(' ')
}

const square = 'Ch 6, join.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 2, 3 dc in ring) 3 times, ch 2, join.\n'
const loops = 'Rnd 1: 6 sc in magic ring.\nRnd 2: *Sc in next st, ch 5; rep from * around, join.\n'
const twenty = 'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n'

describe('where a row begins', () => {
  it.each([
    [
      `${square}Rnd 2: Sl st in ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times, join.`,
      '12 24',
    ],
    ['Rnd 1: (Ch 3, 11 dc) in magic ring, join.', '12'],
    ['Ch 4, join.\nRnd 1: (Ch 3, 2 dc) in ring, ch 2, (3 dc, ch 2) 3 times in ring, join.', '12'],
    [`${twenty}Row 2: (Ch 3, dc) in first st, dc in each st across.`, '20 21'],
    // In the middle of a row it is a loop.
    [`${twenty}Row 2: Sc in next 10 sts, (ch 3, dc) in next st, sc in each st across.`, '20 20'],
    [`${twenty}Row 2: (Ch 3, dc) in wibble, dc in each st across.`, '20 –'],
  ])('%s', (text, totals) => {
    expect(made(text)).toBe(totals)
  })
})

describe('loops that slip stitches or a last stitch lead into', () => {
  it.each([
    [
      `${loops}Rnd 3: Sl st in next 2 ch, sc in same lp, *ch 5, sc in next lp; rep from * around, ch 5, join in first sc.`,
      '6 6 6',
    ],
    [
      'Rnd 1: 6 sc in magic ring.\nRnd 2: *Sc in next st, ch 5; rep from * 4 more times, sc in last st, ch 2, dc in first sc to form last loop.\nRnd 3: Ch 1, sc in loop just formed, *ch 7, sc in next loop; rep from * around, ch 3, tr in first sc.\nRnd 4: Ch 1, sc in same loop, *ch 7, sc in next loop; rep from * around, ch 7, join.',
      '6 6 6 6',
    ],
  ])('%s', (text, totals) => {
    expect(made(text)).toBe(totals)
  })
})

describe('markers', () => {
  it.each([
    [
      'Row 2: Ch 1, sc in next 9 sts, 3 sc in next st, pm in center st, sc in each st.\nRow 3: Ch 1, sc in each st to marked st, 3 sc in marked st, move marker to center st, sc in each st.\nRow 4: Ch 1, sc in each st to marker, 3 sc in marked st, sc in each st.',
      '20 22 24 26',
    ],
    [
      'Row 2: Ch 1, sc in next 10 sts, pm, sc in next 10 sts.\nRow 3: Ch 1, sc in each st to 1 st before marker, 2 sc in next st, sl m, 2 sc in next st, sc in each st.\nRow 4: Ch 1, sc in each st to 1 st before m, 2 sc in next st, sm, 2 sc in next st, sc in each st.',
      '20 20 22 24',
    ],
    [
      'Row 2: Ch 1, sc in next 5 sts, 3 sc in next st (mark center st), sc in next 8 sts, 3 sc in next st (mark center st), sc in next 5 sts.\nRow 3: Ch 1, *sc in each st to marked st, 3 sc in marked st (move marker to center st); rep from * once more, sc in each st.',
      '20 24 28',
    ],
    // No marker has been hung.
    ['Row 2: Ch 1, sc in each st to marker, 3 sc in marked st, sc in each st.', '20 –'],
  ])('%s', (rows, totals) => {
    expect(made(twenty + rows)).toBe(totals)
  })
})

describe('blocks side by side', () => {
  const block = 'Ch 6.\nRow 1: Dc in 4th ch from hook and in next 2 ch, turn.\n'
  const more = 'Ch 6, dc in 4th ch from hook and in next 2 ch, '
  it.each([
    [`${block}Row 2: ${more}sl st in ch-3 sp of previous block, ch 3, 3 dc in same sp, turn.`, '4 7'],
    [
      `${block}Row 2: ${more}(sl st, ch 3, 3 dc) in next ch-3 sp, turn.\nRow 3: ${more}*sl st in ch-3 sp of next block, ch 3, 3 dc in same sp; rep from * across, turn.`,
      '4 7 10',
    ],
    [`${block}Row 2: ${more}sl st in ch-5 sp of previous block, turn.`, '4 –'],
  ])('%s', (text, totals) => {
    expect(made(text)).toBe(totals)
  })
})
