import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { patternPages } from './site.ts'

const visit = visitor()

const named = (part: string): string => patternPages.find((each) => each.includes(part)) ?? ''

/** What a screen reader reads of a part of the page. */
const heard = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).ariaSnapshot())
    .replace(/^\s*-? ?(?:listitem|text|paragraph)?:?|"/gm, ' ')
    .replace(/\s+/g, ' ')
    .replace(/ ([,.;:)])/g, '$1')
    .replace(/\( /g, '(')
    .trim()
    .replace(/ checkbox .* done$/, '')

/** What the page shows in place of an abbreviation's own words. */
const explained = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement
    if (element === null || !element.matches('abbr, .explained')) return ''
    const { content, position, clipPath } = getComputedStyle(element, '::after')
    return position === 'fixed' && clipPath === 'none' ? content : ''
  })

describe.each([true, false])('with script: %s', (javaScriptEnabled) => {
  const phone = { javaScriptEnabled, viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }

  test('a row is heard in full words, each number with its size', async () => {
    await visit(named('cowl'), phone, async (page) => {
      expect(await heard(page, '#cowl-rnd-1')).toBe(
        'round 1 (right side): chain 1, single crochet in each chain around, join with slip stitch in first single crochet. (60 for Child, 72 for Adult S, 84 for Adult L single crochet)',
      )
    })
  })

  test('of one size its numbers alone are heard, in the terms that are shown', async () => {
    await visit(named('cowl'), phone, async (page) => {
      await page.getByRole('radio', { name: 'Adult S' }).check()
      await page.getByRole('button', { name: 'Settings' }).click()
      await page.getByRole('radio', { name: 'UK', exact: true }).check()
      await page.getByRole('button', { name: 'Close' }).click()
      expect(await heard(page, '#cowl-rnd-1')).toBe(
        'round 1 (right side): chain 1, double crochet in each chain around, join with slip stitch in first double crochet. (72 double crochet)',
      )
    })
  })

  test('a tap on an abbreviation shows what it stands for, wherever it is', async () => {
    await visit(named('cowl'), phone, async (page) => {
      await page.locator('#cowl-rnd-5 abbr', { hasText: 'sc' }).first().tap()
      expect(await explained(page)).toBe('"single crochet"')
      await page.locator('#cowl-rnd-2 .explained').first().tap()
      expect(await explained(page)).toBe('"5 dc in same st."')
      await page.locator('h1').tap()
      expect(await explained(page)).toBe('')
    })
  })

  test('the keyboard comes to the first of each kind in a piece', async () => {
    await visit(named('cowl'), { javaScriptEnabled }, async (page) => {
      const stops = page.locator('#cowl ~ :is(figure, ol) :is(abbr, .explained)[tabindex="0"]:visible')
      const words = await stops.allInnerTexts()
      expect(words).toEqual([...new Set(words)])
      expect(words).toContain('sc')
      await stops.nth(words.indexOf('ch')).focus()
      expect(await explained(page)).toBe('"chain"')
      await page.keyboard.press('Tab')
      expect(await explained(page)).not.toBe('')
    })
  })

  test('what is heard is in no text that is copied or searched', async () => {
    await visit(named('cowl'), phone, async (page) => {
      expect((await page.locator('#cowl-rnd-1').allInnerTexts()).join()).not.toMatch(/single|for Child/)
    })
  })
})

test('with script, Escape takes the explanation away', async () => {
  await visit(named('cowl'), {}, async (page) => {
    await page.locator('#cowl-rnd-1 abbr:visible').first().focus()
    expect(await explained(page)).not.toBe('')
    await page.keyboard.press('Escape')
    expect(await explained(page)).toBe('')
  })
})
