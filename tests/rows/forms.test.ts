import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

/** Works one row on `stitches` single crochet, flat; null when the reader stops. */
function on(stitches: number, row: string): number | null {
  const draft = work(
    `## A\nFoundation: Ch ${stitches + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${row}`,
  )
  const last = draft.ledger.rows.at(-1)
  return last?.status === 'worked' && last.left[0] === 0 ? (last.total[0] ?? null) : null
}

/** Works one round on a joined round of `stitches` double crochet. */
function around(stitches: number, row: string): number | null {
  const draft = work(
    `## A\nCh 4, join.\nRnd 1: Ch 3 (counts as dc), ${stitches - 1} dc in ring, join with sl st in top of ch-3.\nRnd 2: ${row}`,
  )
  const last = draft.ledger.rows.at(-1)
  return last?.status === 'worked' && last.left[0] === 0 ? (last.total[0] ?? null) : null
}

describe('one instruction over the whole row', () => {
  it.each([
    ['Sc in each st across.', 20],
    ['sc in every stitch to end', 20],
    ['Ch 1, sc across, turn.', 20],
    ['Single crochet in each stitch across.', 20],
    ['Work 1 sc into each st.', 20],
    ['sc each st across', 20],
    ['2 sc in each st across', 40],
    ['Ch 1, turn. Sc in same st and in each st across.', 20],
    ['Ch 1, sc in first st and in each rem st.', 20],
    ['Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st.', 22],
    ['Ch 1, inc in first st, sc to last st, inc in last st.', 22],
    ['Sc in each st until 3 sts remain, sc3tog.', 18],
    ['Sc in each st to within 2 sts of end, sc2tog.', 19],
    ['Sc in each st across to last 4 sts, leave rem 4 sts unworked.', null],
  ])('%s', (row, made) => {
    expect(on(20, row)).toBe(made)
  })
})

describe('places', () => {
  it.each([
    ['Sc in next 20 sts.', 20],
    ['Sc in each of next 20 sts.', 20],
    ['Sc 20.', 20],
    ['sc20', 20],
    ['20 sc', 20],
    ['Sc in next st, sc in next 18 sts, sc in last st.', 20],
    ['Sc in first 10 sts, sc in last 10 sts.', 20],
    ['5 sc in next st, sk 19 sts', 5],
    ['Sc in next 10 sts, miss 9, sc in next st', 11],
    ['Skip first st, sc in each st across', 19],
    ['3 sc in next st, sc in same st, sc in next 19 sts', 23],
    ['Sc in next 5 sts, (sc, ch 2, sc) in next st, sc in next 14 sts', 21],
    ['Sc in next 5 sts, [sc, ch 2, sc] in next st, sc in next 14 sts', 21],
    ['Sc in next 5 sts; sc, ch 2, sc all in next st; sc in next 14 sts', 21],
    ['Sc in BLO of each st across', 20],
    ['In back loops only, sc in each st across', 20],
    ['Working in front loop only, sc in each st', 20],
    ['Sc in next 30 sts', null],
    ['Sc in next 19 sts', null],
    ['Sc in next wibble', null],
  ])('%s', (row, made) => {
    expect(on(20, row)).toBe(made)
  })
})

describe('increases and decreases by their names', () => {
  it.each([
    ['inc x 20', 40],
    ['20 inc', 40],
    ['inc in each st across', 40],
    ['(sc, inc) x 10', 30],
    ['*sc, inc* across', 30],
    ['10 dec', 10],
    ['dec x 10', 10],
    ['dec across', 10],
    ['sc2tog across', 10],
    ['sc2tog over next 20 sts', 10],
    ['sc3tog over first 3 sts, sc in next 14 sts, sc3tog over last 3 sts', 16],
    ['sc next 2 sts tog, sc in each st across', 19],
    ['sc2tog, sc in next 16 sts, sc2tog', 18],
    ['Sc2tog twice, sc in next 16 sts', 18],
    ['invdec 10 times', 10],
    ['sc3tog across', null],
    ['11 dec', null],
    ['inc 5 evenly', 25],
    ['Sc across, inc 4 sts evenly spaced.', 24],
    ['dec 6 evenly across row', 14],
    ['Sc across, dec 1 st at each end.', 18],
    ['Inc 1 st at each end of row.', 22],
  ])('%s', (row, made) => {
    expect(on(20, row)).toBe(made)
  })
})

