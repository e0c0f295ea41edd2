import { describe, expect, it } from 'vitest'
import { codesOf, type Draft, proofed, sentenceOf } from './draft.ts'

const women = 'fits: {table: women, sizes: [Small, Medium, Large]}'
const heads = 'fits: {table: head, sizes: [Child, Woman, Man]}'
const narrow = 'too-narrow-for-head'

/** A pullover whose finished measure of some label is so wide in all sizes; women's heads are 55 cm. */
function pullover(label: string, centimetres: number, parts: Draft = {}) {
  const { facts = '', ...others } = parts
  const finished = `finished: {"${label}": ${centimetres} cm}`
  return proofed({ title: 'Harbour Pullover', ...others, facts: `${women}\n${finished}\n${facts}` })
}

/** A hat for a child, a woman and a man: 45.7, 50.8 and 55.9 cm by the head table. */
function hat(rims: string, parts: Draft = {}) {
  const { facts = '', ...others } = parts
  return proofed({
    title: 'Harbour Hat',
    ...others,
    facts: `${heads}\nfinished: {Circumference: "[${rims}] cm"}\n${facts}`,
  })
}

describe('a closed neck', () => {
  it.each([
    ['is wide enough at rest', 56, '', []],
    ['is wide enough when stretched by a fifth', 46, '', []],
    ['just passes', 45.84, '', []],
    ['is too narrow', 45, '', [`${narrow} 0,1,2`]],
    ['is too narrow for a firm fabric', 50, 'stretch: 5 %', [`${narrow} 0,1,2`]],
    ['is wide enough for an elastic one', 40, 'stretch: 40 %', []],
    ['does not stretch', 54, 'stretch: 0', [`${narrow} 0,1,2`]],
  ])('%s', (_, centimetres, facts, codes) => {
    expect(codesOf(pullover('Neck opening', centimetres, { facts }))).toEqual(codes)
  })

  it.each([
    ['Neck', 40, true],
    ['Neckline', 40, true],
    ['Neck circumference', 40, true],
    ['Neck around', 30, true],
    ['Neck edge', 40, true],
    ['Finished neck', 40, true],
    // Less than half a head is a width.
    ['Neck', 28, true],
    ['Neck', 20, false],
    ['Neck opening', 24, false],
    ['Neck width', 20, false],
    ['Neck depth', 9, false],
    ['Back neck', 18, false],
    ['Front neck drop', 8, false],
    ['Upper arm', 36, false],
    ['Cuff circumference', 20, false],
    ['Circumference', 40, false],
  ])('is what “%s” of %i cm says: %s', (label, centimetres, isNeck) => {
    expect(codesOf(pullover(label, centimetres))).toEqual(isNeck ? [`${narrow} 0,1,2`] : [])
  })

  it.each([
    ['a cardigan by its title', { title: 'Harbour Cardigan' }],
    ['a cardigan by its kind', { facts: 'kind: cardigan' }],
    ['buttons among the notions', { facts: 'notions: [yarn needle, two 15 mm buttons]' }],
    ['a button that it carries', { facts: 'finish: [button]' }],
    ['a zip in the text', { body: 'Sew in the zip by hand.' }],
    ['an opening in the back', { body: '## Back\n\nThe back opening closes with a loop.' }],
  ] satisfies [string, Draft][])('is none in a piece with %s', (_, parts) => {
    expect(codesOf(pullover('Neck opening', 40, parts))).toEqual([])
  })

  it.each([
    ['no buttons are needed', 'There are no buttons and no zips to sew in.'],
    ['it is knotted elsewhere', 'Tie the ends of the yarn.'],
  ])('is one where %s', (_, body) => {
    expect(codesOf(pullover('Neck opening', 40, { body }))).toEqual([`${narrow} 0,1,2`])
  })

  it('is told at rest and stretched, with the head and what would pass', () => {
    const found = proofed({
      title: 'Harbour Pullover',
      facts: `fits: {table: women, sizes: [Small, Medium, none]}\nfinished: {Neck opening: "[44, 48, 50] cm"}`,
    })
    expect(sentenceOf(found, narrow)).toBe(
      '“Neck opening” does not pass over the head: S is 44 cm, stretched by 20 % 52.8 cm, for a head of 55 cm.',
    )
    expect(found.findings[0]?.hint).toContain('Make it at least 45.8 cm for S')
    expect(found.measures[0]?.head).toEqual({ around: [55, 55, null], stretch: 20, stretched: [52.8, 57.6, 60] })
  })
})

