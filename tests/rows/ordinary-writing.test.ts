import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

/** Totals of all rows, and what was found; for whole pieces as they are published. */
function worked(text: string, terms: 'us' | 'uk' = 'us'): string {
  const draft = work(text, { terms })
  return [...draft.codes, ...totals(draft)].join(', ')
}

describe('rows that go back to others, among other words', () => {
  const begun =
    'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRow 2: Ch 1, sc in each sc across, turn. (20 sc)\n'
  it.each([
    'Row 3: Join B with sl st in first sc, rep Row 2. (20 sc)',
    'Row 3: With B, rep Row 2. (20 sc)',
    'Row 3: Rep Row 2, working last sc in first sc. (20 sc)',
    'Row 3: Rep Row 2 in the following colors: 1 row B, 2 rows C. (20 sc)',
    'Row 3: Rep Row 2 in stripes of 3 rows A, 3 rows B.',
    'Row 3: Using B, rep row 2. You will have 20 sc on row 3.',
    'Row 3: Repeat Row 2. At end of Row 3, change to color B and ch 1, turn.',
    'Row 3: Repeat row 2\nFasten off.',
  ])('%s', (row) => {
    expect(worked(`## A\n${begun}${row}`)).toBe('–: 0, Row 1: 20, Row 2: 20, Row 3: 20')
  })

  it.each([
    // Stitches before it are not passed over.
    'Row 3: Sc in next 3 sts, rep Row 2.',
    'Row 3: Rep Row 2, working 2 sc in last sc.',
  ])('%s', (row) => {
    expect(work(`## A\n${begun}${row}`).codes).toEqual(['row-unread'])
  })

  it('takes spaced numbers of rows as rows', () => {
    expect(worked(`## A\n${begun}Rows 3 – 6: Repeat rows 2 – 2.`)).toContain('Row 6: 20')
  })

  it('takes a length in brackets as no count', () => {
    expect(work(`## A\n${begun}Repeat Row 2 until piece measures 10 cm [4 in], ending with a WS row.`).codes).toEqual(
      [],
    )
  })
})

describe('shaping that goes on', () => {
  const begun = 'Rnd 1: 8 dc in ring.\nRnd 2: 2 dc in each st around. (16)\n'
  it.each([
    ['Rnds 3–5: Continue increasing in this way, working 1 more dc between increases in each rnd. (40)', '24, 32, 40'],
    ['Rnds 3–5: Continue as established, working 1 more dc between incs on each rnd. 40 dc.', '24, 32, 40'],
    ['Continue to increase 8 sts each rnd in this way until there are 32 sts.', '24, 32'],
    ['Rnds 3–5: Continue increasing in this way. (41)', '24, 32, 40'],
  ])('%s', (row, made) => {
    const rows = work(`## A\n${begun}${row}`).ledger.rows.slice(2)
    expect(rows.map((each) => each.total[0]).join(', ')).toBe(made)
  })

  it('finds a count that the growth does not come to', () => {
    expect(work(`## A\n${begun}Rnds 3–5: Continue increasing in this way. (41)`).codes).toEqual(['count-mismatch'])
  })

  it('needs a row that has grown', () => {
    expect(work('## A\nRnds 1–3: Continue increasing in this way. (24)').codes).not.toEqual([])
  })
})

