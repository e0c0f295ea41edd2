import { toHtml } from 'hast-util-to-html'
import { toHast } from 'mdast-util-to-hast'
import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { toMdast } from '../../src/html/index.ts'
import { textForAll, textForSize } from '../../src/measure/index.ts'
import type { BlockOf } from '../../src/pattern/node.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { studio } from '../print/fixture.ts'
import { bare, readPdf } from '../print/read-pdf.ts'

interface Given {
  readonly sizes: readonly string[]
  /** Formula of the stitches, in a grading block. */
  readonly stitches: string
  readonly request?: string
  readonly swatch?: string
}

const threeSizes = ['S', 'M', 'L']

function resolved({ sizes, stitches, request = '::schematic', swatch }: Given): Pattern {
  const gauge = swatch ?? 'stitches: 14 per 10 cm, rows: 11 per 10 cm'
  const text = `---
title: Panel
sizes: [${sizes.join(', ')}]
swatch: {${gauge}}
finished: {Width: width_made, Height: height_made}
---

\`\`\`grading
sts = ${stitches}
width_made = width(sts)
height_made = height(12)
\`\`\`

## Panel (make 2)

${request}

Foundation: Ch {{sts + 1}}.

Row 1 (RS): Hdc in 2nd ch from hook and in each ch across, turn. ({{sts}} hdc)

Rows 2–12: Ch 1, hdc in each st across, turn. ({{sts}} hdc)
`
  const { value, diagnostics } = readDraft('panel.md', 'panel', text).outcome
  expect(diagnostics.map(({ message }) => message)).toEqual([])
  if (value === null) throw new Error('no pattern')
  return value
}

function drawingOf(pattern: Pattern): BlockOf<'drawing'> {
  const found = pattern.body.find((block) => block.type === 'drawing')
  if (found?.type !== 'drawing') throw new Error('no drawing')
  return found
}

const few: Given = { sizes: threeSizes, stitches: '[60, 68, 74]' }
const many: Given = {
  sizes: ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'],
  stitches: '[60, 68, 74, 82, 88, 96, 102, 110, 118]',
}

describe('the measures of a schematic', () => {
  it.each([few, many, { sizes: ['One size'], stitches: '60' }])('are those of the formulas: $stitches', (given) => {
    const pattern = resolved(given)
    const { measures } = drawingOf(pattern).figure
    const finished = pattern.finished.map(({ label, value }) => `${label} ${textForAll(value.segments)}`)
    expect(measures.map(({ name, value }) => `${name} ${textForAll(value.segments)}`)).toEqual(finished)
  })

  it('are those of another swatch where it is named', () => {
    const swatch =
      'body: {stitches: 14 per 10 cm, rows: 11 per 10 cm}, lace: {stitches: 10 per 10 cm, rows: 10 per 10 cm}'
    const { measures } = drawingOf(resolved({ ...few, swatch, request: '::schematic{swatch="lace"}' })).figure
    expect(measures.map(({ value }) => textForSize(value.segments, 0))).toEqual(['60 cm [23½ in]', '12 cm (4¾ in)'])
  })

  it('stand at their lines in both systems, each on a line of its own', () => {
    const { drawing } = drawingOf(resolved(few)).figure
    const texts = drawing.labels.map(({ lines }) =>
      lines.map((line) => (typeof line === 'string' ? line : textForAll(line.segments))).join(' / '),
    )
    expect(texts).toEqual(['11 cm / 4¼ in', '43 (48.5, 53) cm / 16¾ (19, 20¾) in'])
  })

  it('have letters where many sizes stand side by side, and are listed', () => {
    const { lettered, drawing, alt } = drawingOf(resolved(many)).figure
    expect(lettered).toBe(true)
    expect(drawing.labels.map(({ letter }) => letter?.text)).toEqual(['B', 'A'])
    expect(alt).toBe('Schematic: Panel. Its measures are listed below.')
  })
})

describe('where and how it stands', () => {
  it('is the middle size’s shape, of the piece that it stands in, in its place', () => {
    const pattern = resolved(few)
    expect(pattern.body.map(({ type }) => type)).toEqual(['heading', 'drawing', 'row', 'row', 'row'])
    expect(drawingOf(pattern).caption).toEqual([{ type: 'text', text: 'Panel, drawn in size M' }])
  })

  it('takes piece, size and caption from the line', () => {
    const request = '::schematic[Front and **back** {{width_made}}]{piece="panel" size="l"}'
    const { caption, figure } = drawingOf(resolved({ ...few, request }))
    expect(figure.caption).toBe('Panel, drawn in size L')
    expect(caption.map(({ type }) => type)).toEqual(['text', 'strong', 'text', 'value'])
  })
})

function htmlOf(pattern: Pattern): string {
  return toHtml(toHast({ type: 'root', children: toMdast([drawingOf(pattern)], pattern.sizes) }))
}

/** Numbers in the order in which they stand, without those of places and sizes of letters. */
function textOf(html: string): string {
  return html.replace(/<[^>]*>/g, '')
}

describe.each([
  ['few sizes', few],
  ['many sizes', many],
] as const)('both faces of a schematic in %s', (_, given) => {
  const pattern = resolved(given)
  const html = htmlOf(pattern)

  it('show the same numbers', async () => {
    const { bytes } = await renderPdf(pattern, { paper: 'a4', fonts: loadFonts(), studio })
    const { text } = await readPdf(bytes)
    const values = [...html.matchAll(/data-v="[^"]*">(.*?)<\/(?:tspan|span)>(?= |<\/text|<\/dd)/g)].map(([, value]) =>
      bare(textOf(value ?? '')),
    )
    expect(values.length).toBeGreaterThan(3)
    expect(values.filter((value) => !bare(text).includes(value))).toEqual([])
  })

  it('tell readers who do not see it what it is', async () => {
    const { figure } = drawingOf(pattern)
    expect(html).toContain(`role="img" aria-label="${figure.alt}"`)
    const { bytes } = await renderPdf(pattern, { paper: 'a4', fonts: loadFonts(), studio })
    const { pages } = await readPdf(bytes)
    expect(pages.flatMap(({ structure }) => structure).filter((line) => line.includes('Figure'))).toHaveLength(1)
  })

  it('bring no style and no colour of their own to the page', () => {
    expect(html).not.toMatch(/style=|#[0-9a-f]{3,6}\b/)
    expect(html).toMatch(
      /^<figure class="drawing schematic" id="schematic-panel"><figcaption>.*?<\/figcaption><svg viewBox=/,
    )
  })
})
