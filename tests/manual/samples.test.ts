import { describe, expect, it } from 'vitest'
import type { Diagnostic, Span } from '../../src/diagnostic/index.ts'
import { catalogue } from '../../src/diagnostic/index.ts'
import { runSample } from '../../src/manual/run.ts'
import type { SampleDraft } from '../../src/manual/sample.ts'
import { writtenText } from '../../src/manual/sample.ts'
import { samples } from '../../src/manual/samples/index.ts'
import { loadSolver } from '../../src/solver/index.ts'

const solver = await loadSolver()

function found(draft: SampleDraft): readonly Diagnostic[] {
  return runSample(draft, solver).outcome.diagnostics
}

/** Where ‹ and › stand in a sample, counted without them; the top where there are none. */
function markedPlace(draft: SampleDraft): Span {
  const text = writtenText(draft) ?? ''
  const start = Math.max(text.indexOf('‹'), 0)
  return { start, end: Math.max(text.indexOf('›') - 1, 0) }
}

/** What is wrong with these is all that there is to say: the sentence itself names what may be written. */
const selfExplaining: ReadonlySet<string> = new Set(['fact-wrong'])

const all = Object.entries(samples)

describe.each(all)('%s', (code, { faulty, sound }) => {
  it('is found in the faulty draft, alone and at its place', () => {
    const findings = found(faulty)
    expect(findings.map((each) => `${each.code}: ${each.message}`)).toHaveLength(1)
    expect(findings[0]?.code).toBe(code)
    expect(findings[0]?.at).toEqual(markedPlace(faulty))
  })

  it('says in whole sentences what is wrong and what to write', () => {
    const [finding] = found(faulty)
    const sentence = /^\S.*[.?](?:[”)])?$/s
    expect(finding?.message).toMatch(sentence)
    if (selfExplaining.has(code)) expect(finding?.message).toMatch(/must be|needs|holds/)
    else expect(finding?.hint).toMatch(sentence)
    expect(`${finding?.message} ${finding?.hint ?? ''}`).not.toMatch(/undefined|null|NaN|\[object| {2}/)
  })

  it('is not found in the sound draft, nor anything else', () => {
    const open = found(sound).filter(({ accepted }) => accepted === undefined)
    expect(open.map((each) => `${each.code}: ${each.message}`)).toEqual([])
    expect(writtenText(sound) ?? '').not.toMatch(/[‹›]/)
  })
})

it('there is a sample for every kind of finding', () => {
  expect(Object.keys(samples).sort()).toEqual(Object.keys(catalogue).sort())
})
