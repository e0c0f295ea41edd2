import { describe, expect, it } from 'vitest'
import { textForAll, textForSize } from '../../src/measure/segment.ts'
import type { Block, Pattern, ValueNode } from '../../src/pattern/pattern.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import * as print from '../../src/print/index.ts'
import { inlines, longBody, manySizes, paragraph, ramp, row, studio, threeSizes, tideLine } from './fixture.ts'
import { png } from './png.ts'
import type { FoundDocument } from './read-pdf.ts'
import { bare, readPdf } from './read-pdf.ts'

const fonts = loadFonts()

async function printed(pattern: Pattern, more: Partial<print.PrintOptions> = {}): Promise<FoundDocument> {
  const { bytes } = await print.renderPdf(pattern, { paper: 'a4', fonts, studio, ...more })
  return readPdf(bytes)
}

/** Every value node anywhere in a pattern. */
function valuesIn(node: unknown): readonly ValueNode[] {
  if (Array.isArray(node)) return node.flatMap(valuesIn)
  if (typeof node !== 'object' || node === null) return []
  return isValue(node) ? [node] : Object.values(node).flatMap(valuesIn)
}

const isValue = (node: object): node is ValueNode => 'type' in node && node.type === 'value'

const wordsOf = (value: ValueNode): string => textForAll(value.segments)

