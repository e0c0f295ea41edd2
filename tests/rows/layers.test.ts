import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

function ear(row: string, stitches = 18): string {
  const draft = work(
    `## Ear\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around.\nRnd 3: (Sc, inc) ${stitches / 3} times.\nRnd 4: ${row}`,
  )
  return [...draft.codes, totals(draft).at(-1)].join(' ')
}

describe('two layers closed', () => {
  it.each([
    ['Working through both layers, 9 sc across. (9)', 9],
    ['Fold flat, sc through both layers across. (9)', 9],
    ['Flatten and close with 9 sc through both sides.', 9],
    ['Press flat, 9 sc through both sides to close.', 9],
    ['Pinch the ear, 9 sc thru both sides.', 9],
    ['Flatten, sc 9 through both layers to close the ear.', 9],
    ['Flatten opening and ch 1, 9 sc through both layers (9)', 9],
    ['Fold in half, working through both thicknesses, sc in each st across. (9)', 9],
    ['Sc in next 9 sts through both layers.', 9],
  ])('%s', (row, made) => {
    expect(ear(row)).toBe(`Rnd 4: ${made}`)
  })

  it('closes the stitch in the fold with the rest', () => {
    expect(work('## Ear\nRnd 1: 5 sc in magic ring.\nRnd 2: Sc 3 through both layers. (3)').codes).toEqual([])
  })

  it('does not take more than there is', () => {
    expect(ear('Working through both layers, 11 sc across.')).toContain('too-few-stitches')
  })
})
