import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { textForAll, textForSize } from '../../src/measure/index.ts'
import type { Block, Inline, RowBlock } from '../../src/pattern/node.ts'

const facts = `title: Mat
sizes: [S, M, L]
swatch: {stitches: 12 per 10 cm, rows: 10 per 10 cm, hook: 5 mm}`

function resolve(body: string, more = '') {
  const text = `---\n${facts}\n${more}---\n\n${body}\n`
  const { value, diagnostics } = readDraft('mat.md', 'mat', text).outcome
  if (value === null) throw new Error(`the test’s draft can’t be used: ${JSON.stringify(diagnostics)}`)
  return { pattern: value, codes: diagnostics.map(({ code }) => code) }
}

/** What a reader sees: of all sizes, or of one. */
function text(nodes: readonly Inline[], size: number | null = null): string {
  return nodes.map((node) => inlineText(node, size)).join('')
}

function inlineText(node: Inline, size: number | null): string {
  switch (node.type) {
    case 'text':
    case 'term':
    case 'code':
      return node.text
    case 'value':
      return size === null ? textForAll(node.segments) : textForSize(node.segments, size)
    case 'break':
      return '\n'
    case 'image':
      return node.alt
    case 'onlyInline':
      return size === null || node.sizes.includes(size) ? text(node.children, size) : ''
    default:
      return text(node.children, size)
  }
}

function rows(body: readonly Block[]): RowBlock[] {
  return body.flatMap((block) => (block.type === 'row' ? [block] : block.type === 'only' ? rows(block.children) : []))
}

describe('prose', () => {
  it.each([
    ['a count by size', '{{[60, 72, 84]}}', '60 (72, 84)', '72'],
    ['a length by size', '{{[52, 60, 68] cm}}', '52 (60, 68) cm [20½ (23½, 26¾) in]', '60 cm [23½ in]'],
    ['the same for all', '{{24 cm}}', '24 cm (9½ in)', '24 cm (9½ in)'],
    ['none', '{{ {S: 1, M: none, L: 3} }}', '1 (–, 3)', '–'],
    ['words for some sizes', 'So. :sizes[Skip {{2}} rounds.]{only="M"}', 'So. Skip 2 rounds.', 'So. Skip 2 rounds.'],
    ['words for a size in curly quotes', 'So. :sizes[Skip.]{only=“M”}', 'So. Skip.', 'So. Skip.'],
    ['words for other sizes', 'So.:sizes[ Skip it.]{only="S, L"}', 'So. Skip it.', 'So.'],
    ['escaped braces', '\\{{x}}', '{{x}}', '{{x}}'],
    ['raw HTML as written', 'a <b>c</b>', 'a <b>c</b>', 'a <b>c</b>'],
  ])('%s', (_, body, all, one) => {
    const [paragraph] = resolve(body).pattern.body
    if (paragraph?.type !== 'paragraph') throw new Error('expected a paragraph')
    expect(text(paragraph.children)).toBe(all)
    expect(text(paragraph.children, 1)).toBe(one)
  })

  it('asks the worked rows', () => {
    const body = `There are {{total("Row 1")}} stitches, {{count(sc, "Row 1") + 1}} with one more.

## Mat

Foundation: Ch {{[11, 13, 15]}}.

Row 1: Sc in 2nd ch from hook and in each ch across, turn. ({{total}} sc)`
    const { pattern, codes } = resolve(body)
    expect(codes).toEqual([])
    const [paragraph] = pattern.body
    if (paragraph?.type !== 'paragraph') throw new Error('expected a paragraph')
    expect(text(paragraph.children)).toBe('There are 10 (12, 14) stitches, 11 (13, 15) with one more.')
    expect(text(rows(pattern.body)[1]?.stated ?? [])).toBe('(10 (12, 14) sc)')
  })
})

