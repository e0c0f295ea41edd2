import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'csv-parse/sync'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { countsPages, patternPages, siteFolder } from './site.ts'

const visit = visitor()
const plain = { javaScriptEnabled: false }

/** The rows of the table of counts that can be seen, as their cells' texts. */
function seen(page: Page): Promise<string[][]> {
  return page.locator('.counts-table tbody tr').evaluateAll((rows) =>
    rows
      .filter((row) => row.checkVisibility())
      .map((row) =>
        [...row.children]
          .filter((cell) => cell.checkVisibility())
          // biome-ignore lint/performance/useDomNodeTextContent: only what is seen counts
          .map((cell) => (cell instanceof HTMLElement ? cell.innerText : '').replace(/\s+/g, ' ').trim()),
      ),
  )
}

interface Count {
  readonly Row: string
  readonly [size: string]: string
}

const table = (path: string): Count[] =>
  parse(readFileSync(join(siteFolder, path.replace(/counts\/$/, 'counts.csv'))), { columns: true })

describe.each(countsPages)('%s', (path) => {
  test('is led to from the pattern, and leads back', async () => {
    await visit(path.replace(/counts\/$/, ''), plain, async (page) => {
      await page.getByRole('link', { name: 'Counts of every row' }).click()
      expect(new URL(page.url()).pathname).toBe(path)
      const title = (await page.locator('h1 a').textContent()) ?? ''
      await page.getByRole('link', { name: title }).click()
      expect(new URL(page.url()).pathname).toBe(path.replace(/counts\/$/, ''))
    })
  })

  test('has the counts of the spreadsheet, rows of one count on one line', async () => {
    const shown = await visit(path, plain, seen)
    const counts = table(path)
    const sizes = Object.keys(counts[0] ?? {}).slice(4)
    const everyLine = counts.map((row) => sizes.map((size) => row[size] ?? ''))
    expect(shown.length).toBeGreaterThan(3)
    expect(shown.length).toBeLessThanOrEqual(counts.length)
    for (const [label, ...cells] of shown) {
      const numbers = cells.filter((cell) => /^\d+$/.test(cell))
      // A count stands in the spreadsheet in the column of its size; chains of a foundation are no stitches there.
      for (const [size, cell] of cells.entries())
        if (/^\d+$/.test(cell))
          expect(
            everyLine.some((line) => line[size] === cell),
            `${label}`,
          ).toBe(true)
      if (numbers.length === 0) expect(cells.join(' ')).toMatch(/\d ch|^– ?/)
    }
  })

  test('keeps all of a size’s counts when that size is chosen', async () => {
    await visit(path, plain, async (page) => {
      const sizes = await page.locator('.size-switch .choice-option').allTextContents()
      for (const [position, size] of sizes.slice(1, 4).entries()) {
        await page.locator(`#size-${position}`).check()
        const rows = await seen(page)
        expect(rows.every((cells) => cells.length === 2)).toBe(true)
        const worked = table(path).filter((row) => row[size.trim()] !== '')
        const told = rows.flatMap(([label = '']) => numbersOf(label))
        const labelled = worked.flatMap(({ Row }) => numbersOf(Row))
        expect(told).toEqual(labelled)
      }
    })
  })
})

/** The numbers that a label stands for: `Rows 3–5 (RS)` is 3, 4, 5. */
function numbersOf(label: string): number[] {
  const [, from, to = from] = /^R\w+ (\d+)(?:–(\d+))?/.exec(label.trim()) ?? []
  if (from === undefined) return []
  return Array.from({ length: Number(to) - Number(from) + 1 }, (_, index) => Number(from) + index)
}

test.each(patternPages)('%s brings itself as data', (path) => {
  const data: unknown = JSON.parse(readFileSync(join(siteFolder, path, 'pattern.json'), 'utf8'))
  expect(data).toMatchObject({ slug: path.split('/')[2] })
})

describe('the film', () => {
  const filmed = patternPages.filter((path) =>
    readFileSync(join(siteFolder, path, 'index.html'), 'utf8').includes('row-film'),
  )

  test.each(filmed)('%s leads to it at the right time, beside the row and in its list', async (path) => {
    await visit(path, plain, async (page) => {
      const links = await page.locator('.row-film').evaluateAll((found) =>
        found.map((link) => ({
          href: link.getAttribute('href') ?? '',
          rel: link.getAttribute('rel'),
          text: link.textContent ?? '',
        })),
      )
      const listed = await page
        .locator('.moments a')
        .evaluateAll((found) => found.map((link) => link.getAttribute('href') ?? ''))
      expect(links.length).toBeGreaterThan(0)
      for (const { href, rel, text } of links) {
        const [, minutes, seconds] = /(\d+):(\d\d)$/.exec(text) ?? []
        expect(href).toBe(`${href.split('#')[0]}#t=${Number(minutes) * 60 + Number(seconds)}`)
        expect(href.startsWith('https://')).toBe(true)
        expect(rel).toBe('noopener')
        expect(listed).toContain(href)
      }
      expect(await page.locator('iframe, video, embed, object').count()).toBe(0)
    })
  })

  test('is in some demo pattern', () => {
    expect(filmed.length).toBeGreaterThan(0)
  })
})
