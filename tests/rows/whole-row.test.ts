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
