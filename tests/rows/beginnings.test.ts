import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

const flat = 'Row 1: Sc in 2nd ch from hook and in each ch across.'
const around = 'Rnd 1: Ch 1, sc in each ch around, join.'
const inRing = 'Rnd 1: 8 sc in ring, join.'

/** Findings, and what the first row on the beginning makes. */
function first(beginning: string, row: string, terms: 'us' | 'uk' = 'us') {
  const draft = work(`## A\n${beginning}\n${row}`, { terms })
  return [...draft.codes, totals(draft).at(-1)]
}

describe('a piece begins with a chain', () => {
  it.each([
    'Ch 31.',
    'Chain 31',
    'Ch 31 loosely.',
    'Loosely ch 31.',
    'Make a chain of 31.',
    'Make 31 ch.',
    'Make a loose foundation chain of 31 stitches.',
    'Start with a chain of 31 sts.',
    'Begin with 31 chain.',
    'Commence with 31 ch.',
    'Cast on 31 ch.',
    'With 4.5 mm hook and MC, make a chain of 31.',
    'Using a 4 mm hook and yarn A, chain 31 sts.',
    'Using No. 9 hook make 31 ch.',
    'Beginning at lower edge, ch 31.',
    'Starting at the top, chain 31.',
    'Holding two strands together, ch 31.',
    'Ch 31 with A.',
    'Chain: 31',
    'Foundation chain: 31',
    'Cuff: Ch 31.',
    'Ch 30 + 1 for turning.',
    'Ch 31 (multiple of 6 + 1).',
    'Ch 31 (a multiple of 6 sts plus 1 for the foundation).',
    'Ch a multiple of 6 + 1 (sample: ch 31).',
    'Work a sample over a multiple of 6 sts plus 1.\nCh 31.',
  ])('%s', (beginning) => {
    expect(first(beginning, flat)).toEqual(['Row 1: 30'])
  })

  it.each([
    'Ch 24, join with sl st to form a ring.',
    'Ch 24, join with a sl st to first ch to form a ring, being careful not to twist.',
    'Ch 24. Without twisting, join with sl st.',
    'Ch 24. Being careful not to twist the chain, join with sl st in first ch.',
    'Ch 24, sl st in first ch to make a ring.',
    'Ch 24; join (make sure that it is not twisted).',
    'Make 24 ch and without twisting join with sl st to first ch.',
    'Make a chain of 24 sts, join with sl st to first ch, taking care not to twist.',
  ])('joined: %s', (beginning) => {
    expect(first(beginning, around)).toEqual(['Rnd 1: 24'])
  })

  it.each([
    'Ch 4, join with sl st to form a ring.',
    'Ch 4 and sl st into the first ch to make a ring.',
    'Ch 4; with sl st, join to form a ring.',
    'Foundation ring: Ch 4, sl st in first ch to form a ring.',
    'Make a magic ring.',
    'Make an adjustable ring.',
    'Start with a sliding loop.',
    'Begin with a double magic ring.',
  ])('a ring: %s', (beginning) => {
    expect(first(beginning, inRing)).toEqual(['Rnd 1: 8'])
  })
})

describe('a beginning that is not understood', () => {
  it.each(['Make a ring of 12 beads.', 'Wind a loop of wire.'])(
    'is what is unread, not the row after it: %s',
    (beginning) => {
      const draft = work(`## A\n${beginning}\n${flat}`)
      expect(draft.codes).toEqual(['row-unread'])
      expect(draft.ledger.rows.map(({ status }) => status)).toEqual(['unread', 'not-worked'])
    },
  )

  it.each([
    'Begin each row with ch 1.',
    'The turning ch 3 counts as a dc throughout.',
    'Chains are made loosely throughout.',
    'A longer chain makes a wider scarf.',
  ])('is none where it is talk: %s', (note) => {
    expect(first(`${note}\n\nCh 31.`, flat)).toEqual(['Row 1: 30'])
  })
})
