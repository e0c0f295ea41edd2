import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function last(row: string): string {
  const draft = work(`## A\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around.\nRnd 3: ${row}`)
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

describe('words of colour make no stitch', () => {
  it.each([
    ['Sc 5 in black, change to red, sc 7 in red. (12)', 12],
    ['(C1) inc, (C2) 11 sc. (13)', 13],
    ['*inc, sc 1* x 6, all in dark blue. (18)', 18],
    ['(black) sc in each st around.', 12],
    ['Sc in each st around in colour 2.', 12],
    ['With yellow, sc in each st around.', 12],
  ])('%s', (row, made) => {
    expect(last(row)).toBe(`Rnd 3: ${made}`)
  })

  it('but places are not taken for them', () => {
    expect(last('Sc in next st in blorp, 11 sc.')).toContain('row-unread')
  })
})
