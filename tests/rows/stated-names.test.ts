import { describe, expect, it } from 'vitest'
import { row, work } from './draft.ts'

function last(text: string) {
  const draft = work(text)
  const found = draft.ledger.rows.at(-1)
  return { agrees: found?.agrees, stated: found?.stated, codes: draft.codes, found: draft.found }
}

const shells =
  '## Mat\nCh 26.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across.'
const square =
  '## Square\nRnd 1: Ch 3 (counts as dc), 2 dc in magic ring, (ch 2, 3 dc in ring) 3 times, ch 2, join.\nRnd 2: Ch 3, dc in next 2 dc, (2 dc, ch 2, 2 dc) in ch-2 sp, *dc in next 3 dc, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * around, join.'
const ball = '## Ball\nRnd 1: 8 sc in magic ring.\n'

describe('counts by names that the draft does not define', () => {
  it.each([
    [`${shells} (4 shells, 5 sc)`],
    [`${shells} (4 fans, 5 sc)`],
    [`${shells} (4 5-dc groups, 5 sc)`],
    [`${shells} (4 groups of 5 dc, 5 sc)`],
    [`${shells} (4 scallops)`],
    [`${shells} 4 pattern repeats.`],
    ['## Mat\nCh 22.\nRow 1: Dc in 4th ch from hook, *ch 1, dc in next ch; rep from * across. (18 windows, 20 dc)'],
    [`${square} (4 corners, 28 dc)`],
    [`${square} (28 dc, 4 ch-2 corners)`],
    [`${square} (28dc, 4 2ch-sps)`],
    [`${square} 28 dc and 4 corner sps.`],
    [`${ball}Rnd 2: *Sc in next st, ch 3, sk 1 st; rep from * around. (4 petals)`],
    [`${ball}Rnd 2: *Sc in next st, ch 3, sk 1 st; rep from * around. (4 ch-3 lps)`],
    [`${ball}Rnd 2: *Sc in next st, ch 3, sk 1 st; rep from * around. 4 3ch arches, 4 sc.`],
    [`${ball}Rnd 2: *Sc in next 2 sts, (dc, tr, dc) in next st, sc in next st; rep from * around. (2 points, 12 sts)`],
  ])('%s', (text) => {
    expect(last(text)).toMatchObject({ agrees: true })
    expect(last(text).codes.filter((code) => code !== 'special-undefined')).toEqual([])
  })

  it('that fit nothing are left unchecked, with what the row has instead', () => {
    const { agrees, found } = last(`${shells} (7 fans)`)
    expect(agrees).toBeNull()
    expect(found.map(({ code, severity }) => [code, severity])).toEqual([['count-unread', 'warning']])
    expect(found[0]?.hint).toMatch(/4 groups in one place/)
  })

  it.each([
    `${shells} (4 shells, 6 sc)`,
    `${shells} (4 fans, 6 sc)`,
    `${square} (27 dc, 4 corners)`,
    `${square} (28 dc, 5 ch-2 sps)`,
  ])('beside known ones, which stay sharp: %s', (text) => {
    expect(last(text).codes).toContain('count-mismatch')
  })

  it('leave what is inside them out of the kinds beside them', () => {
    const text =
      '## Mat\nCh 32.\nRow 1: Sc in each ch.\nRow 2: Ch 3 (counts as dc), dc in same st, *sk 2 sts, 3 dc in next st; rep from * to last st, 2 dc in last st.'
    expect(last(`${text} (10 3-dc groups, 4 dc)`)).toMatchObject({ agrees: true, codes: [] })
    expect(last(`${text} (10 3-dc groups, 5 dc)`).codes).toEqual(['count-mismatch'])
  })
})

describe('counts of a side', () => {
  const round = `${square}\nRnd 3: Ch 1, sc in first 5 dc, 3 sc in ch-2 sp, *sc in next 7 dc, 3 sc in next ch-2 sp; rep from * 2 times more, sc in last 2 dc, join.`

  it.each([
    [`${square} (7 dc each side)`, true],
    [`${square} (7 dc per side, 4 ch-2 sps)`, true],
    [`${square} (7 sts between corners)`, true],
    [`${square} (3 dc on each side)`, true],
    [`${square} 28 dc (7 per side).`, true],
    [`${round} (9 sc between corners)`, true],
    [`${round} (each side has 7 sc)`, true],
    [`${square} (8 dc each side)`, false],
    [`${square} 28 dc (8 per side).`, false],
    [`${round} (12 sc between corners)`, false],
  ])('%s', (text, agrees) => {
    expect(last(text).agrees).toBe(agrees)
  })

  it('without corners is left unchecked', () => {
    expect(last(`${ball}Rnd 2: Sc around. (4 sc each side)`)).toMatchObject({ agrees: null, codes: ['count-unread'] })
  })
})

describe('counts of special stitches', () => {
  const defined =
    '## Special stitches\n- **Puff stitch (PS):** yo, insert hook, pull up a loop, yo, pull through all loops.\n\n'

  it.each([
    [`${ball}Rnd 2: Beg cluster in first st, ch 1, (cluster in next st, ch 1) 7 times, join. (8 clusters, 8 ch-1 sps)`],
    [`${ball}Rnd 2: (3-dc cluster in next st, ch 1) 8 times. (8 3-dc clusters)`],
    [`${ball}Rnd 2: (3-dc cl in next st, ch 1) 8 times. (8 clusters)`],
    [`${defined}${ball}Rnd 2: (PS in next st, ch 1) around. (8 puffs)`],
    [`${defined}${ball}Rnd 2: (Puff st in next st, ch 1) around. (8 PS)`],
    [`${defined}${ball}Rnd 2: (Puff in next st, ch 1) around. (8 puff stitches)`],
    [`${ball}Rnd 2: 5 dc in first st (shell made), sk 1, (shell in next st, sk 1) 3 times. (4 shells)`],
  ])('%s', (text) => {
    expect(last(text)).toMatchObject({ agrees: true })
  })

  it.each([
    `${ball}Rnd 2: Beg cluster in first st, ch 1, (cluster in next st, ch 1) 7 times, join. (9 clusters)`,
    `${defined}${ball}Rnd 2: (PS in next st, ch 1) around. (7 puffs)`,
  ])('that are wrong: %s', (text) => {
    expect(last(text).codes).toContain('count-mismatch')
  })

  it('are asked for by any of their names', () => {
    const draft = work(
      `${defined}${ball}Rnd 2: (PS in next st, ch 1) around. ({{count(PS)}} puffs, {{count(puff st)}} PS)`,
    )
    expect(row(draft, 'Rnd 2').counts).toEqual({ 'puff stitch': [8], 'ch-1 sp': [8] })
    expect(row(draft, 'Rnd 2').stated).toEqual({ 'puff stitch': [8] })
  })
})