/** In one bracket, or size by size in columns, where a range says its first row in each. */
function isShown(value: ValueNode, found: string, count: number): boolean {
  if (found.includes(bare(wordsOf(value)))) return true
  const cells = Array.from({ length: count }, (_, size) => bare(textForSize(value.segments, size)))
  return new RegExp(cells.map((cell) => cell.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('(?:\\d+[–-])?')).test(found)
}

const longTitle = 'Tide Line & Back Again '.repeat(10).slice(0, 200)

const patterns: readonly (readonly [what: string, pattern: Pattern])[] = [
  ['three sizes', tideLine()],
  ['one size', tideLine(['One size'])],
  ['fifteen sizes', tideLine(manySizes(15))],
  ['twenty-four sizes', tideLine(manySizes(24))],
  ['a title of 200 characters', tideLine(threeSizes, { title: longTitle })],
  ['400 rows', tideLine(threeSizes, { body: longBody(400, 3) })],
  ['a word wider than the page', tideLine(threeSizes, { body: [paragraph('https://lowwater.example/'.repeat(20))] })],
  [
    'a row longer than a page',
    tideLine(threeSizes, { body: [row('Row 1:', { steps: ['Ch 1, sc in next st, '.repeat(600)] })] }),
  ],
  ['nothing but a title', bareTitle()],
]

function bareTitle(): Pattern {
  const none = { summary: null, published: null, edition: null, changes: [], fits: [], finished: [], gauge: [] }
  const materials = { yarn: [], yarnNote: null, hooks: [], notions: [] }
  return tideLine(['One size'], { ...none, materials, abbreviations: [], film: null, skill: null, body: [] })
}

describe('the entrance', () => {
  it('exports one function', () => {
    expect(Object.keys(print)).toEqual(['renderPdf'])
  })
})

describe.each(['a4', 'letter'] as const)('a print-out on %s', (paper) => {
  it.each(patterns)('shows every value and keeps all text on the page: %s', async (_, pattern) => {
    const { pages, text } = await printed(pattern, { paper })
    const found = bare(text)
    const shown = [...valuesIn(pattern.body), ...pattern.materials.yarn.flatMap((yarn) => yarn.amount ?? [])]
    const cells = [...pattern.fits, ...pattern.finished].flatMap((line) => line.cells.map(textForAll))
    expect(shown.filter((value) => !isShown(value, found, pattern.sizes.length)).map(wordsOf)).toEqual([])
    expect(cells.filter((cell) => !found.includes(bare(cell)))).toEqual([])
    const outside = pages.flatMap(({ found, width, height }) =>
      found.filter(({ x, y, width: length }) => x < 40 || x + length > width - 50 || y < 20 || y > height - 20),
    )
    expect(outside).toEqual([])
  })
})

describe('the text, in order', () => {
  it('goes from the title through the facts to the rows', async () => {
    const { text } = await printed(tideLine())
    const order = ['Tide Line', 'Sizes', 'Materials', 'Gauge', 'Abbreviations', 'Changes', 'Special stitches', 'Cowl']
    const rows = ['Foundation:', 'Rnd 1 (RS):', '(60 (72, 84) sc)', 'Rnd 2:', 'Blocking']
    const places = [...order, ...rows].map((words) => text.indexOf(words))
    expect(places).toEqual([...places].sort((a, b) => a - b))
    expect(places).not.toContain(-1)
  })

  it('sets what stands above the first heading before the facts', async () => {
    const pattern = tideLine()
    const { text } = await printed({ ...pattern, body: [paragraph('A word ahead.'), ...pattern.body] })
    expect(text.indexOf('A word ahead.')).toBeLessThan(text.indexOf('Materials'))
  })

  it.each([
    ['a block', 'Size Adult L only: Work one more round.'],
    ['words in a line', 'Size Child only: skip the last round.'],
    ['a row', 'Edging rnd 1: Size Child only: Ch 1, sc in each st around.'],
  ])('says which sizes %s is for', async (_, words) => {
    expect((await printed(tideLine())).text).toContain(words)
  })

  it.each([
    [null, 'Safety Cords can catch.'],
    [[0, 2], 'Safety Sizes Child and Adult L only: Cords can catch.'],
  ])('prints a caution with its source, for sizes %j', async (sizes, words) => {
    const { text } = await printed(
      tideLine(threeSizes, { cautions: [{ text: 'Cords can catch.', source: 'EN 14682', sizes }] }),
    )
    expect(text).toContain(`${words} Source: EN 14682`)
  })

  it('does not say again what the row says itself', async () => {
    const steps = ['Sizes Adult S and Adult L only: Ch 1.']
    const { text } = await printed(tideLine(threeSizes, { body: [row('Rnd 9:', { steps, only: [1, 2] })] }))
    expect(text.match(/only:/g)).toHaveLength(1)
  })

  it('gives the order of the sizes, and none where there is one size', async () => {
    expect((await printed(tideLine())).text).toContain('Numbers are given in this order: Child (Adult S, Adult L).')
    expect((await printed(tideLine(['Child']))).text).toContain('Sizes Size Child To fit')
  })

  it.each([
    ['columns, where few sizes fit side by side', threeSizes, 'Size Child Adult S Adult L To fit head'],
    ['rows, where many do not', manySizes(15), 'Size To fit head Circumference Depth Size 1 50 cm'],
  ])('sets the sizes in %s', async (_, sizes, words) => {
    expect((await printed(tideLine(sizes))).text).toContain(words)
  })
})

describe('tables', () => {
  const figures = ramp(15, 100, 7).map(String)
  const table = (cells: readonly string[]): Block => ({
    type: 'table',
    align: cells.map(() => 'right'),
    head: cells.map((_, index) => inlines(`Size ${index + 1}`)),
    rows: Array.from({ length: 40 }, () => cells.map((cell) => inlines(cell))),
  })

  it('keep the figures of fifteen columns whole', async () => {
    const { pages } = await printed(tideLine(threeSizes, { body: [table(figures)] }))
    const found = pages.flatMap((page) => page.found.map(({ text }) => text.trim()))
    expect(figures.filter((figure) => found.filter((text) => text === figure).length !== 40)).toEqual([])
  })
})

describe('characters', () => {
  const withText = (words: string): Pattern => tideLine(threeSizes, { body: [paragraph(words)] })

  it.each([
    ['letters of other scripts', 'Žluťoučký őű Ελλάδα Привет', 'Žluťoučký őű Ελλάδα Привет'],
    ['an accent typed apart', 'cafe\u0301', 'café'],
    ['an eighth after a number', '9⅛ in', '9 1⁄8 in'],
    ['an eighth alone', '⅜ in', '3⁄8 in'],
    ['a half, which the face has', '9½ in', '9½ in'],
    ['signs, in faces of their own', 'A → B ★ ✂ ♥', 'A → B ★ ✂ ♥'],
    ['a name in Japanese', '鈴木さん', '鈴木さん'],
    ['what no face has as plain writing', '①, ℃, ﬁ', '1, °C, fi'],
    ['a fraction seldom met', '2⅚ in', '2 5⁄6 in'],
    ['a hyphen that does not break', 'ch\u20112', 'ch-2'],
    ['joiners, which are not seen', 'a\u200bb\u00adc', 'abc'],
  ])('prints %s', async (_, words, shown) => {
    const { bytes, missing } = await print.renderPdf(withText(words), { paper: 'a4', fonts, studio })
    expect(missing).toEqual([])
    expect((await readPdf(bytes)).text.normalize('NFC').replaceAll('\u2009', ' ')).toContain(shown)
  })

  it('names each character that no face has once, and prints a question mark', async () => {
    const { bytes, missing } = await print.renderPdf(withText('Yarn 실, א, 실.'), { paper: 'a4', fonts, studio })
    expect(missing).toEqual(['실', 'א'])
    expect((await readPdf(bytes)).text).toContain('Yarn ?, ?, ?.')
  })
})

describe('pictures', () => {
  const cover = { src: './cover.png', alt: 'The cowl on sand' }

  it('draws the cover and says what it shows', async () => {
    const { pages } = await printed(tideLine(threeSizes, { cover }), { images: { './cover.png': png(30, 40) } })
    expect(pages[0]?.structure).toContain('    Figure "The cowl on sand"')
  })

  it.each([
    ['whose bytes are not given', {}],
    ['of another kind', { './cover.png': new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>') }],
  ])('leaves out a cover %s', async (_, images) => {
    const { pages } = await printed(tideLine(threeSizes, { cover }), { images })
    expect(pages[0]?.structure.join()).not.toContain('Figure')
  })

  it('prints the words of a picture that is not there, and the picture where it is', async () => {
    expect((await printed(tideLine())).text).toContain('Picture: The wave edge from close by')
    const { pages } = await printed(tideLine(), { images: { 'wave.png': png(300, 100) } })
    expect(pages.flatMap((page) => page.structure).join()).toContain('Figure "The wave edge from close by"')
  })
})

describe('links', () => {
  it.each([
    ['https://lowwater.example/a', ['https://lowwater.example/a']],
    ['mailto:hello@lowwater.example', ['mailto:hello@lowwater.example']],
    ['#rnd-2', []],
    ['../other/', []],
    ['javascript:alert(1)', []],
  ])('%s', async (href, links) => {
    const body = [paragraph({ type: 'link', href, children: inlines('there') })]
    const { pages, text } = await printed(tideLine(threeSizes, { film: null, body }))
    expect(pages.flatMap((page) => page.links)).toEqual(links)
    expect(text).toContain('there')
  })
})

describe('head and foot', () => {
  it('give title, edition, page and studio on each page, the piece and the sizes from the second on', async () => {
    const { pages } = await printed(tideLine(threeSizes, { body: longBody(120, 3) }))
    expect(pages.length).toBeGreaterThan(4)
    for (const [index, { text }] of pages.entries()) {
      expect(text).toContain('Tide Line · Edition 1.1 ')
      expect(text).toContain(`Page ${index + 1} of ${pages.length}`)
      expect(text).toContain('Low Water Studio · hello@lowwater.example')
      expect(/Part \d Child \(Adult S, Adult L\)/.test(text)).toBe(index > 0)
    }
  })
})
