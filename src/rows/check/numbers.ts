import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import type { ReadRow } from '../cut.ts'
import type { RowText } from './source.ts'
import { spanOf } from './source.ts'

/** Numbers of rows for one size that stand twice in a row: `Rows 3 and 3`. */
function twice(numbers: readonly (number | null)[]): number | null {
  return numbers.find((number, at) => number !== null && number === numbers[at - 1]) ?? null
}

function labelledTwice({ label }: ReadRow): number | null {
  return label?.numbers.kind === 'list' ? twice(label.numbers.items.map((item) => item[0] ?? null)) : null
}

function namedTwice({ content }: ReadRow): number | null {
  if (content?.kind !== 'reference') return null
  for (const { rows } of content.again) {
    const found = rows.kind === 'numbers' ? twice(rows.numbers[0] ?? []) : null
    if (found !== null) return found
  }
  return null
}

export function namedTwiceFindings(row: ReadRow): readonly Diagnostic[] {
  const [inLabel, inWords] = [labelledTwice(row), namedTwice(row)]
  return [
    ...(inLabel === null || row.label === null ? [] : [diagnose('row-named-twice', row.label.at, { number: inLabel })]),
    ...(inWords === null ? [] : [diagnose('row-named-twice', row.steps, { number: inWords })]),
  ]
}

/** How many rows a label stands for; null where sizes differ in it, or it leaves that open. */
function labelled({ label }: ReadRow): number | null {
  if (label?.numbers.kind === 'list') {
    const lengths = sizesOf(label.numbers.items).map(
      (size) => label.numbers.kind === 'list' && label.numbers.items.filter((item) => item[size] !== null).length,
    )
    const [first = false] = lengths
    return first !== false && first > 1 && lengths.every((length) => length === first) ? first : null
  }
  return label?.numbers.kind === 'next' ? same(label.numbers.count) : null
}

function sizesOf(items: readonly Count[]): readonly number[] {
  return (items[0] ?? []).map((_, size) => size)
}

/** The number that a count has for all sizes; null where they differ. */
function same(count: Count | null): number | null {
  const [first = null] = count ?? []
  return count?.every((value) => value === first) === true ? first : null
}

const remark = /[([]\s*(\d+) (?:more )?(?:rows|rnds|rounds)(?: in all| total| in total| worked)?\s*[)\]]/gi

/** `Rows 21–25 (6 rows)`: another number of rows than the label names. */
export function rangeFindings(row: ReadRow, text: RowText): readonly Diagnostic[] {
  const rows = labelled(row)
  if (rows === null) return []
  return [...text.text.matchAll(remark)].flatMap((match) => {
    const said = Number(match[1])
    return said === rows ? [] : [diagnose('range-length', spanOf(text, match), { rows, words: said })]
  })
}
