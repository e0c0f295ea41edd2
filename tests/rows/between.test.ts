import { describe, expect, it } from 'vitest'
import { totals, work } from './draft.ts'

const first = 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across.'
const inc = '2 sc in first st, sc across.'

function numbers(rows: string) {
  const draft = work(`## A\nCh 21.\n${rows}`)
  return [...draft.codes, ...totals(draft).slice(1)]
}

const expected = ['Row 1: 20', 'Row 2: 20', 'Row 3: 21', 'Row 4: 21', 'Row 5: 22']

describe('rows laid between others', () => {
  it.each([
    `${first}\nRow 2 and all even rows: Sc across.\nRow 3: ${inc}\nRow 5: ${inc}`,
    `${first}\nRow 2 and every foll alt row: Sc across.\nRow 3: ${inc}\nRow 5: ${inc}`,
    `${first}\n2nd and every even row: Sc across.\nRow 3: ${inc}\nRow 5: ${inc}`,
    `Even rows: Sc across.\n${first}\nRow 3: ${inc}\nRow 5: ${inc}`,
    `${first}\nRow 3: ${inc}\nRow 5: ${inc}\nAll WS rows: Sc across.`,
    `${first}\nRows 2 and 4: Sc across.\nRows 3 and 5: ${inc}`,
    `${first}\nRows 3 and 5: ${inc}\nRows 2 and 4: Sc across.`,
  ])('%s', (rows) => {
    expect(numbers(rows)).toEqual(expected)
  })

  it('stand as they are written where the numbers do not come out', () => {
    expect(numbers(`${first}\nRows 2 and 6: Sc across.\nRow 3: ${inc}`)).toEqual([
      'Row 1: 20',
      'Row 2: 20',
      'Row 6: 20',
      'Row 3: 21',
    ])
  })
})
