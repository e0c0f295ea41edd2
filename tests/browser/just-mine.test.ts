import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { type FoundDocument, readPdf } from '../print/read-pdf.ts'
import { printedRows } from '../print/reading/rows.ts'
import { visitor } from './browser.ts'

const visit = visitor()

const cowl = '/patterns/slack-tide-cowl/'

/** Presses a button of the line and reads the file that comes. */
async function take(page: Page, paper: 'A4' | 'Letter'): Promise<{ name: string; found: FoundDocument }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: `Just mine: ${paper}` }).click(),
  ])
  const found = await readPdf(new Uint8Array(readFileSync(await download.path())))
  return { name: download.suggestedFilename(), found }
}

const bare = (text: string): string => text.replace(/\s+/g, '')

/** What a reader of the page sees of its rows, table of sizes and yarn. */
async function seen(page: Page): Promise<{ rows: string[]; cells: string[]; amount: string }> {
  await page.evaluate(() => {
    for (const node of document.querySelectorAll('.tick, .counter, .row-film')) node.remove()
  })
  const texts = (selector: string): Promise<string[]> => page.locator(`${selector}:visible`).allInnerTexts()
  const [amount = ''] = await texts('.amount')
  return { rows: await texts('li.row'), cells: await texts('[data-cell]'), amount }
}

test('a reader’s own size, terms and measures come as a file whose words are the page’s', async () => {
  await visit('about:blank', { acceptDownloads: true }, async (page) => {
    const asked: string[] = []
    const told: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    page.on('console', (message) => told.push(message.text()))
    await page.goto(`${cowl}?size=adult-s&terms=uk&units=cm`, { waitUntil: 'networkidle' })
    const loaded = (): string[] => asked.map((url) => new URL(url).pathname)
    expect(loaded().filter((path) => /worker|mine|\.json$|typefaces/.test(path))).toEqual([])

    const { name, found } = await take(page, 'Letter')
    expect(name).toBe('slack-tide-cowl-adult-s-uk-centimetres-letter.pdf')
    expect(await page.locator('.just-mine output').textContent()).toBe('Done.')
    expect(loaded()).toEqual(expect.arrayContaining([`${cowl}pattern.json`, `${cowl}print.json`]))
    expect(asked.every((url) => new URL(url).origin === new URL(page.url()).origin || url.startsWith('blob:'))).toBe(
      true,
    )
    expect(told.filter((each) => !each.includes('blocked by Playwright'))).toEqual([])

    expect(found.pages[0]?.width).toBe(612)
    expect(found.title).toBe('Slack Tide Cowl – Adult S, UK terms')
    const onPage = await seen(page)
    const rows = printedRows(found.pages)
    expect(rows.map(({ label, steps }) => bare(label + steps))).toEqual(onPage.rows.map(bare))
    expect(onPage.cells.length).toBeGreaterThan(1)
    for (const words of [...onPage.cells, onPage.amount.replace('About', 'about')])
      expect(bare(found.text)).toContain(bare(words))
    // Neither inches, nor numbers and names of other sizes, nor the draft's own terms are left in the rows and the table.
    expect(found.text).not.toMatch(/\d(?:[½¼¾])? in\b|Child \(|\d \(\d+, \d+\)/)
    expect(rows.map(({ steps }) => steps).join()).not.toMatch(/\bsc\b/)
  })
})

test('numbers of the reader’s own are in it, and large letters', async () => {
  await visit(`${cowl}?size=adult-s&my-depth=33cm`, { acceptDownloads: true }, async (page) => {
    await page.waitForFunction(() => /33 cm/.test(document.querySelector('.own-line')?.textContent ?? ''))
    await page.evaluate(() => document.querySelector<HTMLInputElement>('#text-large')?.click())
    const { name, found } = await take(page, 'A4')
    expect(name).toBe('slack-tide-cowl-adult-s-us-both-large-print-a4.pdf')
    expect(found.text).toContain('Your own depth: 33 cm (13 in) instead of 26 cm [10¼ in]')
    expect(printedRows(found.pages).map(({ label }) => label)).toContain('Rnds 6–33:')
    // The size stands at the head of every page but the first.
    for (const { text } of found.pages.slice(1)) expect(text).toContain('Adult S')
  })
})
