import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { csv, csvNumber } from '../../src/proof/csv.ts'
import { proofDocument } from '../../src/proof/document.ts'
import { rowsCsv } from '../../src/proof/rows-csv.ts'

/** Read back by a parser that refuses what RFC 4180 does not allow. */
function parsed(text: string): string[][] {
  return parse(text, { record_delimiter: '\r\n', relax_column_count: false })
}

describe('CSV by RFC 4180', () => {
  it.each([
    ['plain', 'plain'],
    ['a, b', '"a, b"'],
    ['5 "inches"', '"5 ""inches"""'],
    ['two\nlines', '"two\nlines"'],
    ['two\r\nlines', '"two\r\nlines"'],
    ['“60 (72, 84)”', '"“60 (72, 84)”"'],
    ['', ''],
    [' led by a blank', ' led by a blank'],
  ])('%j is written %j, and comes back', (text, written) => {
    expect(csv([['a', text, 'b']])).toBe(`a,${written},b\r\n`)
    expect(parsed(csv([['a', text, 'b']]))).toEqual([['a', text, 'b']])
  })

  it.each(['=1+1', '=HYPERLINK("x")', '+1', '-1', '@sum', '\tx', '\rx'])('%j runs in no spreadsheet', (text) => {
    expect(parsed(csv([[text]]))).toEqual([[`'${text}`]])
  })

  it.each([
    [0, '0'],
    [72, '72'],
    [null, ''],
    [undefined, ''],
  ])('%j is %j', (count, written) => {
    expect(csvNumber(count)).toBe(written)
  })
})

const text = `---
title: Mat
sizes: ["S, wide", "=L"]
---

## Mat "A"

Foundation: Ch 11 (13).

Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (10 (11) sc)

Rows 2–3 (4): Ch 1, hdc in each st across, turn.
`

describe('rows for a spreadsheet', () => {
  const { source, outcome } = readDraft('mat.md', 'mat', text)
  const lines = parsed(rowsCsv({ source, pattern: outcome.value, diagnostics: outcome.diagnostics }))

  it('have a line for each row and kind, stated and worked, and a column for each size', () => {
    expect(lines[0]).toEqual(['Piece', 'Row', 'Line', 'Side', 'Status', 'What', 'Kind', 'S, wide', "'=L"])
    expect(lines.filter(([, row]) => row === 'Row 1')).toEqual([
      ['Mat "A"', 'Row 1', '10', 'RS', 'worked', 'worked', 'total', '10', '12'],
      ['Mat "A"', 'Row 1', '10', 'RS', 'worked', 'worked', 'sc', '10', '12'],
      ['Mat "A"', 'Row 1', '10', 'RS', 'worked', 'stated', 'sc', '10', '11'],
    ])
    expect(lines.filter(([, row, , , , what, kind]) => row === 'Row 4' && what === 'worked' && kind === 'hdc')).toEqual(
      [['Mat "A"', 'Row 4', '12', '', 'worked', 'worked', 'hdc', '0', '12']],
    )
  })

  it('have every number that the JSON has of them', () => {
    const { rows } = proofDocument(source, outcome.value, outcome.diagnostics)
    for (const { label, total, counts } of rows) {
      const own = lines.filter(([, row, , , , what]) => row === label && what === 'worked').map((line) => line.slice(6))
      const expected = [['total', total] as const, ...Object.entries(counts)]
      expect(own).toEqual(expected.map(([kind, bySize]) => [kind, ...bySize.map(csvNumber)]))
    }
  })

  it('of a draft that can’t be worked are the head alone', () => {
    expect(rowsCsv({ source, pattern: null, diagnostics: [] })).toBe('Piece,Row,Line,Side,Status,What,Kind\r\n')
  })
})
