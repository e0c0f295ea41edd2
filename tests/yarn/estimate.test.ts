import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'

/** A square of single crochet, 10 cm to 12 stitches and 10 rows, worked to `rows` rows of `sts` stitches. */
function square(more: string, [s, l]: readonly [number, number] = [12, 24]) {
  const text = `---
title: Square
sizes: [S, L]
swatch: {in: sc, stitches: 12 per 10 cm, rows: 10 per 10 cm, size: 10 x 10 cm, weight: 6 g}
yarn: [{as: main, category: 4, skein: {weight: 50 g, length: 100 m}}]
${more}---

## Square

Foundation: Fsc ${s} (${l}), turn.

Rows 1–9: Ch 1, sc in each st across, turn.
`
  return readDraft('square.md', 'square', text).outcome.value?.yarn ?? {}
}

describe('yarn from the swatch', () => {
  it('takes the swatch’s weight for a piece of the swatch’s size, and twice that for twice the stitches', () => {
    const { main } = square('')
    // Nine rows of 12 at 0.05 g and a foundation row that takes 1.45 times as much: 5.4 g + 0.87 g.
    expect(main?.grams).toEqual([7, 13])
    expect(main?.metres).toEqual([13, 26])
    expect(main?.skeins).toEqual([1, 1])
  })
})

describe('yarn from a weighed sample', () => {
  it('gives the sample its own weight, and other sizes their share', () => {
    const { main } = square('sample: {size: S, used: {main: 165 g}}\n')
    expect(main?.grams).toEqual([165, 330])
    expect(main?.metres).toEqual([330, 660])
    // A tenth to spare: 181.5 g and 363 g in 50 g skeins.
    expect(main?.skeins).toEqual([4, 8])
  })

  it('scales by fabric as a weighed tube does', () => {
    // Own arithmetic, common practice, no source: 52 × 60 cm weighs 180 g, so 60 × 66 cm needs 180 × 3960 / 3120 = 228.5 g.
    // Here in stitches: 3120 and 3960 of them.
    const text = `---
title: Tube
sizes: [A, B]
yarn: [{as: main, skein: {weight: 100 g}}]
sample: {size: A, used: {main: 180 g}}
---

## Tube

Rnd 1: Fsc 312 (396), join.

Rnds 2–10: Ch 1, sc in each st around, join.
`
    const main = readDraft('tube.md', 'tube', text).outcome.value?.yarn.main
    expect(main?.grams).toEqual([180, 229])
    expect(main?.metres).toBeNull()
    expect(main?.skeins).toEqual([2, 3])
  })
})

describe('no estimate rather than a wrong one', () => {
  it.each([
    ['no weight', 'title: A\nsizes: [S]\nyarn: [{as: main}]\nswatch: {stitches: 12 per 10 cm}'],
    ['a sample of another yarn', 'title: A\nsizes: [S]\nyarn: [{as: main}]\nsample: {size: S, used: {contrast: 90 g}}'],
  ])('%s', (_, facts) => {
    const { value } = readDraft('a.md', 'a', `---\n${facts}\n---\n\n## A\n\nRow 1: Fsc 10.\n`).outcome
    expect(value?.yarn).toEqual({})
  })
})
