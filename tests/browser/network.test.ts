import { gzipSync } from 'node:zlib'
import type { Page, Response } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { notFoundPage, pages } from './site.ts'

const visit = visitor()

const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; connect-src 'self'; img-src 'self' data:; worker-src 'self'; base-uri 'none'; form-action 'none'"

/** What comes compressed from the start. */
const packed = /woff2|jpeg|png|webp|pdf/

const pathOf = (response: Response): string => new URL(response.url()).pathname

/** Bytes of a file as a web host sends it, beside its path. */
async function weigh(response: Response): Promise<[string, number]> {
  const body = await response.body()
  const type = response.headers()['content-type'] ?? ''
  return [pathOf(response), (packed.test(type) ? body : gzipSync(body, { level: 9 })).length]
}

/** Notes down what a page asks for, what it gets and what the browser tells of it. */
function listen(page: Page) {
  const asked: string[] = []
  const failed: string[] = []
  const told: string[] = []
  const loaded: Response[] = []
  // The worker that keeps pages for when there is no connection asks for files too.
  page.context().on('request', (request) => asked.push(request.url()))
  page.on('requestfailed', (request) => failed.push(request.url()))
  page.on('console', (message) => told.push(message.text()))
  page.on('response', (response) => {
    if (response.status() >= 400) failed.push(pathOf(response))
    if (response.request().resourceType() !== 'image') loaded.push(response)
  })
  return { asked, failed, told, loaded }
}

const fontsOf = (page: Page): Promise<string[]> =>
  page.evaluate(async () =>
    [...(await document.fonts.ready)]
      .filter(({ status }) => status === 'loaded')
      .map(({ family }) => family.replaceAll('"', '')),
  )

describe.concurrent('a page', () => {
  test.each([...pages, notFoundPage])('%s loads what is its own, nothing else, and less than 60 kB', async (path) => {
    await visit('about:blank', { serviceWorkers: 'allow' }, async (page) => {
      const { asked, failed, told, loaded } = listen(page)
      await page.goto(path, { waitUntil: 'networkidle' })
      const { origin } = new URL(page.url())
      expect(asked.filter((url) => new URL(url).origin !== origin)).toEqual([])
      expect(failed.filter((each) => each !== notFoundPage)).toEqual([])
      // Breaches of the policy are told in the console.
      expect(told.filter((each) => path !== notFoundPage || !each.includes('404'))).toEqual([])
      const given = page.locator('meta[http-equiv="Content-Security-Policy"]')
      expect(await given.getAttribute('content')).toBe(policy)
      // Blocks of data are no scripts: nothing runs them, and the policy lets them be.
      expect(await page.locator('script:not([src], [type$="json"]), [style], style').count()).toBe(0)
      const fonts = await fontsOf(page)
      expect(fonts).toContain('Atkinson Hyperlegible Next')
      expect(fonts).toContain('Literata')
      const files = await Promise.all(loaded.map(weigh))
      expect(files.filter(([file]) => file.endsWith('.woff2')).length).toBeGreaterThan(1)
      const total = files.reduce((sum, [, bytes]) => sum + bytes, 0)
      expect(total, JSON.stringify(files)).toBeLessThan(60_000)
    })
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
