import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core'
import { afterAll, beforeAll } from 'vitest'
import { type ServedSite, serveFolder } from './serve.ts'
import { siteFolder } from './site.ts'

/**
 * Opens a page of the site in a window of its own, hands it to `use`, and closes it. Nothing is kept on the device unless a test
 * asks for it: it would be gathered anew for every window.
 */
export type Visit = <T>(path: string, options: BrowserContextOptions, use: (page: Page) => Promise<T>) => Promise<T>

/** Serves the built site and starts a browser for the tests of a file; both are closed after them. */
export function visitor(): Visit {
  let browser: Browser
  let site: ServedSite
  beforeAll(async () => {
    site = await serveFolder(siteFolder)
    browser = await launch()
  })
  afterAll(async () => {
    await browser.close()
    await site.close()
  })
  return async (path, options, use) => {
    const context = await browser.newContext({ baseURL: site.origin, serviceWorkers: 'block', ...options })
    try {
      const page = await context.newPage()
      await page.goto(path)
      return await use(page)
    } finally {
      await context.close()
    }
  }
}

/** A browser for tests that bring pages of their own; they close it. */
export function launch(): Promise<Browser> {
  return chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--no-first-run',
    ],
  })
}
