import { stripVTControlCharacters } from 'node:util'
import stringWidth from 'string-width'
import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import type { Paint } from '../../src/proof/report/paint.ts'
import { plainPaint } from '../../src/proof/report/paint.ts'
import { proofText } from '../../src/proof/text.ts'

const three = ['Child', 'Adult S', 'Adult L']

function report(body: string, sizes: readonly string[] = three, paint: Paint = plainPaint): string {
  const facts = `---\ntitle: Mat\nsizes: [${sizes.join(', ')}]\n---\n`
  const { source, outcome, ledger } = readDraft('mat.md', 'mat', facts + body)
  const { value: pattern, diagnostics } = outcome
  return proofText({ source, pattern, diagnostics, unknown: ledger?.unknown ?? [] }, { paint })
}

const plain = `
## Mat
Foundation: Ch 61 (73, 85).

Row 1: Sc in 2nd ch from hook and in each ch across, turn. (60, 72, 84 sc)

Row 2: Ch 1, sc in each st across, turn. (60 (72, 84) sc)
`

describe('the report', () => {
  it('shows the draft’s words with a mark under the exact characters', () => {
    const lines = report(`${plain}\nRow 3: Ch 1, sc in each st across, turn. (60 (70, 84) sc)\n`).split('\n')
    const at = lines.findIndex((line) => line.includes('│ Row 3'))
    expect(lines[at]).toBe('  13 │ Row 3: Ch 1, sc in each st across, turn. (60 (70, 84) sc)')
    expect(lines[at + 1]).toBe('     │                                          ^^^^^^^^^^^^^^^^')
  })

  it('names row, place, code and sizes, and puts stated beside worked', () => {
    const text = report(`${plain}\nRow 3: Ch 1, sc in each st across, turn. (60 (70, 84) sc)\n`)
    expect(text).toContain('Mat, Row 3\nmat.md:13:42  error  count-mismatch\n    for Adult S\n')
    expect(text).toContain(
      [
        '            Child  Adult S  Adult L',
        '    stated     60       70       84  sc',
        '    worked     60      ≠72       84  sc',
      ].join('\n'),
    )
  })

  it('lets each size have its column where they do not fit side by side', () => {
    const sizes = Array.from({ length: 12 }, (_, index) => `A size of its own ${index + 1}`)
    const text = report(
      '\n## Mat\nFoundation: Ch 11.\n\nRow 1: Sc in 2nd ch from hook and in each ch across. (9 sc)\n',
      sizes,
    )
    expect(text.match(/^ {4}stated {2}/gm)?.length).toBeGreaterThan(2)
    for (const size of sizes) expect(text).toContain(size)
  })

  it.each([
    ['long rows', `Row 3: Ch 1, ${'sc in next st, '.repeat(40)}turn. (60 (70, 84) sc)`],
    ['long words', `Row 3: Ch 1, ${'wibblewobble '.repeat(30)}`],
    [
      'letters of double width',
      'Row 3: Ch 1, sc in 編み物編み物編み物編み物編み物編み物編み物編み物編み物編み物編み物編み物編み物編み物',
    ],
  ])('stays within 80 columns: %s', (_, row) => {
    const lines = report(`${plain}\n${row}\n`).split('\n')
    expect(lines.filter((line) => stringWidth(line) > 80)).toEqual([])
  })

  it('tells of the same finding once, with the lines where it stands', () => {
    const row = (number: number) => `Row ${number}: Ch 1, sc in each st across, turn. {{nothing}}\n\n`
    const text = report(`${plain}\n${[3, 4, 5].map(row).join('')}`)
    expect(text.match(/name-unknown/g)).toHaveLength(1)
    expect(text).toContain('The same on line 15, 17.')
  })

  it('bounds ten thousand findings, and says how many it leaves out', () => {
    const slips = Array.from({ length: 10_000 }, (_, index) => `{{nothing_${index}}}`).join('\n\n')
    const text = report(`\n## Mat\n\n${slips}\n`)
    expect(text.split('\n').length).toBeLessThan(600)
    expect(text).toContain('And 9940 findings more, not shown here: 9940 name-unknown.')
    expect(text).toContain('10000 errors')
  })

  it('puts alike rows of a range on one line, and ends with a line that says it all', () => {
    const text = report(`${plain}\nRows 3–8 (10, 12): Ch 1, sc in each st across, turn.\n`)
    expect(text).toContain('  Foundation  61 (73, 85) ch\n')
    expect(text).toContain('  Row 2       60 (72, 84)     as stated\n')
    expect(text).toContain('  Rows 3–8    60 (72, 84)\n')
    expect(text).toContain('  Rows 9–10   – (72, 84)\n')
    expect(text.trimEnd().split('\n').at(-1)).toBe('13 of 13 rows worked for 3 sizes; 0 errors, 0 warnings, 0 notes.')
  })

  it('says the same on a terminal, in colours', () => {
    const body = `${plain}\nRow 3: Ch 1, sc in each st across, turn. (60 (70, 84) sc)\n`
    const red = (text: string) => `\u001b[31m${text}\u001b[39m`
    const coloured = report(body, three, { severity: (_, text) => red(text), strong: red, faint: red })
    expect(coloured).not.toBe(report(body))
    expect(stripVTControlCharacters(coloured)).toBe(report(body))
  })
})
