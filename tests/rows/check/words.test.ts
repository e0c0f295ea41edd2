import { describe, expect, it } from 'vitest'
import { work } from '../draft.ts'

const sc = '## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n'
const dc = '## A\nCh 22.\nRow 1: Dc in 4th ch from hook (3 skipped ch count as dc) and in each ch across.\n'
const two = `${sc}Row 2: Sc across.\nRow 3: Sc across.\n`

/** Codes that come from the words alone. */
const codes = new Set(
  'ordinal-ending together-over opening-unlike chain-sum chain-named row-named-twice range-length kind-counted-twice first-row-number'.split(
    ' ',
  ),
)

function told(text: string, sizes?: readonly string[]): readonly string[] {
  return work(text, sizes === undefined ? {} : { sizes }).codes.filter((code) => codes.has(code))
}

describe('numbers that their own words contradict', () => {
  it.each([
    ['ordinal-ending', `${sc}3nd row: Sc across.`],
    ['ordinal-ending', '## A\nCh 23.\nRow 1: Dc in 4rd ch from hook and in each ch across.'],
    ['ordinal-ending', `${sc}2nd to 21th rows: Sc across.`],
    ['chain-sum', `${sc}Row 2: Ch 3 (counts as dc and ch 1), sk 1 sc, dc in next sc, leave rem sts unworked.`],
    ['chain-sum', `${sc}Row 2: Ch 3 (counts as 2 dc), dc in next sc and in each sc across.`],
    ['chain-sum', `${sc}Row 2: Ch 5 (counts as dc), dc in next sc and in each sc across.`],
    [
      'chain-named',
      `${dc}Row 2: Ch 3, dc in next 18 dc, dc in 3rd ch of beg ch-4.\nRow 3: Ch 3, dc in next 18 dc, dc in 3rd ch of turning ch-5.`,
    ],
    [
      'opening-unlike',
      `${sc}Row 2: Ch 3, dc across.\nRow 3: Ch 3, dc across.\nRow 4: Ch 3, dc across.\nRow 5: Ch 2, dc across.`,
    ],
    ['together-over', `${sc}Row 2: Ch 1, sc across to last 3 sts, sc3tog over last 2 sts.`],
    [
      'chain-named',
      '## A\nRnd 1: Ch 3, 11 dc in magic ring, join to top of ch-3.\nRnd 2: Ch 2, hdc in next st and in each st around, sl st to top of ch-3.',
    ],
    ['first-row-number', '## A\n36 fsc.\nRow 3: Sc across.'],
    ['row-named-twice', `${sc}Rows 2 and 2: Sc across.`],
    ['row-named-twice', `${two}Rows 4–7: Rep Rows 2 and 2.`],
    ['range-length', `${sc}Rows 2–6 (6 rows): Sc across.`],
    ['range-length', `${sc}Rnds 2–6: Sc across. (20) [6 rnds]`],
    ['kind-counted-twice', `${sc}Row 2: Ch 3 (counts as dc), dc across. (20 dc, 4 ch-1 sps, 4 ch-1 sps)`],
    ['first-row-number', '## A\nRnd 2: 6 sc in magic ring.\nRnd 3: 2 sc in each st around.'],
  ])('%s: %s', (code, text) => {
    expect(told(text)).toEqual([code])
  })

  it.each<[string, string, (readonly string[])?]>([
    [
      '2nd row, 3rd row, 11th to 13th rows',
      `${sc}2nd row: Sc across.\n3rd row: Sc across.\n4th to 11th rows: Sc across.`,
    ],
    ['three stitches are no ordinal', `${sc}Row 2: Sc in next 3st, inc, sc across.`],
    [
      'a chain and what it counts as',
      `${sc}Row 2: Ch 4 (counts as dc and ch 1), sk 1 sc, dc in next sc, leave rem sts unworked.`,
    ],
    [
      'a low one throughout',
      `${sc}Row 2: Ch 2 (counts as dc), dc across.\nRow 3: Ch 3 (counts as dc and ch 1), leave rem sts unworked.`,
    ],
    [
      'chains skipped beside it',
      '## A\nCh 26.\nRow 1: Dc in 6th ch from hook (counts as dc and ch 1), *ch 1, sk 1 ch, dc in next ch; rep from * across.',
    ],
    ['the count of a row after its chain', `${sc}Row 2: Sc across, ch 3 = 20 sc`],
    [
      'the chain of this round',
      '## A\nRnd 1: Ch 3, 11 dc in magic ring, join to top of ch-3.\nRnd 2: Ch 2, hdc in next st and in each st around, join to top of ch-2.',
    ],
    ['the chain of the row below', `${dc}Row 2: Ch 1, sc in next 19 dc, sc in top of ch-3.`],
    [
      'a chain that the row below has brought',
      `${dc}Row 2: Ch 3, dc in each st across, ch 2, turn.\nRow 3: Hdc in next 18 sts, hdc in top of ch-3.\nRow 4: Sc in next 18 sts, sc in top of ch-2.`,
    ],
    [
      'two rows of another kind',
      `${sc}Row 2: Ch 1, sc across.\nRow 3: Ch 1, sc across.\nRow 4: Ch 3, dc across.\nRow 5: Ch 2, sc across.\nRow 6: Ch 2, sc across.`,
    ],
    [
      'a chain that leads on',
      `${sc}Row 2: Ch 3, dc across.\nRow 3: Ch 3, dc across.\nRow 4: Ch 3, dc across.\nRow 5: Ch 4, sk next st, dc in next st, leave rem sts unworked.`,
    ],
    ['as many as are worked together', `${sc}Row 2: Ch 1, sc2tog over first 2 sts, sc across.`],
    [
      'a space among them',
      `${sc}Row 2: *Sc in next 2 sts, ch 1, sk 1; rep from * across to last 2 sts, sc in last 2 sts.\nRow 3: Sc in next 2 sts, sc3tog over next 2 sc and ch-1 sp, leave rem sts unworked.`,
    ],
    ['rows named once', `${two}Rows 4–7: Rep Rows 2 and 3.\nRows 8 and 9: Sc across.`],
    ['as many rows as times', `${two}Rows 4–9: Rep Rows 2 and 3 three times.\nRows 10–12 (3 rows): Sc across.`],
    ['as many as fit', `${two}Rows 4–8: Rep Rows 2 and 3.`],
    ['a count for each size', `${sc}Row 2: Sc across. (20 sc, 20 sc)`, ['S', 'M']],
    ['a foundation row is the first', '## A\nFoundation row: 20 fsc.\nRow 2: Sc across.'],
    ['a piece that goes on with the last one', `${sc}\n## Edging\nRnd 2: Sc in each st across.`],
  ])('not %s', (_, text, sizes) => {
    expect(told(text, sizes)).toEqual([])
  })
})
