import { describe, expect, it } from 'vitest'
import { dictionaryFor, nameStitch, printStitch } from '../../src/rows/terms/dictionary.ts'

/**
 * Craft Yarn Council, "Crochet abbreviations" and "Differences in US and UK terms" (list from memory, two
 * thirds of the entries seen in published abbreviation boxes: Yarnspirations; Annie's; GMC Publications,
 * Shawls & Wraps, UK edition 2015).
 */
const pairs = [
  ['sl st', 'ss'],
  ['sc', 'dc'],
  ['hdc', 'htr'],
  ['dc', 'tr'],
  ['tr', 'dtr'],
  ['dtr', 'trtr'],
  ['trtr', 'qtr'],
  ['fpdc', 'fptr'],
  ['bpdc', 'bptr'],
  ['fpsc', 'fpdc'],
  ['esc', 'edc'],
  ['edc', 'etr'],
  ['fsc', 'fdc'],
  ['single crochet', 'double crochet'],
  ['half double crochet', 'half treble crochet'],
  ['double crochet', 'treble crochet'],
  ['treble crochet', 'double treble crochet'],
] as const

describe('US and UK terms', () => {
  const us = dictionaryFor('us')
  const uk = dictionaryFor('uk')

  it.each(pairs)('%s is %s', (american, british) => {
    expect(us.stitches.get(american)).toEqual(uk.stitches.get(british))
    expect(us.stitches.get(american)).toBeDefined()
  })

  it.each([
    ['sc', 'uk', 'dc'],
    ['hdc', 'uk', 'htr'],
    ['htr', 'us', 'hdc'],
    ['qtr', 'us', 'trtr'],
  ] as const)('%s in a %s draft is told as %s', (word, terms, own) => {
    expect(dictionaryFor(terms).foreign.get(word)).toBe(own)
    expect(dictionaryFor(terms).stitches.get(word)).toBeUndefined()
  })

  it('prints post stitches in the draft’s terms', () => {
    const stitch = { base: 'doubleCrochet', style: 'frontPost' } as const
    expect([printStitch(us, stitch), printStitch(uk, stitch)]).toEqual(['FPdc', 'FPtr'])
    expect([nameStitch(us, stitch), nameStitch(uk, stitch)]).toEqual([
      'front post double crochet',
      'front post treble crochet',
    ])
  })
})
