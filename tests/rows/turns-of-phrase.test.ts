import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

/** The last row's total, and what was found; `unread` where the reader stopped. */
function last(text: string): string {
  const draft = work(`## A\n${text}`)
  const row = draft.ledger.rows.at(-1)
  return [...draft.codes, row?.status === 'worked' ? String(row.total[0]) : row?.status].join(' ')
}

const ring = 'Rnd 1: 12 sc in magic ring, sl st to first sc. (12)\n'

describe('rows that change nothing, so many of them', () => {
  it.each([
    [`${ring}\nSc in each st around for 2 rounds. (12)`, 'Rnd 1: 12, –: 12, –: 12'],
    [`${ring}\nsc around, 2 rounds (12)`, 'Rnd 1: 12, –: 12, –: 12'],
    [`${ring}Rnds 2-3: Sc in each st around for 2 rnds. (12)`, 'Rnd 1: 12, Rnd 2: 12, Rnd 3: 12'],
  ])('%s', (text, rows) => {
    expect(totals(work(`## A\n${text}`)).join(', ')).toBe(rows)
  })
})

describe('the other side of the chain, said with a colon', () => {
  it.each([
    ['Rnd 1: Ch 5, sc in 2nd ch from hook, sc 2, 3 sc in last ch, other side of ch: sc 2, inc (10)', '10'],
    ['Rnd 1: Ch 4, sk 1 ch, inc, sc, 3 sc in last ch. Other side: sc, inc. (9)', '9'],
    ['Rnd 1: Ch 5, from 2nd ch: sc 3, 3 sc in last ch, other side: sc 2, inc (10)', '10'],
    [
      'Rnd 1: Ch 4, 2 sc in 2nd ch from hook, sc, 3 sc in last ch, now along the underside: sc in next ch, and sc in the last (same ch as first). (8)',
      '8',
    ],
    // Without the colon it is no clause.
    [
      'Rnd 1: Ch 5, sc in 2nd ch from hook, sc 2, 3 sc in last ch, other side of wibble sc 2, inc (10)',
      'row-unread unread',
    ],
  ])('%s', (text, made) => {
    expect(last(text)).toBe(made)
  })
})

describe('a round on twelve stitches', () => {
  it.each([
    ['Rnd 2: Sc 3, loop stitch 6, sc 3. (12)', 'special-undefined 12'],
    ['Rnd 2: Loop st in each st around. (12)', 'special-undefined 12'],
    ['Rnd 2: Crab st in each st around. (12)', 'special-undefined 12'],
    ['Rnd 2: Ch 1, working from left to right, reverse sc in each sc around, join. (12)', '12'],
    ['Rnd 2: Ch 1, 2 hdc in top of each sc around, join. (24 hdc)', '24'],
    ['Rnd 2: *Ch 3, sk 2 sc, sl st around back post of next sc; rep from * around. (4 loops)', '0'],
    ['Rnd 2: *Ch 3, sk 2 sc, sc around the front post of next sc; rep from * around. (4 loops)', '4'],
    [
      'Rnd 2: *Ch 3, sk 2, sl st in next st* 4 times. (4 loops)\nRnd 3: In each loop: sl st, ch 2, 3 dc, ch 2, sl st. (4 petals)',
      '12',
    ],
    ['Rnd 2: Wibble st in each st around. (12)', 'row-unread unread'],
  ])('%s', (text, made) => {
    expect(last(ring + text)).toBe(made)
  })

  it('keeps a loop a place, though there is a loop stitch', () => {
    expect(
      last(`${ring}Rnd 2: *Ch 3, sk 1, sc in next st; rep from * around.\nRnd 3: 3 sc in each loop around. (18)`),
    ).toBe('18')
  })
})

describe('rows repeated', () => {
  const rib = 'Ch 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)\n'
  it.each([
    [`${rib}Rows 2-5: Repeat row 1 in sts\nFasten off.`, 'row-unread'],
    [`${rib}Row 2: Ch 1, sc in each st across, turn. (8)\nRows 3–5: repeat row 2\nFasten off.`, '8'],
    [
      `${rib}Body row 2: Ch 1, sc in each st across, turn. (8)\nBody row 3: Ch 1, 2 sc in first st, sc across, turn. (9)\nBody rows 4–5: Rep Body rows 2 and 3.`,
      '10',
    ],
    [`${rib}Rib row: Ch 1, sc in each st across, turn. (8)\nRep rib row 7 times more.`, '8'],
  ])('%s', (text, made) => {
    expect(last(text)).toContain(made)
  })
})

