import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

/** The total of the last row, or null where the reader stops, stitches are left or more are used than there are. */
function last(text: string, terms: 'us' | 'uk' = 'us'): number | null {
  const draft = work(`## A\n${text}`, { terms })
  const row = draft.ledger.rows.at(-1)
  return row?.status === 'worked' && row.left[0] === 0 ? (row.total[0] ?? null) : null
}

const twenty = 'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n'
/** Three shells of five between single crochet, spelt out. */
const shells =
  'Ch 20.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across.\n'
/** Six pairs of two double crochet with a chain between them. */
const vs =
  'Ch 15.\nRow 1: Dc in 4th ch from hook, *(dc, ch 1, dc) in next ch, sk 1 ch; rep from * to last ch, dc in last ch.\n'
const square = 'Ch 4, join.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 2, 3 dc in ring) 3 times, ch 2, join.\n'

describe('one place of a group', () => {
  it.each([
    ['Row 2: Ch 1, 3 sc in center dc of each shell across.', 9],
    ['Row 2: Ch 1, *sc in 3rd dc of next shell, ch 3; rep from * across.', 3],
    ['Row 2: Ch 1, *2 sc in first dc of next 5-dc group, sc in last dc of same group; rep from * across.', 9],
    ['Row 2: Ch 1, *sc in center st of next 5-dc group, ch 3; rep from * across.', 3],
    ['Row 2: Ch 1, sc in center dc of next 4-dc group.', null],
  ])('%s', (row, made) => {
    expect(last(shells + row)).toBe(made)
  })

  it.each([
    ['Row 2: Ch 3 (counts as dc), (dc, ch 1, dc) in ch-1 sp of each V-st across, dc in last dc.', 12],
    ['Row 2: Ch 3 (counts as dc), *3 dc in ch-1 sp of next V-st; rep from * across, dc in last dc.', 17],
    ['Row 2: Ch 3 (counts as dc), *3 dc between the 2 dc of next V-st; rep from * across, dc in last dc.', 17],
    ['Row 2: Ch 3 (counts as dc), 3 dc in ch-2 sp of each V-st across, dc in last dc.', 17],
    ['Row 2: Ch 3 (counts as dc), 3 dc in each wibble across, dc in last dc.', null],
  ])('%s', (row, made) => {
    expect(last(vs + row)).toBe(made)
  })
})

describe('every so manieth place', () => {
  it.each([
    ['Row 2: Dc in every other st across.', 10],
    ['Row 2: Sc in each st. \nRow 3: 1 dc in every 4th st.', 5],
    ['Row 2: Dc in every third st.', 6],
    ['Row 2: Dc in alternate sts across.', 10],
    ['Row 2: Dc in every wibble st across.', null],
  ])('%s', (row, made) => {
    expect(last(twenty + row)).toBe(made)
  })
})

describe('a place by its number', () => {
  it.each([
    ['Row 2: Sl st to 5th st, ch 1, sc in same st and in each st across.', 16],
    ['Row 2: Sc in 2nd st and in each st across.', 19],
    ['Row 2: Ch 3 (counts as dc), dc in 2nd st and in each st across.', 20],
    ['Row 2: Sc in 22nd st.', null],
  ])('%s', (row, made) => {
    expect(last(twenty + row)).toBe(made)
  })
})

describe('stitches skipped and gone back to', () => {
  it.each([
    ['Row 2: *Sk next st, dc in next st, dc in skipped st; rep from * across.', 20],
    ['Row 2: *Miss 1 st, dc in next st, dc in missed st; rep from * across.', 20],
    [
      'Row 2: *Sk 2 sts, tr in next 2 sts, working behind sts just made, tr in each of 2 skipped sts; rep from * across.',
      20,
    ],
    ['Row 2: *Sk next st, dc in next st, dc in each of 2 skipped sts; rep from * across.', null],
  ])('%s', (row, made) => {
    expect(last(twenty + row)).toBe(made)
  })
})

describe('spaces between stitches', () => {
  it.each([
    ['Row 2: Ch 1, sc in first st, *sc between next 2 sts; rep from * across, sc in last st. (20)', 20],
    ['Row 2: Ch 1, sc between each st across.', 19],
    ['Row 2: Ch 1, sc in each sp between sts across.', 19],
    ['Row 2: Ch 1, sc in sp between next 2 wibbles.', null],
  ])('%s', (row, made) => {
    expect(last(twenty + row)).toBe(made)
  })

  it('spaces of a row of groups without chains lie between the groups', () => {
    const granny =
      'Ch 19.\nRow 1: Dc in 4th ch from hook, *sk 2 ch, 3 dc in next ch; rep from * 3 more times, sk 2 ch, dc in last ch.\n'
    expect(last(`${granny}Row 2: Ch 3 (counts as dc), 3 dc in each sp across, dc in last st.`)).toBe(17)
  })
})

