import { describe, expect, it } from 'vitest'
import { textForAll, textForSize } from '../../src/measure/segment.ts'
import type { Block, Inline, RowBlock } from '../../src/pattern/node.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { studio } from './fixture.ts'
import { bare, readPdf } from './read-pdf.ts'
import { offPage, overlapping } from './reading/overlapping.ts'
import { printedRows, rowForSize } from './reading/rows.ts'
import { workedPattern } from './worked.ts'

const names = 'One Two Three Four Five Six Seven Eight Nine Ten Eleven Twelve'.split(' ')

/** A pattern of panels, worked row by row. */
function panels(sizes: number, pieces: number, rows: number, title = 'Mat'): Pattern {
  const bySize = (from: number): string => {
    const [first, ...others] = Array.from({ length: sizes }, (_, size) => from + 6 * size)
    return others.length === 0 ? `${first}` : `${first} (${others.join(', ')})`
  }
  const row = (number: number): string =>
    number % 3 === 0
      ? `Row ${number}: Ch 1, sc in next ${bySize(10)} sts, ch 1, sk next st, sc in each st across, turn.`
      : `Row ${number}: Ch 1, sc in each st and in each ch-1 sp across, turn. (${bySize(30)} sc)`
  const body = names
    .slice(0, pieces)
    .flatMap((name) => [
      `## Panel ${name}`,
      `Foundation: Ch ${bySize(31)}.`,
      `Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (${bySize(30)} sc)`,
      ...Array.from({ length: rows - 4 }, (_, index) => row(index + 2)),
      `Rows ${rows - 2}–${rows}: Ch 1, sc in each st and in each ch-1 sp across, turn.`,
    ])
  const list = Array.from({ length: sizes }, (_, size) => `Size ${size + 1}`).join(', ')
  return workedPattern(body.join('\n\n'), `title: ${title}\nsizes: [${list}]`)
}

const longTitle = 'A Mat for the Long Table & the Short Bench '.repeat(6).slice(0, 200).trim()

const extremes: readonly (readonly [what: string, pattern: Pattern])[] = [
  ['one size, one piece', panels(1, 1, 12)],
  ['fifteen sizes', panels(15, 1, 12)],
  ['400 rows', panels(3, 1, 400)],
  ['a title of 200 characters', panels(3, 1, 8, longTitle)],
  ['twelve pieces', panels(6, 12, 8)],
]

const rowsIn = (body: readonly Block[]): readonly RowBlock[] => body.filter((block) => block.type === 'row')

/** A row's words for one size, or, with null, for all. */
function wordsOf({ label, steps, stated }: RowBlock, size: number | null): string {
  return [label, steps, stated].map((nodes) => nodes.map((node) => nodeWords(node, size)).join('')).join('')
}

function nodeWords(node: Inline, size: number | null): string {
  if (node.type === 'value') return size === null ? textForAll(node.segments) : textForSize(node.segments, size)
  if ('children' in node) return node.children.map((child) => nodeWords(child, size)).join('')
  return 'text' in node ? node.text : ''
}

const numbersIn = (text: string): readonly string[] => (text.match(/\d+/g) ?? []).toSorted()

describe.each(extremes)('%s', (_, pattern) => {
  const rows = rowsIn(pattern.body)

  it.each([
    ['usual', 'a4'],
    ['large', 'letter'],
    ['counts', 'a4'],
  ] as const)('no word is on another, or off the page: %s, %s', async (form, paper) => {
    const { bytes } = await renderPdf(pattern, { form, paper, fonts: loadFonts(), studio })
    const { pages } = await readPdf(bytes)
    expect(pages.flatMap(({ found }) => overlapping(found))).toEqual([])
    expect(pages.flatMap((page) => offPage(page, 36, 18))).toEqual([])
  })

  it.each(['columns', 'brackets'] as const)(
    'every row is there in its order, with every number: %s',
    async (numbers) => {
      const { bytes } = await renderPdf(pattern, { paper: 'a4', numbers, fonts: loadFonts(), studio })
      const printed = printedRows((await readPdf(bytes)).pages)
      expect(printed).toHaveLength(rows.length)
      for (const [index, row] of rows.entries()) {
        const found = printed[index]
        if (found === undefined || found.lines.length === 0)
          expect(bare(`${found?.label}${found?.steps}`)).toBe(bare(wordsOf(row, null)))
        else
          expect(pattern.sizes.map((_, size) => numbersIn(rowForSize(found, size)))).toEqual(
            pattern.sizes.map((_, size) => numbersIn(wordsOf(row, size))),
          )
      }
    },
  )

  it('the count sheet has a line for every row', async () => {
    const { bytes } = await renderPdf(pattern, { paper: 'letter', form: 'counts', fonts: loadFonts(), studio })
    const { pages, text } = await readPdf(bytes)
    const heads = pages.flatMap(({ structure }) => structure.filter((line) => line.trim() === 'TH of its Row'))
    expect(heads).toHaveLength(rows.length)
    expect(text.match(/Panel \w+/g)?.length).toBeGreaterThanOrEqual(
      new Set(pattern.rows.map(({ piece }) => piece)).size,
    )
  })
})
