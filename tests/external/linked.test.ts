import { describe, expect, it } from 'vitest'
import { plainBySize } from '../../src/formula/index.ts'
import { loadSolver } from '../../src/solver/index.ts'
import { environment, gauge, sheet } from '../formula/workbench.ts'

/**
 * A raglan yoke worked from the neck down, divided as is usual: a third of the neck each for front and back, a sixth for
 * each sleeve (common practice, no source). Body and sleeves grow apart from each other; measures are made up.
 */
const yoke = `
neck_girth = [54, 55, 56, 58, 59, 60, 62, 63, 64] cm
bust       = [74, 84, 94, 104, 114, 124, 134, 144, 154] cm
arm_girth  = [25, 27, 29, 32, 36, 39, 43, 46, 49] cm
depth      = [18, 19, 20, 21.5, 23, 24.5, 26, 27, 28] cm
front            ~ stitches(neck_girth / 3) as odd
sleeve           ~ stitches(neck_girth / 6) as even
body_increases   ~ rows(depth)
sleeve_increases ~ rows(depth) / 2
underarm         ~ stitches(bust / 14) as even
neck_sts         ~ stitches(neck_girth) as even
body_sts = 2 * (front + 2 * body_increases + underarm)
arm_sts  = sleeve + 2 * sleeve_increases + underarm
need neck_sts = 2 * front + 2 * sleeve
need neck_sts is multiple of 3
need body_sts is multiple of 6
need arm_sts is multiple of 4
need body_increases <= rows(depth) and sleeve_increases <= body_increases
need width(body_sts) >= bust + 5 cm
need width(body_sts) <= bust + 13 cm
need width(arm_sts) >= arm_girth + 3 cm
`

/** Found by a program of its own, in another language, that tried every combination and compared errors as fractions. */
const wanted: Readonly<Record<string, readonly number[]>> = {
  front: [29, 29, 29, 31, 31, 33, 35, 33, 33],
  sleeve: [16, 16, 16, 14, 20, 18, 16, 18, 18],
  body_increases: [16, 18, 21, 25, 27, 29, 31, 32, 33],
  sleeve_increases: [12, 11, 13, 15, 15, 18, 20, 18, 18],
  underarm: [8, 10, 10, 12, 14, 14, 20, 26, 30],
  neck_sts: [90, 90, 90, 90, 102, 102, 102, 102, 102],
}

describe('a raglan yoke of nine sizes whose front, back, sleeves and neck share one count', () => {
  it('has the counts that trying every combination finds', async () => {
    const facts = environment({
      sizes: ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'],
      swatches: [{ name: null, gauge: gauge('16 per 10 cm', '12 per 10 cm') }],
      body: null,
      solver: await loadSolver(),
    })
    const { settled, diagnostics } = sheet(yoke, facts)
    expect(diagnostics).toEqual([])
    for (const [name, counts] of Object.entries(wanted)) {
      const value = settled.values.get(name)
      expect([name, value && plainBySize(value)]).toEqual([name, counts])
    }
  })
})
