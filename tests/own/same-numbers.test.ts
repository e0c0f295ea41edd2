import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { demoText, readDemo } from '../demo-drafts.ts'
import { openDraft } from './recipe.ts'

/** A draft, the line of a length in it, and how far a reader may go, in half centimetres. */
const lengths: readonly [slug: string, name: string, line: RegExp, least: number, most: number][] = [
  ['slack-tide-cowl', 'depth', /^depth {6}= \[22, 26, 30\] cm.*$/m, 32, 72],
  ['bollard-hat', 'depth', /^depth {6}= \[15, 17, 19, 21, 23\] cm$/m, 26, 52],
  ['causeway-cushion', 'side', /^side {6}= 40 cm$/m, 60, 120],
]

/** Everything of a pattern that has numbers, but for what says that they are a reader's own. */
function numbersOf({ adjustables: _, own: _own, ...pattern }: Pattern): unknown {
  const rows = pattern.rows.map(({ at: _at, ...row }) => row)
  return { ...pattern, rows, values: pattern.values }
}

/** The same as the pattern that a designer gets who changes the draft: `rises` aside, which concerns no reader. */
function asEdited(slug: string, edit: (text: string) => string): Pattern {
  const text = demoText(slug)
  const edited = edit(text)
  expect(edited).not.toBe(text)
  const { pattern } = { pattern: readDemo(slug, edited).outcome.value }
  if (pattern === null) throw new Error(`${slug} can’t be read`)
  return pattern
}

describe('a reader’s length comes to the numbers that the draft comes to with that length in it', () => {
  test.each(lengths)('%s: %s', (slug, name, line, least, most) => {
    const open = openDraft(slug, demoText(slug))
    fc.assert(
      fc.property(fc.integer({ min: least, max: most }), (halves) => {
        const length = `${halves / 2} cm`
        const { pattern } = open.work({ lengths: { [name]: length }, gauges: {} })
        const edited = asEdited(slug, (text) => text.replace(line, `${name} = ${length}`))
        expect(numbersOf(pattern)).toEqual(numbersOf({ ...edited, body: pattern.body, cautions: pattern.cautions }))
        expect(valuesIn(pattern)).toEqual(valuesIn(edited))
      }),
      { seed: 20_261_125, numRuns: 5 },
    )
  })
})

/** Every printed value of the text, in the order of the page. */
function valuesIn({ body }: Pattern): string[] {
  return [...JSON.stringify(body).matchAll(/"segments":(\[[^\]]*\])/g)].map(([, segments = '']) => segments)
}

describe('a reader’s gauge comes to the numbers that the draft comes to with that swatch', () => {
  test.each([
    ['slack-tide-cowl', 12, 10, 14],
    ['sluice-gate-pullover', 14, 11, 4],
    ['mooring-ring-pullover', 15, 11, 3],
  ])('%s', (slug, stitches, rows, percent) => {
    const open = openDraft(slug, demoText(slug))
    const near = (count: number) =>
      fc
        .integer({ min: Math.ceil(count * (100 - percent)), max: Math.floor(count * (100 + percent)) })
        .map((hundredths) => String(Math.round(hundredths / 10) / 10))
    fc.assert(
      fc.property(near(stitches), near(rows), (own, high) => {
        const { pattern } = open.work({ lengths: {}, gauges: { '': { stitches: own, rows: high } } })
        const edited = asEdited(slug, (text) =>
          text
            .replace(`stitches: ${stitches} per 10 cm`, `stitches: ${own} per 10 cm`)
            .replace(`rows: ${rows} per 10 cm`, `rows: ${high} per 10 cm`)
            .concat('\n'),
        )
        expect(numbersOf(pattern)).toEqual(numbersOf({ ...edited, body: pattern.body, cautions: pattern.cautions }))
        expect(valuesIn(pattern)).toEqual(valuesIn(edited))
      }),
      { seed: 20_261_125, numRuns: slug === 'slack-tide-cowl' ? 6 : 2 },
    )
  })
})

test.each(['slack-tide-cowl', 'mooring-ring-pullover', 'lugsail-bonnet'])(
  '%s comes out of its recipe as it was published, formulas chosen together and tables beside it included',
  (slug) => {
    const published = readDemo(slug, demoText(slug)).outcome.value
    expect(openDraft(slug, demoText(slug)).published()).toEqual(published)
  },
)
