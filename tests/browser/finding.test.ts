import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { listingPages, patternPages } from './site.ts'

const visit = visitor()
const plain = { javaScriptEnabled: false, viewport: { width: 360, height: 740 } }

/** What a page of patterns shows: its patterns, and the links of its filters with the number beside each. */
interface Found {
  readonly titles: readonly string[]
  readonly offers: readonly { readonly href: string; readonly count: number }[]
}

async function find(page: Page): Promise<Found> {
  const offers = await page.locator('.filters li a').evaluateAll((links) =>
    links.map((link) => ({
      href: link.getAttribute('href') ?? '',
      count: Number(link.querySelector('.count')?.textContent),
    })),
  )
  return { titles: await titles(page), offers }
}

const titles = (page: Page): Promise<string[]> => page.locator('.card h2').allTextContents()

describe('patterns are found without script', () => {
  test('every filter leads where it says, with as many patterns as it says', async () => {
    const found = await visit('/', plain, async (page) => {
      const pages = new Map<string, Found>()
      for (const path of ['/', ...listingPages]) {
        await page.goto(path)
        pages.set(path, await find(page))
      }
      return pages
    })
    expect(found.size).toBeGreaterThan(10)
    for (const [path, { offers, titles: shown }] of found) {
      expect(shown.length, path).toBeGreaterThan(0)
      expect(offers.length, path).toBeGreaterThan(0)
      for (const { href, count } of offers) expect(found.get(href)?.titles, `${path} to ${href}`).toHaveLength(count)
    }
  })

  test('by one thing, then by another, then back again', async () => {
    const both = listingPages.find((path) => path.split('/').length === 7) ?? ''
    const one = both.split('/').slice(0, 4).join('/').concat('/')
    await visit('/', plain, async (page) => {
      const all = await titles(page)
      await page.getByText('Find by').click()
      await page.locator(`.filters a[href="${one}"]`).click()
      const some = await titles(page)
      await page.getByText('Find by').click()
      await page.locator(`.filters a[href="${both}"]`).click()
      const few = await titles(page)
      expect(await page.locator('.chosen').textContent()).toContain(`${few.length} of ${all.length} patterns`)
      expect(all.filter((title) => some.includes(title))).toEqual(some)
      expect(some.filter((title) => few.includes(title))).toEqual(few)
      expect(few.length).toBeLessThan(some.length)
      await page.getByRole('link', { name: 'Take away:' }).last().click()
      expect(await titles(page)).toEqual(some)
      await page.getByRole('link', { name: 'Take away:' }).click()
      expect(await titles(page)).toEqual(all)
    })
  })

  test.each([360, 1280])('at %s px, by the keyboard alone', async (width) => {
    await visit('/', { ...plain, viewport: { width, height: 740 } }, async (page) => {
      for (const _ of Array(6)) {
        await page.keyboard.press('Tab')
        const focused = page.locator(':focus')
        if (await focused.evaluate((element) => element.tagName === 'SUMMARY')) await page.keyboard.press('Enter')
        if (await focused.evaluate((element) => element.closest('.filters ul') !== null)) break
      }
      await page.keyboard.press('Enter')
      await page.waitForURL('**/patterns/kind/*/')
      expect((await titles(page)).length).toBeGreaterThan(0)
    })
  })

  test.each(patternPages)('%s leads on to others like it', async (path) => {
    await visit(path, plain, async (page) => {
      const links = await page.locator('.more a').evaluateAll((found) => found.map((link) => link.getAttribute('href')))
      expect(links.at(-1)).toBe('/')
      const title = await page.locator('h1').textContent()
      for (const href of links) {
        await page.goto(href ?? '')
        expect(await titles(page), href ?? '').toContain(title)
      }
    })
  })
})
