import { describe, expect, it } from 'vitest'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { manySizes, studio, threeSizes, tideLine } from './fixture.ts'
import type { TextNode } from './read-pdf.ts'
import { readPdf } from './read-pdf.ts'
import { workedPattern } from './worked.ts'

async function sheet(pattern: ReturnType<typeof tideLine>): Promise<Awaited<ReturnType<typeof readPdf>>> {
  const { bytes } = await renderPdf(pattern, { paper: 'a4', form: 'counts', fonts: loadFonts(), studio })
  return readPdf(bytes)
}

function tables(node: TextNode): readonly (readonly (readonly string[])[])[] {
  if (node.role === 'Table') return [node.children.map((row) => row.children.map(({ text }) => text.trim()))]
  return node.children.flatMap(tables)
}

describe('a count sheet', () => {
  it('has a line for each row as it is written, and what each size has at its end', async () => {
    const pattern = workedPattern(`
## Mat

Foundation: Ch 21 (31, 41).

Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (20 (30, 40) sc)

Rows 2–5 (7, 9): Ch 1, sc in each st across, turn.

Sizes M and L only:

Row 10: Ch 1, sc in first 10 sts, turn, leaving rem sts unworked.

## Border

Join yarn with sl st in any st.

Rnd 1: Ch 1, 50 sc evenly around, join with sl st in first sc.`)
    const { pages } = await sheet(pattern)
    expect(pages).toHaveLength(1)
    const [mat, border] = pages.flatMap((page) => tables(page.tree))
    expect(mat?.slice(0, 4)).toEqual([
      ['Row', 'S', 'M', 'L'],
      ['Foundation, ch', '21', '31', '41'],
      ['Row 1 (RS)', '20', '30', '40'],
      ['Rows', '2–5 20', '2–7 30', '2–9 40'],
    ])
    expect(border?.at(-1)).toEqual(['Rnd 1', '50', '50', '50'])
  })

  it.each([
    ['three sizes', threeSizes],
    ['fifteen sizes', manySizes(15)],
  ])('says with a dash what was not worked: %s', async (_, sizes) => {
    const { pages } = await sheet(tideLine(sizes))
    expect(pages).toHaveLength(1)
    const rows = pages.flatMap((page) => tables(page.tree)).flat()
    expect(rows.slice(1).every((cells) => cells.slice(1).every((cell) => cell.endsWith('–')))).toBe(true)
  })

  it('is one page for two hundred rows of three sizes, and goes on for more', async () => {
    const rows = (count: number): string =>
      Array.from({ length: count }, (_, index) => `Row ${index + 2}: Ch 1, sc in each st across, turn.`).join('\n\n')
    const first = '## Mat\n\nFoundation: Ch 21 (31, 41).\n\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.'
    expect((await sheet(workedPattern(`${first}\n\n${rows(199)}`))).pages).toHaveLength(1)
    const long = await sheet(workedPattern(`${first}\n\n${rows(899)}`))
    expect(long.pages.length).toBeGreaterThan(1)
    const heads = long.pages
      .flatMap((page) => tables(page.tree))
      .flat()
      .map(([head]) => head)
    expect(heads.filter((head) => /^Row \d+$/.test(head ?? ''))).toHaveLength(900)
  })
})
