import axe, { type AxeResults } from 'axe-core'
import { describe, expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { notFoundPage, pages, switchPages } from './site.ts'

const visit = visitor()

const schemes = ['light', 'dark'] as const
const widths = [360, 1280] as const
const cases = [...pages, notFoundPage].flatMap((path) =>
  schemes.flatMap((scheme) => widths.map((width) => ({ path, scheme, width }))),
)

/** What axe finds, as `rule: element` lines: readable where it fails. `size` is a button to choose first. */
function violations(
  path: string,
  colorScheme: 'light' | 'dark',
  width: number,
  size: string | null,
): Promise<string[]> {
  return visit(path, { colorScheme, viewport: { width, height: 800 } }, async (page) => {
    if (size !== null) await page.locator(size).check()
    await page.evaluate(axe.source)
    const { violations } = await page.evaluate<AxeResults>("axe.run(document, { resultTypes: ['violations'] })")
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))
  })
}

describe('axe finds nothing to mend', () => {
  test.each(cases)('on $path, $scheme, $width px wide', async ({ path, scheme, width }) => {
    expect(await violations(path, scheme, width, null)).toEqual([])
  })

  test.each(schemes)('where one size is shown, %s', async (scheme) => {
    expect(await violations(switchPages[0] ?? '', scheme, 360, '#size-1')).toEqual([])
  })
})

describe('a page can be found one’s way in', () => {
  test.each([...pages, notFoundPage])(
    '%s has one first heading, a language, a title and its landmarks',
    async (path) => {
      await visit(path, {}, async (page) => {
        expect(await page.locator('h1').count()).toBe(1)
        expect(await page.locator('html').getAttribute('lang')).toBe('en')
        expect(await page.title()).not.toBe('')
        for (const landmark of ['banner', 'main', 'contentinfo'] as const) {
          expect(await page.getByRole(landmark).count(), landmark).toBe(1)
        }
      })
    },
  )

  test.each(pages)('%s leaves no heading level out', async (path) => {
    await visit(path, {}, async (page) => {
      const levels = await page
        .locator('h1, h2, h3, h4, h5, h6')
        .evaluateAll((headings) => headings.map(({ tagName }) => Number(tagName[1])))
      const jumps = levels.filter((level, at) => at > 0 && level > (levels[at - 1] ?? 0) + 1)
      expect(jumps).toEqual([])
    })
  })

  test.each(pages)('%s has the skip link as its first stop', async (path) => {
    await visit(path, {}, async (page) => {
      await page.keyboard.press('Tab')
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Skip to the content')
      await page.keyboard.press('Enter')
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('main')
    })
  })
})
