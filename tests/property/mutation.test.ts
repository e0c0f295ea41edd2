import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { demoDrafts, readDemo } from '../demo-drafts.ts'
import { work } from '../rows/draft.ts'
import type { Run } from './mutants.ts'
import { mutants } from './mutants.ts'

interface Draft {
  readonly name: string
  readonly text: string
  readonly sizes: number
  /** With front matter, grading and prose. */
  readonly whole: boolean
  readonly run: (text: string) => Run
}

function worth({ found }: Run): readonly string[] {
  return found.filter(({ severity }) => severity !== 'note').map(({ code, message }) => `${code}: ${message}`)
}

/** The patterns that come with the program, whole. */
function demo([slug, text]: (typeof demoDrafts)[number]): Draft {
  const sizes = /^sizes: \[(.*)\]$/m.exec(text)?.[1]?.split(',').length ?? 1
  const run = (own: string): Run => {
    const { ledger, outcome } = readDemo(slug, own)
    if (ledger === null) throw new Error(`${slug} has no ledger`)
    return { ledger, found: outcome.diagnostics }
  }
  return { name: slug, text, sizes, whole: true, run }
}

/** A textbook shape, with a line for its sizes or terms where it has them. */
function shape(file: string): Draft {
  const text = readFileSync(new URL(`shapes/${file}`, import.meta.url), 'utf8')
  const sizes = /^sizes: \[(.*)\]$/m.exec(text)?.[1]?.split(', ') ?? ['One size']
  const terms = /^terms: uk$/m.test(text) ? 'uk' : 'us'
  return { name: file, text, sizes: sizes.length, whole: false, run: (own) => work(own, { sizes, terms }) }
}

const drafts: readonly Draft[] = [
  ...demoDrafts.map(demo),
  ...readdirSync(new URL('shapes/', import.meta.url))
    .toSorted()
    .map(shape),
]

/** Whole patterns take their time: of their mutants every so many is tried. */
const everyOf = (draft: Draft): number => (draft.whole ? 3 : 1)

describe('a number changed in one size is found', () => {
  const missed: string[] = []
  let all = 0

  it.each(drafts.map((draft) => [draft.name, draft] as const))('%s', (name, draft) => {
    const own = draft.run(draft.text)
    expect(worth(own)).toEqual([])
    const tried = [...mutants(draft.text, own, draft.sizes)].filter((_, at) => at % everyOf(draft) === 0)
    for (const mutant of tried) {
      if (worth(draft.run(mutant.text)).length === 0) missed.push(`${name} ${mutant.what} ${mutant.shown}`)
    }
    all += tried.length
    expect(tried.length).toBeGreaterThan(0)
  })

  it('in 99 of 100, over all drafts', async ({ annotate }) => {
    if (missed.length > 0) await annotate(`${missed.length} of ${all} were not found:\n${missed.join('\n')}`)
    expect(all).toBeGreaterThan(800)
    expect(missed.length / all, missed.join('\n')).toBeLessThanOrEqual(0.01)
  })
})
