import { describe, expect, test } from 'vitest'
import { type Manner, type Naming, termsIn, translated } from '../../../src/rows/index.ts'

const us: Naming = { terms: 'us', own: { shell: 'shell', 'dc cluster': 'dc cluster', 'v-st': 'V-st' } }
const uk: Naming = { terms: 'uk', own: {} }

const told = (naming: Naming, manner: Manner) => (text: string) => translated(text, naming, manner)

describe('steps in US terms are said in UK terms', () => {
  test.each([
    [
      'Ch 1, sc in each ch around, join with sl st in first sc. (60 sc)',
      'Ch 1, dc in each ch around, join with ss in first dc. (60 dc)',
    ],
    ['Hdc in next st, 2 dc in next dc, tr, dtr, trtr', 'Htr in next st, 2 tr in next tr, dtr, trtr, qtr'],
    ['FPdc around next dc, Bpsc, esc, fsc', 'FPtr around next tr, BPdc, edc, fdc'],
    ['sc2tog, DC3TOG, hdc2tog twice', 'dc2tog, TR3TOG, htr2tog twice'],
    ['SC in BLO, d.c. in top of beg ch-3, d. c. in ring', 'DC in BLO, tr in top of beg ch-3, tr in ring'],
    ['Sk 2 sts, skip next st, in skipped st, skipping 1', 'Miss 2 sts, miss next st, in missed st, missing 1'],
    ['yo, insert hook; Yarn over and pull up', 'yoh, insert hook; Yarn over hook and pull up'],
    ['4 dcs, 2 slip stitches, 3 double crochets', '4 trs, 2 slip stitches, 3 treble crochets'],
    ['2 trebles in ring, half double in next', '2 double treble crochets in ring, half treble crochet in next'],
    ['3-dc group in next 3dc', '3-tr group in next 3tr'],
    // Alone they name a stitch only where nothing else is meant.
    ['3 double in ring, single in next st', '3 treble crochet in ring, double crochet in next st'],
    ['with double strand, in single loop', 'with double strand, in single loop'],
    // The pattern's own names stay.
    ['Shell in next dc, dc cluster in next V-st', 'Shell in next tr, dc cluster in next V-st'],
    ['turn, rep from *, ch-2 sp, inc, dec, tog', 'turn, rep from *, ch-2 sp, inc, dec, tog'],
  ])('%s', (own, other) => {
    expect(told(us, 'steps')(own)).toBe(other)
  })
})

describe('steps in UK terms are said in US terms', () => {
  test.each([
    ['Miss 2 sts, tr in next dc, ss in first dc', 'Skip 2 sts, dc in next sc, sl st in first sc'],
    ['htr, dtr2tog, 1 long treble, RtrF, qtr', 'hdc, tr2tog, 1 treble crochet, FPdc, trtr'],
    ['1 treble in next st, Double crochet in each st', '1 double crochet in next st, Single crochet in each st'],
    ['leave a long tail, yoh, yarn over hook', 'leave a long tail, yo, yarn over'],
  ])('%s', (own, other) => {
    expect(told(uk, 'steps')(own)).toBe(other)
  })
})

describe('prose keeps what may be no term', () => {
  test.each([
    ['Ch 3 counts as a double crochet.', 'Ch 3 counts as a treble crochet.'],
    ['Half double crochet is easy.', 'Half treble crochet is easy.'],
    ['Check your gauge; 20 sc are enough.', 'Check your tension; 20 dc are enough.'],
    ['The edging skips every second stitch.', 'The edging misses every second stitch.'],
    ['You may skip this if you are in a hurry.', 'You may skip this if you are in a hurry.'],
    ['Made in Washington, DC, with 30 DC.', 'Made in Washington, DC, with 30 TR.'],
    ['A single idea, a double thread, a long day.', 'A single idea, a double thread, a long day.'],
  ])('%s', (own, other) => {
    expect(told(us, 'prose')(own)).toBe(other)
  })
})

test('each term has its place, and an abbreviation its name and words in full', () => {
  const text = 'Sk 2 sts, single crochet in BLO; sc2tog, V-st, FPdcs'
  const found = termsIn(text, us, 'steps').map(({ at, short }) => [text.slice(at.start, at.end), short])
  expect(found).toEqual([
    ['Sk', { entry: 'sk', full: 'skip', otherFull: 'miss' }],
    ['sts', { entry: 'st(s)', full: 'stitches', otherFull: 'stitches' }],
    ['single crochet', null],
    ['BLO', { entry: 'BLO', full: 'back loop only', otherFull: 'back loop only' }],
    ['sc2tog', { entry: 'sc2tog', full: 'single crochet 2 together', otherFull: 'double crochet 2 together' }],
    ['V-st', { own: 'V-st' }],
    ['FPdcs', { entry: 'FPdc', full: 'front post double crochets', otherFull: 'front post treble crochets' }],
  ])
})

test.each([
  ['ch', 'chain'],
  ['chs', 'chains'],
  ['rnds', 'rounds'],
  ['sp', 'space'],
  ['incs', 'increases'],
  ['sl st', 'slip stitch'],
  ['lps', 'loops'],
])('%s is read out as %s', (text, full) => {
  expect(termsIn(text, us, 'steps').map(({ short }) => short)).toMatchObject([{ full }])
})
