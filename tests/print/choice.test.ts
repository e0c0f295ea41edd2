import { describe, expect, it } from 'vitest'
import { textForSize } from '../../src/measure/segment.ts'
import type { Block, Inline, RowBlock } from '../../src/pattern/node.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { demoDrafts, readDemo } from '../demo-drafts.ts'
import { studio } from './fixture.ts'
import { bare, readPdf } from './read-pdf.ts'
import { printedRows } from './reading/rows.ts'

const demos: readonly (readonly [string, Pattern])[] = demoDrafts.map(([slug, text]) => {
  const { value } = readDemo(slug, text).outcome
  if (value === null) throw new Error(`${slug} can’t be used`)
  return [slug, value]
})

/** Rows that a size works, whatever they stand in. */
function rowsFor(blocks: readonly Block[], size: number): readonly RowBlock[] {
  return blocks.flatMap((block): readonly RowBlock[] => {
    if (block.type === 'row') return block.only === null || block.only.includes(size) ? [block] : []
    if (block.type === 'only') return block.sizes.includes(size) ? rowsFor(block.children, size) : []
    return block.type === 'list' ? block.items.flatMap((item) => rowsFor(item, size)) : []
  })
}

/** Words of a size in the other country's terms. */
function words(nodes: readonly Inline[], size: number): string {
  return nodes
    .map((node) => {
      if (node.type === 'term') return node.term.other
      if (node.type === 'value')
        return textForSize(
          node.segments.map((segment) => ({ ...segment, text: segment.term?.other ?? segment.text })),
          size,
        )
      if (node.type === 'onlyInline' && !node.sizes.includes(size)) return ''
      return 'children' in node ? words(node.children, size) : 'text' in node ? node.text : ''
    })
    .join('')
}

describe('a print-out of the largest size alone, in the other terms', () => {
  it.each(demos)('has its rows and numbers, and no others: %s', async (_, pattern) => {
    const size = pattern.sizes.length - 1
    const choice = { size, terms: 'other', units: 'imperial' } as const
    const { bytes } = await renderPdf(pattern, { paper: 'letter', choice, fonts: loadFonts(), studio })
    const { pages, title } = await readPdf(bytes)
    const rows = rowsFor(pattern.body, size).filter(({ label }) => label.length > 0)
    expect(rows.length).toBeGreaterThan(5)
    expect(printedRows(pages).map(({ label, steps }) => bare(label + steps))).toEqual(
      rows.map(({ label, steps, stated }) => bare(words([...label, ...steps, ...stated], size))),
    )
    expect(title).toContain(pattern.terms === 'us' ? 'UK terms' : 'US terms')
  })
})
