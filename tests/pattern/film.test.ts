import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import type { RowBlock } from '../../src/pattern/node.ts'

const body = `
## Back

Foundation: Ch 11.

Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)

Rows 2–6: Ch 1, sc in each st across, turn. (10 sc)

## Front

Foundation: Ch 6.

Row 1: Sc in 2nd ch from hook and in each ch across, turn. (5 sc)

## Finishing

Weave in ends.
`

function read(video: string) {
  const text = `---\ntitle: A\nsizes: [S]\nvideo: ${video}\n---\n${body}`
  const { value, diagnostics } = readDraft('a.md', 'a', text).outcome
  const rows = (value?.body ?? []).filter((block): block is RowBlock => block.type === 'row')
  return {
    film: value?.film ?? null,
    shown: rows.flatMap(({ id, moment }) => (moment === null ? [] : [`${id} ${moment.href}`])),
    found: diagnostics.map(({ code, at, hint }) => `${code} “${text.slice(at.start, at.end)}” ${hint}`),
  }
}

const at = (moments: string): string => `{url: "https://studio.example/mat", at: {${moments}}}`

describe('a moment of the film', () => {
  it.each([
    ['"Back, Row 1": "8:13"', ['back-row-1 https://studio.example/mat#t=493']],
    ['"back, row 1": "0:05"', ['back-row-1 https://studio.example/mat#t=5']],
    ['Row 4: "1:02:03"', ['back-row-2 https://studio.example/mat#t=3723']],
    ['Finishing: "90:00"', []],
    ['Front: "2:00"', []],
  ])('%s', (moments, shown) => {
    const outcome = read(at(moments))
    expect(outcome.found).toEqual([])
    expect(outcome.shown).toEqual(shown)
    expect(outcome.film?.moments).toHaveLength(1)
  })

  it('leaves an address with a fragment of its own as it is', () => {
    expect(read('{url: "https://studio.example/#/mat", at: {Row 4: "0:30"}}').shown).toEqual([
      'back-row-2 https://studio.example/#/mat',
    ])
  })

  it.each([
    ['Row 1: "8:13"', ['film-row “8:13” Write `Back, Row 1` instead.']],
    ['Row 9: "8:13"', ['film-row “8:13” Write the label of a row, such as `Rnd 2`, or a heading.']],
    ['Rwo 4: "8:13"', ['film-row “8:13” Write `Row 4` instead.']],
    ['Sleeves: "8:13"', ['film-row “8:13” Write the label of a row, such as `Rnd 2`, or a heading.']],
    ['Row 4: "8.13"', ['film-time “8.13” Write minutes and seconds, `"8:13"`, or hours before them, `"1:02:03"`.']],
    ['Row 4: "8:73"', ['film-time “8:73” Write minutes and seconds, `"8:13"`, or hours before them, `"1:02:03"`.']],
    ['Row 4: 493', ['film-time “493” Write minutes and seconds, `"8:13"`, or hours before them, `"1:02:03"`.']],
  ])('%s is told of', (moments, found) => {
    const outcome = read(at(moments))
    expect(outcome.found).toEqual(found)
    expect(outcome.shown).toEqual([])
  })
})

describe('the address of the film', () => {
  it.each([
    ['http://studio.example/mat'],
    ['studio.example/mat'],
    ['javascript:alert(1)'],
    ['data:text/html,a'],
    ['/films/mat'],
    ['https://'],
  ])('%s is told of and leads nowhere', (url) => {
    const { film, found } = read(`{url: "${url}", at: {Row 4: "1:00"}}`)
    expect(found).toEqual([`film-address “${url}” Write the whole address; it starts with \`https://\`.`])
    expect(film).toBe(null)
  })
})
