import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { violationsInBothSchemes } from './axe.ts'
import { visitor } from './browser.ts'
import { patternPages } from './site.ts'

const visit = visitor()

/** A page as its reader has it after a while: a size chosen, rows ticked, part of a range counted. */
async function begin(page: Page): Promise<void> {
  const sizes = page.locator('[data-choice=size] input')
  if ((await sizes.count()) > 0) await sizes.last().check()
  await page.locator('.tick input:visible').first().check()
  await page.locator('.counter:visible').first().getByRole('button', { name: 'One row more' }).click()
}

// 640 px is what is left of 1280 px at 200 %, 320 px at 400 %.
const windows = [
  [320, 256],
  [360, 740],
  [640, 400],
  [740, 360],
  [768, 900],
  [1280, 800],
] as const

// The parts that come into use are the same on every page; the other patterns have more rows and sizes of them.
const samples = ['bonnet', 'cowl', 'cushion'].flatMap((part) => patternPages.find((path) => path.includes(part)) ?? [])

test.each(samples)('%s, in use, has nothing for axe to mend, light and dark', async (path) => {
  await visit(path, { viewport: { width: 360, height: 740 } }, async (page) => {
    await begin(page)
    await page.locator('.row abbr:visible').first().focus()
    expect(await violationsInBothSchemes(page), 'rows are ticked, an abbreviation is explained').toEqual([])
    await page.getByRole('button', { name: 'Settings' }).click()
    expect(await violationsInBothSchemes(page), 'the settings are open').toEqual([])
  })
})

test.each(patternPages)('%s, in use, fits every window, in usual letters and in the largest', async (path) => {
  await visit(path, {}, async (page) => {
    await begin(page)
    for (const letters of ['Usual', 'Largest']) {
      await page.getByRole('button', { name: 'Settings' }).click()
      await page.getByRole('radio', { name: letters, exact: true }).check()
      for (const [width, height] of windows) {
        const where = `${letters}, ${width} by ${height} px`
        await page.setViewportSize({ width, height })
        const sheet = await page.locator('#settings').boundingBox()
        expect(sheet !== null && sheet.x >= 0 && sheet.x + sheet.width <= width && sheet.y >= 0, where).toBe(true)
        expect(await page.evaluate(() => document.documentElement.scrollWidth), where).toBe(width)
        expect(await overlaps(page), where).toEqual([])
        expect(await tooSmall(page), where).toEqual([])
      }
      await page.keyboard.press('Escape')
    }
  })
})

/** Controls that lie over each other or out of their bar; what scrolls in a box of its own may be out of it. */
function overlaps(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const all = [...document.querySelectorAll('.bar button, .bar .choice-options, .counter button, .tick')]
    const shown = all
      .filter((each) => each.checkVisibility())
      .map((each) => ({ each, box: each.getBoundingClientRect() }))
    const fixed = (each: Element) => each.closest('.bar') !== null
    const name = (each: Element) => `${each.className} ${each.textContent?.trim()}`
    const crossing = shown.flatMap(({ each, box }, index) =>
      shown.slice(index + 1).flatMap((other) => {
        if (fixed(each) !== fixed(other.each)) return []
        const apart =
          box.right <= other.box.left + 0.5 ||
          other.box.right <= box.left + 0.5 ||
          box.bottom <= other.box.top + 0.5 ||
          other.box.bottom <= box.top + 0.5
        return apart ? [] : [`${name(each)} / ${name(other.each)}`]
      }),
    )
    const outside = shown.flatMap(({ each, box }) =>
      fixed(each) && (box.left < 0 || box.right > innerWidth + 0.5) ? [`${name(each)} is cut off`] : [],
    )
    return [...crossing, ...outside]
  })
}

/** Buttons and boxes that a thumb would miss: less than 44 px high or wide. */
function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        '.bar button, .choice-option, .counter button, .tick, .find-size :is(button, input, select)',
      ),
    ]
      .filter((each) => each.checkVisibility())
      .flatMap((each) => {
        const { width, height } = each.getBoundingClientRect()
        return width >= 43.5 && height >= 43.5
          ? []
          : [`${each.className} ${each.textContent?.trim()}: ${width} by ${height}`]
      }),
  )
}
