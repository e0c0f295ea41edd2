import { describe, expect, it } from 'vitest'
import { readDraft } from '../../plugins/read-draft.ts'
import { usualKind } from '../../src/pattern/kinds.ts'

function read(facts: string) {
  const text = `---\ntitle: A\nsizes: [S, M]\n${facts}\n---\nText.\n`
  const { value, diagnostics } = readDraft('a.md', 'a', text).outcome
  const found = diagnostics.map(({ code, at, hint }) => `${code} “${text.slice(at.start, at.end)}” ${hint}`)
  return { pattern: value, found }
}

describe('the kind of a pattern', () => {
  it.each([
    ['kind: hat', ['hat']],
    ['kind: Tea  cosy', ['tea cosy']],
    ['kind: [hat, mittens]', ['hat', 'mittens']],
    ['kind: octopus', ['octopus']],
    ['skill: easy', []],
  ])('%s', (facts, kinds) => {
    const { pattern, found } = read(facts)
    expect(found).toEqual([])
    expect(pattern?.kinds).toEqual(kinds)
  })

  it.each([
    ['kind: hats', ['kind-unusual “hats” Write `kind: hat`, so that it stands with the others.']],
    ['kind: [hat, mitten]', ['kind-unusual “mitten” Write `kind: mittens`, so that it stands with the others.']],
    ['kind: {a: b}', ['fact-wrong “{a: b}” undefined']],
    ['kind: ""', ['fact-wrong “” undefined']],
  ])('%s is told of', (facts, expected) => {
    expect(read(facts).found).toEqual(expected)
  })

  it.each([
    ['scarves', 'scarf'],
    ['dresses', 'dress'],
    ['cardigann', 'cardigan'],
    ['hat', null],
    ['cat', null],
    ['lighthouse', null],
  ])('%s is usually called %s', (kind, usual) => {
    expect(usualKind(kind)).toBe(usual)
  })
})

describe('whom a pattern is for', () => {
  it.each([
    ['fits: {table: women, sizes: [Small, 2X]}', ['women', 'women-2x']],
    ['fits: {table: women, sizes: [3X, 4X]}', ['women', 'women-2x']],
    ['fits: {table: men, sizes: [Small, XXL]}', ['men', 'men-2x']],
    ['fits: {table: head, sizes: [Man, Preemie]}', ['babies', 'men']],
    ['fits: {table: head, sizes: [Toddler, none]}', ['children']],
    ['fits: {table: foot, sizes: [Child 4-8, Woman 6-9]}', ['children', 'women']],
    ['skill: easy', []],
  ])('%s', (facts, wearers) => {
    expect(read(facts).pattern?.wearers).toEqual(wearers)
  })
})

describe('the category of a yarn', () => {
  it.each([
    ['4', 4],
    ['0', 0],
    ['worsted', 4],
    ['Super bulky', 6],
    ['super-fine', 1],
    ['DK', 3],
    // A name of two categories.
    ['fingering', null],
    ['string', null],
  ])('%s is %s', (category, number) => {
    expect(read(`yarn: [{category: ${category}}]`).pattern?.materials.yarn[0]?.category).toBe(number)
  })
})
