import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import rehypeStringify from 'rehype-stringify'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import { unified } from 'unified'
import { VFile } from 'vfile'
import { describe, expect, it } from 'vitest'
import { remarkSizewright } from '../../plugins/remark-sizewright.ts'
import type { Diagnostic } from '../../src/diagnostic/index.ts'

const site = unified().use(remarkParse).use(remarkGfm).use(remarkSizewright).use(remarkRehype).use(rehypeStringify)

const facts = '---\ntitle: Mat\nsizes: [S, M]\n---\n'
const body = '\nAbout {{[20, 30] cm}} and {{nothing}}.\n'

function draftFile(): string {
  const folder = join(mkdtempSync(join(tmpdir(), 'site-')), 'harbour-mat')
  mkdirSync(folder)
  const path = join(folder, 'index.md')
  writeFileSync(path, facts + body)
  return path
}

async function render(value: string, path?: string) {
  const file = new VFile({ value, ...(path === undefined ? {} : { path }) })
  const html = String(await site.process(file))
  const left = file.data.sizewright as { pattern: { slug: string } | null; diagnostics: Diagnostic[] }
  return { html, ...left }
}

describe('the remark plugin in a host’s pipeline', () => {
  const blank = facts.replace(/[^\n]/g, ' ')

  it.each([
    ['the whole file', facts + body],
    ['the file with its front matter blanked', blank + body],
    ['the body alone', body],
  ])('finds the same places when it is handed %s', async (_, value) => {
    const { diagnostics, pattern } = await render(value, draftFile())
    expect(pattern?.slug).toBe('harbour-mat')
    const place = (facts + body).indexOf('nothing')
    expect(diagnostics.map(({ code, at }) => [code, at.start])).toEqual([['name-unknown', place]])
  })

  it('leaves the resolved text in the tree', async () => {
    const { html } = await render(`${facts}\nCh {{[60, 72]}}, *so*.\n`)
    expect(html).toContain('<span class="s s0">60</span>')
    expect(html).toContain('<em>so</em>')
    expect(html).not.toContain('title: Mat')
  })

  it('lets no raw HTML through', async () => {
    const { html } = await render(`${facts}\nA <b onclick="x()">bold</b> word.\n\n<script>alert(1)</script>\n`)
    expect(html).not.toMatch(/<b\b|<script/)
    expect(html).toContain('&#x3C;script>')
  })

  it('puts a directive that is not ours back as it was written', async () => {
    const { html } = await render(`${facts}\nA ratio of 3:two and :note[this].\n`)
    expect(html).toContain('A ratio of 3:two and :note[this].')
  })

  it('says what is wrong when there are no facts', async () => {
    const { pattern, diagnostics, html } = await render('# Mat\n')
    expect(pattern).toBeNull()
    expect(diagnostics.map(({ code }) => code)).toEqual(['front-matter-missing'])
    expect(html).toBe('')
  })
})
