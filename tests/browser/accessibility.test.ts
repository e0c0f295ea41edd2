import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { violationsInBothSchemes } from './axe.ts'
import { visitor } from './browser.ts'
import { notFoundPage, pages, switchPages } from './site.ts'

const visit = visitor()

test.each([...pages, notFoundPage])('%s has nothing for axe to mend, and ways in', async (path) => {
  await visit(path, {}, async (page) => {
    await expectSkipLink(page)
    await expectOutline(page)
    await expectNoViolations(page)
  })
})

test('axe finds nothing to mend where one size is shown', async () => {
  await visit(switchPages[0] ?? '', {}, async (page) => {
    await page.locator('#size-1').check()
    await expectNoViolations(page)
  })
})

/** In both schemes, on a phone and on a wide page. */
async function expectNoViolations(page: Page): Promise<void> {
  for (const width of [360, 1280]) {
    await page.setViewportSize({ width, height: 800 })
    expect(await violationsInBothSchemes(page), `${width} px`).toEqual([])
  }
}

async function expectSkipLink(page: Page): Promise<void> {
  await page.keyboard.press('Tab')
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the content')
  await page.keyboard.press('Enter')
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('main')
}

/** One first heading, no level of heading left out, a language, a title and its landmarks. */
async function expectOutline(page: Page): Promise<void> {
  const levels = await page
    .locator('h1, h2, h3, h4, h5, h6')
    .evaluateAll((headings) => headings.map(({ tagName }) => Number(tagName[1])))
  expect(levels.filter((level) => level === 1)).toHaveLength(1)
  expect(levels.filter((level, at) => at > 0 && level > (levels[at - 1] ?? 0) + 1)).toEqual([])
  expect(await page.locator('html').getAttribute('lang')).toBe('en')
  expect(await page.title()).not.toBe('')
  for (const landmark of ['banner', 'main', 'contentinfo'] as const) {
    expect(await page.getByRole(landmark).count(), landmark).toBe(1)
  }
}
