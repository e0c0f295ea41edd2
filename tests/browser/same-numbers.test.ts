import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { type FoundPage, readPdf } from '../print/read-pdf.ts'
import { printedRows, rowForSize } from '../print/reading/rows.ts'
import { visitor } from './browser.ts'
import { patternPages, siteFolder } from './site.ts'

const visit = visitor()

/** What a reader of the page has before them. */
interface PageText {
  /** Rows, for all sizes and for each of them. */
  readonly rows: readonly { readonly all: string; readonly bySize: readonly string[] }[]
  readonly cells: readonly string[]
  readonly cautions: readonly string[]
  /** All of the pattern's text. */
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
    for (const node of article.querySelectorAll('nav, fieldset, form, .downloads')) node.remove()
    const count =
      1 +
      Math.max(
        0,
        ...[...document.querySelectorAll('.s')].map((node) => Number(/\bs(\d+)\b/.exec(node.className)?.[1] ?? 0)),
      )
    const forSize = (row: Element, size: number): string => {
      const own = row.cloneNode(true)
      if (!(own instanceof HTMLElement)) return ''
      for (const node of own.querySelectorAll(`.c, .s:not(.s${size})`)) node.remove()
      return own.textContent ?? ''
    }
    return {
      rows: [...document.querySelectorAll('li.row')].map((row) => ({
        all: row.textContent ?? '',
        bySize: Array.from({ length: count }, (_, size) => forSize(row, size)),
      })),
      cells: texts('[data-cell]'),
      cautions: texts('.caution p'),
      all: article.textContent ?? '',
    }
  })
}

/** The print's text without heads, feet and boxes, which are not read out. */
const printText = (pages: readonly FoundPage[]): string => pages.map(({ tree }) => tree.text).join(' ')

/** Lines break at other places on paper, so blanks do not count. */
const bare = (text: string): string => text.replace(/[\s\u2009\u00a0]+/g, '')

const everyNumber = (text: string): string[] => (text.match(/\d+(?:[.,]\d+)*[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞]/g) ?? []).sort()

const numbers = (text: string): string[] => [...new Set(everyNumber(text))]

describe.each(['a4', 'letter', 'large-a4', 'large-letter'])('the print-out %s has the page’s numbers', (form) => {
  it.each(patternPages)('%s', async (path) => {
    const slug = path.split('/').at(-2) ?? ''
    const page = await visit(path, { javaScriptEnabled: true }, readPage)
    const { pages } = await readPdf(new Uint8Array(readFileSync(join(siteFolder, path, `${slug}-${form}.pdf`))))
    const text = printText(pages)
    expect(page.cells.filter((cell) => !bare(text).includes(bare(cell)))).toEqual([])
    expect(page.cautions.filter((words) => !bare(text).includes(bare(words)))).toEqual([])
    expect(numbers(text)).toEqual(numbers(page.all))
    const printed = printedRows(pages)
    expect(page.rows.length).toBeGreaterThan(5)
    expect(printed.length).toBe(page.rows.length)
    for (const [index, { all, bySize }] of page.rows.entries()) {
      const row = printed[index]
      if (row === undefined || row.lines.length === 0) expect(bare(`${row?.label}${row?.steps}`)).toBe(bare(all))
      else expect(bySize.map((_, size) => everyNumber(rowForSize(row, size)))).toEqual(bySize.map(everyNumber))
    }
  })
})
