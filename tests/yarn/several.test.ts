import { describe, expect, it } from 'vitest'
import { yarnDraft } from './draft.ts'

const skein = 'skein: {weight: 100 g, length: 200 m}'
const two = `yarn: [{as: main, ${skein}}, {as: contrast, ${skein}}]`
const square = `## Body

Row 1: With MC, fsc 10 (20), turn.
Rows 2-5: Ch 1, sc in each st across, turn.

## Edging

Rnd 1: With CC, ch 1, sc in each st around, join.
`
const silent = `## Body

Row 1: Fsc 10 (20), turn.
Row 2: Ch 1, sc in each st across, turn.
`

const falling = silent.replace('10 (20)', '20 (10)')

describe('several yarns', () => {
  it('takes each for its own rows', () => {
    // A foundation single crochet makes its chain too: 14.5 and four rows of 10.
    expect(yarnDraft(two, square).grams).toEqual({ main: [55, 109], contrast: [10, 20] })
  })

  it('scales each from its own weight', () => {
    const { grams } = yarnDraft(`${two}\nsample: {size: S, used: {main: 100 g, contrast: 30 g}}`, square)
    expect(grams).toEqual({ main: [100, 200], contrast: [30, 60] })
  })

  it('takes for a yarn that was not weighed what the weighed one takes for a stitch', () => {
    const { grams } = yarnDraft(`${two}\nsample: {size: S, used: {contrast: 20 g}}`, square)
    expect(grams).toEqual({ main: [109, 218], contrast: [20, 40] })
  })

  it('can be told in the facts', () => {
    const facts = 'yarn: [{as: main}, {as: trim, pieces: [edging], rows: {Body: Row 2}}]'
    expect(yarnDraft(facts, square.replace(/With MC, |With CC, /g, '')).grams).toEqual({
      main: [45, 89],
      trim: [20, 40],
    })
  })

  it('says what it can’t tell, and gives all yarns together', () => {
    const { grams, found } = yarnDraft(two, silent)
    expect(grams).toEqual({})
    expect(found.map(({ code, severity }) => [code, severity])).toEqual([['yarn-without-rows', 'note']])
    expect(found[0]?.message).toContain('together they come to about 25 (49) g')
  })

  it('scales weighed yarns by the whole piece where rows don’t tell them apart', () => {
    const { grams, codes } = yarnDraft(`${two}\nsample: {size: S, used: {main: 60 g, contrast: 40 g}}`, silent)
    expect(grams).toEqual({ main: [60, 120], contrast: [40, 80] })
    expect(codes).toEqual(['yarn-without-rows'])
  })

  it('names a row that mixes its yarns', () => {
    const striped = `## Body\n\nRow 1: With MC, fsc 10 (20), turn.\nRow 2: Ch 1, sc in each st across, turn. Alternate colors here.\n`
    const { codes, found } = yarnDraft(two, striped)
    expect(codes).toEqual(['row-yarn-unclear'])
    expect(found[0]?.message).toContain('Row 2')
  })
})

describe('margin and skeins', () => {
  it.each([
    ['', [1, 2], 10],
    ['margin: 0 %', [1, 2], 0],
    ['margin: 100 %', [2, 3], 100],
    ['margin: 15', [1, 2], 15],
  ])('%s', (margin, skeins, stated) => {
    const { yarn } = yarnDraft(`${margin}\n${two}`, square)
    expect(yarn.main).toMatchObject({ grams: [55, 109], metres: [109, 218], yards: [120, 239], skeins, margin: stated })
  })

  it.each([['margin: lots'], ['margin: 110 %'], ['margin: 0.1'], ['margin: -5 %']])('refuses %s', (margin) => {
    expect(yarnDraft(`${margin}\n${two}`, square).codes).toEqual(['fact-wrong'])
  })
})

describe('samples', () => {
  it('keeps what was weighed, and takes other sizes from all that was', () => {
    const facts = 'yarn: [{as: main}]\nsample: [{size: S, used: {main: 50 g}}, {size: L, used: {main: 70 g}}]'
    expect(yarnDraft(facts, silent).grams).toEqual({ main: [50, 70] })
  })

  it('points at the line that is wrong, in a list or alone', () => {
    const wrong = 'sample: [{size: S, used: {main: 50 g}}, {size: M, used: {mane: 70 g}}]'
    expect(yarnDraft(`yarn: [{as: main}]\n${wrong}`, silent).codes).toEqual(['size-unknown', 'yarn-unknown'])
    const { found } = yarnDraft('yarn: [{as: main}]\nsample: {size: S, used: {main: much}}', silent)
    expect(found.map(({ code, at }) => [code, at.end - at.start])).toEqual([['measure-unreadable', 'much'.length]])
  })
})

