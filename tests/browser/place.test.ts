import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { patternPages } from './site.ts'

const visit = visitor()

const named = (part: string): string => patternPages.find((each) => each.includes(part)) ?? ''
const cowl = `${named('cowl')}?size=adult-s`
const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }

const seen = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).allInnerTexts()).join('\n')

const line = (page: Page): Promise<string> => seen(page, '.place-jump')

const box = (page: Page, name: string) => page.getByRole('checkbox', { name: `${name} done`, exact: true })

const rowDone = (page: Page) => page.getByRole('button', { name: 'Row done' })

async function tickFirst(page: Page, count: number): Promise<void> {
  for (let index = 0; index < count; index += 1) await page.locator('.tick input').nth(index).check()
}

describe('a row that is ticked', () => {
  test('moves the place on, and is still ticked when the page is opened again', async () => {
    await visit(cowl, phone, async (page) => {
      expect(await page.locator('.place').isVisible()).toBe(false)
      await box(page, 'Foundation').check()
      await box(page, 'Rnd 1').check()
      expect(await line(page)).toBe('Rnd 2\n3 %, 1,764 sts left')
      await page.goto(named('cowl'))
      expect(await line(page)).toBe('Rnd 2\n3 %, 1,764 sts left')
      expect(await box(page, 'Rnd 1').isChecked()).toBe(true)
      expect(await page.locator('[aria-current=step]').getAttribute('id')).toBe('cowl-rnd-2')
    })
  })

  test('counts in stitches, and stands for its size only', async () => {
    await visit(cowl, {}, async (page) => {
      await tickFirst(page, 2)
      await page.getByRole('radio', { name: 'Child' }).check()
      expect(await page.locator('.place').isVisible()).toBe(false)
      expect(await page.locator('.row-done').count()).toBe(0)
      await page.getByRole('radio', { name: 'Adult S' }).check()
      expect(await page.locator('.row-done').count()).toBe(2)
      // With all sizes in view it is still the one that is being worked.
      await page.getByRole('radio', { name: 'All sizes' }).check()
      expect(await page.locator('.row-done').count()).toBe(2)
      await page.goto(named('cowl'))
      expect(await page.locator('.row-done').count()).toBe(2)
    })
  })

  test('is taken back by Undo, step by step, over a reload too', async () => {
    await visit(cowl, {}, async (page) => {
      await tickFirst(page, 3)
      await page.goto(cowl)
      const undo = page.getByRole('button', { name: 'Undo' })
      await undo.click()
      expect(await line(page)).toContain('Rnd 2\n')
      await undo.click()
      await undo.click()
      expect(await page.locator('.tick input:checked').count()).toBe(0)
      expect(await page.locator('.place').isVisible()).toBe(false)
    })
  })
})

describe('a row that stands for several', () => {
  test('is counted up and down within its own', async () => {
    await visit(cowl, phone, async (page) => {
      const range = page.getByRole('group', { name: 'Rnds 6–25' })
      await range.getByRole('button', { name: 'One row more' }).tap()
      await range.getByRole('button', { name: 'One row more' }).tap()
      expect((await range.allInnerTexts()).join()).toContain('2 of 20 done')
      expect(await line(page)).toContain('Rnd 8, 3 of 20')
      await range.getByRole('button', { name: 'One row less' }).tap()
      expect(await line(page)).toContain('Rnd 7, 2 of 20')
    })
  })

  test('goes on to the next row after the last of them', async () => {
    await visit(cowl, {}, async (page) => {
      await box(page, 'Rnd 5').check()
      for (let round = 0; round < 20; round += 1) await rowDone(page).click()
      expect(await line(page)).toContain('Edging rnd 1\n')
    })
  })
})

describe('the line in the bar', () => {
  test('works through a whole pattern by one key, says so, and ends', async () => {
    await visit(cowl, {}, async (page) => {
      await box(page, 'Foundation').check()
      await rowDone(page).focus()
      await page.keyboard.press('Enter')
      expect(await seen(page, '.place-said')).toBe('Next: Rnd 2. 3 % done, 1,764 stitches left.')
      for (let round = 0; round < 25; round += 1) await page.keyboard.press('Enter')
      expect(await line(page)).toBe('All rows are done\n100 %, 0 sts left')
      expect(await rowDone(page).isVisible()).toBe(false)
    })
  })

  test('leads to the row in hand, with the focus on its box', async () => {
    await visit(cowl, phone, async (page) => {
      await tickFirst(page, 4)
      await page.evaluate(() => scrollTo(0, 0))
      await page.getByRole('button', { name: 'Rnd 4' }).tap()
      await expect
        .poll(() =>
          page.locator('#cowl-rnd-4').evaluate((row) => {
            const { top, bottom } = row.getBoundingClientRect()
            return top > 0 && bottom < innerHeight - (document.querySelector('.bar')?.clientHeight ?? 0)
          }),
        )
        .toBe(true)
      expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Rnd 4 done')
    })
  })

  test('keeps the row in hand in view as it goes', async () => {
    await visit(cowl, phone, async (page) => {
      await box(page, 'Foundation').check()
      for (let round = 0; round < 5; round += 1) await rowDone(page).tap()
      await expect
        .poll(() =>
          page.locator('#cowl-rnd-6').evaluate((row) => {
            const { top, bottom } = row.getBoundingClientRect()
            return top >= 0 && bottom <= innerHeight - (document.querySelector('.bar')?.clientHeight ?? 0)
          }),
        )
        .toBe(true)
    })
  })

  test('begins the second of two pieces where the first is done', async () => {
    await visit(named('cushion'), {}, async (page) => {
      await box(page, 'Foundation').check()
      for (let round = 0; round < 15; round += 1) await rowDone(page).click()
      expect(await line(page)).toContain('Foundation, piece 2 of 2\n50 %,')
      expect(await page.locator('.row-done').count()).toBe(0)
      await page.getByRole('button', { name: 'Undo' }).click()
      expect(await line(page)).toContain('Edging rnd 1, piece 1 of 2')
    })
  })
})

