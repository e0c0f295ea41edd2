import { describe, expect, it } from 'vitest'
import { work } from '../rows/draft.ts'

/**
 * Shapes whose counts are published, written out in row language and worked. The words are ours;
 * the counts are those of the publisher named beside each.
 */
interface Shape {
  readonly source: string
  readonly text: string
  /** The kind that is counted; `total` for all stitches. */
  readonly kind: string
  readonly counts: readonly number[]
}

function increasing(first: number, plain: (round: number) => string, rounds: number): string {
  const later = Array.from({ length: rounds - 2 }, (_, index) => `Rnd ${index + 3}: ${plain(index + 3)}`)
  return later.join('\n').replaceAll('FIRST', String(first))
}

const sphere = `## Ball
Rnd 1: 6 sc in magic ring.
Rnd 2: Inc around.
Rnd 3: (Sc, inc) 6 times.
Rnd 4: (2 sc, inc) 6 times.
Rnd 5: (3 sc, inc) 6 times.
`

const shapes: Readonly<Record<string, Shape>> = {
  'flat circle in single crochet': {
    source: 'Crafty Maria 2009; MK Carroll 2009; Lucy Kate Crochet, Crocheting a ball (rounds 1-9)',
    kind: 'sc',
    text: `## Circle
Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st around.
${increasing(6, (round) => `*Sc in next ${round - 2} sts, 2 sc in next st; rep from * 5 more times.`, 9)}`,
    counts: [6, 12, 18, 24, 30, 36, 42, 48, 54],
  },
  'flat circle in half double crochet': {
    source: 'Crafty Maria 2009; MK Carroll 2009',
    kind: 'hdc',
    text: `## Circle
Rnd 1: 8 hdc in ring, join.
Rnd 2: Ch 1, 2 hdc in each st around, join.
${increasing(8, (round) => `Ch 1, (${round - 2} hdc, inc) x 8, join.`, 5)}`,
    counts: [8, 16, 24, 32, 40],
  },
  'flat circle in double crochet': {
    source: 'Crafty Maria 2009; MK Carroll 2009 (10 to 12); Pink Mambo hexagon, rounds 1-2',
    kind: 'dc',
    text: `## Circle
Ch 4, join with sl st in first ch to form a ring.
Rnd 1: Ch 3 (counts as dc), 11 dc in ring, join with sl st to top of beg ch-3.
Rnd 2: Ch 3, dc in same st, 2 dc in each st around, join.
Rnd 3: Ch 3, 2 dc in next st, *dc in next st, 2 dc in next st; rep from * around, join.
Rnd 4: Ch 3, dc in next st, 2 dc in next st, *dc in next 2 sts, 2 dc in next st; rep from * around, join.`,
    counts: [12, 24, 36, 48],
  },
  'hexagon of stacked increases': {
    source: 'Crochet Rochelle, Hexagon dishcloth 2016 (rounds 1-14)',
    kind: 'sc',
    text: `## Hexagon
Rnd 1: 6 sc in ring.
Rnd 2: Inc in each st around.
${increasing(6, (round) => `*${round - 2} sc, inc* around.`, 14)}`,
    counts: [6, 12, 18, 24, 30, 36, 42, 48, 54, 60, 66, 72, 78, 84],
  },
  'classic granny square': {
    source: 'Cornflower Blue Studio 2008 (4, 8, 12 groups of 3 dc); rounds 4 and 5 by the same rule',
    kind: 'dc',
    text: `## Square
Ch 4, join with sl st in first ch to form ring.
Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, join with sl st in top of beg ch-3.
Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, join. (8 groups)
Rnd 3: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more times, 3 dc in next ch-1 sp, ch 1, join.
Rnd 4: Sl st to corner sp, ch 3, 2 dc, ch 2, 3 dc in same sp, ch 1, *(3 dc in next ch-1 sp, ch 1) to corner, (3 dc, ch 2, 3 dc) in corner, ch 1; rep from * 2 more times, (3 dc in next ch-1 sp, ch 1) to end, join.
Rnd 5: Sl st to corner sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc in next ch-1 sp, ch 1) 3 times, (3 dc, ch 2, 3 dc) in next corner, ch 1; rep from * 2 more times, (3 dc in next ch-1 sp, ch 1) 3 times, join.`,
    counts: [12, 24, 36, 48, 60],
  },
  'solid granny square': {
    source: "Sue's solid granny square 2016 (7, 11, 15, 19, 23 a side); Octojelly 2021",
    kind: 'dc',
    text: `## Square
Ch 4, join.
Rnd 1: Ch 3, 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times, join to top of ch-3.
Rnd 2: Ch 3, dc in next 2 dc, (2 dc, ch 2, 2 dc) in corner, *dc in next 3 dc, (2 dc, ch 2, 2 dc) in next corner; rep from * 2 more times, join.
Rnds 3–6: Ch 3, dc in each dc to corner, (2 dc, ch 2, 2 dc) in corner sp, *dc in each dc to next corner, (2 dc, ch 2, 2 dc) in corner sp; rep from * twice, dc in each dc to end, join.`,
    counts: [12, 28, 44, 60, 76, 92],
  },
  'granny hexagon': {
    source: 'Petra Monaco, Hexagon stash-busting 1 (row text; totals reckoned for this project)',
    kind: 'total',
    text: `## Hexagon
Rnd 1: Ch 6, join with sl st to form a ring. Ch 3, 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 4 more times, join with sl st to top of ch-3.
Rnd 2: Sl st in each of next 2 dc, sl st in ch-2 sp, ch 3, 2 dc, ch 2, 3 dc in same sp, *3 dc, ch 2, 3 dc in next ch-2 sp; rep from * around, join.
Rnd 3: Ch 3, dc in each of next 2 dc, (dc, ch 2, dc) in next ch-2 sp, *dc in each dc to next ch-2 sp, (dc, ch 2, dc) in ch-2 sp; rep from * 4 more times, dc in each dc to end, join.
Rnd 4: Ch 1, sc in same st, *sc in each dc to next ch-2 sp, (sc, ch 2, sc) in ch-2 sp; rep from * 5 more times, sc in each dc to end, join.`,
    counts: [18, 36, 48, 60],
  },
  'vintage hexagon': {
    source: 'Blue Hexagon, archived 2007 (30, 36, 48 sts stated)',
    kind: 'total',
    text: `## Hexagon
Ch 6, join.
Rnd 1: Ch 1, 12 sc in ring, join.
Rnd 2: *Ch 3, sk 1 sc, sl st in next sc; rep from * 5 more times.
Rnd 3: 5 hdc in each ch-3 sp around.
Rnd 4: Hdc in next 2 sts, (2 hdc in next st, hdc in next 4 sts) 5 times, 2 hdc in next st, hdc in next 2 sts.
Rnd 5: Hdc in next st, (2 hdc in next st, hdc in next 2 sts) 11 times, 2 hdc in next st, hdc in next st.`,
    counts: [12, 0, 30, 36, 48],
  },
  'granny triangle': {
    source: 'Mother Earth News, old-fashioned triangle shawl (rows 1-3; totals reckoned for this project)',
    kind: 'dc',
    text: `## Shawl
Make a magic ring.
Row 1: Ch 3 (counts as dc), 2 dc in ring, ch 1, 3 dc in ring, turn.
Row 2: Ch 3, 2 dc in first st, (3 dc, ch 1, 3 dc) in next ch-1 sp, 3 dc in top of tch, turn.
Row 3: Ch 3, 2 dc in first st, 3 dc between next 2 groups, (3 dc, ch 1, 3 dc) in next ch-1 sp, 3 dc between next 2 groups, 3 dc in top of tch, turn.`,
    counts: [6, 12, 18],
  },
  'shawl of mixed rows': {
    source: 'Red Heart, Have a Heart shawl (counts stated; the words are ours)',
    kind: 'total',
    text: `## Shawl
Ch 17.
Row 1: Dc in 5th ch from hook (skipped chs count as dc and ch-1), ch 1, *dc in next ch, ch 1; rep from * to last ch, (dc, ch 1, dc) in last ch, turn.
Row 2: Ch 3, 2 dc in next ch-1 sp, *dc in next dc, 2 dc in next ch-1 sp; rep from * to last dc, dc in last dc, turn.
Row 3: Ch 4 (counts as dc and ch-1), dc in same st, *ch 1, sk 1, dc in next dc; rep from * across, turn.
Row 4: Ch 3, *2 dc in next ch-1 sp, dc in next dc; rep from * across, turn.
Row 5: Ch 4, sk next dc, dc in next dc, *ch 1, sk 1, dc in next dc; rep from * across, turn.
Row 6: Ch 1, cluster in next ch-1 sp, *ch 1, cluster in next ch-1 sp; rep from * across, turn.
Row 7: Ch 1, 2 hdc in next ch-1 sp, ch 1, *hdc in next ch-1 sp, ch 1, hdc in next ch-1 sp, ch 1, 2 hdc in next ch-1 sp, ch 1; rep from * 9 more times, 2 hdc in next ch-1 sp.`,
    counts: [15, 43, 23, 67, 34, 33, 44],
  },
  'V-stitch throw': {
    source: 'Bernat, Mix It Up crochet throw (103 chains, 33 V-sts stated)',
    kind: 'V-st',
    text: `## Special stitches
**V-st:** (dc, ch 1, dc) in same st.

## Throw
Ch 103.
Row 1: V-st in 5th ch from hook, *sk 2 chs, V-st in next ch; rep from * to last 2 chs, sk 1 ch, dc in last ch.`,
    counts: [33],
  },
  'ball of thirty-six': {
    source: 'knittingday.com, ball: rounds to 36, six even rounds, down to 6',
    kind: 'sc',
    text: `${sphere}Rnd 6: (4 sc, inc) 6 times.
Rnds 7–12: Sc in each st around.
Rnd 13: (4 sc, dec) 6 times.
Rnd 14: (3 sc, dec) 6 times.
Rnd 15: (2 sc, dec) 6 times.
Rnd 16: (Sc, dec) 6 times.
Rnd 17: Dec around.`,
    counts: [6, 12, 18, 24, 30, 36, 36, 36, 36, 36, 36, 36, 30, 24, 18, 12, 6],
  },
  'ball of thirty': {
    source: 'amigurumisfaciles.com, ball',
    kind: 'sc',
    text: `${sphere}Rnds 6–10: Sc around.
Rnd 11: (Sc2tog, sc in next 3 sts) x 6.
Rnd 12: (Sc2tog, sc in next 2 sts) x 6.
Rnd 13: *Invdec, sc* around.
Rnd 14: Dec x 6.`,
    counts: [6, 12, 18, 24, 30, 30, 30, 30, 30, 30, 24, 18, 12, 6],
  },
  'ball with increases out of line': {
    source: 'any-size ball in UK terms: round 4 = 1, 2 in 1, (2, 2 in 1) 5 times, 1',
    kind: 'sc',
    text: `## Ball
Rnd 1: 6 sc in ring.
Rnd 2: Inc around.
Rnd 3: (Sc, inc) 6 times.
Rnd 4: Sc in next st, 2 sc in next st, (sc in next 2 sts, 2 sc in next st) 5 times, sc in next st.`,
    counts: [6, 12, 18, 24],
  },
  'ripple over 14 stitches': {
    source: 'common practice, no source: peaks of 3 in one, valleys of 2 skipped, multiple of 14 plus 1',
    kind: 'sc',
    text: `## Ripple
Ch 44.
Row 1: 2 sc in 2nd ch from hook, *sc in next 5 chs, sk 1 ch, sc2tog, sk 0 chs, sc in next 5 chs, 3 sc in next ch; rep from * to last 14 chs, sc in next 5 chs, sk 1 ch, sc2tog, sc in next 5 chs, 2 sc in last ch, turn.`,
    counts: [43],
  },
  'shells over 6 stitches plus 1': {
    source: 'common practice, no source: sc, skip 2, shell, skip 2',
    kind: 'total',
    text: `## Shells
Ch 26.
Row 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn.
Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, 5 dc in next sc; rep from * across, ending last rep with 3 dc in last sc, turn.
Row 3: Ch 1, sc in first dc, *sk 2 dc, 5 dc in next sc, sk 2 dc, sc in next dc; rep from * across, turn.`,
    counts: [25, 25, 25],
  },
}

describe('published shapes', () => {
  it.each(Object.entries(shapes))('%s', (_, shape) => {
    const draft = work(shape.text)
    const rows = draft.ledger.rows.filter((row) => /^(?:Rnd|Row) /.test(row.label ?? ''))
    const worked = rows.map((row) => (shape.kind === 'total' ? row.total[0] : row.counts[shape.kind]?.[0]))
    expect(draft.found.filter((each) => each.severity !== 'note' && each.code !== 'count-unread')).toEqual([])
    expect(worked).toEqual(shape.counts)
  })
})

/** Caron, Crochet Boxy Cardigan: hdc in 3rd chain, the skipped chains not counted, six sizes. */
describe('foundation of six sizes', () => {
  it('makes the published stitches', () => {
    const draft = work(
      `## Back
Ch 32 (32, 34, 36, 38, 42).
Row 1: Hdc in 3rd ch from hook (skipped chs do not count) and in each ch across.`,
      { sizes: ['XS', 'S', 'M', 'L', 'XL', '2X'] },
    )
    expect(draft.ledger.rows.at(-1)?.total).toEqual([30, 30, 32, 34, 36, 40])
    expect(draft.codes).toEqual([])
  })
})