describe('spaces beside stitches', () => {
  const mesh =
    'Ch 12.\nRow 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across. (5 dc, 4 ch-1 sps)\n'
  it.each([
    [
      `${mesh}Row 2: Ch 4 (counts as dc and ch 1), turn, sk first dc and ch-1 sp, dc in next dc, *ch 1, sk ch-1 sp, dc in next dc; rep from * across, working last dc in turning ch. (5 dc)`,
      '5',
    ],
    [
      'Ch 4, join.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 1, 3 dc) 3 times in ring, ch 1, join. (12 dc)\nRnd 2: Sl st to ch-1 sp, ch 3, (dc, ch 1, 2 dc) in same sp, *(2 dc, ch 1, 2 dc) in next ch-1 sp; rep from * around, join. (16 dc)\nRnd 3: Sl st to ch-1 sp, ch 3, (dc, ch 1, 2 dc) in same sp, 2 dc in sp before next group, *(2 dc, ch 1, 2 dc) in next ch-1 sp, 2 dc in sp before next group; rep from * around, join. (24 dc)',
      '24',
    ],
  ])('%s', (text, made) => {
    expect(last(text)).toBe(made)
  })
})

it('takes a word above numbered rows as what they make', () => {
  expect(last('Base:\n\nR1: 6 sc in MR (6)\nR2: inc x 6 (12)')).toBe('12')
})

it('closes two layers, of which one is the foundation', () => {
  const tube =
    'Ch 10.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (9)\nRow 2: Ch 1, sc in each st across, turn. (9)\n'
  expect(
    last(`${tube}Row 3: Ch 1, hold foundation ch behind last row, sl st through both layers across. Fasten off.`),
  ).toBe('9')
})

describe('corner to corner', () => {
  const first = 'Row 1: Ch 6, dc in 4th ch from hook and in next 2 ch. (1 block)\n'
  const grow =
    'Row 2: Ch 6, turn, dc in 4th ch from hook and in next 2 ch, sl st in ch-3 sp of next block, ch 3, 3 dc in same sp. (2 blocks)\n' +
    'Row 3: Ch 6, turn, dc in 4th ch from hook and in next 2 ch, *sl st in ch-3 sp of next block, ch 3, 3 dc in same sp; rep from * across. (3 blocks)\n' +
    'Rows 4–6: Rep Row 3. (6 blocks)\n'
  const shrink =
    'Row 7: Ch 1, turn, sl st in next 3 dc, sl st in ch-3 sp, ch 3, 3 dc in same sp, *sl st in ch-3 sp of next block, ch 3, 3 dc in same sp; rep from * to last block, sl st in ch-3 sp of last block. '

  it('grows by a block a row and shrinks again', () => {
    const draft = work(`## A\n${first}${grow}${shrink}(5 blocks)`)
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.map((row) => row.agrees)).toEqual([true, true, true, null, null, true, true])
  })

  it('does not take any number of blocks', () => {
    expect(work(`## A\n${first}${grow}${shrink}(6 blocks)`).codes).toEqual(['count-unread'])
  })
})

describe('half a group at each edge', () => {
  const granny =
    'Ch 38.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (37)\n' +
    'Row 2: Ch 3 (counts as dc), dc in first st, *sk 2 sts, 3 dc in next st; rep from * to last 3 sts, sk 2 sts, 2 dc in last st, turn. (37)\n' +
    'Row 3: Ch 3, 3 dc in each sp between groups across, dc in top of ch-3, turn. (38)\n' +
    'Row 4: Ch 3, dc in first sp, 3 dc in each sp between groups to last sp, dc in last sp, dc in top of ch-3, turn. (37)\n'

  it('leaves a space before it', () => {
    expect(work(`## A\n${granny}Rows 5–8: Rep Rows 3 and 4. (37)`).codes).toEqual([])
  })
})

