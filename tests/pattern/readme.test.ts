import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'

const readme = readFileSync(resolve(import.meta.dirname, '../../README.md'), 'utf8')

/** The first block with this info word that holds these words. */
function block(info: string, words: string): string {
  const blocks = [...readme.matchAll(/^ *```(\w+)\n([\s\S]*?)^ *```$/gm)]
  const found = blocks.find(([, word, text]) => word === info && text?.includes(words))
  if (found?.[2] === undefined) throw new Error(`no ${info} block with ${words}`)
  return found[2]
}

describe('what the README shows of bodies and swatches is true', () => {
  const swatch = block('yaml', 'unblocked:')
  const table = block('csv', 'measure,unit')
  const formulas: readonly (readonly [string, string])[] = [
    ['body("bust") + 5 cm', '88.5 (99, 109) cm [34¾ (39, 43) in]'],
    ['body("bust") - 10 %', '75 (84.5, 93.5) cm [29½ (33¼, 36¾) in]'],
    ['body("bust") + ease("classic")', '91 (101.5, 111.5) cm [35¾ (40, 44) in]'],
    ['stitches(40 cm) * 2', '97'],
    ['height(20, "body unblocked")', '22 cm (8¾ in)'],
    ['repeats(42 cm, shell)', '10'],
    ['repeats_width(10, shell)', '42 cm (16½ in)'],
    ['stitches(42 cm, shell)', '60'],
    ['stitches(10 cm, ribbing)', '16'],
  ]

  it.each(formulas)('%s', (formula, prints) => {
    const facts = `title: A\nsizes: [Small, Medium, Large]\nfits: {table: ./measures.csv}\n${swatch}finished: {It: '${formula}'}`
    const beside = { readBeside: () => ({ kind: 'text', text: table }) as const, lookBeside: () => 'picture' as const }
    const { value, diagnostics } = readDraft('a.md', 'a', `---\n${facts}\n---\n`, null, beside).outcome
    expect(diagnostics.map(({ message }) => message)).toEqual([])
    const printed = value?.finished[0]?.value.segments.map(({ text }) => text).join('')
    expect(printed).toBe(prints)
  })
})
