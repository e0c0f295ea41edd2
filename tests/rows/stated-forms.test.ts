import { describe, expect, it } from 'vitest'
import { row, work } from './draft.ts'

const begin = '## Mat\nFoundation: Ch 19.\nRow 1: Sc in 2nd ch from hook and in each ch across'

function first(words: string, sizes: readonly string[] = ['One']) {
  const draft = work(begin + words, { sizes })
  return { ...row(draft, 'Row 1'), codes: draft.codes }
}

describe('where a count stands', () => {
  it.each([
    ['; turn: 18 sc.', { sc: [18] }],
    [', turn—18 sc.', { sc: [18] }],
    [': 18 sc.', { sc: [18] }],
    ['; 18 sc.', { sc: [18] }],
    [', 18 sts.', { total: [18] }],
    [', for a total of 18 sts.', { total: [18] }],
    [' for a total of 18 sc', { sc: [18] }],
    [', which gives you 18 sts.', { total: [18] }],
    [', which gives you 18 sts. (18)', { total: [18] }],
    [', total 18 sts', { total: [18] }],
    [' // 18 sc', { sc: [18] }],
    [' → 18', { total: [18] }],
    ['. 18 sc, turn.', { sc: [18] }],
    ['. 18 sc. Turn.', { sc: [18] }],
    ['. 18 sc\nFasten off.', { sc: [18] }],
    [' (18), turn.', { total: [18] }],
    [' (18). Ch 1, turn.', { total: [18] }],
    [' (18). Change to the other ball.', { total: [18] }],
    [' (18) — pull the end tight!', { total: [18] }],
    [' (18)\nMake the other one in the same way.', { total: [18] }],
    [' (18) [1 row]', { total: [18] }],
    ['\n18 sc', { sc: [18] }],
    ['\n(18 sts)', { total: [18] }],
    ['.\n*18 sts*', { total: [18] }],
    ['. **18 sts.**', { total: [18] }],
    ['. You should have 18 sts at the end of this row.', { total: [18] }],
    ['. There should be 18 sc.', { sc: [18] }],
    ['. At end of Row 1: 18 sts.', { total: [18] }],
    ['. 18 sts at end of Row 1.', { total: [18] }],
    ['. Stitch count: 18', { total: [18] }],
    ['. 18 sts in total.', { total: [18] }],
    [' (18) sts', { total: [18] }],
    ['. (18 sts rem)', { total: [18] }],
    ['. (2 sts dec’d; 18 sts rem)', { total: [18] }],
    ['. 18 sts (1 st increased).', { total: [18] }],
    ['. (18 sc + ch 1)', { sc: [18] }],
    ['. (18 sts, counting ch-1 sps)', { total: [18] }],
    ['. (18 sts, not counting sl sts)', { total: [18] }],
  ])('%s', (words, expected) => {
    const found = first(words)
    expect(found.stated).toEqual(expected)
    expect(found.agrees).toBe(true)
    expect(found.codes).toEqual([])
  })

  it.each(['; turn: 17 sc.', ', turn—19 sc.', '. 17 sc. Turn.', ' (19), turn.', ' (17). Fasten off.', '\n17 sc'])(
    'and is wrong: %s',
    (words) => {
      expect(first(words).codes).toEqual(['count-mismatch'])
    },
  )

  it.each([
    ['(1 st increased)', null],
    ['(RS)', null],
    ['(worked loosely)', null],
  ])('is none: %s', (words, stated) => {
    expect(first(` ${words}`)).toMatchObject({ stated, status: 'worked', codes: [] })
  })

  it.each([
    'Ch 1, sc in next 9 sts, 9 sc.',
    'Sc in next 15 sts, 3 sc, turn.',
    'Ch 1. 18 sc. Turn.',
    'Ch 1. 18 sc, turn.',
    '(Sc in next 3 sts, sc) 4 times, sc in last 2 sts.',
  ])('steps that sound like one are worked: %s', (steps) => {
    const draft = work(`${begin}.\nRow 2: ${steps}`)
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 2')).toMatchObject({ stated: null, total: [18], left: [0] })
  })

  it('in a paragraph of its own belongs to the row above', () => {
    const draft = work(`${begin}.\n\nYou should have 18 sts.\n\nRow 2: Sc across.\n\n(17 sts)`)
    expect(row(draft, 'Row 1')).toMatchObject({ stated: { total: [18] }, agrees: true })
    expect(row(draft, 'Row 2')).toMatchObject({ stated: { total: [17] }, agrees: false })
  })

  it.each([
    ['Rnd 1 (6 sc): 6 sc in magic ring.', { sc: [6] }],
    ['Rnd 1 (6): 6 sc in magic ring.', { total: [6] }],
    ['Rnd 1 (RS): 6 sc in magic ring.', null],
  ])('in the label: %s', (text, expected) => {
    expect(work(`## Ball\n${text}`).ledger.rows.at(-1)?.stated).toEqual(expected)
  })
})

describe('counts of several sizes', () => {
  it.each([
    '. 18 (18, 18) sc.',
    '. (18, 18, 18) Fasten off.',
    '. (18 sc, 18 sc, 18 sc)',
    '. (18) (18) (18)',
    '. 18, 18, 18 sc.',
    ' [18: 18: 18 sc]',
    ' (18, 18, 18).',
    '. {18, 18, 18}',
    '. (S: 18, M: 18, L: 18)',
    '. S: 18, M: 18, L: 18 sc.',
  ])('%s', (words) => {
    const found = first(words, ['S', 'M', 'L'])
    expect(Object.values(found.stated ?? {})).toEqual([[18, 18, 18]])
    expect([found.agrees, found.codes]).toEqual([true, []])
  })

  it.each(['. 18 (19, 18) sc.', '. (18) (19) (18)', '. (S: 18, M: 19, L: 18)'])('and one is wrong: %s', (words) => {
    const draft = work(begin + words, { sizes: ['S', 'M', 'L'] })
    expect(draft.found.map(({ code, sizes }) => [code, sizes])).toEqual([['count-mismatch', [1]]])
  })
})

describe('counts of a range', () => {
  const ball = '## Ball\nRnd 1: 6 sc in magic ring.\nRnd 2: Inc around.\n'

  it.each(['(13)(14)(15)', '(13) (14) (15)', '(13, 14, 15)', '(13, 14, 15 sts)'])(
    'may be one for each row: %s',
    (counts) => {
      const draft = work(`${ball}Rnds 3–5: Inc, sc around. ${counts}`)
      expect(draft.codes).toEqual([])
      expect(draft.ledger.rows.slice(-3).map((each) => [each.stated, each.agrees])).toEqual([
        [{ total: [13] }, true],
        [{ total: [14] }, true],
        [{ total: [15] }, true],
      ])
    },
  )

  it('and one of them wrong', () => {
    const draft = work(`${ball}Rnds 3–5: Inc, sc around. (13)(15)(15)`)
    expect(draft.ledger.rows.slice(-3).map((each) => each.agrees)).toEqual([true, false, true])
  })

  it('is shown for the rows before the last where it holds there too', () => {
    const same = work(`${ball}Rnds 3–5: Sc around. (12)`)
    expect(same.ledger.rows.slice(-3).map((each) => [each.stated, each.agrees])).toEqual([
      [{ total: [12] }, true],
      [{ total: [12] }, true],
      [{ total: [12] }, true],
    ])
    const wrong = work(`${ball}Rnds 3–5: Sc around. (13)`)
    expect(wrong.ledger.rows.slice(-3).map((each) => [each.stated, each.agrees])).toEqual([
      [null, null],
      [null, null],
      [{ total: [13] }, false],
    ])
  })
})
