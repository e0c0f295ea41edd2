import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { patternPages } from './site.ts'

const visit = visitor()

const named = (part: string): string => patternPages.find((each) => each.includes(part)) ?? ''

const textOf = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).allInnerTexts()).join().replaceAll('\u00a0', ' ')

const answer = (page: Page): Promise<string> => textOf(page, '.find-size output')

const chosen = (page: Page): Promise<string | null> =>
  page.locator('[data-choice=size] input:checked').getAttribute('value')

describe('a size by a reader’s own measure', () => {
  test('is found by keyboard alone, shown, and told with its ease', async () => {
    await visit(named('pullover'), {}, async (page) => {
      await page.getByLabel('Your bust').focus()
      await page.keyboard.type('98')
      await page.keyboard.press('Enter')
      expect(await chosen(page)).toBe('medium')
      expect(await answer(page)).toContain('You are between Medium and Large.')
      expect(await answer(page)).toMatch(/Medium has [\d.]+ cm of ease: it is wider than you\./)
      expect(new URL(page.url()).search).toBe('?size=medium')
      await page.keyboard.press('Tab')
      await page.getByRole('button', { name: 'Show Large instead' }).press('Enter')
      expect(await chosen(page)).toBe('large')
      expect(await answer(page)).toContain('Large has')
    })
  })

  test('agrees with the table of sizes beside it', async () => {
    await visit(named('pullover'), {}, async (page) => {
      await page.getByLabel('Your bust').fill('40 in')
      await page.getByRole('button', { name: 'Find my size' }).click()
      const cell = (row: string): Promise<string> => textOf(page, `tr:has(th:text-is("${row}")) td:visible`)
      const body = /\((.*) in\)/.exec(await cell('To fit bust'))?.[1]
      const made = /\((.*) in\)/.exec(await cell('Bust'))?.[1]
      expect(body).toBe('40–42')
      expect(await answer(page)).toContain(`made for a bust of ${body} in and measures ${made} in.`)
    })
  })

  test('tells a cowl’s ease over the head', async () => {
    await visit(named('cowl'), {}, async (page) => {
      await page.getByLabel('Your head circumference').fill('51')
      await page.getByRole('button', { name: 'Find my size' }).click()
      expect(await answer(page)).toBe(
        'Adult S has 9 cm of ease: it is wider than you. It is made for a head circumference of 51 cm and measures 60 cm.',
      )
    })
  })

  test('asks again for what is no measure, and keeps the size', async () => {
    await visit(`${named('cowl')}?size=child`, {}, async (page) => {
      await page.getByLabel('Your head circumference').fill('wide')
      await page.getByRole('button', { name: 'Find my size' }).click()
      expect(await answer(page)).toBe('Please give a measure such as 98 or 38½.')
      expect(await chosen(page)).toBe('child')
    })
  })

  test('is remembered for the next pattern that asks for it', async () => {
    await visit(named('cowl'), {}, async (page) => {
      await page.getByLabel('Your head circumference').fill('22 in')
      await page.keyboard.press('Enter')
      await page.goto(named('hat'))
      expect(await page.getByLabel('Your head circumference').inputValue()).toBe('22')
      expect(await page.getByLabel('Unit').inputValue()).toBe('in')
    })
  })

  test.each([
    ['without script', 'cowl', false],
    ['where there is one size', 'cushion', true],
  ])('is not asked for %s', async (_, name, javaScriptEnabled) => {
    await visit(named(name), { javaScriptEnabled }, async (page) => {
      expect(await page.locator('.find-size').isVisible()).toBe(false)
    })
  })
})
