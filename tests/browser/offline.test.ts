import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { violations } from './axe.ts'
import { launch } from './browser.ts'
import { type ServedSite, serveFolder } from './serve.ts'
import { siteFolder } from './site.ts'

const cowl = '/patterns/slack-tide-cowl/'
const hat = '/patterns/bollard-hat/'

let browser: Browser
let folder: string
let site: ServedSite
let context: BrowserContext
let page: Page

beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser.close())

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'offline-'))
  cpSync(siteFolder, folder, { recursive: true })
  site = await serveFolder(folder)
  context = await browser.newContext({ baseURL: site.origin })
  page = await context.newPage()
})
afterEach(async () => {
  await context.close()
  await site.close()
  rmSync(folder, { recursive: true, force: true })
})

/** Names of the buckets on the device. */
const buckets = (): Promise<string[]> => page.evaluate(() => caches.keys())

/** Opens a page and waits until it is kept with all that belongs to it. */
async function open(path: string, bucket = `sizewright kept ${path}`): Promise<void> {
  await page.goto(path)
  const isKept = () =>
    page.evaluate(
      async ([name, address]) =>
        (await caches.has(name)) && (await (await caches.open(name)).match(address)) !== undefined,
      [bucket, path] as const,
    )
  await expect.poll(isKept, { timeout: 20_000 }).toBe(true)
}

/** Changes files of the site as a new build would. */
function change(path: string, by: (text: string) => string): void {
  const file = join(folder, path)
  writeFileSync(file, by(readFileSync(file, 'utf8')))
}

const newEdition = (html: string): string =>
  html
    .replace(/data-edition="[^"]*"/, 'data-edition="2.0"')
    .replace(/data-version="[^"]*"/, 'data-version="other"')
    .replaceAll('Slack Tide Cowl', 'Slacker Tide Cowl')

describe('without a connection', () => {
  test('numbers of a reader’s own are worked where they were worked before', async () => {
    const asked = `${cowl}?my-depth=33cm`
    const own = () => page.getByRole('region', { name: 'Your own numbers' })
    await open(cowl)
    await page.goto(asked)
    await own().waitFor()
    await context.setOffline(true)
    await page.goto(asked.replace('33', '30'))
    await own().waitFor()
    expect(await own().textContent()).toContain('Depth: 30 cm')
  })

  test('an opened pattern is there, styled, with its size switch, its counts and its print-outs', async () => {
    await open(cowl)
    await context.setOffline(true)
    await page.goto(`${cowl}?size=child`)
    expect(await page.locator('h1').textContent()).toBe('Slack Tide Cowl')
    await page.locator('#size-1').check()
    expect(await page.locator('.row .s1').first().isVisible()).toBe(true)
    expect(await page.locator('.row .s0').first().isVisible()).toBe(false)
    const fonts = await page.evaluate(async () =>
      [...(await document.fonts.ready)].filter(({ status }) => status === 'loaded').map(({ family }) => family),
    )
    expect(fonts.join()).toContain('Literata')
    expect(
      await page.locator('.pattern-cover img').evaluate((img: HTMLImageElement) => img.naturalWidth),
    ).toBeGreaterThan(0)
    await page.getByRole('link', { name: 'Counts of every row' }).click()
    expect(await page.locator('h1').textContent()).toBe('Counts of Slack Tide Cowl')
  })

  test('and when the site itself is gone, from the address alone', async () => {
    await open(cowl)
    await site.close()
    await page.goto('about:blank')
    await page.goto(cowl)
    expect(await page.locator('.row').count()).toBeGreaterThan(5)
    site = await serveFolder(folder)
  })

  test('a page that was not opened says so, and lists what is there', async () => {
    await open(cowl)
    await open(hat)
    await context.setOffline(true)
    await page.goto('/patterns/sluice-gate-pullover/')
    expect(await page.locator('h1').textContent()).toBe('There is no connection')
    await page.getByRole('link', { name: 'Bollard Hat' }).click()
    expect(await page.locator('h1').textContent()).toBe('Bollard Hat')
  })

  test('the list of patterns is there as it was last seen', async () => {
    await open('/', 'sizewright seen')
    await context.setOffline(true)
    await page.goto('/')
    expect(await page.locator('.card').count()).toBeGreaterThan(3)
    await page.goto('/patterns/kind/hat/')
    expect(await page.locator('h1').textContent()).toBe('There is no connection')
  })

  test('print-outs are those of the edition that is kept', async () => {
    await open(cowl)
    const pdf = `${cowl}slack-tide-cowl-a4.pdf`
    const length = readFileSync(join(folder, pdf)).length
    writeFileSync(join(folder, pdf), 'another edition')
    await context.setOffline(true)
    const kept = await page.evaluate(
      async ([bucket, path]) => (await (await caches.open(bucket)).match(path))?.blob().then(({ size }) => size),
      [`sizewright kept ${cowl}`, pdf] as const,
    )
    expect(kept).toBe(length)
    const [response] = await Promise.all([
      page.waitForResponse((each) => each.url().endsWith('.pdf')),
      page.getByRole('link', { name: 'Print-out (PDF): A4' }).click(),
    ])
    expect({ status: response.status(), kept: response.fromServiceWorker() }).toEqual({ status: 200, kept: true })
    expect(response.headers()['content-type']).toBe('application/pdf')
  })
})

