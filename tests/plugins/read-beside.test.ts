import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import rehypeStringify from 'rehype-stringify'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { afterAll, describe, expect, it } from 'vitest'
import { besideDraft } from '../../plugins/read-beside.ts'
import { readDraft } from '../../plugins/read-draft.ts'
import { remarkSizewright } from '../../plugins/remark-sizewright.ts'
import { fromBytes } from '../../src/cli/draft-file.ts'
import { createSource, placeOf } from '../../src/diagnostic/index.ts'
import { textForAll } from '../../src/measure/index.ts'

const site = unified().use(remarkParse).use(remarkSizewright).use(remarkRehype).use(rehypeStringify)

const folder = mkdtempSync(join(tmpdir(), 'beside-'))
const draft = join(folder, 'shawl', 'index.md')
mkdirSync(join(folder, 'shawl', 'tables'), { recursive: true })
writeFileSync(draft, '')
const table = 'measure,unit,Small,Large\nWingspan,cm,150-160,170-180\nHead,cm,54,58\n'
writeFileSync(join(folder, 'shawl', 'm.csv'), table)
writeFileSync(join(folder, 'shawl', 'tables', 'm.csv'), table)
writeFileSync(join(folder, 'shawl', 'slip.csv'), 'measure,unit,Small,Large\nHead,cm,54,wide\n')
writeFileSync(join(folder, 'shawl', 'latin.csv'), new Uint8Array([0x6d, 0xe4]))
writeFileSync(join(folder, 'shawl', 'long.csv'), `# ${'x'.repeat(200_000)}`)
writeFileSync(join(folder, 'secret.csv'), table)
symlinkSync(join(folder, 'secret.csv'), join(folder, 'shawl', 'link.csv'))
afterAll(() => rmSync(folder, { recursive: true }))

describe('a file beside the draft', () => {
  it.each([
    ['m.csv', 'text'],
    ['tables/m.csv', 'text'],
    ['none.csv', 'missing'],
    ['tables', 'missing'],
    ['../secret.csv', 'missing'],
    ['link.csv', 'missing'],
    ['latin.csv', 'not-text'],
    ['long.csv', 'too-long'],
  ])('%s: %s', (path, kind) => {
    expect(besideDraft(draft).readBeside(path).kind).toBe(kind)
  })

  it('of a draft in no folder that there is', () => {
    expect(besideDraft(join(folder, 'nowhere', 'index.md')).readBeside('m.csv').kind).toBe('missing')
  })
})

function text(fits: string) {
  return `---
title: Shawl
sizes: [Small, Large]
fits: ${fits}
swatch: {stitches: 10 per 10 cm}
finished: {Band: 'width(stitches(body("head") - 10 %) as whole)'}
---

Around the head: {{body("head")}}.
`
}

/** What the page says of the sizes, and the findings with line and column. */
function proofed(fits: string, firstSize = 'Small') {
  const source = createSource(draft, text(fits).replace('[Small, Large]', `[${firstSize}, Large]`))
  const { value, diagnostics } = readDraft(draft, 'shawl', source.text, null, besideDraft(draft)).outcome
  const found = diagnostics.map(({ at, message }) => {
    const { line, column } = placeOf(source, at.start)
    return `${line}:${column} ${message}`
  })
  return {
    fits: value?.fits.map(({ label, cells }) => [label, ...cells.map(textForAll)]),
    found,
    finished: value?.finished,
  }
}

describe('a picture beside the draft', () => {
  const files: readonly (readonly [string, string, string])[] = [
    ['a.png', '\u0089PNG\r\n\u001a\n', 'picture'],
    ['a.jpg', '\u00ff\u00d8\u00ff\u00e0', 'picture'],
    ['a.webp', 'RIFF\u0001\u0002\u0003\u0004WEBPVP8 ', 'picture'],
    ['a.svg', '<?xml version="1.0"?>\n<!-- The hat -->\n<svg xmlns="http://www.w3.org/2000/svg"/>', 'picture'],
    ['renamed.jpg', 'PK\u0003\u0004', 'other'],
    ['empty.png', '', 'other'],
  ]

  it.each(files)('%s', (name, letters, expected) => {
    writeFileSync(join(folder, 'shawl', name), letters, 'latin1')
    expect(besideDraft(draft).lookBeside(`./${name}`)).toBe(expected)
    expect(besideDraft(draft).lookBeside(`../shawl/${name}`)).toBe(expected)
  })

  it.each(['./none.png', './tables', '../'])('%s is none', (path) => {
    expect(besideDraft(draft).lookBeside(path)).toBe('missing')
  })
})

describe('a draft with a body table of its own', () => {
  it.each(['{table: ./m.csv, sizes: [Small, Large]}', '{table: ./m.csv}', '{table: "tables/m.csv", sizes: [S, L]}'])(
    '%s',
    (fits) => {
      const { found, fits: rows, finished } = proofed(fits)
      expect(found).toEqual([])
      expect(rows).toEqual([['To fit wingspan', '150–160\u00a0cm (59–63\u00a0in)', '170–180\u00a0cm (67–70¾\u00a0in)']])
      expect(finished?.map(({ cells }) => cells.map(textForAll))).toEqual([
        ['49\u00a0cm (19¼\u00a0in)', '52\u00a0cm (20½\u00a0in)'],
      ])
    },
  )

  it('of which one size is drawn on nobody', () => {
    expect(proofed('{table: ./m.csv, sizes: [none, Large]}').fits).toEqual([
      ['To fit wingspan', '–', '170–180\u00a0cm (67–70¾\u00a0in)'],
    ])
  })

  it.each([
    ['{table: ./n.csv}', '4:15 The table `n.csv` does not lie beside the draft.'],
    ['{table: ./slip.csv}', '4:15 slip.csv, line 2, column 12: `wide` is not a measure.'],
    ['{table: ../secret.csv}', '4:15 `../secret.csv` is not a table in the draft’s own folder.'],
    ['{table: ./m.csv, sizes: [Small, Huge]}', '4:39 The body table `./m.csv` has no size `Huge`.'],
    ['{table: women}', '4:15 The body table `women` has no size `Tiny`.'],
  ])('refused: %s', (fits, message) => {
    expect(proofed(fits, fits === '{table: women}' ? 'Tiny' : 'Small').found).toEqual([message])
  })

  it('in a host’s pipeline', async () => {
    const file = new VFile({ path: draft, value: text('{table: ./m.csv}') })
    const html = String(await site.process(file))
    expect(html).toContain('54')
    expect(file.data.sizewright).toMatchObject({ diagnostics: [], pattern: { fits: [{ label: 'To fit wingspan' }] } })
  })

  it('from standard input has no folder to look in', () => {
    const { diagnostics } = fromBytes('-', new TextEncoder().encode(text('{table: ./m.csv}'))).outcome
    expect(diagnostics.map(({ message }) => message)).toEqual([
      'The table `m.csv` can’t be found: this draft lies in no folder.',
    ])
  })
})
