import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Diagnostic } from '../../src/diagnostic/index.ts'
import { loadSolver } from '../../src/solver/index.ts'
import { environment, gauge, sheet } from '../formula/workbench.ts'
import { type Counts, type Draft, smallDraft, written } from './linked-draft.ts'
import { exhaustive, most } from './linked-search.ts'

const solver = await loadSolver()
const runs = { seed: 20260314, numRuns: 60 }

function factsOf(sizes: readonly string[]) {
  return environment({ sizes, swatches: [{ name: null, gauge: gauge('12 per 10 cm', null) }], body: null, solver })
}

function chosen(draft: Draft): { readonly counts: Counts; readonly diagnostics: readonly Diagnostic[] } {
  const { settled, diagnostics } = sheet(written(draft), factsOf(draft.sizes))
  const counts = [...settled.values].flatMap(([name, value]) =>
    value.kind === 'text' ? [] : [[name, value.bySize.map((cell) => cell?.valueOf() ?? Number.NaN)] as const],
  )
  return { counts: Object.fromEntries(counts), diagnostics }
}

describe('linked counts', () => {
  it('are what trying every combination finds, ties included', () => {
    fc.assert(
      fc.property(smallDraft, (draft) => {
        const { counts, diagnostics } = chosen(draft)
        const groups = exhaustive(draft)
        const none = groups.some(({ best }) => best === null)
        for (const { cells, best } of diagnostics.length === 0 ? groups : []) {
          const found = cells.map(({ link, size }) => counts[link.name]?.[size] ?? Number.NaN)
          if (found.some((count) => count > most)) return
          expect(found, written(draft)).toEqual(cells.map(({ link, size }) => best?.[link.name]?.[size]))
        }
        if (diagnostics.length > 0) expect(none, written(draft)).toBe(true)
      }),
      runs,
    )
  })

  it('are the same when chosen again', () => {
    fc.assert(
      fc.property(smallDraft, (draft) => {
        expect(chosen(draft)).toEqual(chosen(draft))
      }),
      { ...runs, numRuns: 30 },
    )
  })

  it('keep every need, or the needs that contradict each other are named, and none of these could be left out', () => {
    fc.assert(
      fc.property(smallDraft, (draft) => {
        const { diagnostics } = chosen(draft)
        for (const finding of diagnostics) {
          expect(finding.code, written(draft)).toBe('linked-contradiction')
          const named = { ...draft, needs: needsNamed(finding, draft) }
          expect(exhaustive(named).some(({ best }) => best === null)).toBe(true)
          for (const need of named.needs) {
            const rest = { ...named, needs: named.needs.filter((other) => other !== need) }
            expect(chosen(rest).diagnostics, written(named)).toEqual([])
          }
        }
      }),
      runs,
    )
  })
})

/** The needs that a finding stands at or refers to. */
function needsNamed({ at, related }: Diagnostic, draft: Draft): Draft['needs'] {
  const text = written(draft)
  const places = [at, ...related.map((other) => other.at)].map(({ start, end }) => text.slice(start, end))
  return draft.needs.filter((need) => places.includes(need.text))
}
