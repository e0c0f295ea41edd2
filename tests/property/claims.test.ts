import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import type { ClaimedLength } from '../../src/grading/index.ts'
import { sortClaims } from '../../src/grading/index.ts'

const seed = 20260314
const half = new Fraction(1, 2)

/** Lengths of one fabric as a designer writes them, to half a centimetre; counts of 40 to 240 stitches. */
const fabric = fc
  .record({
    gauge: fc.integer({ min: 80, max: 240 }),
    counts: fc.array(fc.integer({ min: 40, max: 240 }), { minLength: 3, maxLength: 12 }),
  })
  .map(({ gauge, counts }): readonly ClaimedLength[] =>
    counts.map((count, size) => {
      const exact = new Fraction(count).mul(100).div(gauge)
      return { size, count: new Fraction(count), length: exact.div(half).round().mul(half) }
    }),
  )

describe('claims over one fabric', () => {
  it('are alike where they are one gauge, rounded', () => {
    fc.assert(
      fc.property(fabric, (claims) => {
        expect(sortClaims(claims, half, null)).toEqual({ alike: claims, odd: [] })
      }),
      { seed },
    )
  })

  it('have one odd among them where one length is a tenth off', () => {
    const off = fc.record({ claims: fabric, at: fc.nat(), longer: fc.boolean() })
    fc.assert(
      fc.property(off, ({ claims, at, longer }) => {
        const odd = at % claims.length
        const share = new Fraction(longer ? 11 : 9, 10)
        const wrong = claims.map((claim) =>
          claim.size === odd ? { ...claim, length: claim.length.mul(share) } : claim,
        )
        expect(sortClaims(wrong, half, null).odd.map(({ size }) => size)).toEqual([odd])
      }),
      { seed },
    )
  })

  it('are alike or odd, each of them, in any order', () => {
    const any = fc.array(
      fc.record({ count: fc.integer({ min: 1, max: 300 }), length: fc.integer({ min: 1, max: 300 }) }),
      { maxLength: 12 },
    )
    fc.assert(
      fc.property(any, (lines) => {
        const claims = lines.map(({ count, length }, size) => ({
          size,
          count: new Fraction(count),
          length: new Fraction(length),
        }))
        const known = new Fraction(1)
        const sizes = (found: readonly ClaimedLength[]) => found.map(({ size }) => size).sort((a, b) => a - b)
        const { alike, odd } = sortClaims(claims, half, known)
        expect(sizes([...alike, ...odd])).toEqual(claims.map(({ size }) => size))
      }),
      { seed },
    )
  })
})