describe('cords, fringes and pompoms', () => {
  const one = `yarn: [{as: main, ${skein}}]`

  it('are counted with the rows, and are part of a weighed sample', () => {
    // 10 (20) strands of 2 × 19 + 2 cm are 4 (8) m, 2 (4) g.
    const fringe = 'finish: [button, {fringe: {length: 19 cm, strands: [10, 20]}}]'
    expect(yarnDraft(`${one}\n${fringe}`, silent).grams).toEqual({ main: [27, 53] })
    const sample = 'sample: {size: S, used: {main: 52 g}}'
    expect(yarnDraft(`${one}\n${fringe}\n${sample}`, silent).grams).toEqual({ main: [52, 104] })
  })

  it('may go by formulas and take a yarn of their own', () => {
    const facts = `${two}\nfinish: [{cord: {stitches: 2 * ends, count: 2, yarn: contrast}}]`
    // 100 (200) chains, twice, are 90 (180) single crochets.
    expect(yarnDraft(facts, `\`\`\`grading\nends = [50, 100]\n\`\`\`\n\n${silent}`).grams).toEqual({
      main: [25, 49],
      contrast: [90, 180],
    })
  })

  it.each([
    ['{pompom: {count: 2}}', 'finish-amount-missing'],
    ['{pompom: {across: 6 g}}', 'finish-amount-wrong'],
    ['{fringe: {length: 10 cm, strands: 4 cm}}', 'finish-amount-wrong'],
    ['{fringe: {length: lengthy, strands: 40}}', 'name-unknown'],
    ['{fringe: {length: 10 cm, strands: 4, yarn: mane}}', 'yarn-unknown'],
    ['{fringe: {long: 10 cm}}', 'key-unknown'],
    ['40', 'fact-wrong'],
  ])('%s is %s', (item, code) => {
    expect(yarnDraft(`${one}\nfinish: [${item}]`, silent).codes).toEqual([code])
  })

  it('says when a length of yarn can’t be weighed', () => {
    const { codes } = yarnDraft('yarn: [{as: main}]\nfinish: [{fringe: {length: 10 cm, strands: 4}}]', silent)
    expect(codes).toEqual(['finish-needs-skein'])
  })
})

describe('findings', () => {
  it.each([
    // Fewer stitches take less: said of the foundation, too.
    ['yarn: [{as: main}]', falling, 'yarn-falls', 'foundation-falls'],
    ['yarn: [{as: main, pieces: [Boddy]}]', silent, 'yarn-piece-unknown'],
    ['yarn: [{as: main, rows: {Body: all}}]', silent, 'yarn-rows-unreadable'],
  ])('%s', (facts, body, ...codes) => {
    expect(yarnDraft(facts, body).codes).toEqual(codes)
  })

  it('names the size that takes less', () => {
    const { found } = yarnDraft('yarn: [{as: main}]', falling)
    expect(found.map(({ sizes, message }) => [sizes, message])).toContainEqual([
      [1],
      '“L” takes less of the yarn “main” than “S”: 25 g after 49 g.',
    ])
  })
})

describe('what is printed', () => {
  it.each([
    ['200 m', '109 (218) m [120 (239) yd], 55 (109) g; 1 skein (2 skeins) with 10 % to spare'],
    ['219 yd', '120 (239) yd [110 (219) m], 55 (109) g; 1 skein (2 skeins) with 10 % to spare'],
  ])('length leads, in the skein’s own unit: %s', (length, expected) => {
    const facts = `yarn: [{as: main, category: 4, skein: {weight: 100 g, length: ${length}}}, {as: contrast}]`
    const { amounts, note } = yarnDraft(facts, square)
    expect(amounts?.[0]).toBe(expected)
    expect(note).toBe(
      'Any Medium (category 4) yarn that gives the gauge will do: go by its length, and its weight follows.',
    )
  })

  it('weight alone where the skein’s length is not known', () => {
    const { amounts, note } = yarnDraft('yarn: [{as: main, category: 4}]', silent)
    expect([amounts?.[0], note]).toEqual(['25 (49) g [1 (1¾) oz]', null])
  })
})