describe('rows', () => {
  const mat = `## Mat

Foundation: Ch 13.
**Row 1 (RS):** Sc in 2nd ch from hook and in each ch across, turn. (12 sc)
Row 2: Ch 1, *sc in next st, ch 1, sk next st; rep from * across, turn.`

  it('stand one a block, in the draft’s own words, asterisks included', () => {
    const found = rows(resolve(mat).pattern.body)
    expect(found.map(({ label }) => text(label))).toEqual(['Foundation:', 'Row 1 (RS):', 'Row 2:'])
    expect(text(found[2]?.steps ?? [])).toBe('Ch 1, *sc in next st, ch 1, sk next st; rep from * across, turn.')
  })

  it('have anchors of their own', () => {
    expect(rows(resolve(mat).pattern.body).map(({ id }) => id)).toEqual(['mat-foundation', 'mat-row-1', 'mat-row-2'])
  })

  it('show numbers typed for every size by size', () => {
    const { pattern, codes } = resolve(
      '## Mat\n\nRow 1: Ch 13 (15, 17), sc in 2nd ch from hook and in each ch across. (12 (14, 16) sc)',
    )
    expect(codes).toEqual([])
    const [row] = rows(pattern.body)
    expect(text(row?.steps ?? [], 2)).toBe('Ch 17, sc in 2nd ch from hook and in each ch across.')
    expect(text(row?.stated ?? [], 1)).toBe('(14 sc)')
  })

  it('state what a range makes at its end, which sizes reach at different rows', () => {
    const { pattern, codes } = resolve(`## Mat

Foundation: Ch {{[11, 13, 15]}}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Rows 2–{{[4, 6, 8]}}: Ch 1, 2 sc in first st, sc in each st across, turn. ({{total}} sc)
Row {{[5, 7, 9]}}: Ch 1, sc in each st across, turn. ({{count(sc)}} sc)`)
    expect(codes).toEqual([])
    expect(rows(pattern.body).map(({ stated }) => text(stated))).toEqual([
      '',
      '',
      '(13 (17, 21) sc)',
      '(13 (17, 21) sc)',
    ])
  })

  it('work a passage for the sizes that it is for', () => {
    const { pattern, codes } = resolve(`${mat}

:::sizes{only="M, L"}
Row 3: Ch 1, sc in each st and ch-1 sp across, turn. (12 sc)
:::`)
    expect(codes).toEqual([])
    expect(pattern.rows.at(-1)?.total).toEqual([null, 12, 12])
  })
})

describe('the overview', () => {
  it('prints finished measures, gauge and materials in both systems', () => {
    const { pattern } = resolve(
      '```grading\nw = [20, 30, 40] cm\n```',
      'hooks: [5 mm]\nfinished: {Width: w}\nyarn: [{category: 4, fibre: wool, skein: {weight: 100 g, length: 200 m}}]\n',
    )
    expect(pattern.finished.map(({ label, cells }) => [label, ...cells.map(textForAll)])).toEqual([
      ['Width', '20\u00a0cm (7¾\u00a0in)', '30\u00a0cm (11¾\u00a0in)', '40\u00a0cm (15¾\u00a0in)'],
    ])
    expect(pattern.gauge.map(({ name, text }) => [name, textForAll(text)])).toEqual([
      [null, '12 stitches and 10 rows = 10 cm (4 in) with a 5 mm (US H-8) hook'],
    ])
    expect(pattern.materials.hooks).toEqual(['5 mm (US H-8)'])
    expect(textForAll(pattern.materials.yarn[0]?.description ?? [])).toBe(
      'Medium (category 4), wool, 100 g (3½ oz) = 200 m (219 yd) a skein',
    )
  })

  it('says which body each size fits', () => {
    const { pattern } = resolve('', 'fits: {table: head, sizes: [Child, Woman, Man]}\n')
    expect(pattern.fits.map(({ label, cells }) => [label, ...cells.map(textForAll)])).toEqual([
      ['To fit head circumference', '45.5\u00a0cm (18\u00a0in)', '51\u00a0cm (20\u00a0in)', '56\u00a0cm (22\u00a0in)'],
    ])
  })

  it('marks a measure that can’t be had and names the slip at its place', () => {
    const { pattern, codes } = resolve('', 'finished: {Width: wdth}\n')
    expect(codes).toEqual(['name-unknown'])
    expect(pattern.finished).toEqual([])
  })
})

describe('a pattern', () => {
  it('is plain data that survives JSON', () => {
    const { pattern } = resolve('## Mat\n\nRow 1: Ch 13, sc in 2nd ch from hook and in each ch across. ({{total}} sc)')
    expect(JSON.parse(JSON.stringify(pattern))).toEqual(pattern)
  })
})
