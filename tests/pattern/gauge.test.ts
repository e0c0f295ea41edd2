import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { createSource, placeOf } from '../../src/diagnostic/index.ts'
import { textForAll } from '../../src/measure/index.ts'

function proofed(swatch: string, body = '') {
  const text = `---\ntitle: Mat\nsizes: [S]\nswatch: ${swatch}\n---\n\n${body}\n`
  const { value, diagnostics } = readDraft('mat.md', 'mat', text).outcome
  const source = createSource('mat.md', text)
  const found = diagnostics.map(({ at, code }) => {
    const { line, column } = placeOf(source, at.start)
    return `${line}:${column} ${code}`
  })
  const lines = value?.gauge.map(({ name, text: words }) => (name === null ? '' : `${name}: `) + textForAll(words))
  return { lines, found, first: value?.body[0] }
}

describe('the gauge as a reader sees it', () => {
  it.each([
    ['{stitches: 12 per 10 cm, rows: 8 per 10 cm}', ['12 stitches and 8 rows = 10 cm (4 in)']],
    ['{stitches: 16 sts per 4 in}', ['16 stitches = 4 in (10 cm)']],
    ['{stitches: 6 per 4.2cm, rows: 2 per 3 cm}', ['6 stitches = 4.2 cm (1⅝ in), 2 rows = 3 cm (1⅛ in)']],
    [
      '{stitches: [12 per 10 cm, 12.5 per 10 cm, 24 per 20 cm], rows: 8 per 10 cm}',
      ['12.1 stitches (mean of 3 measurements) and 8 rows = 10 cm (4 in)'],
    ],
    [
      '{in: single crochet, stitches: 12 per 10 cm, hook: 5 mm, unblocked: {stitches: 12.5 per 10 cm, rows: 9 per 10 cm}}',
      [
        '12 stitches = 10 cm (4 in) in single crochet with a 5 mm (US H-8) hook, after blocking; before blocking 12.5 stitches and 9 rows = 10 cm (4 in)',
      ],
    ],
    [
      '{in: shells, repeats: {shell: {stitches: 6, width: 4.2 cm, rows: 2, height: 5 per 15 cm}}}',
      ['in shells; 1 shell = 6 stitches, 2 rows, 4.2 cm (1⅝ in) wide, 3 cm (1⅛ in) high'],
    ],
    ['{repeats: {wave: {stitches: 1, width: 5 in}}}', ['1 wave = 1 stitch, 5 in (12.7 cm) wide']],
    [
      '{body: {stitches: 12 per 10 cm, unblocked: {stitches: [12 per 10 cm, 25 per 20 cm]}}, rib: {rows: 9 per 10 cm}}',
      [
        'body: 12 stitches = 10 cm (4 in) after blocking; before blocking 12.3 stitches (mean of 2 measurements) = 10 cm (4 in)',
        'rib: 9 rows = 10 cm (4 in)',
      ],
    ],
    ['{in: single crochet, size: 12 cm x 12 cm}', ['in single crochet']],
  ])('%s', (swatch, lines) => {
    expect(proofed(swatch)).toMatchObject({ lines, found: [] })
  })
})

describe('a slip in a swatch is told of where it stands', () => {
  it.each([
    ['{stitches: [12 per 10 cm, 25 to the hand]}', ['4:35 gauge-unreadable']],
    ['{stitches: [12 per 10 cm, 14 per 10 cm]}', ['4:35 gauge-scatters']],
    ['{stitches: 12 per 10 cm, unblocked: {rows: 9 hands}}', ['4:52 gauge-unreadable']],
    ['{repeats: {shell: {width: wide}}}', ['4:35 repeat-unreadable']],
    ['{repeats: {shell: {width: [4 cm, wide]}}}', ['4:42 repeat-unreadable']],
    ['{a: {repeats: {shell: {width: 4 cm}}}, b: {repeats: {shell: {width: 4 cm}}}}', ['4:69 gauge-named-twice']],
  ])('%s', (swatch, found) => {
    expect(proofed(swatch).found).toEqual(found)
  })

  it('and what depends on it is not', () => {
    const { found } = proofed('{repeats: {shell: {width: wide}}}', 'Work {{repeats(60 cm, shell) as whole}} shells.')
    expect(found).toEqual(['4:35 repeat-unreadable'])
  })
})
