import { describe, expect, it } from 'vitest'
import { counts, row, work } from './draft.ts'

function stated(words: string, sizes: readonly string[] = ['One']) {
  const draft = work(`## A\nFoundation: Ch 19.\nRow 1: Sc in 2nd ch from hook and in each ch across${words}`, { sizes })
  return { ...row(draft, 'Row 1'), codes: draft.codes }
}

describe('stated counts', () => {
  it.each([
    ['. (18)', { total: [18] }],
    ['. (18 sts)', { total: [18] }],
    ['. (18 sc)', { sc: [18] }],
    ['. [18]', { total: [18] }],
    ['. {18}', { total: [18] }],
    ['. <18 sts>', { total: [18] }],
    [' (18)', { total: [18] }],
    [' = 18', { total: [18] }],
    [' = (18)', { total: [18] }],
    ['. = (18 sc)', { sc: [18] }],
    ['.\\\n(18 sc)', { sc: [18] }],
    [' = 18\\', { total: [18] }],
    [' => 18 st', { total: [18] }],
    [' - 18 sc.', { sc: [18] }],
    [' – 18 sc', { sc: [18] }],
    ['. 18 sc.', { sc: [18] }],
    ['. 18 sts', { total: [18] }],
    ['. You will have 18 sts.', { total: [18] }],
    ['. Total of 18 sts.', { total: [18] }],
    [', turn. **(18 sc)**', { sc: [18] }],
    [', turn. (18 sc) Fasten off.', { sc: [18] }],
    ['. (18 sts total)', { total: [18] }],
    ['. (18 single crochet)', { sc: [18] }],
  ])('%s', (words, expected) => {
    const found = stated(words)
    expect(found.stated).toEqual(expected)
    expect(found.agrees).toBe(true)
    expect(found.codes).toEqual([])
  })

  it.each(['. (19)', '. (17 sc)', ' = 20', '. 19 sc.', '. (18 dc)'])('that are wrong: %s', (words) => {
    const found = stated(words)
    expect(found.agrees).toBe(false)
    expect(found.codes).toEqual(['count-mismatch'])
  })

  it.each(['.', ', turn.', ' (RS).'])('that are not there: “%s”', (words) => {
    const found = stated(words)
    expect([found.stated, found.agrees]).toEqual([null, null])
  })

  it('by kind, spaces among them', () => {
    const draft = work(
      '## A\nCh 21.\nRow 1: Sc in each ch.\nRow 2: Sc in next st, *ch 2, sk 1, sc in next st; rep from * across. (11 sc, 10 ch-2 sps)',
    )
    expect(row(draft, 'Row 2')).toMatchObject({ stated: { sc: [11], 'ch-2 sp': [10] }, agrees: true, total: [11] })
  })

  it('picots spelt out, by their name', () => {
    const text =
      '## A\nCh 21.\nRow 1: Sc in each ch.\nRow 2: *Sc in next 3 sts, ch 3, sl st in 3rd ch from hook; rep from * across.'
    expect(work(`${text} (21 sc, 7 picots)`).codes).toEqual([])
    expect(work(`${text} (21 sc, 8 picots)`).codes).toEqual(['count-mismatch'])
    expect(row(work(text), 'Row 2').counts).toEqual({ sc: [21], picot: [7] })
  })

  it('of an unknown kind are left unchecked, and the others are not', () => {
    const text = '## A\nCh 21.\nRow 1: Sc in each ch.'
    expect(work(`${text} (21 sc, 7 wisps)`).found.map((each) => [each.code, each.severity])).toEqual([
      ['count-unread', 'warning'],
    ])
    expect(work(`${text} (20 sc, 7 wisps)`).codes).toEqual(['count-mismatch', 'count-unread'])
    expect(row(work(`${text} (7 wisps)`), 'Row 1').agrees).toBeNull()
  })

  it('by kind within special stitches or without', () => {
    const text =
      '## Special stitches\n- **Shell:** 5 dc in same st.\n\n## A\nCh 21.\nRow 1: Sc in each ch.\nRow 2: Ch 3 (counts as dc), dc in next 2 sts, sk 2 sts, shell in next st, sk 2 sts, dc in each st to end.'
    expect(row(work(`${text} (21 dc)`), 'Row 2').agrees).toBe(true)
    expect(row(work(`${text} (16 dc, 1 shell)`), 'Row 2').agrees).toBe(true)
    expect(row(work(`${text} (15 dc, 1 shell)`), 'Row 2').agrees).toBe(false)
  })

  it('for every size', () => {
    const draft = work('## A\nCh 61 (73, 85).\nRow 1: Sc in 2nd ch from hook and in each ch across. (60, 72, 83 sts)', {
      sizes: ['S', 'M', 'L'],
    })
    expect(row(draft, 'Row 1')).toMatchObject({ total: [60, 72, 84], stated: { total: [60, 72, 83] }, agrees: false })
    expect(draft.found.map((each) => each.sizes)).toEqual([[2]])
  })

  it('of a range belong to its last row', () => {
    const draft = work('## A\nCh 21.\nRow 1: Sc in each ch.\nRows 2–4: Sc2tog, sc across. (18)')
    expect(draft.ledger.rows.slice(2).map((each) => [each.stated, each.agrees])).toEqual([
      [null, null],
      [null, null],
      [{ total: [18] }, true],
    ])
  })

  it('as placeholders are what the row makes', () => {
    const draft = work('## A\nCh {{n}}.\nRow 1: Sc in each ch. ({{total}} sts, {{count(sc)}} sc)', {
      sizes: ['S', 'M'],
      holes: { n: counts(20, 30) },
    })
    expect(row(draft, 'Row 1')).toMatchObject({ stated: { total: [20, 30], sc: [20, 30] }, agrees: true })
  })

  it('that name something unknown are said to be unchecked', () => {
    expect(stated('. (9 blocks)').codes).toEqual(['count-unread'])
  })
})

