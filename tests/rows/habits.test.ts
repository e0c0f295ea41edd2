import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function told(text: string): readonly string[] {
  return work(text).found.map((each) => `${each.code}: ${each.message}`)
}

const hdc = '## A\nCh 22.\nRow 1: Hdc in 3rd ch from hook and in each ch across.'
const ring = '## A\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st around. (12)\n'

describe('how an author writes is settled over the whole pattern', () => {
  it.each([
    ['a chain of two counts in all rows', `${hdc} (21)\nRow 2: Ch 2, 2 hdc in first st, hdc in each st across. (23)`],
    ['or in none', `${hdc} (20)\nRow 2: Ch 2, 2 hdc in first st, hdc in each st across. (21)`],
    [
      'a row that states no count is read as the others are',
      `${hdc}\nRow 2: Ch 2, 2 hdc in first st, hdc in each st across. (23)\nRow 3: Ch 2, 2 hdc in first st, hdc in each st across. (25)`,
    ],
    [
      'the first time is counted in all repeats',
      `${ring}Rnd 3: *Sc, inc; rep from * 6 times. (18)\nRnd 4: *2 sc, inc; rep from * 6 times. (24)`,
    ],
    ['or in none', `${ring}Rnd 3: *Sc, inc; rep from * 5 times. (18)\nRnd 4: *2 sc, inc; rep from * 5 times. (24)`],
    [
      'decreases are counted by their own name only',
      '## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, sc2tog, sc in each st across. (18 sc)\nRow 3: Ch 1, sc2tog, sc in each st across. (17 sc)\nRow 4: Ch 1, sc2tog, sc in each st across. (16 sc)',
    ],
    [
      'a tall chain that counts nowhere',
      '## A\nRnd 1: Ch 3, 12 dc in magic ring, join to first dc. (12 dc)\nRnd 2: Ch 3, 2 dc in each dc around, join to first dc. (24 dc)',
    ],
  ])('%s', (_, text) => {
    expect(told(text)).toEqual([])
  })
})

describe('a row that only comes out another way is worth a word', () => {
  it.each([
    [
      'the opening chain',
      `${hdc} (20)\nRow 2: Ch 2, 2 hdc in first st, hdc in each st across. (21)\nRow 3: Ch 2, 2 hdc in first st, hdc in each st across. (23)`,
      /^unlike-other-rows: Row 3 comes out only if its opening ch 2 counts as a stitch/,
    ],
    [
      'chains that are skipped, where a later row works into their top',
      '## A\nCh 22.\nRow 1: Dc in 4th ch from hook and in each ch across. (19 dc)\nRow 2: Ch 3 (counts as dc), dc in next 18 dc, dc in top of turning ch. (20 dc)',
      /^unlike-other-rows: Row 1 comes out only if the 3 chains skipped/,
    ],
    [
      'a foundation that is one too long',
      '## A\nCh 23.\nRow 1: Dc in 4th ch from hook and in each ch across. (20 dc)\nRow 2: Ch 3 (counts as dc), dc in each dc across. (20 dc)',
      /^unlike-other-rows: Row 1 comes out only if the 3 chains skipped/,
    ],
    [
      'the number of repeats',
      `${ring}Rnd 3: *Sc, inc; rep from * 6 times. (18)\nRnd 4: *2 sc, inc; rep from * 6 times. (24)\nRnd 5: *3 sc, inc; rep from * 5 times. (30)`,
      /^unlike-other-rows: Rnd 5 comes out only if the number of repeats does not count the first time/,
    ],
    [
      'so many in each of so many',
      '## A\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around. (12)\nRnd 3: *2 sc in next 2 sc, 2 sc in next sc; rep from * around. (16)',
      /^unlike-other-rows: Rnd 3 comes out only if the number before a stitch is meant for all/,
    ],
    [
      'one decrease that is not counted',
      '## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across. (20 sc)\nRow 2: Ch 1, sc2tog, sc in each st across. (19 sc)\nRow 3: Ch 1, sc2tog, sc in each st across. (17 sc)',
      /^count-mismatch: Row 3 states 17 sc, but its steps make 18/,
    ],
    [
      'each of next is each, always',
      '## A\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around. (12)\nRnd 3: *2 sc in each of next 2 sc, 2 sc in next sc; rep from * around. (16)',
      /^count-mismatch: Rnd 3 states 16/,
    ],
  ])('%s', (_, text, first) => {
    const found = told(text)
    expect(found[0]).toMatch(first)
  })

  it('a row that is repeated keeps its reading', () => {
    const draft = work(
      `${hdc} (20)\nRow 2: Ch 2, hdc in each st across, 2 hdc in same st. (22)\nRows 3-5: Rep Row 2. (27)`,
    )
    expect(draft.codes).toEqual(['count-mismatch'])
    expect(totals(draft).slice(2)).toEqual(['Row 2: 22', 'Row 3: 24', 'Row 4: 26', 'Row 5: 28'])
  })
})
