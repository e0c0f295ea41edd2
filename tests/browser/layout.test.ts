import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { notFoundPage, pages, patternPages, switchPages } from './site.ts'

const visit = visitor()

function at<T>(width: number, path: string, use: (page: Page) => Promise<T>): Promise<T> {
  return visit(path, { viewport: { width, height: 800 } }, use)
}

describe('no page is wider than its window', () => {
  const cases = [...pages, notFoundPage].flatMap((path) => [320, 360, 768, 1280].map((width) => ({ path, width })))

  test.each(cases)('$path at $width px', async ({ path, width }) => {
    expect(await at(width, path, (page) => page.evaluate(() => document.documentElement.scrollWidth))).toBe(width)
  })
})

describe('rows', () => {
  test.each(patternPages)('%s has the label above its steps on a phone, beside them on a wide page', async (path) => {
    const offsets = (page: Page): Promise<{ across: number; down: number }> =>
      page.evaluate(() => {
        const row = [...document.querySelectorAll('.row')].find((each) => each.querySelector('.row-label'))
        const label = row?.querySelector('.row-label')?.getBoundingClientRect()
        const steps = row?.querySelector('.row-steps')?.getClientRects()[0]
        return { across: (steps?.left ?? 0) - (label?.left ?? 0), down: (steps?.top ?? 0) - (label?.top ?? 0) }
      })
    const narrow = await at(360, path, offsets)
    const wide = await at(1280, path, offsets)
    expect(narrow.across).toBeLessThan(2)
    expect(narrow.down).toBeGreaterThan(16)
    expect(wide.across).toBeGreaterThan(100)
    expect(Math.abs(wide.down)).toBeLessThan(8)
  })

  test.each(patternPages)('%s leads from its list of contents to every section', async (path) => {
    const dead = await at(1280, path, (page) =>
      page.evaluate(() =>
        [...document.querySelectorAll('.contents a')]
          .map((link) => link.getAttribute('href')?.slice(1) ?? '')
          .filter((id) => document.getElementById(id) === null),
      ),
    )
    expect(dead).toEqual([])
  })

  test.each(switchPages)('%s keeps the switch clear of the section that a link leads to', async (path) => {
    for (const width of [360, 1280]) {
      await at(width, path, async (page) => {
        await page.locator('.contents a').nth(3).click()
        const heading = await page.locator(':target').boundingBox()
        const bar = await page.locator('.bar').boundingBox()
        if (heading === null || bar === null) throw new Error('The page lacks its switch or its section.')
        const clear = heading.y >= bar.y + bar.height || heading.y + heading.height <= bar.y
        expect(clear, `${width} px`).toBe(true)
      })
    }
  })
})

test('a print shows the size that was chosen, and none of the page’s furniture', async () => {
  await at(1280, switchPages[0] ?? '', async (page) => {
    await page.locator('#size-1').check()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.size-switch .choice-option:visible').allInnerTexts()).toHaveLength(1)
    expect(await page.locator('.contents').isVisible()).toBe(false)
    expect(await page.locator('.row').first().isVisible()).toBe(true)
  })
})
