import { toHtml } from 'hast-util-to-html'
import { toHast } from 'mdast-util-to-hast'
import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import type { Outcome } from '../../src/diagnostic/index.ts'
import { toMdast } from '../../src/html/index.ts'
import type { BlockOf } from '../../src/pattern/node.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { studio } from '../print/fixture.ts'
import { readPdf } from '../print/read-pdf.ts'

const rounds = [
  'Rnd 1: 6 sc in magic ring. (6 sc)',
  'Rnd 2: 2 sc in each st around. (12 sc)',
  'Rnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18 sc)',
]

function read(request: string, rows: readonly string[], terms: string): Outcome<Pattern | null> {
  const text = `---\ntitle: Mat\nsizes: [S, M, L]\nterms: ${terms}\n---\n\n## Mat\n\n${[request, ...rows].join('\n\n')}\n`
  return readDraft('mat.md', 'mat', text).outcome
}

function resolved(request: string, rows: readonly string[] = rounds, terms = 'us'): Pattern {
  const { value, diagnostics } = read(request, rows, terms)
  expect(diagnostics.map(({ message }) => message)).toEqual([])
  if (value === null) throw new Error('no pattern')
  return value
}

function chartIn(pattern: Pattern): BlockOf<'drawing'> {
  const found = pattern.body.find((block) => block.type === 'drawing')
  if (found?.type !== 'drawing') throw new Error('no drawing')
  return found
}

const differing = [
  'Foundation: Ch 7 (9, 11).',
  'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (6 (8, 10) sc)',
]

describe('what a chart is of', () => {
  it.each([
    ['::chart', rounds, 'Mat, Rnds 1–3'],
    ['::chart{rows="2–3"}', rounds, 'Mat, Rnds 2–3'],
    ['::chart{rows="2–3" stitches="1–4"}', rounds, 'Mat, Rnds 2–3, stitches 1–4'],
    ['::chart', differing, 'Mat, Row 1, size M'],
    ['::chart{size="L"}', differing, 'Mat, Row 1, size L'],
  ])('%s', (request, rows, caption) => {
    expect(chartIn(resolved(request, rows)).figure.caption).toBe(caption)
  })
})

const flat = [
  'Foundation: Ch 9.',
  'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (8 sc)',
  'Row 2: Ch 1, sc in each st across, turn. (8 sc)',
]

describe('what a chart can’t show is said', () => {
  it.each([
    ['::chart', [...flat, 'Row 3 (RS): Ch 1, reverse sc in each st across.'], ['chart-stitch-plain']],
    ['::chart{rows="1–2"}', [...flat, 'Row 3 (RS): Ch 1, reverse sc in each st across.'], []],
    [
      '::chart',
      [...flat, 'Row 3 (RS): Ch 3 (counts as dc), linked dc in each st across, turn.'],
      ['chart-stitch-plain'],
    ],
    ['::chart{stitches="1–4"}', rounds, ['chart-stitches-ring']],
    ['::chart{rows="7"}', flat, ['chart-rows-unknown']],
    ['::chart{rows="first"}', flat, ['chart-rows-unknown']],
    ['::chart{stitches="9–12"}', flat, ['chart-stitches-unknown']],
    ['::chart{stitches="all"}', flat, ['chart-stitches-unknown']],
    ['::chart{rows="1" colour="red"}', flat, ['drawing-words-unknown']],
  ])('%s', (request, rows, codes) => {
    expect(read(request, rows, 'us').diagnostics.map(({ code }) => code)).toEqual(codes)
  })
})

describe('the key of a chart', () => {
  it('is in the draft’s terms, and has those of the other country with them', () => {
    const uk = ['Rnd 1: 6 dc in magic ring. (6 dc)', 'Rnd 2: 2 dc in each st around. (12 dc)']
    const words = chartIn(resolved('::chart', uk, 'uk')).key.map(({ words }) =>
      words.map((node) => ('text' in node ? node.text : '')).join(''),
    )
    expect(words).toEqual(['ring', 'dc: double crochet', 'direction of work'])
    const others = chartIn(resolved('::chart', uk, 'uk')).key.flatMap(({ words }) =>
      words.flatMap((node) => (node.type === 'term' ? [node.term.other] : [])),
    )
    expect(others).toEqual(['sc', 'single crochet'])
  })
})

describe('both faces of a chart', () => {
  const pattern = resolved('::chart{rows="1–3"}')
  const html = toHtml(toHast({ type: 'root', children: toMdast([chartIn(pattern)], pattern.sizes) }))

  it('have the numbers of its rows and its key', async () => {
    const { bytes } = await renderPdf(pattern, { paper: 'a4', fonts: loadFonts(), studio })
    const { text, pages } = await readPdf(bytes)
    // The page has the other country's terms beside the draft's own, out of view.
    const shown = html.replace(/<(span|abbr)[^>]* hidden\b.*?<\/\1>/g, '').replace(/<[^>]*>/g, '')
    for (const words of ['1', '2', '3', 'ring', 'sc: single crochet', 'Mat, Rnds 1–3']) {
      expect(shown).toContain(words)
      expect(text).toContain(words)
    }
    expect(pages.flatMap(({ structure }) => structure).filter((line) => line.includes('Figure'))).toHaveLength(1)
  })

  it('say what it shows to readers who do not see it', () => {
    expect(html).toContain(
      'role="img" aria-label="Stitch chart: Mat, Rnds 1–3. Rnd 1 in the ring: 6 sc. Rnd 2: 2 sc in each of next 6.',
    )
    expect(html).not.toMatch(/style=/)
  })
})
