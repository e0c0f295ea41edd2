import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openDraft } from '../../src/cli/draft-file.ts'
import { proofFile } from '../../src/proof/page/index.ts'
import { violationsInBothSchemes } from './axe.ts'
import { launch } from './browser.ts'

const folder = mkdtempSync(join(tmpdir(), 'proof-'))
const drafts = readdirSync('content/patterns').map((slug) => `content/patterns/${slug}/index.md`)
let browser: Browser

beforeAll(async () => {
  browser = await launch()
  // A draft in which much is wrong, in rows and beside them, for a page with all its parts.
  const [first = ''] = drafts
  const wrong = readFileSync(first, 'utf8')
    .replace(/\((12|18) sc\)/g, '($1 hdc)')
    .replace('{{ease}}', '{{easing}}')
    .replace('Rnd 5:', 'Rnd 6:')
    .replace('Rnd 8: *Sc', 'Rnd 8: *Wibble')
    .replace('---\n\n', 'accepted: [{code: row-label-twice, at: Rnd 6, why: As in the film.}]\n---\n\n')
  writeFileSync(join(folder, 'wrong.md'), wrong)
})
afterAll(async () => {
  await browser.close()
  rmSync(folder, { recursive: true, force: true })
})

async function saved(path: string): Promise<string> {
  const opened = await openDraft(path)
  if (opened.kind === 'unopened') throw new Error(opened.unopened.problem)
  const { source, outcome, ledger } = opened.draft
  const proofed = { source, pattern: outcome.value, diagnostics: outcome.diagnostics, unknown: ledger?.unknown ?? [] }
  const file = join(folder, `${drafts.indexOf(path)}.html`)
  writeFileSync(file, proofFile(proofed))
  return pathToFileURL(file).href
}

describe('the proof as one file', () => {
  it.each([join(folder, 'wrong.md'), ...drafts])(
    'has nothing to mend for axe and asks for nothing else: %s',
    async (path) => {
      const context = await browser.newContext({ bypassCSP: true })
      try {
        const page = await context.newPage()
        const asked: string[] = []
        page.on('request', (request) => asked.push(request.url()))
        const address = await saved(path)
        await page.goto(address)
        for (const width of [360, 1280]) {
          await page.setViewportSize({ width, height: 800 })
          expect(await violationsInBothSchemes(page), `${width} px`).toEqual([])
          const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
          expect(overflow).toBeLessThanOrEqual(0)
        }
        expect(asked).toEqual([address])
      } finally {
        await context.close()
      }
    },
  )

  it('has all its parts where much is wrong', async () => {
    const page = await browser.newPage()
    await page.goto(await saved(join(folder, 'wrong.md')))
    expect(await page.locator('#findings li').count()).toBeGreaterThan(4)
    for (const words of ['Accepted', 'What could not be checked', 'Values of the formulas', 'not worked'])
      expect(await page.getByText(words).count(), words).toBeGreaterThan(0)
    await page.close()
  })
})
