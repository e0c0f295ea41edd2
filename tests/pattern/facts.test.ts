import { describe, expect, it } from 'vitest'
import { createSource, placeOf } from '../../src/diagnostic/index.ts'
import { findFrontMatter } from '../../src/pattern/front-matter.ts'
import { readFacts } from '../../src/pattern/read-facts.ts'

function read(yaml: string) {
  const source = createSource('draft.md', `---\n${yaml}\n---\n`)
  const fences = findFrontMatter(source)
  if (fences.value === null) throw new Error('the test’s front matter has no fences')
  const { value, diagnostics } = readFacts(source, fences.value)
  const found = diagnostics.map((finding) => {
    const { line, column } = placeOf(source, finding.at.start)
    return `${line}:${column} ${finding.code} ${finding.message} ${finding.hint ?? ''}`.trim()
  })
  return { facts: value?.facts ?? null, locate: value?.locate, found, source }
}

describe('facts that are accepted', () => {
  it('takes title and sizes alone', () => {
    expect(read('title: A\nsizes: [One size]').facts).toMatchObject({ title: 'A', sizes: ['One size'], terms: 'us' })
  })

  it.each([
    ['a number for an edition', 'edition: 1.1', { edition: '1.1' }],
    ['a date', 'published: 2026-03-14', { published: '2026-03-14' }],
    ['one swatch', 'swatch: {stitches: 12 per 10 cm}', { swatch: { '': { stitches: '12 per 10 cm' } } }],
    [
      'several measurements',
      'swatch: {stitches: [12 per 10 cm, 25 per 20 cm]}',
      { swatch: { '': { stitches: ['12 per 10 cm', '25 per 20 cm'] } } },
    ],
    [
      'a swatch before blocking',
      'swatch: {stitches: 12 per 10 cm, unblocked: {stitches: 13 per 10 cm}}',
      { swatch: { '': { unblocked: { stitches: '13 per 10 cm' } } } },
    ],
    [
      'a repeat and nothing else',
      'swatch: {repeats: {shell: {stitches: 6, width: 4.2 cm}}}',
      { swatch: { '': { repeats: { shell: { stitches: 6, width: '4.2 cm' } } } } },
    ],
    [
      'swatches named after these keys',
      'swatch: {blocked: {rows: 8 per 10 cm}, unblocked: {rows: 9 per 10 cm}, repeats: {rows: 7 per 10 cm}}',
      { swatch: { blocked: {}, unblocked: { rows: '9 per 10 cm' }, repeats: { rows: '7 per 10 cm' } } },
    ],
    ['a body table without sizes', 'fits: {table: ./m.csv}', { fits: { table: './m.csv' } }],
    ['named swatches', 'swatch: {body: {rows: 8 per 10 cm}}', { swatch: { body: { rows: '8 per 10 cm' } } }],
    [
      'a claimed measure',
      'finished: {Neck: {claims: "48 cm", over: n}}',
      { finished: { Neck: { claims: '48 cm', over: 'n' } } },
    ],
    ['child sizes as numbers', 'fits: {table: child, sizes: [2]}', { fits: { table: 'child', sizes: ['2'] } }],
  ])('%s', (_, line, expected) => {
    const { facts, found } = read(`title: A\nsizes: [S]\n${line}`)
    expect(found).toEqual([])
    expect(facts).toMatchObject(expected)
  })

  it('finds where each stands', () => {
    const { locate, source } = read('title: A\nsizes: [S]\nfinished: {Depth: "depth_made", Width: w}')
    const at = (label: string) => source.text.slice(locate?.('finished', label).start, locate?.('finished', label).end)
    expect([at('Depth'), at('Width')]).toEqual(['depth_made', 'w'])
  })
})

