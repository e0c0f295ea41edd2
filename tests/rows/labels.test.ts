import { describe, expect, it } from 'vitest'
import { findRow } from '../../src/rows/index.ts'
import { row, totals, work } from './draft.ts'

const start = '## A\nFoundation: Ch 21.\n'
const plain = 'Sc in each ch across.'

function labels(label: string, sizes: readonly string[] = ['One']): readonly (string | null)[] {
  return work(`${start}${label} ${plain}`, { sizes })
    .ledger.rows.slice(1)
    .map((each) => each.label)
}

describe('row labels', () => {
  it.each([
    ['Row 7:', ['Row 7']],
    ['Row 7.', ['Row 7']],
    ['Row 7 -', ['Row 7']],
    ['Row 7 –', ['Row 7']],
    ['ROW 7:', ['Row 7']],
    ['Row 7', ['Row 7']],
    ['**Row 7:**', ['Row 7']],
    ['**Row 7**:', ['Row 7']],
    ['Row 7 (RS):', ['Row 7']],
    ['**Row 7 (WS):**', ['Row 7']],
    ['(WS) Row 8:', ['Row 8']],
    ['Rnd 7:', ['Rnd 7']],
    ['Rnd. 07.', ['Rnd 7']],
    ['RND7:', ['Rnd 7']],
    ['Round 7.', ['Round 7']],
    ['R7:', ['R7']],
    ['7:', ['7']],
    ['7)', ['7']],
    ['1st row:', ['Row 1']],
    ['4th round:', ['Round 4']],
    ['3rd Rnd -', ['Rnd 3']],
    ['4 row:', ['Row 4']],
    ['4 row.—', ['Row 4']],
    ['4 Round.', ['Round 4']],
    ['Round 4.—1 sc in the 2nd ch,', ['Round 4']],
    ['Round 4.—5 sc.', ['Round 4']],
    ['First row.—', ['Row 1']],
    ['First round:', ['Round 1']],
    ['Rows 5–8:', ['Row 5', 'Row 6', 'Row 7', 'Row 8']],
    ['Rnds 5 to 7:', ['Rnd 5', 'Rnd 6', 'Rnd 7']],
    ['Rows 8 & 9:', ['Row 8', 'Row 9']],
    ['Rows 2, 4 and 6:', ['Row 2', 'Row 4', 'Row 6']],
    ['R7-9:', ['R7', 'R8', 'R9']],
    ['9-10 row:', ['Row 9', 'Row 10']],
    ['2nd and 3rd rows:', ['Row 2', 'Row 3']],
    ['Next row:', ['Next row']],
    ['Next 3 rows:', ['Next row', 'Next row', 'Next row']],
    ['Set-up row:', ['Set-up row']],
    ['Edging rnd 1:', ['Edging rnd 1']],
    ['Heel row 2:', ['Heel row 2']],
    ['R5–R7:', ['R5', 'R6', 'R7']],
    ['R5 to R7:', ['R5', 'R6', 'R7']],
    ['R5~R6:', ['R5', 'R6']],
    ['Row 5 – Row 7:', ['Row 5', 'Row 6', 'Row 7']],
    ['Rounds 5, 6 & 7:', ['Round 5', 'Round 6', 'Round 7']],
    ['Rnd 5. – 6.', ['Rnd 5', 'Rnd 6']],
    ['Rd 7:', ['Rd 7']],
    ['Round One:', ['Round 1']],
    ['First row:', ['Row 1']],
    ['2d row:', ['Row 2']],
    ['1st row.—', ['Row 1']],
    ['2nd round,', ['Round 2']],
    ['(R7)', ['R7']],
    ['**7**', ['7']],
    ['Row 7 →', ['Row 7']],
    ['🧶 Rnd 7:', ['Rnd 7']],
    ['• Row 7:', ['Row 7']],
    ['Row 7 (RS, dec):', ['Row 7']],
    ['Row 7 *WS*:', ['Row 7']],
    ['Row 7 – Decrease Row:', ['Row 7']],
    ['Row 7 (6 rows):', ['Row 7']],
    ['Row 7 of yoke:', ['Row 7']],
    ['1st row, black:', ['Row 1']],
    ['Row 7, with A:', ['Row 7']],
    ['4th to 6th rnds incl:', ['Rnd 4', 'Rnd 5', 'Rnd 6']],
    ['Row 7: (RS)', ['Row 7']],
  ])('%s', (label, expected) => {
    expect(labels(label)).toEqual(expected)
  })

  it.each([
    ['R1 – 6 sc in magic ring.', 'R1: 6'],
    ['Rnd 1 - 6 sc in magic ring', 'Rnd 1: 6'],
    ['Row 2, 6 sc in magic ring', 'Row 2: 6'],
  ])('parts a number from the stitches after it: %s', (words, expected) => {
    expect(totals(work(`## A\n${words}`)).at(-1)).toBe(expected)
  })

  it('takes ranges that end by size', () => {
    const draft = work(`${start}Rows 2–4 (5, 6): ${plain}`, { sizes: ['S', 'M', 'L'] })
    expect(draft.ledger.rows.slice(1).map((each) => [each.label, ...each.total])).toEqual([
      ['Row 2', 21, 21, 21],
      ['Row 3', 21, 21, 21],
      ['Row 4', 21, 21, 21],
      ['Row 5', null, 21, 21],
      ['Row 6', null, null, 21],
    ])
  })

  it('keeps the side beside the label', () => {
    expect(row(work(`${start}Row 2 (WS): ${plain}`), 'Row 2').side).toBe('WS')
  })

  it('leaves sizes out that a row is not for', () => {
    const draft = work(`${start}Row 1: ${plain}\nSizes M and L only: Row 2: Sc in each st across.\nRow 3: Sc across.`, {
      sizes: ['S', 'M', 'L'],
    })
    expect(row(draft, 'Row 2').total).toEqual([null, 21, 21])
    expect(row(draft, 'Row 3').total).toEqual([21, 21, 21])
    expect(draft.codes).toEqual([])
  })

  it.each([
    'Row 3 is the right side of the work.',
    'Rows 3 and 4 form the pattern.',
    'Each row: turn first.',
    'Row gauge matters more here.',
    'Next, choose your yarn.',
  ])('leaves prose alone: %s', (prose) => {
    const draft = work(`${start}\n${prose}\n`)
    expect(draft.ledger.rows).toHaveLength(1)
    expect(draft.codes).toEqual([])
  })

  it('finds rows by any spelling of their label', () => {
    const { ledger } = work(`${start}Rnds 2–4: ${plain}\n\n## B\nCh 11.\nRow 2: Sc across.`)
    expect(findRow(ledger, 'A', 'round 3')?.label).toBe('Rnd 3')
    expect(findRow(ledger, 'b', 'Row 2')?.total).toEqual([11])
    expect(findRow(ledger, null, 'Rnd. 4')?.piece).toBe('A')
    expect(findRow(ledger, 'A', 'Row 3')).toBeNull()
  })
})

