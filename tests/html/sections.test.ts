import { describe, expect, test } from 'vitest'
import { contentsOf, hasSection, type SectionName, sectionOf } from '../../src/components/sections.ts'
import { always } from '../../src/measure/index.ts'
import type { Pattern } from '../../src/pattern/pattern.ts'
import { sizes, text } from './to-html.ts'

const bare: Pattern = {
  slug: 'tide-line',
  title: 'Tide Line',
  summary: null,
  lead: [],
  terms: 'us',
  kinds: [],
  skill: null,
  published: null,
  edition: null,
  changes: [],
  sizes,
  wearers: [],
  fits: [],
  finished: [],
  measures: [],
  fit: null,
  materials: { yarn: [], yarnNote: null, hooks: [], notions: [] },
  gauge: [],
  readings: [],
  abbreviations: [],
  cautions: [],
  cover: null,
  film: null,
  body: [],
  pieces: [],
  rows: [],
  values: {},
  adjustables: [],
  own: [],
  yarn: {},
}

const depth = {
  label: 'Depth',
  value: { type: 'value', id: 'depth', segments: [] },
  cells: [[always('20 cm')], [always('22 cm')], [always('24 cm')]],
} as const

const cases: readonly [name: SectionName, facts: Partial<Pattern>][] = [
  ['sizes', { fits: [depth] }],
  ['sizes', { finished: [depth] }],
  ['materials', { materials: { yarn: [], yarnNote: null, hooks: ['6 mm'], notions: [] } }],
  ['materials', { materials: { yarn: [], yarnNote: null, hooks: [], notions: ['yarn needle'] } }],
  ['gauge', { gauge: [{ name: null, text: [always('12 stitches = 10 cm')] }] }],
  ['safety', { cautions: [{ text: 'Take it off.', source: 'Advice', sizes: null }] }],
  ['abbreviations', { abbreviations: [{ abbreviation: 'ch', meaning: 'chain', special: false, other: null }] }],
  ['film', { film: { url: 'https://film.example/a', moments: [] } }],
  ['edition', { edition: '1.0' }],
  ['edition', { published: '2026-03-14' }],
  ['edition', { changes: [{ edition: '1.1', date: null, note: 'Rnd 3.' }] }],
]

describe('a section', () => {
  test.each(cases)('%s is there when the pattern has something to say in it: %j', (name, facts) => {
    expect(hasSection({ ...bare, ...facts }, name)).toBe(true)
    expect(hasSection(bare, name)).toBe(false)
  })
})

test('the list of contents has the body between the facts and the edition', () => {
  const pattern: Pattern = {
    ...bare,
    edition: '1.0',
    fits: [depth],
    body: [{ type: 'heading', depth: 2, id: 'cowl', children: [text('Cowl')] }],
  }
  expect(contentsOf(pattern)).toEqual([
    sectionOf(pattern, 'sizes'),
    { id: 'cowl', text: [always('Cowl')] },
    sectionOf(pattern, 'edition'),
  ])
})

test.each([
  ['us', 'Gauge', 'Tension'],
  ['uk', 'Tension', 'Gauge'],
] as const)('a draft in %s terms has a section headed %s', (terms, own, other) => {
  expect(sectionOf({ ...bare, terms }, 'gauge').text).toEqual([{ ...always(own), term: { other, reading: null } }])
})
