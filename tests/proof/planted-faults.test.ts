import { describe, expect, it } from 'vitest'
import { createSource, placeOf } from '../../src/diagnostic/index.ts'
import type { Clean } from './planted.ts'
import { clean, faulty, proofed, textOf } from './planted.ts'
import { plantedFaults } from './planted-faults.ts'

const names = Object.keys(clean).filter((name): name is Clean => name in clean)

describe('a clean draft has no finding at all', () => {
  it.each(names)('%s', (name) => {
    expect(proofed(name, textOf(name)).found.map(({ code, message }) => `${code}: ${message}`)).toEqual([])
  })
})

describe('one fault is found: alone, at its place, for its sizes, with what to write', () => {
  it.each(plantedFaults.map((each) => [`${each.draft}: ${each.words} → ${each.instead}`, each] as const))(
    '%s',
    (_, planted) => {
      const { text, start, end } = faulty(planted)
      const { found, sizes } = proofed(planted.draft, text)
      const source = createSource('draft', text)
      const shown = found.map(({ code, at, sizes: concerned }) => ({
        code,
        line: placeOf(source, at.start).line,
        words: text.slice(at.start, at.end),
        sizes: concerned.map((size) => sizes[size]),
      }))
      const line = placeOf(source, start).line
      expect(shown).toEqual([{ code: planted.code, line, words: text.slice(start, end), sizes: planted.sizes ?? [] }])
      expect(`${found[0]?.message}${found[0]?.hint ?? ''}`).not.toMatch(/undefined|null|NaN/)
    },
  )

  it('more than sixty of them, over all drafts', () => {
    expect(plantedFaults.length).toBeGreaterThan(60)
    expect([...new Set(plantedFaults.map(({ draft }) => draft))].sort()).toEqual([...names].sort())
  })
})
