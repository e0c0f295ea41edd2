import axe, { type AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'

/** What axe finds on a page as it stands, as `rule: element` lines: readable where a test fails. */
export async function violations(page: Page): Promise<string[]> {
  return run(page, "{ resultTypes: ['violations'] }")
}

/**
 * What axe finds on a page in both schemes, with the scheme before each line. They differ in colours only, so in the dark one
 * only the rules for colours are asked again.
 */
export async function violationsInBothSchemes(page: Page): Promise<string[]> {
  await page.emulateMedia({ colorScheme: 'light' })
  const light = await violations(page)
  await page.emulateMedia({ colorScheme: 'dark' })
  const dark = await run(page, "{ resultTypes: ['violations'], runOnly: ['color-contrast', 'link-in-text-block'] }")
  return [...light.map((each) => `light: ${each}`), ...dark.map((each) => `dark: ${each}`)]
}

async function run(page: Page, options: string): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source)
  const found = await page.evaluate<AxeResults>(`axe.run(document, ${options})`)
  return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`))
}