describe('stitches closed as one in one place', () => {
  it.each([
    ['Sc in next 9 sts, dc5tog in next st, sc in next 10 sts', 20],
    ['Sc in next 10 sts, dc3tog in same st, sc in next 10 sts', 21],
    ['Sc in next 10 sts, dc3tog all in same st, sc in next 10 sts', 21],
    ['Sc in next 10 sts, 3 dc worked together in same st, sc in next 10 sts', 21],
    ['Sc in next 9 sts, 3 dc together in next st, sc in next 10 sts', 20],
    ['*Dc3tog in next st, ch 1, sk 1; rep from * across', 10],
    ['Dc3tog in each st across', 20],
    // The stated count tells that the place is only where the legs begin.
    ['Sc2tog in next st, sc in next 18 sts. (19)', 19],
    ['Sc in next 9 sts, (dc3tog, ch 3, dc3tog) in next st, sc in next 10 sts', 21],
    // Over places of their own, as before.
    ['Dc3tog over next 3 sts, sc in next 17 sts', 18],
    ['3 dc worked together over next 3 sts, sc in next 17 sts', 18],
    ['Dc5tog in next st, sc in next 20 sts', null],
  ])('%s', (row, made) => {
    expect(on(20, row)).toBe(made)
  })

  it.each(['(dc3tog, ch 3, dc3tog) in next ch-2 sp', 'dc3tog, ch 3, dc3tog in next ch-2 sp'])('%s', (row) => {
    expect(around(12, `*Sc in next st, ch 2, sk 2; rep from * around.\nRnd 3: *${row}; rep from * around. (8)`)).toBe(8)
  })
})

describe('repeats', () => {
  it.each([
    ['*sc in next 3 sts, 2 sc in next st; rep from * across', 25],
    ['*sc in next 3 sts, 2 sc in next st; rep from * 4 more times', 25],
    ['*sc in next 3 sts, 2 sc in next st; repeat from * four times more', 25],
    // 16.1: strictly one more, but five is what comes out.
    ['*sc in next 3 sts, 2 sc in next st; rep from * 5 times', 25],
    ['*sc in next 3 sts, 2 sc in next st; rep from * 4 times', 25],
    ['*3 sc, inc* x 5', 25],
    ['*3 sc, inc* 5 times', 25],
    ['*3 sc, inc*; rep from * to * 4 more times', 25],
    ['(3 sc, inc) 5 times', 25],
    ['(3 sc, inc) * 5', 25],
    ['[3 sc, inc] x5', 25],
    ['{3 sc, inc} 5x', 25],
    ['< 3 sc, inc > 5', 25],
    ['(3 sc, inc) a total of 5 times', 25],
    ['(3 sc, inc) across', 25],
    ['(3 sc, inc) 4 times, sc in last 4 sts', 24],
    ['(3 sc, inc) to last 4 sts, sc in last 4 sts', 24],
    ['*3 sc, inc; rep from * to last 4 sts, 4 sc', 24],
    ['*3 sc, inc; rep from * to last 3 sts, 3 sc', null],
    ['*sc in next st, (ch 1, sk 1, sc in next st) 2 times; rep from * across', 12],
    ['**Sc in next 2 sts, *ch 1, sk 1; rep from * once more, sc in next st; rep from ** 3 more times', 12],
    ['sc in next st, *ch 1, sk 1, sc in next st; rep from * to last st, sc in last st', 11],
    ['sc in next st, *sc in next 3 sts, ** ch 1, sk 1; rep from * 4 more times, ending last rep at **', 16],
    ['sc, *ch 1, sk 2, sc* 6 times, sc in last st', 8],
    ['sc in next 3 sts, 2 sc in next st, repeat across', 25],
    ['*sc in next 3 sts; rep from * across', null],
    ['sc in next st; rep from * across', null],
  ])('%s', (row, made) => {
    expect(on(20, row)).toBe(made)
  })
})

describe('rounds', () => {
  it.each([
    ['Ch 3, dc in each st around, join.', 12],
    ['Ch 3, dc in same st, 2 dc in each dc around, join with sl st to top of beg ch-3.', 24],
    ['Ch 1, sc in same st as join, sc in each st around, sl st in first sc to join.', 12],
    ['Ch 1, sc in each st around, sl st in first sc.', 12],
    ['Ch 3, 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around, join to 3rd ch of beg ch-3.', 18],
    ['Ch 4 (counts as dc and ch-1), *dc in next dc, ch 1; rep from * around, join in 3rd ch of beg ch-4.', 12],
    ['Ch 1, *sc in next st, ch 3, sk 1; rep from * around, join.', 6],
    ['Sl st in next st, ch 1, sc in same st, sc in each st around, join.', 12],
    ['Join yarn with sl st in any st, ch 1, sc in each st around, join.', 12],
    ['With B, ch 1, sc in each st around, join. Fasten off B.', 12],
    ['Turn, ch 1, sc in each st around, join.', 12],
    ['Ch 3, fpdc around next dc, *dc in next dc, fpdc around next dc; rep from * around, join.', 12],
  ])('%s', (row, made) => {
    expect(around(12, row)).toBe(made)
  })
})

/** Works a first round that opens the piece, after `foundation`. */
function opening(foundation: string, round: string): number | null {
  const draft = work(`## A\n${foundation}\nRnd 1: ${round}`)
  const last = draft.ledger.rows.at(-1)
  return draft.codes.length === 0 ? (last?.total[0] ?? null) : null
}

