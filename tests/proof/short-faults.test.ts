import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { fromBytes } from '../../src/cli/draft-file.ts'
import type { GivenFacts } from '../../src/pattern/read-facts.ts'
import { shortFaults } from './short-faults.ts'

/** Short drafts in the manners of many hands, a name before each. */
const drafts = new Map(
  readFileSync(new URL('clean/short-drafts.txt', import.meta.url), 'utf8')
    .split(/^=== /m)
    .slice(1)
    .map((part) => {
      const end = part.indexOf('\n')
      return [part.slice(0, end), `${part.slice(end + 1).trim()}\n`] as const
    }),
)

/** What is said on the command line for drafts without front matter. */
const given: Readonly<Record<string, GivenFacts>> = {
  'scarf-hand': { sizes: ['S', 'M', 'L'] },
  stars: { sizes: ['One size'] },
}

function found(name: string, text: string) {
  const { outcome } = fromBytes(`${name}.md`, new TextEncoder().encode(text), null, given[name] ?? {})
  const sizes = outcome.value?.sizes ?? []
  return outcome.diagnostics.map(({ code, at, sizes: concerned, message }) => ({
    code,
    words: text.slice(at.start, at.end),
    sizes: concerned.map((size) => sizes[size]).join(', '),
    message,
  }))
}

describe('short drafts', () => {
  it.each([...drafts])('%s is clean', (name, text) => {
    expect(found(name, text)).toEqual([])
  })
})

describe('one fault in a short draft', () => {
  it.each(shortFaults.map((fault) => [fault] as const))('%j', ([name, words, instead, code, sizes, elsewhere]) => {
    const text = drafts.get(name) ?? ''
    expect(text).toContain(words)
    const place = elsewhere ?? /‹(.*?)›/s.exec(instead)?.[1]
    expect(
      found(
        name,
        text.replace(words, () => instead.replace(/[‹›]/g, '')),
      ),
    ).toEqual([
      {
        code,
        words: place ?? expect.anything(),
        sizes: sizes ?? expect.anything(),
        message: expect.stringMatching(/^(?!.*(?:undefined|null|NaN))/),
      },
    ])
  })
})
