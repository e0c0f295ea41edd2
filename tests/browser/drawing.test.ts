import { expect, test } from 'vitest'
import { visitor } from './browser.ts'

const visit = visitor()

const path = '/patterns/sluice-gate-pullover/'
const phone = { viewport: { width: 360, height: 740 }, javaScriptEnabled: false }

test('a drawing shows letters for all sizes, and the measures of the one chosen', async () => {
  await visit(path, phone, async (page) => {
    const labels = (): Promise<string[]> =>
      page
        .locator('#schematic-back svg > :is(text, g)')
        .evaluateAll((found) =>
          found.filter((each) => each.getBoundingClientRect().width > 0).map((each) => each.textContent ?? ''),
        )
    expect((await labels()).sort()).toEqual(['A', 'B', 'C', 'D', 'E'])
    await page.locator('#size-0').check({ force: true })
    const own = await page
      .locator('#schematic-back .one')
      .evaluateAll((found) =>
        found.map((each) => [...each.querySelectorAll('.s0')].map((piece) => piece.textContent).join(' ')),
      )
    expect(await labels()).toHaveLength(own.length)
    expect(own).toContain('43 16¾')
  })
})

test('a drawing is no wider than the page, and its letters can be read on a phone', async () => {
  await visit(path, phone, async (page) => {
    const found = await page.locator('figure.drawing svg').evaluateAll((drawings) =>
      drawings.map((each) => {
        const { left, right } = each.getBoundingClientRect()
        return { left, right, letter: each.querySelector('text')?.getBoundingClientRect().height ?? 0 }
      }),
    )
    expect(found.length).toBeGreaterThan(2)
    expect(found.filter(({ left, right }) => left < 0 || right > 360)).toEqual([])
    expect(found.filter(({ letter }) => letter < 10)).toEqual([])
  })
})