describe('pieces', () => {
  it.each([
    [
      'increases and chains said in words',
      '## A\nRound 1: Start with a magic ring and crochet 8 single crochet stitches into it. (8 stitches)\nRound 2: Work an increase in every stitch around. (16 stitches)\nRound 3: Work 1 single crochet in the first stitch and an increase in the next stitch; repeat this all the way around. (24 stitches)\nRound 4: Chain 3, which counts as your first double crochet, then double crochet in each remaining stitch around. (24 double crochet)',
      'Round 1: 8, Round 2: 16, Round 3: 24, Round 4: 24',
    ],
    [
      'colours before and behind stitches',
      '## A\nRound 1: With MC, 8 sc in magic circle, carrying CC. (8)\nRound 2: *With MC sc in next 3 sts, with CC sc in next st; rep from * around. (8)\nRound 3: *1 sc MC, 1 sc CC; rep from * around. (8)',
      'Round 1: 8, Round 2: 8, Round 3: 8',
    ],
    [
      'stitches around a ring of another kind',
      '## A\nRound 1: Ch 1, 40 sc around the hair tie, join. (40 sc)',
      'Round 1: 40',
    ],
    [
      'posts of an older round',
      '## A\nCh 5, join.\nRnd 1: Ch 6 (counts as dc and ch 3), [dc in ring, ch 3] 5 times, sl st in 3rd ch of beg ch-6. (6 ch-3 sps)\nRnd 2: In each ch-3 sp around work (sc, hdc, 3 dc, hdc, sc). (6 petals)\nRnd 3: *Sl st around post of next dc of Rnd 1, ch 4; rep from * around behind petals. (6 ch-4 lps)\nRnd 4: (Sc, hdc, 5 dc, hdc, sc) in each ch-4 lp around. (54 sts)',
      '–: 0, Rnd 1: 6, Rnd 2: 42, Rnd 3: 0, Rnd 4: 54',
    ],
    [
      'sleeves passed over by name',
      '## A\nCh 41.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (40 sc)\nRow 2: Ch 1, (sc in next 8 sc, ch 1) 4 times, sc in next 8 sc, turn. (40 sc)\nRow 3: Ch 1, sc in each sc to first ch-1 sp, sc in ch-1 sp, ch 4, skip sleeve sts, sc in next ch-1 sp, sc in each sc of back, sc in next ch-1 sp, ch 4, skip sleeve sts, sc in next ch-1 sp, sc in each sc to end, turn. (28 sc, 2 ch-4 sps)',
      '–: 0, Row 1: 40, Row 2: 40, Row 3: 28',
    ],
    [
      'the stitch in the middle of a row',
      '## A\nCh 30.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (29 sc)\nRow 2: Ch 1, hdc in each st to center st, 3 hdc in center st, hdc in each st to end, turn. (31 hdc)\nRow 3: Ch 1, sc to 1 st before center st, sc3tog, sc to end, turn. (29 sc)',
      '–: 0, Row 1: 29, Row 2: 31, Row 3: 29',
    ],
    [
      'the last repeat cut where it is like its ending',
      '## A\nCh 40.\nRow 1: Sc in 2nd ch from hook, *sk 3 ch, 7 dc in next ch, sk 3 ch, sc in next ch, ch 1, sk 1 ch, sc in next ch; rep from * across, ending last rep with sc in last ch, turn. (36 sts)',
      '–: 0, Row 1: 36',
    ],
    [
      'skipped chains that count',
      '## A\nCh 12.\nRow 1: Sk first 2 chs (counts as first sc), *dc in next ch, sc in next ch; rep from * across, turn. (11 sts)',
      '–: 0, Row 1: 11',
    ],
    [
      'as many into as many',
      '## A\nRnd 1: 48 sc in magic ring. (48)\nRnd 2: *5 sc in next 5 sts, ch 3, sk 1; rep from * around. (40 sc)',
      'Rnd 1: 48, Rnd 2: 40',
    ],
    [
      'a part by its name',
      '## A\nCh 40, join.\nRnd 1: Ch 1, sc in each ch around, join. (40 sc)\n\nDivide for front and back: Ch 1, sc in first 18 sts, leave remaining sts unworked, turn. (18 sc)',
      '–: 0, Rnd 1: 40, –: 18',
    ],
    [
      'three kinds of place in a list',
      '## A\nCh 12, join.\nRnd 1: Ch 1, *sc in next st, ch 1, sk 1, dc in next st; rep from * around, join. (8 sts)\nRnd 2: Ch 1, sc in each sc, ch-1 sp and dc around, join. (12 sc)',
      '–: 0, Rnd 1: 8, Rnd 2: 12',
    ],
    [
      'the first corner, and back loops',
      '## A\nCh 4, join.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, (ch 2, 3 dc in ring) 3 times, ch 2, join. (12 dc)\nRnd 2: Sl st to corner, ch 3, (2 dc, ch 2, 3 dc) in beg corner sp, *dc in BL of next 3 sts, (3 dc, ch 2, 3 dc) in next corner sp; rep from * 2 more times, dc in last 3 sts, join. (36 dc)',
      '–: 0, Rnd 1: 12, Rnd 2: 36',
    ],
  ])('%s', (_, text, rows) => {
    expect(worked(text)).toBe(rows)
  })

  it('reads numbers in full', () => {
    const text =
      '## A\nCast on 31 chain.\n1st row.—Miss one chain, and work one double crochet in each of the thirty following; turn.\n2nd row.—One chain, one double crochet in each stitch; turn.'
    expect(worked(text, 'uk')).toBe('–: 0, Row 1: 30, Row 2: 30')
  })

  it('takes two stitches into two as two in each, as before', () => {
    expect(worked('## A\nRnd 1: 12 sc in magic ring.\nRnd 2: *2 sc in next 2 sts; rep from * around.')).toBe(
      'Rnd 1: 12, Rnd 2: 24',
    )
  })
})

