import { describe, expect, it } from 'vitest'
import { row, work } from './draft.ts'

/** Granny-like squares with solid sides, counted by the author in a way of their own. */
function square(...counts: readonly string[]): string {
  const rounds = [
    'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join.',
    'Rnd 2: Ch 3, dc in next 2 dc, (2 dc, ch 2, 2 dc) in ch-2 sp, *dc in next 3 dc, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * around, join.',
    'Rnd 3: Ch 3, dc in next 4 dc, (2 dc, ch 2, 2 dc) in ch-2 sp, *dc in next 7 dc, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * 2 more times, dc in last 2 dc, join.',
    'Rnd 4: Ch 3, dc in next 6 dc, (2 dc, ch 2, 2 dc) in ch-2 sp, *dc in next 11 dc, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * 2 more times, dc in last 4 dc, join.',
  ]
  return `## Square\n${rounds
    .slice(0, counts.length)
    .map((round, at) => `${round} ${counts[at] ?? ''}`)
    .join('\n')}`
}

function disc(...counts: readonly string[]): string {
  const rounds = [
    'Rnd 1: Ch 3 (counts as dc), 11 dc in magic ring, join.',
    'Rnd 2: Ch 3, dc in same st, 2 dc in each st around, join.',
    'Rnd 3: Ch 3, 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around, join.',
  ]
  return `## Disc\n${rounds
    .slice(0, counts.length)
    .map((round, at) => `${round} ${counts[at] ?? ''}`)
    .join('\n')}`
}

describe('the way in which an author counts', () => {
  it.each([
    ['plainly', square('(12 sts)', '(28 sts)', '(44 sts)')],
    ['chains as stitches', square('(20 sts)', '(36 sts)', '(52 sts)')],
    ['spaces as stitches', square('(16)', '(32)', '(48)')],
    ['without the opening chain', disc('(11 dc)', '(23 dc)', '(35 dc)')],
    [
      'single chains of a mesh as stitches',
      '## Mesh\nCh 22.\nRow 1: Sc in 2nd ch from hook, *ch 1, sk 1 ch, sc in next ch; rep from * across, turn. (21 sts)\nRow 2: Ch 1, sc in first sc, *sc in next ch-1 sp, ch 1, sk 1 sc; rep from * to last 2 sts, sc in next ch-1 sp, sc in last sc, turn. (21 sts)\nRow 3: Ch 1, sc in first sc, *ch 1, sk next sc, sc in next ch-1 sp; rep from * to last 2 sc, ch 1, sk 1 sc, sc in last sc, turn. (21 sts)',
    ],
    [
      'groups only',
      '## Rows\nCh 26.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn. (4)\nRow 2: Ch 1, sc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, (dc, ch 1, dc) in next sc; rep from * across, turn. (4)',
    ],
  ])('%s', (_, text) => {
    const draft = work(text)
    const stated = draft.ledger.rows.filter((each) => each.stated !== null)
    expect(stated.map((each) => each.agrees)).toEqual(stated.map(() => true))
    expect(draft.codes).toEqual([])
  })

  it('leaves the total of the ledger as it is', () => {
    const draft = work(square('(20 sts)', '(36 sts)', '(52 sts)'))
    expect(draft.ledger.rows.map((each) => each.total)).toEqual([[12], [28], [44]])
  })

  it('is borne out by the other rows where one of them is wrong', () => {
    const draft = work(square('(20 sts)', '(36 sts)', '(53 sts)', '(68 sts)'))
    expect(draft.ledger.rows.map((each) => each.agrees)).toEqual([true, true, false, true])
    expect(draft.found.map(({ code, message }) => [code, message])).toEqual([
      ['count-mismatch', 'Rnd 3 states 53 sts, but its steps make 52.'],
    ])
    expect(draft.found[0]?.hint).toMatch(/chains of spaces/)
  })

  it.each([
    ['one row alone', square('(20 sts)')],
    ['rows that go two ways', square('(12 sts)', '(36 sts)', '(44 sts)')],
    [
      'a foundation that is one too long',
      '## Rows\nCh 23.\nRow 1: Dc in 4th ch from hook (skipped chs count as dc) and in each ch across. (20 dc)\nRow 2: Ch 3 (counts as dc), dc in next st and in each st across. (20 dc)\nRow 3: Ch 3 (counts as dc), dc in next st and in each st across. (20 dc)',
    ],
    ['one wrong round', disc('(12 dc)', '(25 dc)', '(36 dc)')],
  ])('is not told by %s', (_, text) => {
    expect(work(text).codes).toContain('count-mismatch')
  })

  it.each([
    ['(36 sts, counting each ch as a st)', true],
    ['(32 sts, including ch-2 sps)', true],
    ['(28 sts, not counting ch-2 sps)', true],
    ['(27 sts, not including beg ch)', true],
    ['(27 dc + ch 3)', true],
    ['(28 dc + ch-2)', true],
    ['(28 sts including beg ch-3)', true],
    ['(28 sts, counting each ch as a st)', false],
    ['(28 sts, not including beg ch)', false],
  ])('is said by a row itself: %s', (count, agrees) => {
    const draft = work(square('(12 dc)', count))
    expect(row(draft, 'Rnd 2').agrees).toBe(agrees)
  })

  it('takes the chain over a thumb for the stitches under it', () => {
    const mitt = '## Mitt\nRnd 1: 26 fsc, join.\nRnd 2: Sc in next 10 sts, ch 6, sk 6 sts, sc in last 10 sts.'
    expect(row(work(`${mitt} (26)`), 'Rnd 2')).toMatchObject({ total: [20], agrees: true })
    expect(row(work(`${mitt} (20)`), 'Rnd 2').agrees).toBe(true)
    expect(row(work(`${mitt} (25)`), 'Rnd 2').agrees).toBe(false)
  })
})
