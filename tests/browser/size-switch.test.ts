import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { switchPages } from './site.ts'

const visit = visitor()

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true, javaScriptEnabled: false }

/** The pieces of the page that are tied to sizes, by what is shown: `sK` for pieces of size K, `c`, and `only`. */
async function shown(page: Page): Promise<{ sizes: number[]; columns: number; only: string[] }> {
  const visible = (selector: string): Promise<string[]> =>
    page
      .locator(`main ${selector}`)
      .evaluateAll((found) => found.filter((piece) => piece.checkVisibility()).map(({ classList }) => classList.value))
  const sizes = (await visible('.s')).map((classes) => Number(/\bs(\d+)\b/.exec(classes)?.[1]))
  return {
    sizes: [...new Set(sizes)].sort((a, b) => a - b),
    columns: (await visible('.c')).length,
    only: await visible('.only'),
  }
}

async function sizesOf(page: Page): Promise<string[]> {
  return (await page.locator('.size-switch .choice-option').allInnerTexts()).slice(1)
}

describe.each(switchPages)('%s', (path) => {
  test('shows every size before one is chosen, one after one tap, and all of them again after another', async () => {
    await visit(path, phone, async (page) => {
      const names = await sizesOf(page)
      const before = await shown(page)
      expect(await page.locator('#size-all').isChecked()).toBe(true)
      expect(before.sizes).toEqual(names.map((_, position) => position))
      await page.locator('.size-switch .choice-option').nth(2).tap()
      const one = await shown(page)
      expect(one.sizes).toEqual([1])
      expect(one.columns).toBe(0)
      expect(one.only.filter((classes) => !/\bs1\b/.test(classes))).toEqual([])
      await page.locator('.size-switch .choice-option').first().tap()
      expect(await shown(page)).toEqual(before)
    })
  })

  test('shows each size in turn under the arrow keys', async () => {
    await visit(path, { javaScriptEnabled: false, viewport: { width: 1280, height: 800 } }, async (page) => {
      const names = await sizesOf(page)
      await page.locator('#size-all').focus()
      for (const [position, name] of names.entries()) {
        await page.keyboard.press('ArrowRight')
        expect(await page.getByRole('radio', { name, exact: true }).isChecked()).toBe(true)
        expect((await shown(page)).sizes).toEqual([position])
      }
    })
  })

  test('is one group of buttons, large enough for a thumb, at the foot of a phone’s screen', async () => {
    await visit(path, phone, async (page) => {
      const names = await sizesOf(page)
      await page.getByRole('radio', { name: names[0] ?? '', exact: true }).check()
      const group = page.getByRole('radiogroup', { name: 'Size' })
      expect(await group.ariaSnapshot()).toBe(
        [
          '- radiogroup "Size":',
          '  - text: Size',
          '  - radio "All sizes"',
          '  - text: All sizes',
          ...names.flatMap((name, position) => [
            `  - radio "${name}"${position === 0 ? ' [checked]' : ''}`,
            `  - text: ${name}`,
          ]),
        ].join('\n'),
      )
      await page.mouse.wheel(0, 1500)
      const bar = await page.locator('.bar').boundingBox()
      expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBeCloseTo(740, 0)
      for (const choice of await page.locator('.size-switch input').all()) {
        const box = await choice.boundingBox()
        expect(box?.height).toBeGreaterThanOrEqual(40)
        expect(box?.width).toBeGreaterThanOrEqual(40)
      }
    })
  })
})

test('the style sheet has a rule for each of 24 sizes', () => {
  const sheet = readFileSync('src/styles/size-views.css', 'utf8')
  const rules = Array.from({ length: 24 }, (_, size) =>
    [
      `:root:has(#size-all):not(:has(#size-all:checked), :has(#size-${size}:checked)) .s${size}:not(.only),`,
      `:root:has(#size-${size}:checked) .only:not(.s${size}) {`,
    ].join('\n'),
  )
  expect(rules.filter((rule) => !sheet.includes(rule))).toEqual([])
})
