import { describe, expect, it } from 'vitest'
import { work } from './draft.ts'

const dc = '## A\nCh 22.\nRow 1: Dc in 4th ch from hook and in each ch across.\n'
const sc = '## A\nFoundation: Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n'
const fans = `${sc}Row 2: Ch 1, sc in first sc, *sk 2 sc, 5 dc in next sc, sk 2 sc, sc in next sc; rep from * to last sc, sc in last sc.\n`
const mesh = '## A\nCh 23.\nRow 1: Dc in 6th ch from hook, *ch 1, sk 1 ch, dc in next ch; rep from * across.\n'
const square =
  '## A\nCh 4, join to form a ring.\nRnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, join.\n'

describe('stitches that are passed over without being said', () => {
  it.each([
    ['stitch by stitch, then the last', `${sc}Row 2: Ch 1, sc in next 18 sc, sc in last sc.`],
    ['the last ones, where more are left', `${sc}Row 2: Ch 1, sc in next 15 sts, sc in last 4 sts.`],
    ['to the last ones, but not all of them', `${sc}Row 2: Ch 1, sc in each st to last 3 sts, 2 sc in last 2 sts.`],
    ['by another kind than is said', `${dc}Row 2: Ch 1, sc in next 15 dc, 2 sc in last dc.`],
    ['in a foundation chain', '## A\nCh 10.\nRnd 1: Sc in 2nd ch from hook, sc in next 6 ch, 3 sc in last ch.'],
    [
      'after words that skip some of them',
      '## A\nCh 16.\nRow 1: Sc in 2nd ch from hook, *ch 3, sk 3 ch, sc in next ch; rep from * once more, sk 4 ch, 3 sc in last ch.',
    ],
    ['before the turning chain', `${dc}Row 2: Ch 3 (counts as dc), dc in next 15 dc, dc in top of turning ch.`],
    ['before words that skip the last', `${sc}Row 2: Ch 1, sc in next 15 sc, ch 9, sk last 4 sc.`],
    [
      'after words that skip too few',
      `${fans}Row 3: Ch 1, sc in first 2 sc, ch 4, sk 4 dc, sc in next sc, *ch 5, sk 5 dc, sc in next sc; rep from * across.`,
    ],
    ['behind a repeat that ends too early', `${sc}Row 2: Ch 1, (sc in next 2 sc, inc) 5 times, sc in last 2 sc.`],
  ])('%s', (_, text) => {
    expect(work(text).codes).toContain('stitches-left')
  })

  it.each([
    ['all of them are worked', `${sc}Row 2: Ch 1, sc in next 19 sc, sc in last sc.`],
    ['they are skipped', `${sc}Row 2: Ch 1, sc in next 15 sc, sk 4 sc, sc in last sc.`],
    ['chains lie over them', `${sc}Row 2: Ch 1, sc in next 15 sc, ch 4, sc in last sc.`],
    [
      'the row goes from space to space',
      `${mesh}Row 2: Ch 1, sc in first dc, *2 sc in next ch-1 sp; rep from * across, sc in last dc.`,
    ],
    [
      'they are named by what they are not',
      `${fans}Row 3: Ch 1, sc in first sc, *ch 4, sc in next sc; rep from * across.`,
    ],
    ['the rest is left in words', `${sc}Row 2: Ch 1, sc in next 15 sc, leave rem sts unworked.`],
    [
      'words that skip lead to a space',
      `${mesh}Row 2: Ch 4 (counts as dc and ch 1), sk first dc, *sk 1 dc, dc in next ch-1 sp, ch 1; rep from * to last sp, dc in last ch-1 sp.`,
    ],
  ])('not where %s', (_, text) => {
    expect(work(text).codes).not.toContain('stitches-left')
  })
})

describe('a repeat to the last stitches', () => {
  it.each([
    ['comes out exactly', `${sc}Row 2: Ch 1, *sc in next 2 sc, inc; rep from * to last 2 sc, sc in last 2 sc.`, []],
    [
      'may not be cut short, though stitches are called by their kind',
      `${sc}Row 2: Ch 1, *sc in next 2 sc, 2 sc in next sc; rep from * to last sc, sc in last sc.`,
      ['repeat-does-not-come-out'],
    ],
    [
      'is done when none of a kind that it goes into is left',
      `${fans}Row 3: Ch 3 (counts as dc), 2 dc in first sc, sk next sc, *sk 2 dc, sc in next dc, sk 2 dc, 5 dc in next sc; rep from * to last sc, sk 2 dc, sc in next dc, sk 2 dc, 3 dc in last sc.`,
      [],
    ],
    [
      'counts spaces as well',
      `${square}Rnd 2: Ch 1, *sc in each dc to next ch-2 sp, 3 sc in ch-2 sp; rep from * around, join.`,
      [],
    ],
  ])('%s', (_, text, codes) => {
    expect(work(text).codes).toEqual(codes)
  })
})

describe('stitches that the words say are left', () => {
  it.each([
    ['as many as are left', `${sc}Row 2: Ch 1, sc in next 15 sts, leave rem 5 sts unworked.`, []],
    ['more than are left', `${sc}Row 2: Ch 1, sc in next 15 sts, leaving last 6 sts unworked.`, ['left-otherwise']],
    [
      'fewer',
      `${sc}Row 2: Sl st in first 3 sts, ch 1, sc in next 12 sts, turn, leaving 4 sts unworked.`,
      ['left-otherwise'],
    ],
    ['said before they are left', `${sc}Row 2: Leaving last 5 sts unworked, ch 1, sc in next 15 sts.`, []],
    ['no number', `${sc}Row 2: Ch 1, sc in next 15 sts, leave rem sts unworked.`, []],
  ])('%s', (_, text, codes) => {
    expect(work(text).codes).toEqual(codes)
  })
})
