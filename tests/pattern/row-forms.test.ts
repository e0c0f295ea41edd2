import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import type { Block } from '../../src/pattern/node.ts'

function resolve(body: string) {
  const text = `---\ntitle: Mat\nsizes: [One size]\nswatch: {stitches: 12 per 10 cm, rows: 10 per 10 cm}\n---\n\n${body}\n`
  const { value, diagnostics } = readDraft('mat.md', 'mat', text).outcome
  if (value === null) throw new Error(`the test’s draft can’t be used: ${JSON.stringify(diagnostics)}`)
  return { pattern: value, codes: diagnostics.filter(({ severity }) => severity !== 'note').map(({ code }) => code) }
}

/** Findings, and `piece/label: total` for each row, with what it states where it agrees. */
function rows(body: string) {
  const { pattern, codes } = resolve(body)
  const shown = pattern.rows.map(
    (row) => `${row.piece}/${row.label ?? '–'}: ${row.total[0]}${row.agrees === true ? ' as stated' : ''}`,
  )
  return [...codes, ...shown]
}

describe('tables', () => {
  it('of rounds, steps and counts', () => {
    const table = `## Ball
| Rnd | Instructions | Sts |
| --- | --- | --- |
| 1 | 6 sc in magic ring | 6 |
| 2 | *2 sc in next st* x 6 | (12) |
| 3–4 | sc around | 12 sts |
| 5 | (sc, inc) x 6 | {{total}} |`
    expect(rows(table)).toEqual([
      'Ball/1: 6 as stated',
      'Ball/2: 12 as stated',
      'Ball/3: 12 as stated',
      'Ball/4: 12 as stated',
      'Ball/5: 18 as stated',
    ])
  })

  it('with colours, and labels in words', () => {
    const table = `## Mat
| Row | Colour | Work |
| --- | --- | --- |
| Set up | A | ch 11 |
| Row 1 | A | sc in 2nd ch from hook and in each ch across (10) |
| Row 2 | B | ch 1, sc across |`
    expect(rows(table)).toEqual(['Mat/Set up: 0', 'Mat/Row 1: 10 as stated', 'Mat/Row 2: 10'])
  })

  it('whose first row stands in the head', () => {
    expect(rows('## Ball\n| R1 | 6 sc in magic ring | 6 |\n| --- | --- | --- |\n| R2 | inc x 6 | 13 |')).toEqual([
      'count-mismatch',
      'Ball/R1: 6 as stated',
      'Ball/R2: 12',
    ])
  })

  it.each([
    '| Size | Chest | Length |\n| --- | --- | --- |\n| 1 | 90 | 60 |\n| 2 | 100 | 62 |',
    '| Abbreviation | Meaning |\n| --- | --- |\n| sc | single crochet |\n| dc | double crochet |',
    '| Yarn | Skeins |\n| --- | --- |\n| A | 2 |',
  ])('of other things hold no rows: %s', (table) => {
    expect(rows(`## Mat\n\nCh 11.\n\n${table}`)).toEqual(['Mat/–: 0'])
  })
})

describe('lists and headings', () => {
  it('a list whose marks do not count', () => {
    expect(rows('## Ball\n\n1. 6 sc in magic ring (6)\n1. inc in each st (12)\n1. sc around (12)')).toEqual([
      'Ball/1: 6 as stated',
      'Ball/2: 12 as stated',
      'Ball/3: 12 as stated',
    ])
  })

  it('a list that goes on after talk', () => {
    expect(
      rows('## Ball\n\n1. 6 sc in magic ring (6)\n2. inc in each st (12)\n\n### Finish\n\n1. Stuff.\n2. Sew.'),
    ).toEqual(['Ball/1: 6 as stated', 'Ball/2: 12 as stated'])
  })

  it('a label made a heading names a row of the piece above', () => {
    expect(
      rows('## Ball\n\n### Round 1\n\n6 sc in magic ring. (6)\n\n### Round 2 (RS)\n\nInc x 6. (12)\n\n## Ear\n\nCh 5.'),
    ).toEqual(['Ball/Round 1: 6 as stated', 'Ball/Round 2: 12 as stated', 'Ear/–: 0'])
  })

  it('a heading over several labelled rows is a heading', () => {
    expect(rows('## Ball\n\n### Rounds 1–2: the start\n\nRnd 1: 6 sc in magic ring.\n\nRnd 2: inc x 6')).toEqual([
      'Rounds 1–2: the start/Rnd 1: 6',
      'Rounds 1–2: the start/Rnd 2: 12',
    ])
  })
})

describe('what stands beside the rows of a paragraph', () => {
  const kinds = (blocks: readonly Block[]): readonly string[] => blocks.map(({ type }) => type)

  it.each([
    ['Work loosely.\nCh 11.\nRow 1: Sc in each ch.', ['heading', 'paragraph', 'row', 'row']],
    ['Ch 11.\n**Second side**\nRow 1: Sc in each ch.', ['heading', 'row', 'paragraph', 'row']],
    ['**Row 1:** Ch 11, sc in 2nd ch from hook and in each ch.\n**Row 2:** Sc across.', ['heading', 'row', 'row']],
    ['Ch 11.\nRow 1: Sc in each ch. (11) ✨', ['heading', 'row', 'row']],
  ])('is shown in its place: %s', (body, expected) => {
    expect(kinds(resolve(`## Mat\n\n${body}`).pattern.body)).toEqual(expected)
  })
})