describe('a new edition', () => {
  test('is announced, and shown when the reader asks for it', async () => {
    await open(cowl)
    change(`${cowl}index.html`, newEdition)
    await page.goto(cowl)
    expect(await page.locator('h1').textContent()).toBe('Slack Tide Cowl')
    const news = page.locator('.news')
    await news.getByText('There is a new edition, 2.0.').waitFor()
    expect(await violations(page)).toEqual([])
    await news.getByRole('button', { name: 'Show it' }).click()
    await page.getByRole('heading', { level: 1, name: 'Slacker Tide Cowl' }).waitFor()
    expect(await buckets()).not.toContain(`sizewright next ${cowl}`)
    await context.setOffline(true)
    await page.goto(cowl)
    expect(await page.locator('h1').textContent()).toBe('Slacker Tide Cowl')
  })

  test('waits as long as the reader likes, with and without a connection', async () => {
    await open(cowl)
    change(`${cowl}index.html`, newEdition)
    await page.goto(cowl)
    await page.getByRole('button', { name: 'Not now' }).click()
    expect(await page.locator('.news').count()).toBe(0)
    await context.setOffline(true)
    await page.goto(cowl)
    expect(await page.locator('h1').textContent()).toBe('Slack Tide Cowl')
    await context.setOffline(false)
    await page.goto(cowl)
    await page.getByText('There is a new edition, 2.0.').waitFor()
  })

  test('that says the same edition is told as a correction', async () => {
    await open(cowl)
    change(`${cowl}index.html`, (html) => newEdition(html).replace('data-edition="2.0"', 'data-edition="1.1"'))
    await page.goto(cowl)
    await page.getByText('This pattern has been corrected.').waitFor()
  })

  test('is nothing to tell of where only what stands around the pattern has changed', async () => {
    await open(cowl)
    change(`${cowl}index.html`, (html) => html.replace('Crochet patterns from the edge', 'Patterns from the edge'))
    await page.goto(cowl)
    expect(await page.locator('.site-header').textContent()).toContain('Crochet patterns')
    await expect
      .poll(
        async () => {
          await page.goto(cowl)
          return page.locator('.site-header').textContent()
        },
        { timeout: 20_000, interval: 500 },
      )
      .not.toContain('Crochet patterns')
    expect(await page.locator('.news').count()).toBe(0)
  })

  test('of a page that is gone from the site leaves what the reader has', async () => {
    await open(cowl)
    rmSync(join(folder, cowl), { recursive: true })
    await page.goto(cowl)
    expect(await page.locator('h1').textContent()).toBe('Slack Tide Cowl')
    expect(await buckets()).toContain(`sizewright kept ${cowl}`)
  })
})

test('a browser that keeps nothing shows the site all the same', async () => {
  const plain = await browser.newContext({ baseURL: site.origin, serviceWorkers: 'block' })
  const told: string[] = []
  const other = await plain.newPage()
  other.on('console', (message) => message.type() === 'error' && told.push(message.text()))
  other.on('pageerror', (error) => told.push(error.message))
  await other.goto(cowl, { waitUntil: 'networkidle' })
  expect(await other.locator('h1').textContent()).toBe('Slack Tide Cowl')
  expect(told).toEqual([])
  await plain.close()
})
