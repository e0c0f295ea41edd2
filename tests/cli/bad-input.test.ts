import { describe, expect, it } from 'vitest'
import { fromBytes } from '../../src/cli/draft-file.ts'
import { placeOf } from '../../src/diagnostic/index.ts'

const facts = `title: Mat
sizes: [S, M, L]
swatch: {stitches: 12 per 10 cm, rows: 8 per 10 cm}`

function draft(body: string, front = facts): string {
  return `---\n${front}\n---\n\n${body}\n`
}

const grading = (...lines: readonly string[]) => ['```grading', ...lines, '```'].join('\n')

/** Findings of a draft as `line:column code`. */
function found(text: string | Uint8Array): string[] {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text
  const { source, outcome } = fromBytes('draft.md', bytes)
  return outcome.diagnostics.map(({ at, code }) => {
    const { line, column } = placeOf(source, at.start)
    return `${line}:${column} ${code}`
  })
}

describe('a slip is found at its place', () => {
  it.each([
    ['no front matter', '# Mat\n', ['1:1 front-matter-missing']],
    ['front matter never closed', `---\n${facts}\n\n# Mat\n`, ['1:1 front-matter-unclosed']],
    ['YAML that does not parse', draft('', 'title: [Mat\nsizes: [S]'), ['2:8 front-matter-unreadable']],
    ['a misspelt key', draft('', `${facts}\nedtion: "1"`), ['5:1 key-unknown']],
    ['a size list of the wrong length', draft(grading('a = [1, 2] cm')), ['8:5 list-length']],
    ['an unknown unit', draft(grading('a = 5 cms')), ['8:7 unknown-unit']],
    ['an unknown name', draft('About {{wdth}} wide.'), ['7:9 name-unknown']],
    ['a circle', draft(grading('a = b', 'b = a')), ['8:1 name-circle']],
    ['division by zero', draft(grading('a = 5 / 0')), ['8:5 division-by-zero']],
    ['a count that is not whole', draft(`${grading('a = stitches(11 cm)')}\n\nCh {{a}}.`), ['11:6 count-not-whole']],
    ['a placeholder never closed', draft('Ch {{a, join.'), ['7:4 placeholder-unclosed']],
    [
      'a row label twice',
      draft(
        '## Mat\n\nRow 1: Ch 5.\n\nRow 2: Sc in 2nd ch from hook and in each ch across.\n\nRow 2: Ch 1, sc in each st across.',
      ),
      ['13:1 row-label-twice'],
    ],
    ['an empty file', '', ['1:1 draft-empty']],
    ['blank lines alone', '\n  \n', ['1:1 draft-empty']],
    [
      'a skein’s weight without a known unit',
      draft('', `${facts}\nyarn: [{skein: {weight: 100 gr}}]`),
      ['5:25 measure-unreadable'],
    ],
    [
      'a sample in a size that there is not',
      draft('', `${facts}\nsample: {size: XL, used: {}}`),
      ['5:16 size-unknown'],
    ],
    ['a sample of another yarn', draft('', `${facts}\nsample: {size: S, used: {mian: 9 g}}`), ['5:32 yarn-unknown']],
    [
      'a reader’s choice of nothing',
      draft('', `${facts}\nreader: {dpth: {from: 1 cm, to: 2 cm}}`),
      ['5:16 reader-unknown'],
    ],
    ['a passage for some sizes never closed', draft(':::sizes{only="M"}\nWord.'), ['7:1 passage-unclosed']],
    ['a passage for a size that there is not', draft(':::sizes{only="XL"}\nWord.\n:::'), ['7:1 size-unknown']],
  ])('%s', (_, text, expected) => {
    expect(found(text)).toEqual(expected)
  })

  it('a slip behind a byte order mark, with carriage returns', () => {
    expect(found(`\uFEFF${draft('About {{wdth}} wide.').replaceAll('\n', '\r\n')}`)).toEqual(['7:9 name-unknown'])
  })

  it('bytes that are not UTF-8', () => {
    expect(found(new Uint8Array([0x74, 0xe9, 0x20]))).toEqual(['1:1 draft-not-text'])
  })

  it('a file of 5 MB', () => {
    expect(found(new Uint8Array(5e6).fill(0x61))).toEqual(['1:1 draft-too-long'])
  })

  it('a thousand nested brackets in a formula', () => {
    expect(found(draft(grading(`a = ${'('.repeat(1000)}1${')'.repeat(1000)}`)))).toHaveLength(1)
  })

  it('a thousand nested brackets in a row', () => {
    const findings = found(draft(`## Mat\n\nRow 1: ${'('.repeat(1000)}sc${')'.repeat(1000)}.`))
    expect(findings).toHaveLength(1)
    expect(findings[0]).toMatch(/^9:/)
  })
})
