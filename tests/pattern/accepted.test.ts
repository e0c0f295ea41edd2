import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { proofText } from '../../src/proof/text.ts'

function read(accepted: string, body: string) {
  const text = `---\ntitle: Mat\nsizes: [S]\n${accepted}\n---\n${body}`
  const { source, outcome } = readDraft('mat.md', 'mat', text)
  const { value: pattern, diagnostics } = outcome
  return {
    found: diagnostics.map(({ code, severity, accepted: why }) => [code, severity, why ?? null]),
    text: proofText({ source, pattern, diagnostics }),
  }
}

const why = 'Counted with its border.'
const accept = (code: string, at: string): string => `accepted: [{code: ${code}, at: "${at}", why: ${why}}]`

const rows = `
## Mat
Row 1: Ch 11, sc in 2nd ch from hook and in each ch across. (12 sc)

Row 2: Ch 1, sc in each st across. (10 sc)

Row 21: Ch 1, sc in each st across. (11 sc)
`

const gap = ['row-number-gap', 'warning', null]
const [first, last] = [
  ['count-mismatch', 'error', null],
  ['count-mismatch', 'error', null],
]

describe('an accepted finding', () => {
  it.each(['Row 1', 'Mat, Row 1', 'mat row 1', ' ROW  1 '])('is named by its row: %j', (at) => {
    expect(read(accept('count-mismatch', at), rows).found).toEqual([['count-mismatch', 'note', why], gap, last])
  })

  it.each(['8', 'line 8'])('is named by its line: %j', (at) => {
    expect(read(accept('count-mismatch', at), rows).found).toEqual([['count-mismatch', 'note', why], gap, last])
  })

  it('is named by a label as it is written, and its line may be a bare number', () => {
    const body =
      '\n## Mat\nRow 1: Ch 11, sc in 2nd ch from hook and in each ch across. (10 sc)\n\n**Rows 2–5:** Ch 1, sc in each st across. (12 sc)\n'
    expect(read(accept('count-mismatch', 'Rows 2-5'), body).found).toEqual([['count-mismatch', 'note', why]])
    const bare = `accepted: [{code: count-mismatch, at: 10, why: ${why}}]`
    expect(read(bare, body).found).toEqual([['count-mismatch', 'note', why]])
  })

  it('is not one of another row whose label begins alike', () => {
    expect(read(accept('count-mismatch', 'Row 2'), rows).found).toEqual([
      ['accepted-nothing', 'warning', null],
      first,
      gap,
      last,
    ])
  })

  it('of a whole piece may be several', () => {
    const { found } = read(accept('count-mismatch', 'Mat'), rows)
    expect(found.filter(([, , reason]) => reason === why)).toHaveLength(2)
  })

  it('outside of rows is named by words of its line', () => {
    const { found } = read(accept('name-unknown', 'wide'), '\nIt is {{nothing}} wide.\n\nIt is {{nothing}} long.\n')
    expect(found).toEqual([
      ['name-unknown', 'note', why],
      ['name-unknown', 'error', null],
    ])
  })

  it('that no longer is there is named, and one that there never was', () => {
    expect(read(accept('stitches-left', 'Row 1'), '\nText.\n').found).toEqual([['accepted-nothing', 'warning', null]])
    const { found, text } = read(accept('count-mismatched', 'Row 1'), '\nText.\n')
    expect(found).toEqual([['accepted-unknown', 'warning', null]])
    expect(text).toContain('Write `count-mismatch` instead.')
  })

  it('is listed apart, with its reason', () => {
    const { text } = read(accept('count-mismatch', 'Mat'), rows)
    expect(text).toContain(`Accepted\n  count-mismatch, line 8: ${why}\n  count-mismatch, line 12: ${why}\n`)
    expect(text).toContain('0 errors, 1 warning, 0 notes, 2 accepted.')
  })

  it.each(['accepted: [{code: count-mismatch, at: Row 1}]', 'accepted: count-mismatch'])(
    'needs a reason: %s',
    (line) => {
      const { text } = read(line, rows)
      expect(text).toMatch(/key-missing|fact-wrong/)
    },
  )
})