describe('size lists typed by hand', () => {
  it.each([
    ['66 (72, 78)'],
    ['66(72,78)'],
    ['66 (72) 78'],
    ['66[72:78]'],
    ['66 (72:78)'],
    ['66 (72) (78)'],
    ['66 (72)[78]'],
    ['66/72/78'],
    ['66-72-78'],
    ['(66, 72, 78)'],
    ['[66, 72, 78]'],
  ])('%s', (list) => {
    const draft = work(`## A\nCh ${list}.\nRow 1: Sc in each ch.`, { sizes: ['S', 'M', 'L'] })
    expect(row(draft, 'Row 1').total).toEqual([66, 72, 78])
    expect(draft.codes).toEqual([])
  })

  it.each(['66 (72)', '66 (72, 78, 84)', '(66, 72)', '66 (72, 7884)x'])('of another length are wrong: %s', (list) => {
    const draft = work(`## A\nFoundation: Ch ${list}.\nRow 1: Sc in each ch.`, { sizes: ['S', 'M', 'L'] })
    expect(draft.codes.filter((code) => code === 'size-list-length').length).toBe(list.endsWith('x') ? 0 : 1)
  })

  it.each([
    ['– (15, 19)', [null, 15, 19]],
    ['none (15, 19)', [null, 15, 19]],
    ['15 (–, 19)', [15, null, 19]],
    ['15 (19, none)', [15, 19, null]],
    ['0 (15, 19)', [null, 15, 19]],
  ])('a size without a foundation does not work the piece: %s', (list, made) => {
    const draft = work(
      `## A\nCh ${list}.\nRow 1: Sc in each ch across. (${list} sc)\nRow 2: Sc in next 15 sts, sc across.`,
      {
        sizes: ['S', 'M', 'L'],
      },
    )
    expect(draft.codes).toEqual([])
    expect(draft.ledger.rows.map((each) => each.status)).toEqual(['worked', 'worked', 'worked'])
    expect(draft.ledger.rows.slice(1).map((each) => each.total)).toEqual([made, made])
    expect(draft.ledger.rows[0]?.total.map((total) => total === null)).toEqual(made.map((count) => count === null))
  })

  it.each([
    ['Sizes M and L only:\nRow 2: Sc in next 4 (6) sts, inc, sc across. (15 (17) sc)'],
    ['Sizes M and L only: Row 2: Sc in next 4/6 sts, inc, sc across. (15 (17) sc)'],
    ['Row 2 (sizes M and L only): Sc in next 4 (6) sts, inc, sc across. (15, 17)'],
    ['Row 2 (sizes M and L only): Sc in next 2 (4, 6) sts, inc, sc across. (0 (15, 17))'],
  ])('may be for the sizes that a row names: %s', (text) => {
    const draft = work(`## A\nCh 12 (14, 16).\nRow 1: Sc in each ch across.\n${text}`, { sizes: ['S', 'M', 'L'] })
    expect(draft.codes).toEqual([])
    expect(row(draft, 'Row 1').total).toEqual([12, 14, 16])
    expect(row(draft, 'Row 2').total).toEqual([null, 15, 17])
  })

  it('give their pieces for one size or all', () => {
    const draft = work('## A\nCh 60 (72, 84).', { sizes: ['S', 'M', 'L'] })
    expect(draft.ledger.written[0]?.lists[0]?.segments).toEqual([
      { text: '60', show: 0 },
      { text: ' (', show: 'columns' },
      { text: '72', show: 1 },
      { text: ', ', show: 'columns' },
      { text: '84', show: 2 },
      { text: ')', show: 'columns' },
    ])
  })

  it('drop what is repeated 0 times for a size', () => {
    const draft = work('## A\nCh 10 (14).\nRow 1: Sc in next 10 sts, (ch 1, sk 1, sc in next st) 0 (2) times.', {
      sizes: ['S', 'M'],
    })
    expect(row(draft, 'Row 1').total).toEqual([10, 12])
  })
})

it('a count after how often is no list of sizes, though words follow', () => {
  const draft = work('## Ball\nRnd 1: 12 sc in magic ring (12)\nRnd 2: Dec x 6 (6)\nFasten off.')
  expect([draft.codes, draft.ledger.rows.at(-1)?.agrees]).toEqual([[], true])
})

it.each([
  ['Rnd 2: (Sc, inc) x 6 (18)', [18, 18]],
  ['Rnd 2: (2 sc, 2 inc) x 3 (2). Fasten off.', null],
])('in a draft of two sizes, %s', (text, expected) => {
  const draft = work(`## Ball\nRnd 1: 12 (8) sc in magic ring.\n${text}`, { sizes: ['S', 'M'] })
  const [stated] = Object.values(draft.ledger.rows.at(-1)?.stated ?? {})
  expect(stated ?? null).toEqual(expected)
})
