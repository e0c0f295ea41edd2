import { beforeAll, describe, expect, it } from 'vitest'
import type { BlockOf } from '../../src/pattern/node.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { studio } from './fixture.ts'
import type { FoundDocument } from './read-pdf.ts'
import { readPdf } from './read-pdf.ts'
import { offPage, overlapping } from './reading/overlapping.ts'
import { workedPattern } from './worked.ts'

/** A flat piece with both drawings, in so many sizes. */
function panel(name: string, sizes: number): readonly string[] {
  const bySize = (from: number, step: number): string => {
    const all = Array.from({ length: sizes }, (_, size) => String(from + step * size))
    return all.length === 1 ? String(from) : `${all[0] ?? ''} (${all.slice(1).join(', ')})`
  }
  const end = bySize(60, 2)
  return [
    `## ${name}`,
    `::schematic{piece="${name}"}`,
    `::chart{piece="${name}" rows="1–4" stitches="1–12"}`,
    `Foundation: Ch ${bySize(41, 4)}.`,
    `Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (${bySize(40, 4)} sc)`,
    'Row 2: Ch 3 (counts as dc), dc in next st and in each st across, turn.',
    'Row 3: Ch 1, *sc in next st, ch 1, sk next st; rep from * to last 2 sts, sc in next 2 sts, turn.',
    'Row 4: Ch 3 (counts as dc), dc in next st and in each st and ch-1 sp across, turn.',
    `Rows 5–60${sizes === 1 ? '' : end.slice(2)}: Ch 1, sc in each st across, turn.`,
  ]
}

function rounds(count: number): readonly string[] {
  const grown = Array.from(
    { length: count - 2 },
    (_, more) =>
      `Rnd ${more + 3}: *Sc in next ${more + 1} sts, 2 sc in next st; rep from * around. (${(more + 3) * 6} sc)`,
  )
  return ['Rnd 1: 6 sc in magic ring. (6 sc)', 'Rnd 2: 2 sc in each st around. (12 sc)', ...grown]
}

function facts(sizes: number): string {
  const names = Array.from({ length: sizes }, (_, size) => `Adult size ${size + 1}`)
  return `title: Mat\nsizes: [${names.join(', ')}]\nswatch: {stitches: 14 per 10 cm, rows: 16 per 10 cm}`
}

function drafted(sizes: number, ...body: readonly string[]): Pattern {
  return workedPattern(body.join('\n\n'), facts(sizes))
}

const numbers = ['One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten', 'Eleven', 'Twelve']
const long = 'A panel whose name goes on and on and then a little further'

const extremes: readonly (readonly [what: string, pattern: Pattern, drawings: number])[] = [
  ['one size, one piece', drafted(1, ...panel('Panel', 1)), 2],
  ['fifteen sizes', drafted(15, ...panel('Panel', 15)), 2],
  ['twelve pieces', drafted(3, ...numbers.flatMap((number) => panel(`Panel ${number}`, 3))), 24],
  ['a long name', drafted(3, ...panel(long, 3)), 2],
  ['a large motif', drafted(1, '## Motif', '::chart', '::schematic', ...rounds(24)), 2],
  ['a motif too large for a chart', drafted(1, '## Motif', '::chart', '::schematic', ...rounds(60)), 1],
]

const drawingsIn = ({ body }: Pattern): readonly BlockOf<'drawing'>[] =>
  body.flatMap((block) => (block.type === 'drawing' ? [block] : []))

describe.each(extremes)('drawings of %s', (_, pattern, count) => {
  const drawings = drawingsIn(pattern)

  it('are all there', () => {
    expect(drawings).toHaveLength(count)
  })

  it.each([
    ['usual', 'a4'],
    ['large', 'letter'],
  ] as const)('have no words on each other or off the page: %s, %s', async (form, paper) => {
    const { bytes } = await renderPdf(pattern, { form, paper, fonts: loadFonts(), studio })
    const { pages } = await readPdf(bytes)
    expect(pages.flatMap(({ found }) => overlapping(found))).toEqual([])
    expect(pages.flatMap((page) => offPage(page, 36, 18))).toEqual([])
  })
})

describe('a chart in print', () => {
  const pattern = drafted(1, '## Motif', '::chart[The whole motif]', ...rounds(12))
  let everyday: FoundDocument
  let large: FoundDocument
  beforeAll(async () => {
    const options = { paper: 'letter', fonts: loadFonts(), studio } as const
    everyday = await readPdf((await renderPdf(pattern, options)).bytes)
    large = await readPdf((await renderPdf(pattern, { ...options, form: 'large' })).bytes)
  })

  it('has heading, caption and key on one page', () => {
    for (const { pages } of [everyday, large]) {
      const [page] = pages.filter(({ text }) => text.includes('The whole motif'))
      expect(page?.text).toMatch(/Motif.*The whole motif.*ring.*sc: single crochet.*direction of work/s)
    }
  })

  it('is larger in large print', () => {
    const width = ({ pages }: FoundDocument): number => {
      const page = pages.find(({ text }) => text.includes('The whole motif'))
      const across = page?.found.filter(({ text }) => /^\d+$/.test(text.trim())).map(({ y }) => y) ?? []
      return Math.max(...across) - Math.min(...across)
    }
    expect(width(large) / width(everyday)).toBeGreaterThan(1.2)
  })

  it('is a figure with words for it, and a list after its caption', () => {
    const lines = everyday.pages.flatMap(({ structure }) => structure)
    expect(lines.find((line) => line.includes('Figure'))).toMatch(
      /Figure "Stitch chart: Motif, Rnds 1–12\. Rnd 1 in the ring: 6 sc\./,
    )
    const roles = everyday.pages.flatMap(({ structure }) => structure.map((line) => line.trim().split(' ')[0]))
    expect(roles.slice(roles.indexOf('Figure')).slice(0, 3)).toEqual(['Figure', 'P', 'L'])
  })
})
