import { describe, expect, it } from 'vitest'
import { hooks } from '../../src/standards/hooks.ts'
import { codesOf, proofed } from '../pattern/measures/draft.ts'

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

describe('hooks of a draft against sellers’ charts', () => {
  const named = seen.flatMap(([mm, us]) => (us === null ? [] : [[mm, us] as const]))
  it.each(named)('%s mm and %s are one hook', (mm, us) => {
    expect(codesOf(proofed({ facts: `hooks: ["${us} (${mm} mm)", "${mm} mm (US ${us})"]` }))).toEqual([])
  })

  // By one chart 10 mm is N-13 as well.
  const twoSizes = named.flatMap(([mm, us], index) => {
    const next = named[index + 1]?.[0]
    return next === undefined || us === 'M/N-13' ? [] : [[us, mm, next] as const]
  })
  it.each(twoSizes)('%s, which is %s mm, is not the next size, %s mm', (us, _, next) => {
    expect(codesOf(proofed({ facts: `hooks: ["US ${us} (${next} mm)"]` }))).toEqual(['hook-sizes-disagree'])
  })
})