it('skips one chain more than the stitch is high, which is no space', () => {
  const vstitch = 'V-st: (dc, ch 1, dc) in same place.\n\nCh 41.\n'
  const rows =
    'Row 1: V-st in 5th ch from hook, *sk 2 ch, V-st in next ch; rep from * to last 3 ch, sk 2 ch, dc in last ch. (12 V-sts)\n' +
    'Row 2: Ch 3, turn, V-st in each ch-1 sp across, dc in top of turning ch. (12 V-sts)'
  expect(work(`## A\n${vstitch}${rows}`).codes).toEqual([])
})

describe('flat rows', () => {
  const dcRow = 'Ch 22.\nRow 1: Dc in 4th ch from hook and in each ch across, turn. (20 dc)\n'
  const rib =
    'Ch 9.\nRow 1: Sc in 2nd ch from hook and in each ch across. (8 sc)\nRows 2-20: Ch 1, turn, sc in BLO of each st across.\n'
  it.each([
    // The stitch missed after the chain is the one that the chain stands on, whether all others are taken at once or one by one.
    [`${dcRow}Row 2: Ch 3, sk 1 dc, *dc in next dc; rep from * to end, turn. (20 dc)`, '20'],
    [`${dcRow}Row 2: Ch 3, sk 1 dc, *dc in next dc; rep from * to end, turn. (18 dc)`, 'count-mismatch 20'],
    // The words say where the row ends.
    [`${dcRow}Row 2: Sl st in first 4 sts, sc in each st to last 4 sts. (12 sc)`, '12'],
    [`${dcRow}Row 2: Ch 1, sc in first 14 sts. STOP and turn, do not work the other sts. (14 sc)`, '14'],
    [`${dcRow}Row 2: Ch 1, sc in first 14 sts. (14 sc)`, 'stitches-left 14'],
    [`${dcRow}Row 2: Ch 1, sc evenly across, inc 4 sts. (24 sc)`, '24'],
    [`${dcRow}Row 2: Ch 1, hdc evenly across, increasing 6 sts, turn. (26 hdc)`, '26'],
    [`${rib}Row 21: Rotate, ch 1, sc in the side of each sc row across. (20 sc)`, '20'],
    [`${rib}Row 21: Turn work 90 degrees to work along the side, ch 1, 1 sc per row. (20 sc)`, '20'],
  ])('%s', (text, made) => {
    expect(last(text)).toBe(made)
  })
})

describe('handbooks', () => {
  const wheel = 'Make 8 ch, join.\nRound 1. 24 tr in the ring.\n'
  it.each([
    [`${wheel}Round 2. 3 ch, miss 1, 1 dc on the next. Repeat all round.`, '12'],
    [`${wheel}Round 2. 3 ch, miss 1, 1 dc on the next; repeat all round.`, '12'],
    [
      'Make 10 ch, join.\nRound 1. 4 ch, * 1 tr in the ring, 1 ch; repeat from * until there are 12 tr in all, unite.',
      '12',
    ],
    [
      'Make 10 ch, join.\nRound 1. 4 ch, 1 tr in ring, * 1 ch, 1 tr in ring; repeat from * until you have 16 tr, counting the 4 ch as one; 1 ch, join.',
      '16',
    ],
    ['Make 64 ch.\nFirst row.—1 tr in the 4th ch, and 1 in each after.', '62'],
    [
      `${wheel}Round 2. 6 ch, miss 2, * 1 tr in next tr, 3 ch, miss 2; repeat from *, join.\nRound 3. Under each ch 3 make 1 dc, 5 tr, 1 dc.`,
      '56',
    ],
    [
      'Make 6 ch, join.\nRound 1. 3 ch, 3 tr, * 2 ch, 4 tr; repeat from * twice, 2 ch, join to the top of the 3 ch.\nRound 2. 1 tr on each tr, 2 tr, 2 ch, 2 tr in every corner.',
      '32',
    ],
    ['Make 31 ch.\n1st row.—1 dc in each of 30, missing the first.\n2nd row.—Like the first row.', '30'],
  ])('%s', (text, made) => {
    const draft = work(`## A\n${text}`, { terms: 'uk' })
    expect([...draft.codes, draft.ledger.rows.at(-1)?.total[0]].join(' ')).toBe(made)
  })

  it('does not repeat for ever where nothing of the kind is made', () => {
    const draft = work('## A\nMake 10 ch, join.\nRound 1. 4 ch, * 1 ch; repeat from * until there are 12 tr, join.', {
      terms: 'uk',
    })
    expect(draft.codes).toEqual(['repeat-goes-nowhere'])
  })
})
