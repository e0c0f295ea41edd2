import { describe, expect, it } from 'vitest'
import { hooks } from '../../src/standards/hooks.ts'

function hook(mm: number) {
  return hooks.find((candidate) => candidate.mm === mm)
}

// Sellers' charts (Tangled Yarn, needle and hook conversion chart; Lindley General Store, conversion chart with hook
// letters; Stranded, hook conversions), which agree with the list of the Craft Yarn Council, Hooks & Needles.
const seen: readonly (readonly [number, string | null, string | null])[] = [
  [2.25, 'B-1', '13'],
  [2.75, 'C-2', null],
  [3.25, 'D-3', '10'],
  [3.5, 'E-4', '9'],
  [3.75, 'F-5', null],
  [4, 'G-6', '8'],
  [4.5, '7', '7'],
  [5, 'H-8', '6'],
  [5.5, 'I-9', '5'],
  [6, 'J-10', '4'],
  [6.5, 'K-10½', '3'],
  [7, null, '2'],
  [8, 'L-11', '0'],
  [9, 'M/N-13', '00'],
  [10, 'N/P-15', '000'],
]

describe('hooks against sellers’ charts', () => {
  it.each(seen)('%s mm is %s in the US and %s in the old UK scale', (mm, us, ukOld) => {
    expect(hook(mm)).toMatchObject({ us, ukOld, how: 'seen' })
  })
})
