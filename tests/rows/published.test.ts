import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

describe('forms of published pages', () => {
  it.each([
    ['the main colour', 'With MC, ch 43.\nRow 1: Sc in 2nd ch from hook and in each ch across. (42)', 'Row 1: 42'],
    [
      'a chain that counts as a space',
      'Ch 22.\nRow 1: Sc in 4th ch from hook (skipped chs count as ch-1 sp), *ch 1, sk next ch, sc in next ch; rep from * across, turn.\nRow 2: Ch 2 (counts as ch-1 sp), *sc in next ch-1 sp, ch 1; rep from * across, ending with sc in last sp, turn.\nRow 3: Rep Row 2.',
      'Row 3: 10',
    ],
    [
      'a repeat up to the last space',
      'Ch 5, sl st in first ch.\nRnd 1: Ch 3 (counts as dc), dc in ring, ch 1, *2 dc in ring, ch 1; rep from * 4 more times, sl st in top of ch-3. (12 dc)\nRnd 2: Ch 3, dc in next dc, *(dc, ch 1, dc) in ch-1 sp, dc in each dc to next ch-1 sp; rep from * around to last ch-1 sp, (dc, ch 1, dc) in last ch-1 sp, sl st in top of ch-3. (24 dc)',
      'Rnd 2: 24',
    ],
    [
      'a space of the opening chain beside others of its name',
      'Ch 26.\nRow 1 (RS): Sc in 2nd ch from hook, *ch 5, sk next 3 chs, sc in next ch; rep from * across, turn. (6 ch-5 sps)\nRow 2: Ch 5 (counts as dc and ch 2), sc in next ch-5 sp, *ch 5, sc in next ch-5 sp; rep from * across, ch 2, dc in last sc, turn. (5 ch-5 sps)\nRow 3: Ch 1, sc in first dc, ch 5, sk ch-2 sp, *sc in next ch-5 sp, ch 5; rep from * across, sc in 3rd ch of beg ch-5, turn. (6 ch-5 sps)',
      'Row 3: 7',
    ],
    [
      'yarn joined where the row begins',
      'Ch 31.\nRow 1: Sc in 2nd ch from hook and in each ch across. (30)\nRow 2: Ch 1, sc in next 10 sts, turn, leaving rem sts unworked. (10)\n### Right\nRow 2: Skip next 7 sts of Row 1, join yarn with sl st in next st, ch 1, sc2tog, sc in each st to end. (12)',
      'Row 2: 12',
    ],
  ])('%s', (_, text, made) => {
    expect(last(`## A\n${text}`)).toBe(made)
  })
})

describe('rows until a measure, given in two systems or for every size', () => {
  const begin =
    '## A\nCh 21 (25).\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, sc in each st across.\nRow 3: Ch 1, sc in each st across.\n\n'
  it.each([
    ['Rep Rows 2 and 3 until piece measures 3 (4) in [7.5 (10) cm].', 8, 10],
    ['Rep Rows 2 and 3 until piece measures 3" (7.5 cm), ending with a WS row.', 8, 8],
    ['Rep Rows 2 and 3 until scarf measures approx 4" [10 cm] from beg.', 10, 10],
    ['Rep Rows 2 and 3 until work from beg measures 4 (4½)" [10 (11.5) cm], ending on a 3rd row.', 10, 11],
  ])('%s', (row, small, large) => {
    const draft = work(begin + row, { sizes: ['S', 'L'] })
    const worked = (size: number): number =>
      draft.ledger.rows.slice(1).filter((each) => each.total[size] !== null).length
    expect(draft.codes).toEqual([])
    expect([worked(0), worked(1)]).toEqual([small, large])
  })
})

describe('more forms of published pages', () => {
  it.each([
    [
      'slip stitches as stitches of the fabric',
      'Ch 21.\nRow 1: Hdc in 3rd ch from hook (skipped 2 chs count as hdc) and in each ch across, turn. (20 hdc)\nRow 2: Ch 2 (counts as hdc), sk first st, *sl st in next st, hdc in next st; rep from * to last st, hdc in last st, turn.\nRow 3: Ch 2, sk first st, hdc in each st across, turn. (20 hdc)',
      'Row 3: 20',
    ],
    [
      'loops around the posts of an earlier round',
      'Rnd 1: 8 dc in magic ring, join.\nRnd 2: *(Sc, hdc, dc, hdc, sc) in next st; rep from * around, join. (8 petals)\nRnd 3: *Ch 3, sc around post of next dc of Rnd 1; rep from * around. (8 ch-3 sps)\nRnd 4: 5 dc in each ch-3 sp around. (40)',
      'Rnd 4: 40',
    ],
    [
      'crossed posts',
      'Ch 12, join.\nRnd 1: Ch 1, dc in each ch around, join. (12 dc)\nRnd 2: Ch 1, *fpdc around each of next 4 dc, dc in next 2 dc; rep from * around, join.\nRnd 3: Ch 1, *sk next 2 fpdc, fptr around each of next 2 fpdc, fptr around each of 2 skipped fpdc, dc in next 2 dc; rep from * around, join. (12)',
      'Rnd 3: 12',
    ],
  ])('%s', (_, text, made) => {
    expect(last(`## A\n${text}`)).toBe(made)
  })
})
