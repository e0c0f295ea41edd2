import type { BrowserContext, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { switchPages } from './site.ts'

const visit = visitor()

const path = switchPages.find((each) => each.includes('cowl')) ?? ''

const chosen = (page: Page): Promise<string | null> =>
  page.locator('[data-choice=size] input:checked').getAttribute('value')

const query = (page: Page): string => new URL(page.url()).search

async function another(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage()
  await page.goto(address)
  return page
}

describe('the size that was chosen', () => {
  test('stands in the address, and not where all sizes are shown', async () => {
    await visit(path, {}, async (page) => {
      await page.getByRole('radio', { name: 'Adult S' }).check()
      expect(query(page)).toBe('?size=adult-s')
      await page.getByRole('radio', { name: 'All sizes' }).check()
      expect(query(page)).toBe('')
    })
  })

  test.each(['?size=adult-l', '?size=Adult%20L&from=a-friend'])('is shown from an address with %s', async (search) => {
    await visit(path + search, {}, async (page) => {
      expect(await chosen(page)).toBe('adult-l')
      expect(await page.locator('.s2').first().isVisible()).toBe(true)
      expect(await page.locator('.s0').first().isVisible()).toBe(false)
    })
  })

  test('that there is not leaves all sizes in view', async () => {
    await visit(`${path}?size=giant`, {}, async (page) => expect(await chosen(page)).toBe('all'))
  })

  test('is remembered on the device, for this pattern', async () => {
    await visit(path, {}, async (page) => {
      await page.getByRole('radio', { name: 'Adult S' }).check()
      const again = await another(page.context(), path)
      expect(await chosen(again)).toBe('adult-s')
      expect(query(again)).toBe('?size=adult-s')
      const other = await another(page.context(), switchPages.find((each) => each !== path) ?? '')
      expect(await chosen(other)).toBe('all')
    })
  })

  test('by someone who sent a link is shown, and not remembered', async () => {
    await visit(`${path}?size=adult-l`, {}, async (page) => {
      expect(await chosen(await another(page.context(), path))).toBe('all')
    })
  })

  test('outlives a link within the page, and goes back and forth with the history', async () => {
    await visit(path, {}, async (page) => {
      await page.getByRole('radio', { name: 'Adult S' }).check()
      await page.locator('.contents a').first().click()
      expect(await chosen(page)).toBe('adult-s')
      expect(query(page)).toBe('?size=adult-s')
      await page.goBack()
      expect(await chosen(page)).toBe('adult-s')
    })
  })

  test('is in view among many on a phone, and the page stays where it is', async () => {
    const many = switchPages.find((each) => each.includes('sluice')) ?? ''
    for (const height of [740, 300]) {
      await visit(`${many}?size=4x`, { viewport: { width: 360, height } }, async (page) => {
        expect(await page.evaluate(() => scrollY)).toBe(0)
        const [line, option] = await Promise.all([
          page.locator('.size-switch .choice-options').boundingBox(),
          page.locator('.size-switch .choice-option:has(:checked)').boundingBox(),
        ])
        expect(option?.x).toBeGreaterThanOrEqual(line?.x ?? 0)
        expect((option?.x ?? 0) + (option?.width ?? 0)).toBeLessThanOrEqual((line?.x ?? 0) + (line?.width ?? 0))
      })
    }
  })

  test('does without a store', async () => {
    await visit('about:blank', {}, async (page) => {
      await page.addInitScript(() => {
        Object.defineProperty(window, 'localStorage', {
          get: () => {
            throw new DOMException('forbidden', 'SecurityError')
          },
        })
      })
      await page.goto(path)
      await page.getByRole('radio', { name: 'Adult S' }).check()
      expect(query(page)).toBe('?size=adult-s')
    })
  })
})
