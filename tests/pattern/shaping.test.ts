import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { textForAll, textForSize } from '../../src/measure/index.ts'
import type { Pattern, ValueNode } from '../../src/pattern/pattern.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { proofDocument } from '../../src/proof/document.ts'
import { htmlOf } from '../html/to-html.ts'
import { studio } from '../print/fixture.ts'
import { readPdf } from '../print/read-pdf.ts'

function resolve(grading: string, rows: string) {
  const text = `---\ntitle: Sleeve\nsizes: [Child, Adult S, Adult L]\nswatch: {stitches: 12 per 10 cm}\n---\n
\`\`\`grading\n${grading}\n\`\`\`\n\n## Sleeve\nRnd 1: {{a}} sc in ring.\n${rows}\n`
  const { source, outcome } = readDraft('sleeve.md', 'sleeve', text)
  const { value, diagnostics } = outcome
  if (value === null) throw new Error(`the test’s draft can’t be used: ${JSON.stringify(diagnostics)}`)
  return {
    pattern: value,
    codes: diagnostics.map(({ code }) => code),
    proof: proofDocument(source, value, diagnostics),
  }
}

/** The values in the steps of the last row. */
function lastRow({ body }: Pattern): readonly ValueNode[] {
  const row = body.at(-1)
  if (row?.type !== 'row') throw new Error('expected a row')
  return row.steps.flatMap((node) => (node.type === 'value' ? [node] : []))
}

function shown(grading: string, rows: string, size: number | null = null): string {
  const [value] = lastRow(resolve(grading, rows).pattern)
  return value === undefined ? '' : size === null ? textForAll(value.segments) : textForSize(value.segments, size)
}

const sameWording = 'a = [60, 70, 80]\nb = [42, 52, 56]\nt = taper(a, b, [42, 48, 60])'
const differing = 'a = [60, 70, 80]\nn = [7, 0, 8]\ne = evenly(n, a)'

describe('a phrase whose wording all sizes share', () => {
  it('is one sentence with the sizes in columns', () => {
    expect(shown(sameWording, 'Rnds 2–50: {{t}}.')).toBe(
      'dec 1 st at each end of every 4th row 6 (3, 6) times, then of every 6th row 3 (6, 6) times',
    )
  })

  it('is a plain sentence for the reader of one size', () => {
    expect(shown(sameWording, 'Rnds 2–50: {{t}}.', 1)).toBe(
      'dec 1 st at each end of every 4th row 3 times, then of every 6th row 6 times',
    )
  })
})

describe('a phrase whose wording differs by size', () => {
  const lines =
    'Size Child: increase 7 evenly over 60;\nSize Adult S: work even over 70;\nSize Adult L: increase 8 evenly over 80'

  it.each([
    ['ends a sentence', 'Rnd 2: {{e}}.', lines],
    ['stands before a count', 'Rnd 2: {{e}} ({{total}} sc)', lines],
    ['is followed by words for all', 'Rnd 2: Ch 1, {{e}}, join.', `\n${lines};\nall sizes`],
    ['is followed by a word on the next line', 'Rnd 2: {{e}}\nand turn.', `${lines};\nall sizes`],
  ])('has a line for each size where it %s', (_, row, expected) => {
    expect(shown(differing, row)).toBe(expected)
  })

  it('is one sentence for the reader of one size', () => {
    expect(shown(differing, 'Rnd 2: Ch 1, {{e}}, join.', 0)).toBe('increase 7 evenly over 60')
    expect(shown(differing, 'Rnd 2: Ch 1, {{e}}, join.', 1)).toBe('work even over 70')
  })

  it('names a size to which it does not apply', () => {
    expect(shown('a = 60\ne = if([1, 0, 1] = 1, evenly(6, a), none)', 'Rnd 2: {{e}}.')).toBe(
      'Size Child: increase 6 evenly over 60;\nSize Adult S: –;\nSize Adult L: increase 6 evenly over 60',
    )
  })

  it('breaks its lines on the page', () => {
    expect(htmlOf(...resolve(differing, 'Rnd 2: {{e}}.').pattern.body)).toContain(
      '<span class="s s0">increase 7 evenly over 60</span><span class="c" aria-hidden="true">;</span><span class="c"><br>Size Adult S: </span>',
    )
  })

  it('breaks its lines on paper', async () => {
    const { pattern } = resolve(differing, 'Rnd 2: {{e}}, join.')
    const { bytes } = await renderPdf(pattern, { paper: 'a4', fonts: loadFonts(), studio })
    const found = (await readPdf(bytes)).pages.flatMap((page) => page.found)
    const starts = found.filter(({ text }) => /^(?:Size|all)\b/.test(text))
    expect(new Set(starts.map(({ x }) => x)).size).toBe(1)
    expect(new Set(starts.map(({ y }) => y)).size).toBe(4)
  })
})

describe('a phrase in the proof', () => {
  it('is worked for every row that it stands for, and its words are among the values', () => {
    const { codes, proof } = resolve(sameWording, 'Rnds 2–{{[43, 49, 61]}}: {{t}}. ({{b}} sc)')
    expect(codes).toEqual([])
    expect(proof.rows).toHaveLength(61)
    expect(proof.rows.map(({ label }) => label)).toEqual(Array.from({ length: 61 }, (_, row) => `Rnd ${row + 1}`))
    expect([42, 48, 60].map((row, size) => proof.rows[row]?.total[size])).toEqual([42, 52, 56])
    expect(proof.values.t).toEqual({
      kind: 'text',
      unit: null,
      bySize: [
        'dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times',
        'dec 1 st at each end of every 4th row 3 times, then of every 6th row 6 times',
        'dec 1 st at each end of every 4th row 6 times, then of every 6th row 6 times',
      ],
    })
  })

  it('is worked for no size to which it does not apply', () => {
    const { codes, proof } = resolve(
      'a = [60, 70, 80]\nt = {Child: none, Adult S: taper(70, 68, 2), Adult L: taper(80, 76, 2)}',
      'Rnds 2 and 3: {{t}}.\nRnd 4: Sc in each st around.',
    )
    expect(codes).toEqual([])
    expect(proof.rows.map(({ total }) => total)).toEqual([
      [60, 70, 80],
      [null, 70, 78],
      [null, 68, 76],
      [60, 68, 76],
    ])
  })
})
