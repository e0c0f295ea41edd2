import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { type FoundPage, readPdf } from '../print/read-pdf.ts'
import { visitor } from './browser.ts'
import { patternPages, siteFolder } from './site.ts'

const visit = visitor()

/** What a reader of the page has before them: values and cells, rows, and all of the pattern's text. */
interface PageText {
  readonly values: readonly string[]
  readonly rows: readonly string[]
  readonly cautions: readonly string[]
  readonly all: string
}

function readPage(page: Page): Promise<PageText> {
  return page.evaluate(() => {
    // A print-out is in the designer's own terms.
    for (const node of document.querySelectorAll('[hidden], .bar, .settings, .tick, .counter')) node.remove()
    const texts = (selector: string) => [...document.querySelectorAll(selector)].map((node) => node.textContent ?? '')
    // Links to the film at a row stand on the page alone; on paper its moments are listed.
    for (const link of document.querySelectorAll('.row-film')) link.remove()
    const article = document.querySelector('article')?.cloneNode(true)
    if (!(article instanceof HTMLElement)) throw new Error('the page has no article')
    // Ways about the page, not the pattern: they have no place on paper.
    for (const node of article.querySelectorAll('nav, fieldset, form, a[href$=".pdf"]')) node.remove()
    return {
      values: texts('[data-v], [data-cell]'),
      rows: texts('li.row'),
      cautions: texts('.caution p'),
      all: article.textContent ?? '',
    }
  })
}

/** The print's text without running heads and feet, which stand in the margins. */
function printText(pages: readonly FoundPage[]): string {
  return pages
    .flatMap(({ found, height }) => found.filter(({ y }) => y > 62 && y < height - 50).map(({ text }) => text))
    .join(' ')
}

/** Lines break at other places on paper, so blanks do not count. */
const bare = (text: string): string => text.replace(/[\s\u2009\u00a0]+/g, '')

const numbers = (text: string): string[] => [...new Set(text.match(/\d+(?:[.,]\d+)*[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞]/g))].sort()

async function bothFaces(path: string, paper: string): Promise<{ page: PageText; print: string }> {
  const slug = path.split('/').at(-2) ?? ''
  const page = await visit(path, { javaScriptEnabled: true }, readPage)
  const { pages } = await readPdf(new Uint8Array(readFileSync(join(siteFolder, path, `${slug}-${paper}.pdf`))))
  return { page, print: printText(pages) }
}

describe.each(['a4', 'letter'])('the print-out on %s has the page’s numbers', (paper) => {
  it.each(patternPages)('%s', async (path) => {
    const { page, print } = await bothFaces(path, paper)
    const printed = bare(print)
    expect(page.values.length).toBeGreaterThan(5)
    expect(page.values.filter((value) => !printed.includes(bare(value)))).toEqual([])
    expect(page.rows.length).toBeGreaterThan(5)
    expect(page.rows.filter((row) => !printed.includes(bare(row)))).toEqual([])
    expect(page.cautions.filter((words) => !printed.includes(bare(words)))).toEqual([])
    expect(numbers(print)).toEqual(numbers(page.all))
  })
})
