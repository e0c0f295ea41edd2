import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { notFoundPage, pages, patternPages, switchPages } from './site.ts'

const visit = visitor()

function at<T>(width: number, path: string, use: (page: Page) => Promise<T>): Promise<T> {
  return visit(path, { viewport: { width, height: 800 } }, use)
}

test.each([...pages, notFoundPage])('%s is no wider than its window', async (path) => {
  await at(320, path, async (page) => {
    for (const width of [320, 360, 768, 1280]) {
      await page.setViewportSize({ width, height: 800 })
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width)
    }
  })
})

test.each(patternPages)(
  '%s has the label of a row above its steps on a phone, beside them on a wide page',
  async (path) => {
    const offsets = (page: Page): Promise<{ across: number; down: number }> =>
      page.evaluate(() => {
        const row = [...document.querySelectorAll('.row')].find((each) => each.querySelector('.row-label'))
        const label = row?.querySelector('.row-label')?.getBoundingClientRect()
        const steps = row?.querySelector('.row-steps')?.getClientRects()[0]
        return { across: (steps?.left ?? 0) - (label?.left ?? 0), down: (steps?.top ?? 0) - (label?.top ?? 0) }
      })
    await at(360, path, async (page) => {
      const narrow = await offsets(page)
      await page.setViewportSize({ width: 1280, height: 800 })
      const wide = await offsets(page)
      expect(narrow.across).toBeLessThan(2)
      expect(narrow.down).toBeGreaterThan(16)
      expect(wide.across).toBeGreaterThan(100)
      expect(Math.abs(wide.down)).toBeLessThan(8)
    })
  },
)

test.each(patternPages)('%s leads from its list of contents to every section, clear of the switch', async (path) => {
  await at(360, path, async (page) => {
    const dead = await page.evaluate(() =>
      [...document.querySelectorAll('.contents a')]
        .map((link) => link.getAttribute('href')?.slice(1) ?? '')
        .filter((id) => document.getElementById(id) === null),
    )
    expect(dead).toEqual([])
    for (const width of [360, 1280]) {
      await page.setViewportSize({ width, height: 800 })
      await page.locator('.contents a').nth(3).click()
      const heading = await page.locator(':target').boundingBox()
      const bar = await page.locator('.bar').boundingBox()
      if (heading === null || bar === null) throw new Error('The page lacks its bar or its section.')
      const below = heading.y - (bar.y + bar.height)
      const isClear = below >= 0 || heading.y + heading.height <= bar.y
      expect(isClear, `${width} px`).toBe(true)
      expect(below, 'no room is wasted').toBeLessThan(80)
    }
  })
})

test('a print shows the size that was chosen, and none of the page’s furniture', async () => {
  await at(1280, switchPages[0] ?? '', async (page) => {
    await page.locator('#size-1').check()
    await page.locator('.tick input:visible').first().check()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.size-switch .choice-option:visible').allInnerTexts()).toHaveLength(1)
    expect(await page.locator('.contents').isVisible()).toBe(false)
    expect(await page.locator('.row').first().isVisible()).toBe(true)
    const controls = 'button, input:not(.choice-button), select, summary, progress, .hint'
    expect(await page.locator(controls).filter({ visible: true }).count()).toBe(0)
  })
})