describe('the chain that a row begins with', () => {
  it.each([
    [
      'Rnd 2: 3 ch (counts as 1 tr), 1 tr in each of next 2 tr, *5 tr in next 2ch sp, 1 tr in each of next 3 tr; rep from * twice more, 5 tr in last 2-ch sp, ss in 3rd of 3 ch.',
      32,
    ],
    ['Rnd 2: 3 ch (counts as 1 tr), 1 tr in base of 3 ch, 1 tr in each tr to end, ss to top of 3ch.', 13],
    ['Rnd 2: 3 ch (counts as 1 tr), 1 tr in st at base of 3ch, 1 tr in each tr to end, ss to third of 3 ch.', 13],
    ['Rnd 2: 3 ch (counts as 1 tr), miss 1 tr, 1 tr in each tr to end, ss to 3rd ch of 3ch.', 12],
    ['Rnd 2: 3 ch (counts as 1 tr), 1 tr in base of wibble, 1 tr in each tr.', null],
  ])('%s', (row, made) => {
    const first = 'Rnd 1: 3 ch (counts as 1 tr), 2 tr in ring, [2 ch, 3 tr in ring] 3 times, 2 ch, ss to top of 3 ch.\n'
    expect(last(`4 ch, join.\n${first}${row}`, 'uk')).toBe(made)
  })
})

describe('up to a place', () => {
  it.each([
    ['Rnd 2: Ch 1, *sc in each dc to next ch-2 sp, 3 sc in ch-2 sp; rep from * around, join.', 24],
    ['Rnd 2: Ch 1, *sc in each dc to ch-2 sp, 3 sc in ch-2 sp; rep from * 3 more times, join.', 24],
    [
      'Rnd 2: Ch 1, sc in each dc to first corner sp, *3 sc in sp, sc in each dc to next corner; rep from * 2 more times, 3 sc in last corner, join.',
      24,
    ],
    [
      'Rnd 2: Ch 1, *sc in each dc to 1 st before ch-2 sp, 2 sc in next st, 2 sc in ch-2 sp; rep from * around, join.',
      24,
    ],
    [
      'Rnd 2: Ch 1, *sc in each dc to last st before corner sp, 2 sc in next st, 2 sc in corner sp; rep from * around, join.',
      24,
    ],
    ['Rnd 2: Ch 1, sc in each dc to wibble, join.', null],
  ])('%s', (row, made) => {
    expect(last(square + row)).toBe(made)
  })
})

describe('the first place is the first once', () => {
  it.each([
    ['Row 2: Ch 1, *fpsc around first st, sc in next st; rep from * across.', 20],
    ['Row 2: Ch 1, sc in first st, 2 sc in next st, sc in each st across.', 21],
  ])('%s', (row, made) => {
    expect(last(twenty + row)).toBe(made)
  })

  it('a round begun in a corner ends before it', () => {
    const row =
      'Rnd 2: Join B with sl st in any corner, ch 1, *3 sc in corner, sc in next 3 dc; rep from * around, join.'
    expect(last(square + row)).toBe(24)
  })

  it('the first space is not the stitch that the opening chain stands on', () => {
    expect(
      last(
        `${vs}Row 2: Ch 3 (counts as dc), 2 dc in first ch-1 sp, *2 dc in next ch-1 sp; rep from * across, dc in last dc.`,
      ),
    ).toBe(12)
  })
})

describe('what a row goes past, in words of its own', () => {
  it.each([
    ['Row 2: Ch 1, sc in first 5 sts, skip sl st, sc in next 15 sts.', 20],
    ['Row 2: Ch 3 (counts as dc), miss st at base of ch, dc in each st across.', 20],
    ['Row 2: Ch 1, sc in each of 20 sts across, turn.', 20],
    ['Row 2: Ch 1, hdc-blo in first 8 sts, scflo in last 12 sts.', 20],
    ['Row 2: Ch 1, sc in ea st across.', 20],
    ['Row 2: Ch 2, hdc in third loop of each st across.', 20],
    ['Row 2: Ch 1, sc in each st across. Work in rows.', 20],
    ['Row 2: Ch 1, dec 1 sc, sc in each sc to last 2 sc, dec 1 sc.', 18],
    ['Row 2: Ch 1, sc in each st until the last one, 3 sc in last st.', 22],
    ['Row 2: Ch 3 (counts as dc), dc in each st across, ending in last st.', 20],
    ['Row 2: Sc aroud', 20],
    ['Row 2: sc 4, inc, around', 24],
    ['Row 2: Sc across, placing safety eyes between Rows 1 and 2, 5 sts apart.', 20],
    ['Row 2: Fold back. Sc across.', 20],
    ['Row 2: Sc across, placing wibbles between Rows 1 and 2.', null],
    ['Row 2: Ch 1, skip wibble, sc in each st.', null],
  ])('%s', (row, made) => {
    expect(last(twenty + row)).toBe(made)
  })

  it('stitches beside those of a group keep their own', () => {
    const row = 'Row 2: Ch 1, sc in each st across, working 3 sc in center dc of each 5-dc group.'
    expect(last(shells + row)).toBe(25)
  })
})

describe('post stitches by their British names', () => {
  it.each([
    ['*1 rtrf round next st, 1 rtrb round next st; rep from * to end.', 20],
    ['*Raised treble front round next st, raised treble back round next st; rep from * to end.', 20],
    ['*1 fptr round next tr, 1 bptr round next tr; rep from * to end.', 20],
    ['*1 rwibblef round next st; rep from * to end.', null],
  ])('%s', (row, made) => {
    expect(last(`Make 22 ch.\nRow 1: 1 tr in 4th ch from hook, 1 tr in each ch to end.\nRow 2: ${row}`, 'uk')).toBe(
      made,
    )
  })
})