describe('shells from edge to edge', () => {
  const rows =
    'Ch 26.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * to end. (4 shells)\n' +
    'Row 2: Ch 3 (counts as dc), turn, 2 dc in first sc, *sc in 3rd dc of next shell, 5 dc in next sc; rep from * to last shell, sc in 3rd dc of shell, 3 dc in last sc. (3 shells, 2 half shells)\n'
  it.each([
    [
      'Row 3: Ch 1, turn, sc in first dc, *5 dc in next sc, sc in 3rd dc of next shell; rep from * to end, working last sc in top of ch-3.',
      25,
    ],
    [
      'Row 3: Ch 1, turn, sc in first dc, *5 dc in next sc, sc in 3rd dc of next shell; rep from * to end, ending last rep with sc in top of ch-3.',
      25,
    ],
  ])('%s', (row, made) => {
    const draft = work(`## A\n${rows}${row} (4 shells)`)
    expect([...draft.codes, draft.ledger.rows.at(-1)?.total[0]]).toEqual([made])
  })
})

describe('what the first of some stitches is', () => {
  it.each([
    ['Work 12 treble into the circle, the first being 3 chain; join neatly.', 12],
    ['3 chain (to take the place of a treble), 17 treble in the ring, slip stitch to the top of the 3 chain.', 18],
  ])('%s', (round, made) => {
    const draft = work(`## A\nBegin with 4 chain, joined in a circle.\n1st round: ${round}`, { terms: 'uk' })
    expect([...draft.codes, draft.ledger.rows.at(-1)?.total[0]]).toEqual([made])
  })

  it('takes the chain made first as the one farthest from the hook', () => {
    expect(
      worked(
        '## A\nRow 1: Ch 4, 2 dc in first ch. Turn. (3 dc)\nRow 2: Ch 3, dc in first st, dc in next st, 2 dc in last st. (5 dc)',
      ),
    ).toBe('Row 1: 3, Row 2: 5')
  })
})

describe('meshes of low stitches', () => {
  it.each([
    'Row 2: Ch 2, sc in first ch-1 sp, *ch 1, sc in next ch-1 sp; repeat from * to end, working last sc in the turning ch-sp. Turn. (15 sc)',
    'Row 2: Ch 2, *sc in next ch-1 sp, ch 1; rep from * to last ch-sp, sc in last ch-2 sp, turn. (15 sc)',
  ])('%s', (row) => {
    const begun =
      'Ch 32.\nRow 1: Sc in 4th ch from hook, *ch 1, sk 1, sc in next ch; repeat from * to end. Turn. (15 sc)\n'
    const draft = work(`## A\n${begun}${row}\nRows 3–20: Rep Row 2. (15 sc)`)
    expect([...draft.codes, draft.ledger.rows.at(-1)?.total[0]]).toEqual([15])
  })
})

describe('parts under a heading of their own', () => {
  it('begins with chains that are closed to a ring', () => {
    const text =
      '## Strap\nRow 1: Ch 51, sl st in 2nd ch from hook and in each ch to end. (50 sl sts)\n\n## Loop\nCh 12, sl st in first ch, 16 sc in ring. (16)'
    expect(work(text).codes).toEqual([])
  })

  it('goes on with what was left, without a label', () => {
    const text =
      '## A\nCh 41.\nRow 1: Sc in 2nd ch from hook and in each ch across. (40)\n\n### First shoulder\nRow 2: Ch 1, turn, sc in first 15 sts, leave rem sts unworked. (15)\nFasten off.\n\n### Second shoulder\nSkip next 10 unworked sts of Row 1, join yarn in next st, ch 1, sc in same st and in each st to end. (15 sc)\nRow 3: Ch 1, turn, sc in each st to last 2 sts, sc2tog. (14 sc)'
    const draft = work(text)
    expect([...draft.codes, draft.ledger.rows.at(-1)?.total[0]]).toEqual([14])
  })
})
