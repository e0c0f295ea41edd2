import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { notFoundPage, pages } from './site.ts'

const visit = visitor()

const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data:; worker-src 'self'; base-uri 'none'; form-action 'none'"

interface Loaded {
  readonly foreign: readonly string[]
  readonly failed: readonly string[]
  /** What the browser wrote to its console: breaches of the policy are told there. */
  readonly told: readonly string[]
  readonly fonts: readonly string[]
  readonly policy: string | null
  /** Blocks of data are no scripts: nothing runs them, and the policy lets them be. */
  readonly inlineScripts: number
  readonly inlineStyles: number
}

function load(path: string): Promise<Loaded> {
  return visit('about:blank', {}, async (page) => {
    const asked: string[] = []
    const failed: string[] = []
    const told: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    page.on('response', (response) => response.status() >= 400 && failed.push(new URL(response.url()).pathname))
    page.on('requestfailed', (request) => failed.push(request.url()))
    page.on('console', (message) => told.push(message.text()))
    await page.goto(path, { waitUntil: 'networkidle' })
    const { origin } = new URL(page.url())
    return {
      foreign: asked.filter((url) => new URL(url).origin !== origin),
      failed: failed.filter((each) => each !== notFoundPage),
      told: told.filter((each) => path !== notFoundPage || !each.includes('404')),
      fonts: await page.evaluate(async () =>
        [...(await document.fonts.ready)]
          .filter(({ status }) => status === 'loaded')
          .map(({ family }) => family.replaceAll('"', '')),
      ),
      policy: await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content'),
      inlineScripts: await page.locator('script:not([src], [type$="json"])').count(),
      inlineStyles: await page.locator('[style], style').count(),
    }
  })
}

describe('a page loads what is its own, and nothing else', () => {
  test.each([...pages, notFoundPage])('%s', async (path) => {
    const { fonts, ...rest } = await load(path)
    expect(rest).toEqual({ foreign: [], failed: [], told: [], policy, inlineScripts: 0, inlineStyles: 0 })
    expect(fonts).toContain('Atkinson Hyperlegible Next')
    expect(fonts).toContain('Literata')
  })
})

test('the policy stops a picture from elsewhere', async () => {
  await visit('/', {}, async (page) => {
    const told: string[] = []
    page.on('console', (message) => told.push(message.text()))
    await page.evaluate(() => {
      document.body.append(Object.assign(new Image(), { src: 'https://elsewhere.invalid/a.png' }))
    })
    await expect.poll(() => told.join()).toContain('Content Security Policy')
  })
})
