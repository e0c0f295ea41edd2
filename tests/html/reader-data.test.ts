import { describe, expect, test } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { workFor } from '../../src/client/place/rows.ts'
import { readerData, readerJson } from '../../src/html/reader-data.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { demoDrafts, readDemo } from '../demo-drafts.ts'

function patternOf(name: string, text: string): Pattern {
  const { value } = readDraft(`${name}.md`, name, text).outcome
  if (value === null) throw new Error(`${name} can’t be used`)
  return value
}

const demos = demoDrafts.map(([slug, text]) => {
  const { value } = readDemo(slug, text).outcome
  if (value === null) throw new Error(`${slug} can’t be used`)
  return value
})

describe('what a page brings for its script', () => {
  test.each(demos.map((pattern) => [pattern.slug, pattern] as const))(
    'has every row of %s as it was worked',
    (_, pattern) => {
      const data = readerData(pattern)
      for (const size of pattern.sizes.keys()) {
        const { rows } = workFor(data, size)
        const worked = pattern.rows.flatMap(({ total }) => total[size] ?? [])
        expect(rows.flatMap(({ stitches }) => stitches)).toEqual(worked)
        expect(rows.every(({ from, word }) => from !== null || word === 'Foundation')).toBe(true)
      }
    },
  )

  test('has rows that could not be read, and leaves those of other sizes out', () => {
    const pattern = patternOf(
      'mat',
      `---\ntitle: Mat\nsizes: [S, L]\n---\n
## Strip (make 2)
Foundation: Ch 11.

Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)

:::sizes{only="L"}
Rows 2–4: Ch 1, sc in each st across, turn.

Row 5: Wibble.
:::`,
    )
    const data = readerData(pattern)
    expect(data.pieces).toEqual([{ name: 'Strip (make 2)', times: 2 }])
    expect(data.rows.map(({ id, word, from, work }) => [id, word, from, work])).toEqual([
      ['strip-make-2-foundation', 'Foundation', null, '0'],
      ['strip-make-2-row-1', 'Row', 1, '10'],
      ['strip-make-2-row-2', 'Row', [null, 2], [null, '10*3']],
      ['strip-make-2-row-5', 'Row', [null, 5], [null, '?']],
    ])
  })

  test('cannot end the element that it stands in', () => {
    const pattern = { ...patternOf('mat', '---\ntitle: Mat\nsizes: [S]\n---\n'), sizes: ['</script><b>'] }
    expect(readerJson(pattern)).not.toContain('<')
    expect(JSON.parse(readerJson(pattern))).toEqual(readerData(pattern))
  })
})
