import { describe, expect, it } from 'vitest'
import { heightInChains } from '../../src/rows/terms/stitch.ts'
import { work } from '../rows/draft.ts'

/**
 * Turning chains: seven independent teaching tables agree for sc, hdc, dc and tr (among them the
 * Crochet Guild of America's lesson pages, 1997; Dummies, turning chain table; Vogue Knitting, learn to
 * crochet); dtr is in two of them, trtr in one.
 */
const published = [
  ['slipStitch', 0],
  ['singleCrochet', 1],
  ['halfDoubleCrochet', 2],
  ['doubleCrochet', 3],
  ['treble', 4],
  ['doubleTreble', 5],
  ['tripleTreble', 6],
] as const

describe('turning chains', () => {
  it.each(published)('%s takes %i', (stitch, chains) => {
    expect(heightInChains[stitch]).toBe(chains)
  })
})

/**
 * Stitches from a foundation chain: n + (first - 1) chains where the skipped ones do not count,
 * n + (first - 2) where they do. Checks published: Caron, Crochet Boxy Cardigan (32 chains, 30 hdc, not
 * counted); Coats & Clark, Crochet Made Easy (12 chains, 11 hdc, counted); a beginners' article (10 chains, 9 sc).
 */
describe('stitches from a foundation chain', () => {
  it.each([
    [10, 'Sc in 2nd ch from hook and in each ch across.', 9],
    [32, 'Hdc in 3rd ch from hook (skipped 2 chs do not count as a st) and in each ch across.', 30],
    [12, 'Hdc in 3rd ch from hook (skipped 2 chs count as first hdc) and in each ch across.', 11],
    // Dc and taller count by the textbooks' default: first chain from memory, turning chain + 1.
    [22, 'Dc in 4th ch from hook and in each ch across.', 20],
    [23, 'Tr in 5th ch from hook and in each ch across.', 20],
    [23, 'Dc in 4th ch from hook (beg ch does not count as st) and in each ch across.', 20],
  ])('%i chains, %s', (chains, row, stitches) => {
    const draft = work(`## A\nCh ${chains}.\nRow 1: ${row}`)
    expect(draft.ledger.rows.at(-1)?.total).toEqual([stitches])
  })

  // Textbooks count the hdc chain, many patterns do not: the row's own count decides.
  it.each([
    ['(30 hdc)', 30],
    ['(31 hdc)', 31],
  ])('hdc undecided, %s', (stated, stitches) => {
    const draft = work(`## A\nCh 32.\nRow 1: Hdc in 3rd ch from hook and in each ch across. ${stated}`)
    expect(draft.ledger.rows.at(-1)?.total).toEqual([stitches])
    expect(draft.codes).toEqual([])
  })
})