describe('sides', () => {
  const round = '## A\nCh 4, join.\nRnd 1 (RS): Ch 1, 8 sc in ring, join'

  it.each([
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch.\nRow 2 (WS): Sc across.\nRow 3: Sc across.\nRow 4 (WS): Sc across.', []],
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch.\nRow 2 (RS): Sc across.', ['Row 2 (RS):']],
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch, do not turn.\nRow 2 (RS): Sc across.', []],
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch, do not turn.\nRow 2 (WS): Sc across.', ['Row 2 (WS):']],
    // After a wrong mark the count starts from what it says.
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch.\nRow 2 (RS): Sc across.\nRow 3 (WS): Sc across.', ['Row 2 (RS):']],
    ['## A\nCh 9.\nRow 1: Sc in each ch.\nRow 2 (RS): Sc across.', []],
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch. Fasten off.\nRow 2 (RS): Join yarn in first st, sc across.', []],
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch.\nRow 2 (RS): With RS facing, sc across.', []],
    ['## A\nCh 9.\nRow 1 (RS): Sc in each ch.\n\n## B\nCh 9.\nRow 1 (RS): Sc in each ch.', []],
    [`${round}.\nRnd 2 (RS): Ch 1, sc in each st around, join.`, []],
    [`${round}.\nRnd 2 (WS): Ch 1, sc in each st around, join.`, ['Rnd 2 (WS):']],
    [`${round}, turn.\nRnd 2 (WS): Ch 1, sc in each st around, join.`, []],
    [`${round}.\nRnd 2 (WS): Turn, ch 1, sc in each st around, join.`, []],
  ])('%s', (text, expected) => {
    const draft = work(text)
    expect(draft.codes).toEqual(expected.map(() => 'side-out-of-step'))
    expect(draft.found.map((each) => text.slice(each.at.start, each.at.end))).toEqual(expected)
  })
})

describe('numbers go on', () => {
  it.each([
    ['Row 1: Sc across.\nNext row: Sc across.\nRow 3: Sc across.', []],
    ['Row 1: Sc across.\nNext 3 (5) rows: Sc across.\nRow 5 (7): Sc across.', []],
    ['Row 1: Sc across.\nNext 3 (0) rows: Sc across.\nRow 5 (2): Sc across.', []],
    ['Row 1: Sc across.\nRep Row 1 twice more.\nRow 4: Sc across.', []],
    ['Row 1: Sc across.\nNext row: Sc across.\nRow 2: Sc across.', []],
    ['Row 1: Sc across.\nNext row: Sc across.\nRow 4: Sc across.', ['Row 4 follows where 3 would be next.']],
    ['Row 1: Sc across.\nNext 3 (5) rows: Sc across.\nRow 6 (7): Sc across.', ['Row 6 follows where 5 would be next.']],
  ])('%s', (rows, expected) => {
    const draft = work(`${start}${rows}`, { sizes: ['S', 'M'] })
    expect(draft.found.map((each) => each.message)).toEqual(expected)
  })
})

describe('passages without a label', () => {
  it('are rows where they read whole as steps under a heading with rows', () => {
    const draft = work(
      `${start}\nRow 1: ${plain}\n\nSc in each st across, turn.\n\nYou can stop here if the scarf is long enough.`,
    )
    expect(draft.ledger.rows.map((each) => each.label)).toEqual(['Foundation', 'Row 1', null])
  })

  it('are prose under any other heading', () => {
    expect(work('## Finishing\nSc in each st around the edge.\n\nWeave in ends.').ledger.rows).toEqual([])
  })

  it('hold one row a line', () => {
    const draft = work('## A\nFoundation: Ch 21.\nRow 1: Sc in each\nch across.\nRow 2: Sc across.')
    expect(draft.ledger.written.map((each) => draft.text.slice(each.at.start, each.at.end))).toEqual([
      'Foundation: Ch 21.',
      'Row 1: Sc in each\nch across.',
      'Row 2: Sc across.',
    ])
  })
})
