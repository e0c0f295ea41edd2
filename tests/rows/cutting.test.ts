import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

/** Findings, and the rows with their totals. */
function rows(text: string) {
  const draft = work(text)
  return [...draft.codes, ...totals(draft)]
}

const ring = '## A\nMagic ring.\nRnd 1: 6 sc in ring. (6)\n'

describe('what is said beside the steps', () => {
  it.each([
    'Stuff firmly, adding more before closing.',
    'Place safety eyes between Rnds 1 and 2, 4 sts apart.',
    'You should now see a small cup.',
    'Sew the tail with 3 stitches to the body.',
    'This round is a little tricky at first.',
    'Repeat for the other ear.',
  ])('is no step: %s', (talk) => {
    expect(rows(`${ring}Rnd 2: 2 sc in each st. ${talk} (12)\nRnd 3: Sc in each st. (12)`)).toEqual([
      '–: 0',
      'Rnd 1: 6',
      'Rnd 2: 12',
      'Rnd 3: 12',
    ])
  })

  it.each([
    'Ch 1 does not count as a stitch.',
    'Chain 1 doesn’t count as a stitch throughout.',
    '- Ch 3 counts as dc.',
    'Chain 3 is always the first dc.',
  ])('begins no piece: %s', (note) => {
    expect(rows(`## Notes\n\n${note}\n\n${ring}`)).toEqual(['–: 0', 'Rnd 1: 6'])
  })

  it.each(['Then sc in each of the 3 sparkly bits.', '3 sc wherever you like.', 'Skip the marked places.'])(
    'is not passed over where it may be one: %s',
    (words) => {
      expect(work(`${ring}Rnd 2: 2 sc in each st. ${words} (12)`).codes).toEqual(['row-unread'])
    },
  )
})

describe('where a row begins', () => {
  it('in the middle of a paragraph, with its label', () => {
    expect(rows('## A\nCh 6 and join. 1st Round: 12 sc in ring. 2nd Round: 2 sc in each st. (24)')).toEqual([
      '–: 0',
      'Round 1: 12',
      'Round 2: 24',
    ])
  })

  it('row below row without labels, each with its count', () => {
    expect(rows('## A\n6 sc in magic ring (6)\n6 inc (12)\n*1 sc, 1 inc* x 6 (18)\n18 sc (18)')).toEqual([
      '–: 6',
      '–: 12',
      '–: 18',
      '–: 18',
    ])
  })

  it('not on a line that goes on with the row above', () => {
    expect(rows('## A\nCh 21.\nRow 1: Sc in 2nd ch from hook,\nsc in each ch across.\nTurn.')).toEqual([
      '–: 0',
      'Row 1: 20',
    ])
  })

  it('below its label', () => {
    expect(
      rows('## A\n**Row 1**\n\nCh 8, sc in 2nd ch from hook and in each ch across.\n\n**Row 2**\n\nSc2tog, sc to end.'),
    ).toEqual(['Row 1: 7', 'Row 2: 6'])
  })
})

describe('an instruction without a label', () => {
  const start = '## A\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across.\n\n'

  it.each([
    'Sc in every shiny stitch across.',
    'Dec 1 st at each shiny edge of every row 3 times.',
    'Rep Rows 1 and 2 with a twist of 3 sts.',
    'Rejoin yarn in next unworked sparkle of Row 1.',
    'Increase the shiny way in all 20 sts. (40)',
  ])('among rows is not passed over: %s', (words) => {
    expect(work(start + words).codes).toEqual(['row-unread'])
  })

  it.each([
    'Weave in ends.',
    'Work the second sleeve to match.',
    'The next rows form the yoke.',
    'Block to size, 40 cm wide.',
    '1. Sew the shoulder seams.\n2. Weave in ends.',
    'Repeat Rows 1–20 for the second sleeve.',
    '*Black*',
  ])('is none where it is talk: %s', (words) => {
    expect(rows(start + words)).toEqual(['–: 0', 'Row 1: 20'])
  })
})

describe('a name between rows', () => {
  const side = `## Top
Ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across.
Row 2: Sc in next 6 sts, turn, leaving rem sts unworked. (6 sc)
Row 3: Sc in each st. (6 sc) Fasten off.
`

  it.each([
    '**Second side**\n\nRow 2: Sk next 8 sts of Row 1, join yarn in next st, ch 1, sc in same st, sc in each st across. (6 sc)',
    'Second side\nRow 2: Sk next 8 sts of Row 1, join yarn in next st, ch 1, sc in same st, sc in each st across. (6 sc)',
    'Second side: Sk next 8 sts of Row 1, join yarn in next st.\nRow 2: Ch 1, sc in same st and in each st across. (6 sc)',
    'Sk next 8 sts of Row 1, join yarn in next st.\n\nRow 2: Ch 1, sc in same st and in each st across. (6 sc)',
  ])('lets numbers begin anew: %s', (second) => {
    const draft = work(side + second)
    expect(draft.codes).toEqual([])
    expect(totals(draft).at(-1)).toBe('Row 2: 6')
  })

  it('is wanted for it', () => {
    expect(work('## A\nCh 21.\nRow 1: Sc in each ch.\nRow 2: Sc across.\nRow 2: Sc across.').codes).toEqual([
      'row-label-twice',
    ])
  })
})
