import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

const ring = '## A\nRnd 1: 6 sc in magic ring.\n'
const twelve = `${ring}Rnd 2: 2 sc in each st around.\n`

describe('few words for a whole row', () => {
  it.each([
    [`${ring}Rnd 2: inc. (12)`, 'Rnd 2: 12'],
    [`${ring}Rnd 2: Inc.`, 'Rnd 2: 12'],
    [`${twelve}Rnd 3: sc (12)`, 'Rnd 3: 12'],
    [`${twelve}Rnd 3: In BLO: sc.`, 'Rnd 3: 12'],
    [`${twelve}Rnd 3: dec. (6)`, 'Rnd 3: 6'],
    [`${twelve}Rnd 3: 1sc 1inc x6 (18)`, 'Rnd 3: 18'],
    [`${twelve}Rnd 3: sc, inc x 6`, 'Rnd 3: 18'],
    [`${twelve}Rnd 3: 6 sc, inc x 6 (18)`, 'Rnd 3: 18'],
    [`${twelve}Rnd 3: 2sc, dec x3 (9)`, 'Rnd 3: 9'],
  ])('%s', (text, made) => {
    expect(last(text)).toBe(made)
  })

  it.each([
    [`${ring}Rnd 2: inc. (11)`, 'count-mismatch'],
    [`${twelve}Rnd 3: 1sc 1inc x5`, 'stitches-left'],
    [`${twelve}Rnd 3: 1sc 1inc x7`, 'stitches-left'],
  ])('but no wrong count: %s', (text, code) => {
    expect(work(text).codes).toEqual([code])
  })
})

describe('repeats without a word of how often', () => {
  it.each([
    [`${twelve}Rnd 3: *sc, inc* (18)`, 'Rnd 3: 18'],
    [`${twelve}Rnd 3: (sc, inc) (18)`, 'Rnd 3: 18'],
    [`${twelve}Rnd 3: (1, inc) x 6 (18)`, 'Rnd 3: 18'],
    [`${twelve}Rnd 3: (inc, 1) x 6 (18)`, 'Rnd 3: 18'],
  ])('%s', (text, made) => {
    expect(last(text)).toBe(made)
  })

  it('but no wrong count', () => {
    expect(work(`${twelve}Rnd 3: *sc, inc* (17)`).codes).toEqual(['count-mismatch'])
  })
})

describe('joins to the top of a chain that goes without saying', () => {
  it.each(['sl st to top', 'sl st to 3rd ch', 'sl st to the top', 'sl st to first'])('%s', (join) => {
    expect(
      last(
        `## A\nCh 4, join.\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, ${join}. (12)\nRnd 2: Ch 3, dc in same st, 2 dc in each st around, ${join}. (24)`,
      ),
    ).toBe('Rnd 2: 24')
  })
})
