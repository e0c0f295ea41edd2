import { describe, expect, it } from 'vitest'
import { fromBytes } from '../../src/cli/draft-file.ts'
import type { GivenFacts } from '../../src/pattern/read-facts.ts'

function read(name: string, text: string, given: GivenFacts = {}) {
  const { outcome } = fromBytes(name, new TextEncoder().encode(text), null, given)
  return { pattern: outcome.value, codes: outcome.diagnostics.map(({ code }) => code) }
}

const rows = `Harbour Cap

Rnd 1: 6 sc in ring. (6)
Rnd 2: 2 sc in each st around. (12)
Rnd 3: *Sc, 2 sc in next st; rep from * around. (18)
`

describe('an old draft', () => {
  it('without front matter is proofed by the sizes that are given', () => {
    const { pattern, codes } = read('harbour-cap.md', rows, { sizes: ['S', 'M'] })
    expect(codes).toEqual([])
    expect(pattern?.title).toBe('harbour-cap')
    expect(pattern?.rows.map(({ label, total }) => [label, total])).toEqual([
      ['Rnd 1', [6, 6]],
      ['Rnd 2', [12, 12]],
      ['Rnd 3', [18, 18]],
    ])
  })

  it('takes its size columns by hand as they are', () => {
    const text = 'Row 1: Ch 11 (13, 15), sc in 2nd ch from hook and in each ch across, turn. 10 (12, 15) sc\n'
    const { pattern, codes } = read('x.txt', text, { sizes: ['S', 'M', 'L'] })
    expect(pattern?.rows[0]?.total).toEqual([10, 12, 14])
    expect(codes).toEqual(['count-mismatch'])
  })

  it('is read in the terms that are given', () => {
    const text = 'Rnd 1: 6 dc in ring. (6 dc)\n'
    const { pattern } = read('x.md', text, { sizes: ['S'], terms: 'uk' })
    expect(pattern?.terms).toBe('uk')
  })

  it('lacks its front matter where no sizes are given, and says what to do', () => {
    const { pattern, codes } = read('x.md', rows)
    expect([pattern, codes]).toEqual([null, ['front-matter-missing']])
  })

  it('says itself what it says: what is given only fills gaps', () => {
    const { pattern } = read('x.md', `---\nsizes: [XS, XL]\n---\n${rows}`, { sizes: ['S'] })
    expect([pattern?.title, pattern?.sizes]).toEqual(['x', ['XS', 'XL']])
  })

  it('of plain text may be indented', () => {
    const indented = rows.replaceAll(/^Rnd/gm, '      Rnd')
    expect(read('x.txt', indented, { sizes: ['S'] }).pattern?.rows).toHaveLength(3)
  })

  it.each([[[]], [['S', 'S']], [Array.from({ length: 99 }, (_, size) => `S${size}`)]])(
    'is refused with sizes that make no sense: %j',
    (sizes) => {
      expect(read('x.md', rows, { sizes }).pattern).toBeNull()
    },
  )
})