describe('facts that are refused, with place and way out', () => {
  it.each([
    ['no title', 'sizes: [S]', ['2:1 key-missing “title” is missing from the front matter. Add a line `title: …`.']],
    [
      'a misspelt key',
      'title: A\nsizs: [S]\nsizes: [S]',
      ['3:1 key-unknown The front matter has no key “sizs”. Write `sizes` instead.'],
    ],
    [
      'a misspelt key within a swatch',
      'title: A\nsizes: [S]\nswatch: {stiches: 12 per 10 cm, rows: 8 per 10 cm}',
      ['4:10 key-unknown “swatch” has no key “stiches”. Write `stitches` instead.'],
    ],
    [
      'a misspelt key within a repeat',
      'title: A\nsizes: [S]\nswatch: {rows: 8 per 10 cm, repeats: {shell: {stiches: 6, width: 4 cm}}}',
      ['4:47 key-unknown “swatch repeats shell” has no key “stiches”. Write `stitches` instead.'],
    ],
    [
      'a misspelt key before blocking',
      'title: A\nsizes: [S]\nswatch: {rows: 8 per 10 cm, unblocked: {row: 9 per 10 cm}}',
      ['4:41 key-unknown “swatch unblocked” has no key “row”. Write `rows` instead.'],
    ],
    [
      'a part of a stitch',
      'title: A\nsizes: [S]\nswatch: {rows: 8 per 10 cm, repeats: {shell: {stitches: 6.5, width: 4 cm}}}',
      ['4:57 fact-wrong “swatch repeats shell stitches” needs a whole number.'],
    ],
    [
      'words for a count',
      'title: A\nsizes: [S]\nswatch: {rows: 8 per 10 cm, repeats: {shell: {stitches: six, width: 4 cm}}}',
      ['4:57 fact-wrong “swatch repeats shell stitches” needs a number.'],
    ],
    [
      'no stitches at all',
      'title: A\nsizes: [S]\nswatch: {rows: 8 per 10 cm, repeats: {shell: {stitches: 0, width: 4 cm}}}',
      ['4:57 fact-wrong “swatch repeats shell stitches” needs a whole number above 0.'],
    ],
    [
      'a repeat without a measure',
      'title: A\nsizes: [S]\nswatch: {rows: 8 per 10 cm, repeats: {shell: {stitches: 6}}}',
      ['4:46 fact-wrong “swatch repeats shell” needs a width or a height.'],
    ],
    [
      'a group for a measurement',
      'title: A\nsizes: [S]\nswatch: {stitches: {a: b}}',
      ['4:20 fact-wrong “swatch stitches” needs a measurement such as 12 per 10 cm, or a list of them.'],
    ],
    [
      'an empty list of measurements',
      'title: A\nsizes: [S]\nswatch: {stitches: []}',
      ['4:20 fact-wrong “swatch stitches” needs at least one measurement.'],
    ],
    ['text for a list', 'title: A\nsizes: S', ['3:8 fact-wrong “sizes” needs a list, such as [Small, Large].']],
    ['no size', 'title: A\nsizes: []', ['3:8 fact-wrong “sizes” needs at least one size.']],
    [
      'a size twice',
      'title: A\nsizes: [S, S]',
      ['3:8 size-listed-twice The size “S” is listed twice. Give each size a name of its own.'],
    ],
    [
      'an unknown skill',
      'title: A\nsizes: [S]\nskill: hard',
      ['4:8 fact-wrong “skill” must be one of basic, easy, intermediate, complex.'],
    ],
    [
      'a date that is none',
      'title: A\nsizes: [S]\npublished: 2026-13-01',
      ['4:12 fact-wrong “published” needs a date such as 2026-03-14.'],
    ],
    ['a key twice', 'title: A\ntitle: B\nsizes: [S]', ['3:1 front-matter-unreadable']],
    [
      'a bracket never closed',
      'title: A\nsizes: [S',
      ['3:8 front-matter-unreadable The front matter can’t be read here: the “[” is never closed'],
    ],
    ['the same with lines that follow', 'title: A\nsizes: [S, M\nterms: us', ['3:8 front-matter-unreadable']],
    ['a quote never closed', 'title: "A\nsizes: [S]', ['front-matter-unreadable']],
    ['nothing in it', '', ['2:1 fact-wrong “front matter” needs a group of keys.']],
  ])('%s', (_, yaml, expected) => {
    const { facts, found } = read(yaml)
    expect(facts).toBeNull()
    expect(found).toHaveLength(expected.length)
    for (const [index, text] of expected.entries()) expect(found[index]).toContain(text)
  })
})

describe('the fences', () => {
  it.each([
    ['none', '# Title\n', 'front-matter-missing'],
    ['never closed', '---\ntitle: A\n\n# Title\n', 'front-matter-unclosed'],
  ])('%s', (_, text, code) => {
    const { value, diagnostics } = findFrontMatter(createSource('d.md', text))
    expect(value).toBeNull()
    expect(diagnostics.map((finding) => finding.code)).toEqual([code])
  })

  it('are found behind a byte order mark and with carriage returns', () => {
    const { value } = findFrontMatter(createSource('d.md', '\uFEFF---\r\ntitle: A\r\n---\r\nBody'))
    expect(value).toEqual({ yaml: { start: 6, end: 16 }, bodyStart: 21 })
  })
})
