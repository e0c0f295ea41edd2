import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import type { Fit } from '../../src/pattern/pattern.ts'

/** The fit of a draft of three sizes with these facts; its swatch is in centimetres. */
function fitOf(facts: string): Fit | null {
  const text = `---\ntitle: Mat\nsizes: [S, M, L]\nswatch: {stitches: 12 per 10 cm}\n${facts}\n---\n\nA mat.\n`
  const { value } = readDraft('mat.md', 'mat', text).outcome
  if (value === null) throw new Error('the test’s draft can’t be used')
  return value.fit
}

const heads = 'fits: {table: head, sizes: [Child, Woman, none]}'

describe('what a reader’s measure is held against', () => {
  it('has the numbers that the page prints, each unit rounded by itself', () => {
    expect(fitOf(`${heads}\nfinished: {Circumference: "[50.1, 60.2, 70.3] cm"}`)).toEqual({
      label: 'Head circumference',
      unit: 'cm',
      low: { cm: [45.5, 51, null], in: [18, 20, null] },
      high: { cm: [45.5, 51, null], in: [18, 20, null] },
      made: { cm: [50, 60, 70.5], in: [19.75, 23.75, 27.75] },
    })
  })

  it('is not there for a draft without a body table', () => {
    expect(fitOf('finished: {Circumference: 50 cm}')).toBe(null)
  })

  it.each([
    ['Circumference', 'Circumference'],
    ['Finished head', 'Finished head'],
    ['Depth', null],
    ['Circumference of brim', null],
    ['Stitches around: 12 sts', null],
    // The one that says most of “head circumference”.
    ['Circumference; Head circumference', 'Head circumference'],
    ['Head; Circumference', 'Head'],
  ])('of the finished measures %s it takes %s', (labels, taken) => {
    const names = labels.split('; ')
    const finished = names.map((name, index) => `"${name}": "${50 + index} cm"`).join(', ')
    const own = taken === null ? null : 50 + names.indexOf(taken)
    expect(fitOf(`${heads}\nfinished: {${finished}}`)?.made?.cm[0] ?? null).toBe(own)
  })

  it.each(['Bust', 'Chest', 'Bust circumference'])('takes %s for the women’s bust', (label) => {
    const fit = fitOf(`fits: {table: women, sizes: [Small, Medium, Large]}\nfinished: {${label}: 90 cm}`)
    expect(fit?.made?.cm ?? null).toEqual(label === 'Bust circumference' ? null : [90, 90, 90])
  })
})
