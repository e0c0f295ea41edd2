import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { patternPages } from './site.ts'

const visit = visitor()

const named = (part: string): string => patternPages.find((each) => each.includes(part)) ?? ''

/** What is in view, without the blanks that keep a number to its unit. */
const seen = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).allInnerTexts()).join('\n').replaceAll('\u00a0', ' ')

const withAndWithout = [true, false]

/** As a reader does it, by the buttons alone. */
async function choose(page: Page, ...names: string[]): Promise<void> {
  await page.getByRole('button', { name: 'Settings' }).click()
  for (const name of names) await page.getByRole('radio', { name, exact: true }).check()
  await page.getByRole('button', { name: 'Close' }).click()
}

describe.each(withAndWithout)('with script: %s', (javaScriptEnabled) => {
  const options = { javaScriptEnabled, viewport: { width: 360, height: 740 } }

  test('the page comes in the designer’s terms, measures in both systems', async () => {
    await visit(named('cowl'), options, async (page) => {
      expect(await seen(page, '#cowl-rnd-1')).toContain('sc in each ch around, join with sl st in first sc.')
      expect(await seen(page, '.introduction')).toContain('50 (60, 70) cm [19¾ (23½, 27½) in] around')
    })
  })

  test('UK terms are shown in rows, notes, definitions, abbreviations and gauge', async () => {
    await visit(named('cowl'), options, async (page) => {
      await choose(page, 'UK')
      expect(await seen(page, '#cowl-rnd-1')).toContain('dc in each ch around, join with ss in first dc.')
      expect(await seen(page, '#cowl-rnd-2')).toContain('*miss 2 sts, shell in next st')
      expect(await seen(page, '#cowl-rnd-4')).toContain('Ch 3 (counts as tr)')
      expect(await seen(page, 'main')).toContain('ch 3 counts as a treble crochet')
      expect(await seen(page, 'main')).toContain('Shell: 5 tr in same st.')
      expect(await seen(page, '.abbreviations')).toMatch(/dc\s+double crochet/)
      expect(await seen(page, '.abbreviations')).not.toMatch(/single crochet|skip|\bsl st\b/)
      expect(await seen(page, 'h2#pattern-gauge')).toBe('Tension')
      expect(await seen(page, '.summary')).toContain('round of double crochet')
      expect(await seen(page, 'main')).not.toMatch(/\bsc\b|single crochet/)
    })
  })

  test.each([
    [
      'Centimetres',
      '50 (60, 70) cm around and 22 (26, 30) cm deep',
      '12 stitches and 10 rows = 10 cm in shell pattern',
    ],
    ['Inches', '19¾ (23½, 27½) in around and 8¾ (10¼, 11¾) in deep', '12 stitches and 10 rows = 4 in in shell pattern'],
  ])('%s alone are shown where they are asked for', async (name, measure, gauge) => {
    await visit(named('cowl'), options, async (page) => {
      await choose(page, name)
      expect(await seen(page, '.introduction')).toContain(measure)
      expect(await seen(page, '[aria-labelledby=pattern-gauge]')).toContain(gauge)
      const other = name === 'Inches' ? /\d\s(?:cm|m|g\))\b/ : /\d\s(?:in|yd|oz)\b/
      expect(await seen(page, '.sizes-table, .introduction')).not.toMatch(other)
      expect(await seen(page, '[aria-labelledby=pattern-materials] .amount')).not.toMatch(other)
    })
  })

  test('the letters grow with the choice', async () => {
    await visit(named('cowl'), options, async (page) => {
      const size = (): Promise<number> =>
        page
          .locator('.row')
          .first()
          .evaluate((row) => Number.parseFloat(getComputedStyle(row).fontSize))
      const usual = await size()
      await choose(page, 'Largest')
      expect(await size()).toBeCloseTo(usual * 1.5, 1)
    })
  })

  test('the settings open and close by keyboard alone', async () => {
    await visit(named('cowl'), options, async (page) => {
      const settings = page.getByRole('dialog', { name: 'Settings' })
      await page.getByRole('button', { name: 'Settings' }).focus()
      await page.keyboard.press('Enter')
      expect(await settings.isVisible()).toBe(true)
      await page.keyboard.press('Tab')
      await page.keyboard.press('ArrowRight')
      expect(await seen(page, '#cowl-rnd-1')).toContain('dc in each ch')
      await page.keyboard.press('Escape')
      expect(await settings.isVisible()).toBe(false)
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Settings')
    })
  })
})

describe('with script', () => {
  test('terms and measures stand in the address and are remembered for every pattern; letters are remembered only', async () => {
    await visit(named('cowl'), {}, async (page) => {
      await choose(page, 'UK', 'Inches', 'Large')
      expect(new URL(page.url()).search).toBe('?terms=uk&units=in')
      await page.goto(named('sluice-gate'))
      expect(new URL(page.url()).search).toBe('?terms=uk&units=in')
      expect(await page.locator('input:checked[name=text]').getAttribute('value')).toBe('large')
      expect(await seen(page, '#back-row-1')).toContain('Htr in 2nd ch from hook')
    })
  })

  test('a text that was copied has each word once', async () => {
    await visit(`${named('cowl')}?terms=uk&size=child`, { viewport: { width: 360, height: 740 } }, async (page) => {
      const copied = await page.evaluate(() => {
        const row = document.querySelector('#cowl-rnd-1')
        if (row !== null) getSelection()?.selectAllChildren(row)
        return getSelection()?.toString()
      })
      expect(copied?.replace(/\s+/g, ' ').trim()).toBe(
        'Rnd 1 (RS): Ch 1, dc in each ch around, join with ss in first dc. (60 dc)',
      )
    })
  })
})

test('without a style sheet each word stands once, in the designer’s terms', async () => {
  await visit('about:blank', {}, async (page) => {
    await page.route('**/*.css', (route) => route.abort())
    await page.goto(named('cowl'))
    expect(await seen(page, '#cowl-rnd-1')).toContain('Ch 1, sc in each ch around, join with sl st in first sc.')
  })
})
