import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(text: string): string {
  const draft = work(text)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

const leg = 'Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around. (12)\nRnd 3: Sc in each st around. (12)\n'
const legs = `## First leg\n${leg}\n## Second leg\n${leg}\n## Body\n`
const twice = `## Leg (make 2)\n${leg}\n## Body\n`

describe('pieces joined', () => {
  it.each([
    [
      'Rnd 4: Ch 3, join to first leg with a sc, sc in next 11 sts of first leg, sc in each of the 3 ch, sc in next 12 sts of second leg, sc in the other side of the 3 ch. (30)',
      30,
    ],
    [
      'Rnd 4: Ch 2, sc 12 around first leg, sc 2 along the ch, sc 12 around second leg, sc 2 along other side of ch. (28)',
      28,
    ],
    ['Rnd 4: Sc 6 on the second leg, sc 12 on the first leg, sc 6 on the second leg. (24)', 24],
    ['Rnd 4: Sc in next 12 sts of the second leg, continue on the first leg: sc in next 12 sts. (24)', 24],
    ['Rnd 4: Sc around second leg, sc around first leg.', 24],
    ['Rnd 4: Sc around leg 2, sc around leg 1. (24)', 24],
  ])('%s', (row, made) => {
    expect(last(legs + row)).toBe(`Rnd 4: ${made}`)
    if (!/leg \d/.test(row)) expect(last(twice + row)).toBe(`Rnd 4: ${made}`)
  })

  it.each([
    ['Rnd 4: Sc 13 around first leg, sc 12 around second leg.', 'too-few-stitches'],
    ['Rnd 4: Sc 10 around first leg, sc 12 around second leg.', 'stitches-left'],
    ['Rnd 4: Ch 2, sc 12 around first leg, sc 3 along the ch, sc 12 around second leg.', 'too-few-stitches'],
  ])('but not more than there is, nor less without a word: %s', (row, code) => {
    expect(work(legs + row).codes).toEqual([code])
  })
})