describe('the heads', () => {
  const neck = (fits: string, parts: Draft = {}) =>
    proofed({ title: 'Pullover', ...parts, facts: `fits: ${fits}\nfinished: {Neck opening: 50 cm}` }).measures[0]?.head
      ?.around

  it.each([
    ['of women', '{table: women, sizes: [Small, Large, 3X]}', [55, 55, 55]],
    ['of men', '{table: men, sizes: [Small, Large, 2X]}', [57, 57, 57]],
    ['of children by their age', '{table: child, sizes: ["2", "6", "10"]}', [48, 53, 53]],
    ['of youths', '{table: youth, sizes: ["4", "12", "16"]}', [51, 55, 55]],
    ['of babies by their months', '{table: baby, sizes: [3 months, 12 months, 24 months]}', [41, 46, 48]],
    ['of nobody', '{table: women, sizes: [Small, none, Large]}', [55, null, 55]],
    ['of the head table', '{table: head, sizes: [Child, Woman, Man]}', [45.72, 50.8, 55.88]],
  ])('%s', (_, fits, around) => {
    expect(neck(fits)).toEqual(around)
  })

  it.each([
    ['without a body table', 'finished: {Neck opening: 30 cm}'],
    [
      'with a table of feet',
      'fits: {table: foot, sizes: [Child 0-4, Child 4-8, Child 7-11]}\nfinished: {Neck opening: 30 cm}',
    ],
  ])('are not known %s', (_, facts) => {
    const found = proofed({ title: 'Pullover', facts })
    expect(codesOf(found)).toEqual([])
    expect(found.measures[0]?.head).toBe(null)
  })
})

describe('a hat', () => {
  it.each([
    ['that sits close', '42, 47, 52', {}, []],
    ['that is too small for a size', '42, 47, 46', {}, ['measure-falls 1,2', `${narrow} 2`]],
    ['that is too small for all', '36, 40, 44', {}, [`${narrow} 0,1,2`]],
    ['by its kind', '36, 40, 44', { title: 'Bollard', facts: 'kind: beanie' }, [`${narrow} 0,1,2`]],
    ['in a set with what is none', '36, 40, 44', { facts: 'kind: [hat, mittens]' }, []],
    ['and a cowl', '36, 40, 44', { facts: 'kind: [hat, cowl]' }, [`${narrow} 0,1,2`]],
    ['that is a mat', '36, 40, 44', { title: 'Harbour Mat' }, []],
    ['whose title is a cap sleeve', '36, 40, 44', { title: 'Cap Sleeve Tee' }, []],
    ['that is a bonnet', '36, 40, 44', { title: 'Baby Bonnet Hat' }, []],
    ['that is buttoned', '36, 40, 44', { facts: 'notions: [buttons]' }, []],
  ] satisfies [string, string, Draft, string[]][])('%s', (_, rims, parts, codes) => {
    const found = codesOf(hat(rims, parts))
    expect(found.filter((code) => /head|measure/.test(code))).toEqual(codes)
  })

  it.each([
    ['Circumference', true],
    ['Rim', true],
    ['Brim circumference', true],
    ['Around the head', true],
    ['Hat', false],
    ['Depth', false],
    ['Crown height', false],
    ['Mitten circumference', false],
  ])('has its edge in “%s”: %s', (label, isEdge) => {
    const found = proofed({ title: 'Harbour Hat', facts: `${heads}\nfinished: {"${label}": 30 cm}` })
    expect(codesOf(found)).toEqual(isEdge ? [`${narrow} 0,1,2`] : [])
  })
})
