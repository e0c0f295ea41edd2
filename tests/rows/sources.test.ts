import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string, options = {}): string {
  const draft = work(text, options)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

describe('both sides of a chain', () => {
  it.each([
    // Of n chains n - 1 going and n - 2 coming back; the group at the far end lies in one chain.
    [
      'Ch 9.\nRnd 1: Sc in 2nd ch from hook and in next 6 ch, 3 sc in last ch, on the other side sc in next 6, 2 sc in last.',
      18,
    ],
    [
      'Ch 9.\nRnd 1: Sc in 2nd ch from hook, sc in next 6, 3 sc in last ch. Working along opposite side of foundation ch, sc in next 6 ch, 2 sc in last ch, join. (18)',
      18,
    ],
    [
      'Ch 9.\nRnd 1: 2 sc in 2nd ch from hook, sc 6, 4 sc in last ch; rotate to work along the other side of the chain, sc 6, 2 sc in last ch.',
      20,
    ],
    [
      'Ch 9.\nRnd 1: Inc in 2nd ch from hook, 6 sc, 4 sc in last ch, turn work and continue on the opposite side of ch, 6 sc, inc.',
      20,
    ],
    // Nothing is said: the round goes on around the end of its chain.
    ['Ch 6.\nRnd 1: Sc in 2nd ch from hook, 3 sc, 3 sc in last ch, 3 sc, inc. (12)', 12],
    [
      'Ch 12.\nRnd 1: 2 dc in 4th ch from hook, dc in next 7 ch, 6 dc in last ch, working on other side of ch, dc in next 7 ch, 3 dc in last ch, join.',
      26,
    ],
    // The far end is worked once from either side where no group turns there.
    [
      'Ch 11.\nRnd 1: Sc in 2nd ch from hook and in each ch across, working in free loops of foundation ch, sc in each ch across, join. (20 sc)',
      20,
    ],
  ])('%s', (text, made) => {
    expect(last(`## Oval\n${text}`)).toBe(`Rnd 1: ${made}`)
  })

  it.each([
    'Join yarn in first ch on opposite side of foundation ch, ch 1, sc in each ch across.',
    'Working along other side of foundation chain, join yarn with sl st in first ch, ch 1, sc in same ch and in each ch across.',
    'Sc in each ch on opposite side of beg ch.',
    'Working in free loops of foundation ch, sc in each ch across.',
  ])('a row begun on the free side: %s', (row) => {
    expect(
      last(
        `## Scarf\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Sc in each st across. Fasten off.\n\n## Other half\nRow 1: ${row}`,
      ),
    ).toBe('Row 1: 20')
  })

  it.each([
    [
      'Ch 9.\nRnd 1: Sc in 2nd ch from hook and in next 6 ch, 3 sc in last ch, on the other side sc in next 9.',
      'too-few-stitches',
    ],
    [
      'Rnd 1: 6 sc in magic ring.\nRnd 2: Working along the other side of the foundation chain, sc in each ch.',
      'no-such-place',
    ],
  ])('not where there is none: %s', (text, code) => {
    expect(work(`## Oval\n${text}`).codes).toContain(code)
  })
})

describe('loops left free', () => {
  const tube = `## Pot
Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st around. (12)
Rnd 3: Sc in BLO of each st around. (12)
Rnd 4: In back loops only, sc in each st around. (12)
`
  it.each([
    ['Rnd 5: Working in free front loops of Rnd 2, 2 sc in each st around. (24)', 24],
    ['Rnd 5: Working in unused loops of Rnd 3, sc in each st around. (12)', 12],
    ['Rnd 5: Sc in each st of Rnd 2.', 12],
    ['Rnd 5: Working behind Rnd 4, in sts of Rnd 1, sc in each st around. (6)', 6],
  ])('%s', (row, made) => {
    expect(last(`${tube}${row}`)).toBe(`Rnd 5: ${made}`)
  })
})

describe('armholes and thumb holes', () => {
  const yoke = `## Yoke
Ch 60, join.
Rnd 1: Ch 1, sc in each ch around, join. (60)
Rnd 2: Ch 1, sc in next 10 sts, ch 4, sk next 12 sts, sc in next 18 sts, ch 4, sk 12 sts, sc in last 8 sts, join. (36)
Rnd 3: Ch 1, sc in each st and in each ch around, join. (44)
`
  it.each([
    ['Rnd 1: Join yarn in center ch of underarm, ch 1, sc in each ch and st around, join. (16)', 16],
    ['Rnd 1: Join yarn in underarm, ch 1, sc in next 4 ch, sc in each of 12 skipped sts, join. (16)', 16],
    [
      'Rnd 1: Join yarn in first underarm ch, sc in each of 4 underarm chs, sc in each of the 12 skipped sts around, join.',
      16,
    ],
  ])('%s', (row, made) => {
    expect(last(`${yoke}\n## Sleeve\n${row}`)).toBe(`Rnd 1: ${made}`)
    // The second one is the other opening.
    expect(last(`${yoke}\n## First sleeve\n${row}\n\n## Second sleeve\n${row}`)).toBe(`Rnd 1: ${made}`)
  })
})

describe('rows further down', () => {
  const four =
    '## A\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Sc across.\nRow 3: Sc across.\n'
  it.each([
    ['Row 4: Sc in next 5 sts, sc in next st 2 rows below, sc in next 6 sts.', 12],
    ['Row 4: *Sc in next 2 sts, FPdc around next st 2 rows below, sk next sc; rep from * across.', 12],
    ['Row 4: *Sc in next st, dc in next sc of Row 2; rep from * across.', 12],
    ['Row 4: *Sc in next st, dc in next st in row below; rep from * across.', 12],
  ])('%s', (row, made) => {
    expect(last(`${four}${row}`)).toBe(`Row 4: ${made}`)
  })
})

describe('edges along the side', () => {
  const square =
    '## Cloth\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2–12: Ch 1, turn, sc in each st across.\n'
  it.each([
    ['Row 13: Sc in each row end across. (12)', 12],
    ['Row 13: Ch 1, sc in end of each row across. (12)', 12],
    ['Row 13: Working in ends of rows, 2 sc in each row across. (24)', 24],
    ['Row 13: Sc in the side of next 12 rows.', 12],
    [
      'Rnd 1: Ch 1, sc in each st across, 3 sc in corner, sc in each row end down side, 3 sc in corner, working along opposite side of foundation ch, sc in each ch across, 3 sc in corner, sc in each row end, 3 sc in last corner, join. (56)',
      56,
    ],
    ['Row 13: Sc evenly down side. (11)', 11],
    ['Row 13: Work 11 sc evenly along side edge.', 11],
  ])('%s', (row, made) => {
    expect(last(`${square}${row}`)).toMatch(new RegExp(`^(?:Row|Rnd) \\d+: ${made}$`))
  })
})

describe('going back without naming the row', () => {
  const first = `## Front
Ch 31.
Row 1: Sc in 2nd ch from hook and in each ch across. (30)
Row 2: Ch 1, sc in next 10 sts, turn, leaving rem sts unworked. (10)
Row 3: Ch 1, sc in each st across. Fasten off. (10)
`
  it.each([
    [
      '### Second shoulder\nRow 2: With RS facing, skip center 10 sts, join yarn in next st, ch 1, sc in same st and in each st across. (10)',
      10,
    ],
    ['Row 4: Skip next 10 unworked sts, rejoin yarn in next st, ch 1, sc in same st, sc in each st across. (10)', 10],
    ['### Neck edge\nRow 1: Join yarn in first st, ch 1, sc in each st across. (10)', 10],
    ['### Neck edge\nRow 1: Join yarn at shoulder, sc evenly around. (24)', 24],
  ])('%s', (row, made) => {
    expect(last(`${first}${row}`)).toMatch(new RegExp(`^Row \\d: ${made}$`))
  })

  it.each([
    ['Rnd 1: Sc in each of 4 underarm chs, sc in each of 12 skipped sts, join. (16)', 16],
    ['Rnd 1: Working in the skipped sts and underarm chs, sc in each st and ch around. (16)', 16],
  ])('a sleeve: %s', (row, made) => {
    const yoke = `## Yoke
Ch 60, join.
Rnd 1: Ch 1, sc in each ch around, join. (60)
Rnd 2: Ch 1, sc in next 10 sts, ch 4, sk next 12 sts, sc in next 38 sts, join. (48)
`
    expect(last(`${yoke}\n## Sleeve\n${row}`)).toBe(`Rnd 1: ${made}`)
  })
})

describe('along edges by their names', () => {
  const panel =
    '## Front\nCh 31.\nRow 1: Sc in 2nd ch from hook and in each ch across. (30)\nRows 2–20: Ch 1, turn, sc in each st across. (30)\n'
  it.each([
    ['Row 21: Work 24 sc along back neck and 36 sc along front edge. (60)', 60],
    ['Row 21: 20 sc up right front neck, 24 sc across back neck, 20 sc down left front. (64)', 64],
    ['Rnd 1: Sc evenly spaced around outer edge, join. (100)', 100],
    ['Row 21: Along long edge, work 40 sc evenly. (40)', 40],
    ['Row 21: Pick up and sc 20 along long edge. (20)', 20],
    ['Row 21: Pick up 24 sts evenly around neck. (24)', 24],
    ['Row 21: Turn work 90 degrees to work along the side, sc in each row end across. (20)', 20],
    ['Row 21: Rotate 90 degrees, sc in each row across.', 20],
  ])('%s', (row, made) => {
    expect(last(`${panel}\n### Edging\n${row}`)).toMatch(new RegExp(`^(?:Row|Rnd) \\d+: ${made}$`))
  })
})

describe('the foundation named by itself', () => {
  const cloth =
    '## Cloth\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2–4: Ch 1, turn, sc in each st across.\n'
  it.each([
    ['Row 5: Working along foundation ch, sc in each ch across. (10)', 10],
    ['Row 5: Sc in each ch of foundation. (10)', 10],
    ['Rnd 5: Ch 1, sc in each st across, sc in each row end, sc in each ch across, sc in each row end, join. (28)', 28],
  ])('%s', (row, made) => {
    expect(last(`${cloth}${row}`)).toMatch(new RegExp(`^R(?:ow|nd) 5: ${made}$`))
  })
})

describe('a repeat that names chains and has run out', () => {
  it('does not begin again on the foundation', () => {
    const draft = work(
      '## A\nCh 120, join.\nRnd 1: Sc in each ch around, join.\nRnd 2: *Ch 4, sk 3, sl st in next st; rep from * around.\nRnd 3: *Ch 4, sl st in next ch; rep from * around.',
    )
    expect(draft.ledger.rows.length).toBe(4)
  })
})
