import { describe, expect, test } from 'vitest'
import type { OwnPattern } from '../../src/own/open.ts'
import { openDraft } from './recipe.ts'

const draft = (text: string, facts = ''): string => `---
title: Mat
sizes: [S, M]
swatch: {stitches: 10 per 10 cm, rows: 10 per 10 cm, size: 10 cm x 10 cm, weight: 10 g}
yarn: [{as: main, skein: {weight: 50 g, length: 100 m}}]
finished: {Length: made}
reader: {length: {from: 5 cm, to: 60 cm}, gauge: {within: 20 %}}
${facts}---

\`\`\`grading
across = [20, 30] cm
sts    = stitches(across) as even
length = [10, 20] cm
high  = rows(length) as whole
made   = height(high)
need high rises
${text}`

const mat = `\`\`\`

## Mat

Foundation: Ch {{sts + 1}}.

Row 1: Sc in 2nd ch from hook and in each ch across. ({{sts}} sc)

Rows 2–{{high}}: Ch 1, turn, sc in each st across. ({{sts}} sc)
`

const withLength = (text: string, length: string): OwnPattern =>
  openDraft('mat', text).work({ lengths: { length }, gauges: {} })

describe('what does not come out is told with its row, number and sizes', () => {
  test('nothing, and that sizes no longer rise concerns no reader', () => {
    expect(withLength(draft(mat), '15 cm').troubles).toEqual([])
  })

  test('a need, with the designer’s own names', () => {
    const { troubles } = withLength(draft(`need sts >= high\n${mat}`), '25 cm')
    expect(troubles).toEqual([
      {
        stops: true,
        sizes: [0],
        words:
          'The pattern comes out where sts is at least high, and that is not so with these numbers: S: 20 against 25.',
      },
    ])
  })

  test('a row with a number that was typed by hand', () => {
    const text = draft(
      mat
        .replace('Rows 2–{{high}}: Ch 1, turn', 'Rows 2–10 (20): Ch 1, turn')
        .concat('\nNext row: Rep Row {{high}}.\n'),
    )
    const { troubles } = withLength(text, '25 cm')
    expect(troubles.map(({ stops }) => stops)).toContain(true)
    expect(troubles[0]?.words).toMatch(/25/)
  })

  test('what was found before is not told again', () => {
    const text = draft(mat.replace('({{sts}} sc)\n\nRows', '(21 (31) sc)\n\nRows'))
    expect(withLength(text, '15 cm').troubles).toEqual([])
  })
})

test('a weighed sample goes on telling what its own stitches took', () => {
  const text = draft(mat, 'sample: {size: S, used: {main: 40 g}}\n')
  const grams = ({ pattern }: OwnPattern) => pattern.yarn.main?.grams
  const open = openDraft('mat', text)
  expect(open.published().yarn.main?.grams).toEqual([40, 118])
  // Twice as long takes a little less than twice as much: the foundation is worked once.
  expect(grams(withLength(text, '20 cm'))?.[0]).toBeGreaterThan(70)
  // Finer stitches over the same area: the fabric is taken to weigh the same.
  const finer = open.work({ lengths: {}, gauges: { '': { stitches: '11', rows: '11' } } })
  expect(finer.pattern.rows[2]?.total).toEqual([22, 34])
  expect(grams(finer)?.[0]).toBe(40)
})

test('numbers are said to be a reader’s own only where they differ', () => {
  const same = withLength(draft(mat).replace('[10, 20] cm', '10 cm').replace('need high rises\n', ''), '10 cm')
  expect(same.pattern.own).toEqual([])
  const other = withLength(draft(mat), '12.5 cm')
  expect(other.pattern.own.map(({ label }) => label)).toEqual(['Length'])
})

test('a size without a length gets none', () => {
  const text = draft(mat.replace(/Rows 2[\s\S]*/, ''))
    .replace('[10, 20] cm', '[10 cm, none]')
    .replace(/high.*\nmade.*\nneed high rises\n/, 'made = length\n')
  expect(withLength(text, '12 cm').pattern.values.length?.bySize).toEqual([12, null])
})

test('the recipe leaves out what a designer wrote for themselves', async () => {
  const { recipeFor } = await import('./recipe.ts')
  const text = draft(`# my secret plan\n${mat}`).replace('title: Mat', 'title: Mat # a secret too')
  const recipe = JSON.stringify(recipeFor('mat', text))
  const quoted = 'more = body("head") # a secret beside “words” with # in them\n'
  const third = JSON.stringify(recipeFor('mat', draft(`${quoted}${mat}`)))
  expect(third).toContain('body(\\"head\\")')
  expect(third).not.toContain('secret')
  expect(text).toContain('secret')
  expect(recipe).not.toContain('secret')
})
