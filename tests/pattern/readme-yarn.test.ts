import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'

const readme = readFileSync(resolve(import.meta.dirname, '../../README.md'), 'utf8')
const facts = /^### Yarn\n\n```yaml\n([\s\S]*?)^```$/m.exec(readme)?.[1] ?? ''

const body = `
## Body

Rows 1–8: Fsc 20 (24, 28), turn.

## Edging

Rnd 1: Ch 1, sc in each st around, join.
`

describe('what the README shows of yarn is true', () => {
  it('gives both yarns, those of the sample as they were weighed', () => {
    const text = `---\ntitle: A\nsizes: [Adult XS, Adult S, Adult L]\n${facts}---\n${body}`
    const { value, diagnostics } = readDraft('a.md', 'a', text).outcome
    expect(diagnostics.map(({ message }) => message)).toEqual([])
    const weighed = Object.entries(value?.yarn ?? {}).map(([name, { grams, margin }]) => [name, grams[1], margin])
    expect(weighed).toEqual([
      ['main', 165, 10],
      ['contrast', 40, 10],
    ])
  })
})
