import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { readAloud } from '../../src/print/expansion.ts'
import { loadFonts } from '../../src/print/fonts.ts'
import { renderPdf } from '../../src/print/index.ts'
import { paragraph, row, studio, threeSizes, tideLine } from './fixture.ts'
import type { Operand } from './reading/content.ts'
import { openFile } from './reading/opened.ts'

const folder = mkdtempSync(join(tmpdir(), 'expansion-'))
afterAll(() => rmSync(folder, { recursive: true }))

const abbreviations = [
  ['beg', 'beginning'],
  ['BLO', 'back loop only'],
  ['ch', 'chain'],
  ['ch-sp(s)', 'chain space(s)'],
  ['dc', 'double crochet'],
  ['hdc2tog', 'half double crochet 2 together'],
  ['RS', 'right side'],
  ['sc', 'single crochet'],
  ['sl st', 'slip stitch'],
  ['st(s)', 'stitch(es)'],
].map(([abbreviation = '', meaning = '']) => ({ abbreviation, meaning, special: false, other: null }))
const special = { abbreviation: 'sh', meaning: '5 dc in same st.', special: true, other: null }

describe('an abbreviation is read out in full', () => {
  const spoken = readAloud([...abbreviations, special])

  it.each([
    ['Ch', 'chain'],
    ['chs ', 'chains '],
    ['*sc,', '*single crochet,'],
    ['(RS):', '(right side):'],
    ['hdc2tog,', 'half double crochet 2 together,'],
    ['sts)', 'stitches)'],
    ['sl', 'slip'],
    ['ch-2', 'chain-2'],
  ])('%s', (written, full) => expect(spoken(written)).toBe(full))

  it.each(['1st', 'last', 'each', 'rs', 'sh', 'CH', '60 ', 'blocks', ''])('not in %j', (word) => {
    expect(spoken(word)).toBeNull()
  })
})

describe('in a file', () => {
  it('stands what abbreviations and fractions are read as, but not in the list that explains them', async () => {
    const body = [row('Row 1 (RS):', { steps: ['Ch 1, sc in next st.'] }), paragraph('It is 9⅛ in long.')]
    const options = { paper: 'a4', fonts: loadFonts(), studio } as const
    const { bytes } = await renderPdf(tideLine(threeSizes, { body }), options)
    const path = join(folder, 'spans.pdf')
    writeFileSync(path, bytes)
    const spans = openFile(path).pages.flatMap(({ begun }) =>
      begun.flatMap(({ mark }) => (mark.tag === '/Span' ? [...mark.entries].map(spanWords) : [])),
    )
    expect(spans.filter((span) => span.startsWith('/E'))).toEqual([
      '/E (right side): ',
      '/E chain ',
      '/E single crochet ',
      '/E stitch. ',
    ])
    expect(spans.filter((span) => span.startsWith('/ActualText'))).toEqual(['/ActualText \xfe\xff\x21\x5b\x00\x20'])
  })
})

function spanWords([key, value]: readonly [string, Operand]): string {
  return `${key} ${value.kind === 'string' ? value.value : ''}`
}
