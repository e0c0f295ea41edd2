import { describe, expect, test } from 'vitest'
import { spokenCss, spokenVersion } from '../../src/html/index.ts'
import { pattern } from '../finding/pattern.ts'
import { htmlOf, text } from './to-html.ts'

const sizes = ['Child', 'Adult "S"', 'Adult \\ L']
const readings = [
  { own: 'chain', other: 'chain', explains: false },
  { own: 'single crochet', other: 'double crochet', explains: false },
  { own: '5 dc in\nsame st.', other: '5 tr in same st.', explains: true },
]

describe('what is heard on a page', () => {
  test('is abbreviations in full, in both terms, and the size of each number', () => {
    expect(spokenCss(pattern('cowl', { sizes, readings })).split('\n')).toEqual([
      '.r0::after{content:"chain"}',
      '.r1::after{content:"single crochet"}',
      '.t-other.r1::after{content:"double crochet"}',
      '.r2:focus::after{content:"5 dc in same st."}',
      '.t-other.r2:focus::after{content:"5 tr in same st."}',
      ':root:has(#size-all:checked) span.s.s0::after{content:" for Child, "}',
      ':root:has(#size-all:checked) span.s.s1::after{content:" for Adult \\\\"S\\\\", "}'.replaceAll('\\\\', '\\'),
      ':root:has(#size-all:checked) span.s.s2::after{content:" for Adult \\\\ L"}',
      '',
    ])
  })

  test('is nothing where there is one size and no abbreviation', () => {
    expect(spokenCss(pattern('cowl', { sizes: ['One size'] }))).toBe('')
  })

  test('has another address when it says something else, and the same when it does not', () => {
    const version = spokenVersion(pattern('cowl', { sizes, readings }))
    expect(version).toMatch(/^[a-z0-9]+$/)
    expect(spokenVersion(pattern('other-cowl', { sizes, readings }))).toBe(version)
    expect(spokenVersion(pattern('cowl', { sizes: ['Child'], readings }))).not.toBe(version)
  })
})

test('the keyboard stops at the first abbreviation of each kind below a heading', () => {
  const ch = { type: 'term', text: 'ch', term: { other: 'ch', reading: 0 } } as const
  const sc = { type: 'term', text: 'sc', term: { other: 'dc', reading: 1 } } as const
  const heading = { type: 'heading', depth: 2, id: 'x', children: [text('Cowl')] } as const
  const stops = htmlOf({ type: 'paragraph', children: [ch, sc, ch] }, heading, { type: 'paragraph', children: [ch] })
  // Both spellings of the second can be stopped at; one of them is in view.
  expect([...stops.matchAll(/tabindex="(-?\d)"/g)].map(([, index]) => index)).toEqual(['0', '0', '0', '-1', '0'])
})