describe('before anything is ticked', () => {
  test('a size must be chosen first, where there are several', async () => {
    await visit(named('cowl'), {}, async (page) => {
      expect(await seen(page, '.place-notice')).toBe('Choose your size to tick off rows as you go.')
      expect(await page.locator('.tick, .counter').count()).toBe(0)
      await page.getByRole('radio', { name: 'Child' }).check()
      expect(await page.locator('.place-notice').isVisible()).toBe(false)
      expect(await page.locator('.tick').count()).toBe(7)
    })
  })

  test('a reader of an older edition can go on from where they were', async () => {
    await visit(cowl, {}, async (page) => {
      await page.evaluate(() => {
        const place = {
          done: { 'cowl-foundation': 1, 'cowl-rnd-1': 1, 'cowl-gone': 1 },
          finished: {},
          at: 'cowl-rnd-1',
        }
        localStorage.setItem('sizewright:place:slack-tide-cowl:0.9:Adult S', JSON.stringify({ place, before: [] }))
      })
      await page.goto(cowl)
      expect(await seen(page, '.place-notice')).toContain('You have ticked rows of edition 0.9.')
      await page.getByRole('button', { name: 'Go on from there' }).click()
      expect(await line(page)).toContain('Rnd 2\n')
      expect(await page.locator('.place-notice').isVisible()).toBe(false)
    })
  })

  test.each([
    ['nothing is shown without script', { javaScriptEnabled: false }],
    ['nothing is printed', {}],
  ])('%s', async (_, options) => {
    await visit(cowl, options, async (page) => {
      await page.emulateMedia({ media: 'print' })
      for (const part of ['.place', '.tick', '.counter', '.place-notice', '.awake', '.start-over'])
        expect(await page.locator(part).filter({ visible: true }).count(), part).toBe(0)
    })
  })
})

test('all rows can be unticked, and that can be undone', async () => {
  await visit(cowl, {}, async (page) => {
    await tickFirst(page, 2)
    await page.getByRole('button', { name: 'Settings' }).click()
    await page.getByRole('button', { name: 'Untick all rows' }).click()
    await page.getByRole('button', { name: 'Close' }).click()
    expect(await page.locator('.row-done').count()).toBe(0)
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await page.locator('.row-done').count()).toBe(2)
  })
})

test('a second window goes on with the first', async () => {
  await visit(cowl, {}, async (page) => {
    const other = await page.context().newPage()
    await other.goto(cowl)
    await tickFirst(page, 3)
    await expect.poll(() => line(other)).toContain('Rnd 3\n')
  })
})

test('without a store the page keeps its place until it is closed', async () => {
  await visit('about:blank', {}, async (page) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('forbidden', 'SecurityError')
        },
      })
    })
    await page.goto(cowl)
    await tickFirst(page, 2)
    expect(await line(page)).toContain('Rnd 2\n')
  })
})

describe('the screen', () => {
  test('is kept on while it is asked for, and the wish is remembered', async () => {
    await visit('about:blank', {}, async (page) => {
      await page.addInitScript(() => {
        const held = { now: 0 }
        const request = async () => {
          held.now += 1
          return { release: async () => (held.now -= 1) }
        }
        Object.defineProperty(navigator, 'wakeLock', { value: { request } })
        Object.assign(window, { held })
      })
      await page.goto(cowl)
      const held = () => page.evaluate<number>('held.now')
      expect(await held()).toBe(0)
      await page.getByRole('button', { name: 'Settings' }).click()
      await page.getByRole('checkbox', { name: 'Keep the screen on' }).check()
      expect(await held()).toBe(1)
      await page.goto(cowl)
      await expect.poll(held).toBe(1)
      await page.getByRole('button', { name: 'Settings' }).click()
      await page.getByRole('checkbox', { name: 'Keep the screen on' }).uncheck()
      await expect.poll(held).toBe(0)
    })
  })

  test('is no matter where the browser has no way to keep it on', async () => {
    await visit('about:blank', {}, async (page) => {
      await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'wakeLock'))
      await page.goto(cowl)
      await page.getByRole('button', { name: 'Settings' }).click()
      expect(await page.getByRole('checkbox', { name: 'Keep the screen on' }).count()).toBe(0)
    })
  })
})
