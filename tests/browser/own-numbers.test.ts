import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import axe, { type AxeResults } from 'axe-core'
import fc from 'fast-check'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { openRecipe } from '../../src/own/open.ts'
import { pageNumbers } from '../../src/own/page.ts'
import { drawFigure } from '../../src/pattern/figures.ts'
import type { Changes } from '../../src/pattern/own/changes.ts'
import { visitor } from './browser.ts'
import { siteFolder } from './site.ts'

const visit = visitor()

const cowl = '/patterns/slack-tide-cowl/'
const hat = '/patterns/bollard-hat/'

const seen = async (page: Page, selector: string): Promise<string> =>
  (await page.locator(selector).allInnerTexts()).join('\n').replaceAll('\u00a0', ' ')

const said = (page: Page): Promise<string> => seen(page, '.own-said')

async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => /^(?!Working)./.test(document.querySelector('.own-said')?.textContent ?? ''))
}

async function open(page: Page): Promise<void> {
  await page.locator('.own-numbers summary').press('Enter')
  await page.locator('.own-numbers form').waitFor()
}

async function give(page: Page, label: RegExp, text: string): Promise<void> {
  await page.getByLabel(label).fill(text)
  await page.getByLabel(label).press('Enter')
  await settled(page)
}

const lastRow = (page: Page): Promise<string> => seen(page, '.row:nth-last-child(2) .row-label')

test('nothing of the core is loaded before it is asked for, and nothing from elsewhere after', async () => {
  await visit('about:blank', {}, async (page) => {
    const asked: string[] = []
    const told: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    page.on('console', (message) => told.push(message.text()))
    await page.goto(cowl, { waitUntil: 'networkidle' })
    expect(asked.filter((url) => /\/worker|recipe|\/own/.test(url))).toEqual([])
    const before = asked.length
    await open(page)
    const after = asked.slice(before).map((url) => new URL(url).pathname.replace(/[.-][\w-]{8}\.js$/, ''))
    // There is a chart on this page.
    expect(after).toEqual(
      expect.arrayContaining(['/_astro/own', '/_astro/worker', `${cowl}recipe.json`, '/_astro/figures']),
    )
    expect(after.filter((path) => path.includes('highs'))).toEqual([])
    expect(asked.every((url) => new URL(url).origin === new URL(page.url()).origin)).toBe(true)
    expect(told.filter((each) => !each.includes('blocked by Playwright'))).toEqual([])
  })
})

test('what an address asks for and can’t be had is said', async () => {
  await visit(`${cowl}?my-depth=60cm&my-rows=11&units=in`, {}, async (page) => {
    await page.getByText('Depth can be from').first().waitFor()
    expect(await seen(page, '.own-line')).toMatch(
      /can’t be used[\s\S]*Depth can be from 6½ in to 14 in\.[\s\S]*11 rows/,
    )
  })
})

describe('a length of a reader’s own', () => {
  test('goes through rows, measures, yarn and place, by keyboard alone, and comes back with the address', async () => {
    await visit(`${cowl}?size=adult-s`, {}, async (page) => {
      const published = await seen(page, '.pattern-text')
      expect(await page.locator('[data-v], [data-cell]').count()).toBeGreaterThan(20)
      expect(await page.locator(':is([data-v], [data-cell]):not([data-part] *)').count()).toBe(0)
      await open(page)
      await page.keyboard.press('Tab')
      await page.keyboard.type('33')
      await page.keyboard.press('Enter')
      await settled(page)
      expect(await said(page)).toBe('Done. The page shows your own numbers.')
      expect(await seen(page, '.own-line')).toContain('Depth: 33 cm (13 in) instead of 26 cm [10¼ in]')
      expect(await seen(page, 'tr:has(th:text-is("Depth")) td:visible')).toBe('34 cm (13½ in)')
      expect(await lastRow(page)).toBe('Rnds 6–33:')
      expect(await seen(page, '.amount')).toContain('201 m')
      expect(new URL(page.url()).search).toBe('?size=adult-s&my-depth=33cm')
      await page.getByRole('group', { name: 'Rnds 6–33' }).getByRole('button', { name: 'One row more' }).click()
      expect(await seen(page, '.place-jump')).toContain('Rnd 7, 2 of 28')

      await page.goto(page.url().replace('33cm', '13in'))
      await settled(page)
      expect(await lastRow(page)).toBe('Rnds 6–33:')
      expect(await seen(page, '.counter')).toContain('1 of 28 done')

      for (const size of ['all', 0, 1]) {
        await page.locator(`#size-${size}`).check({ force: true })
        expect(await page.locator('.counter').count()).toBe(1)
      }

      await page.getByRole('button', { name: 'Back to the published numbers' }).first().press('Enter')
      expect(await page.locator('.own-line').isVisible()).toBe(false)
      expect(new URL(page.url()).search).toBe('?size=adult-s')
      expect(await lastRow(page)).toBe('Rnds 6–25:')
      await page.goto(`${cowl}?size=adult-s`)
      await page.evaluate(() => localStorage.clear())
      await page.goto(`${cowl}?size=adult-s`)
      expect(await seen(page, '.pattern-text')).toBe(published)
    })
  })

  test('that can’t be is refused in words, with the field in hand; the page stays as it is', async () => {
    await visit(cowl, {}, async (page) => {
      await open(page)
      const depth = page.getByLabel(/^Depth/)
      for (const [text, words] of [
        ['0', 'Please give a length above 0, such as 30 or 30.5.'],
        ['-20', 'Please give a length above 0, such as 30 or 30.5.'],
        ['deep', 'Please give a length above 0, such as 30 or 30.5.'],
        ['60', 'Depth can be from 16 cm to 36 cm.'],
      ] as const) {
        await depth.fill(text)
        await page.getByRole('button', { name: 'Work out my numbers' }).click()
        expect(await seen(page, '#my-depth-wrong'), text).toBe(words)
        expect(await depth.getAttribute('aria-invalid')).toBe('true')
        expect(await depth.evaluate((element) => element === document.activeElement)).toBe(true)
      }
      expect(await lastRow(page)).toBe('Rnds 6–21 (25, 29):')
      expect(new URL(page.url()).search).toBe('')
    })
  })

  test('that does not come out for a size is said for that size, which stays as published', async () => {
    await visit(`${hat}?size=man&my-depth=13cm`, {}, async (page) => {
      await settled(page)
      expect(await seen(page, '.own-line')).toMatch(
        /do not come out[\s\S]*where body rnds is more than crown rnds \+ 3[\s\S]*Man: 15 against 15/,
      )
      expect(await seen(page, 'tr:has(th:text-is("Depth from crown to edge")) td:visible')).toBe('23 cm (9 in)')
      await page.getByRole('radio', { name: 'Woman' }).check()
      expect(await seen(page, '.own-line')).toContain('Worked out with your own numbers')
      expect(await seen(page, 'tr:has(th:text-is("Depth from crown to edge")) td:visible')).toBe('13 cm (5¼ in)')
    })
  })
})