describe('rings', () => {
  it.each([
    ['', 'Ch 3 (counts as dc), 11 dc in magic ring, join. (12 dc)', 12],
    ['', 'Ch 1, 8 sc in magic ring.', 8],
    ['', 'Ch 1, 8 sc into a magic circle, join.', 8],
    ['', 'In a magic ring, work 6 sc.', 6],
    ['', '6 sc in a magic loop.', 6],
    ['Ch 4, sl st in first ch.', 'Ch 3, 11 dc in ring, join.', 12],
    ['Ch 4, sl st in 4th ch from hook.', 'Ch 3, 11 dc in ring, join.', 12],
    ['Ch 4, join.', '12 dc in ring.', 12],
    // No ring without a join or its name.
    ['', 'Ch 3, 11 dc in ring.', null],
    ['Ch 4.', '12 dc in ring.', null],
  ])('%s %s', (foundation, round, made) => {
    expect(opening(foundation, round)).toBe(made)
  })

  it.each([
    ['Ch 3 (counts as dc), dc in each ch around. (20 dc)', 20],
    ['Ch 3 (counts as dc), dc in next ch and in each ch around. (20 dc)', 20],
    ['Ch 3 (counts as dc), sk first ch, dc in each ch around. (20 dc)', 20],
    ['Ch 3 (does not count), dc in each ch around. (20 dc)', 20],
    ['Ch 1, sc in each ch around. (20)', 20],
    ['Ch 3 (counts as dc), dc in each ch around. (21 dc)', null],
  ])('a joined chain: %s', (round, made) => {
    expect(opening('Ch 20, join to form a ring.', round)).toBe(made)
  })
})

describe('places told by the row below', () => {
  const mesh = (chains: number, skipped: number): string =>
    `Ch ${3 + chains} (counts as dc and ch ${chains}), sk ${skipped} sts, dc in next st, *ch ${chains}, sk ${skipped} sts, dc in next st; rep from * across.`

  it.each([
    [
      `${mesh(2, 2)}\nRow 3: Sc in first dc, *2 sc in next ch-2 sp, sc in next dc; rep from * 4 times more, 2 sc in turning ch sp, sc in 3rd ch of turning ch.`,
      19,
    ],
    [
      `${mesh(2, 2)}\nRow 3: Sc in first dc, *2 sc in next ch-2 sp, sc in next dc; rep from * 4 times more, 2 sc in ch-5 sp, sc in 3rd ch of ch-5.`,
      19,
    ],
    [
      `${mesh(2, 2)}\nRow 3: Sc in first dc, *2 sc in next ch-2 sp, sc in next dc; rep from * across, ending with sc in 3rd ch of beg ch-5.`,
      19,
    ],
    [`${mesh(2, 2)}\nRow 3: 2 sc in next ch-4 sp.`, null],
    [`${mesh(2, 2)}\nRow 3: Sc in each dc, (sc, ch 2, sc) in each ch-2 sp across.`, 19],
    [
      `${mesh(2, 2)}\nRow 3: *Sc in next dc, (sc, ch 2, sc) in each ch-2 sp; rep from * 5 times more, sc in next dc.`,
      19,
    ],
    [
      'Sc in next 9 sts, 3 sc in next st, sc in next 9 sts.\nRow 3: Sc to center st of corner, 3 sc in center st of corner, sc across.',
      23,
    ],
    ['Sc in next 9 sts, 3 sc in next st, sc in next 9 sts.\nRow 3: Sc to corner, 3 sc in corner, sc across.', 23],
    ['3 sc in corner, sc across.', null],
  ])('%s', (row, made) => {
    expect(on(19, row)).toBe(made)
  })

  it.each([
    [
      'Sl st in next 2 sts and in sp between groups, ch 3, 2 dc in same sp, 3 dc in each sp between groups around, join.',
      12,
    ],
    ['Join B in any sp between groups, ch 3, 5 dc in same sp, 6 dc in each sp between 3-dc groups around, join.', 24],
    ['Ch 1, sc in each st around, join.', 12],
  ])('between groups: %s', (row, made) => {
    expect(opening('Ch 4, join.', `Ch 3, 2 dc in ring, (3 dc in ring) 3 times, join.\nRnd 2: ${row}`)).toBe(made)
  })
})

describe('words that make nothing', () => {
  it.each([
    'Sc in each st across, changing to B in last st.',
    'Sc in each st across. Place marker in last st.',
    'Sc in each st across (be careful at the corners). Turn.',
    'With A, sc in each st across, do not turn.',
    'Sc in each st across. Mind the edges as you go. Turn.',
    'RS facing, sc in each st across. Cut yarn.',
    'Sc in next 10 sts, pm, sc in next 10 sts.',
  ])('%s', (row) => {
    expect(on(20, row)).toBe(20)
  })

  it.each(['Frobnicate in each st across.', 'Sc in each st widdershins.', 'Weave the ends.'])('but not “%s”', (row) => {
    expect(on(20, row)).not.toBe(20)
  })
})