test('a gauge of a reader’s own is remembered, printed with the page, and axe finds nothing to mend', async () => {
  await visit(`${cowl}?units=in`, { viewport: { width: 360, height: 800 } }, async (page) => {
    await open(page)
    expect(await page.getByLabel('Depth, in inches').count()).toBe(1)
    await give(page, /^Stitches over 10 cm \(4 in\)/, '13.5')
    expect(await seen(page, '[data-part=gauge]')).toContain('13.5 stitches')
    expect(await seen(page, '.row >> nth=0')).toContain('Ch 66 (84, 96)')
    await page.goto(`${cowl}`)
    await settled(page)
    expect(await seen(page, '.row >> nth=0')).toContain('Ch 66 (84, 96)')
    await page.locator('.own-numbers summary').click()
    await page.evaluate(axe.source)
    const { violations } = await page.evaluate<AxeResults>("axe.run(document, { resultTypes: ['violations'] })")
    expect(violations.map(({ id }) => id)).toEqual([])
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.own-line').isVisible()).toBe(true)
    expect(await page.locator('.own-line button').isVisible()).toBe(false)
    expect(await page.locator('.own-numbers').isVisible()).toBe(false)
  })
})

const halves = (least: number, most: number) =>
  fc.integer({ min: least * 2, max: most * 2 }).map((half) => `${half / 2} cm`)
const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenth) => String(tenth / 10))

const asked: readonly [path: string, changes: fc.Arbitrary<Changes>][] = [
  [
    cowl,
    fc.record({
      lengths: fc.record({ depth: halves(16, 36) }),
      gauges: fc.record({ '': fc.record({ stitches: tenths(11, 13), rows: tenths(9, 11) }) }),
    }),
  ],
  [
    '/patterns/mooring-ring-pullover/',
    fc.record({ lengths: fc.record({ below_waist: halves(5, 25) }), gauges: fc.constant({}) }),
  ],
]

describe('what the built core comes to in a browser is what the build comes to', () => {
  test.each(asked)('%s', async (path, changes) => {
    const node = openRecipe(JSON.parse(readFileSync(join(siteFolder, path, 'recipe.json'), 'utf8')), {
      solver: null,
      draw: drawFigure,
    })
    await visit(path, {}, async (page) => {
      const loading = page.waitForEvent('worker')
      await open(page)
      const worker = (await loading).url()
      const recipe = (await page.locator('.own-numbers').getAttribute('data-recipe')) ?? ''
      const all = fc.sample(changes, { seed: 20_261_125, numRuns: 4 })
      const replies = await page.evaluate(askWorker, { worker, recipe, all })
      for (const [index, each] of all.entries()) {
        const { pattern, troubles } = node.work(each)
        const expected: unknown = JSON.parse(JSON.stringify({ kind: 'worked', page: pageNumbers(pattern), troubles }))
        expect(JSON.parse(replies[index] ?? '')).toEqual(expected)
      }
    })
  })
})

interface Questions {
  readonly worker: string
  readonly recipe: string
  readonly all: readonly Changes[]
}

/** Runs in the page: the replies as JSON. */
function askWorker({ worker, recipe, all }: Questions): Promise<string[]> {
  const core = new Worker(worker, { type: 'module' })
  const replies: string[] = []
  return new Promise((resolve) => {
    core.addEventListener('message', ({ data }: MessageEvent<{ kind: string }>) => {
      if (data.kind !== 'open') replies.push(JSON.stringify(data))
      const changes = all[replies.length]
      if (changes === undefined) resolve(replies)
      else core.postMessage({ kind: 'work', changes })
    })
    core.postMessage({ kind: 'open', recipe })
  })
}
