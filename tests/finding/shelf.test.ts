import { describe, expect, it } from 'vitest'
import { descriptionOf, headingOf } from '../../src/finding/heading.ts'
import { sizeRange } from '../../src/finding/names.ts'
import { optionsOf } from '../../src/finding/options.ts'
import { pathOf, shelve } from '../../src/finding/shelf.ts'
import { inYarn, pattern } from './pattern.ts'

const hat = pattern('hat', {
  kinds: ['hat'],
  skill: 'easy',
  wearers: ['babies', 'women'],
  published: '2026-01-02',
  ...inYarn(4),
})
const cap = pattern('cap', { kinds: ['hat'], skill: 'basic', wearers: ['women', 'women-2x'], ...inYarn(1) })
const set = pattern('set', { kinds: ['hat', 'tea cosy'], skill: 'easy', published: '2026-05-02', ...inYarn(4) })
const mat = pattern('mat', { sizes: ['One'], skill: 'easy', published: '2026-01-02', ...inYarn(null) })
const shelf = shelve([hat, cap, set, mat])

const slugsAt = (path: string): readonly string[] | undefined =>
  shelf.listings.get(path)?.patterns.map(({ slug }) => slug)

describe('the pages that patterns are found on', () => {
  it('has all of them first, the newest at the head and undated ones at the end', () => {
    expect(slugsAt('')).toEqual(['set', 'hat', 'mat', 'cap'])
  })

  it.each([
    ['kind/hat', ['set', 'hat', 'cap']],
    ['kind/tea-cosy', ['set']],
    ['skill/easy', ['set', 'hat', 'mat']],
    ['skill/basic', ['cap']],
    ['yarn/medium', ['set', 'hat']],
    ['yarn/super-fine', ['cap']],
    ['sizes/babies', ['hat']],
    ['sizes/women', ['hat', 'cap']],
    ['sizes/women-2x', ['cap']],
    ['sizes/one-size', ['mat']],
  ])('has one for %s', (path, slugs) => {
    expect(slugsAt(path)).toEqual(slugs)
  })

  it('has two things together only where that is fewer than either, and more than none', () => {
    const pairs = [...shelf.listings].flatMap(([path, { choice }]) => (choice.length > 1 ? [path] : []))
    expect(pairs).toEqual(['kind/hat/skill/easy', 'skill/easy/sizes/women', 'yarn/medium/sizes/women'])
    expect(slugsAt('kind/hat/skill/easy')).toEqual(['set', 'hat'])
  })

  it('has no page without patterns, and none twice', () => {
    for (const { patterns, choice } of shelf.listings.values()) {
      expect(patterns.length).toBeGreaterThan(0)
      expect(new Set(choice.map(({ facet }) => facet)).size).toBe(choice.length)
    }
  })

  it('has only the page of all patterns where they say nothing of themselves', () => {
    expect([...shelve([pattern('a'), pattern('b')]).listings.keys()]).toEqual([''])
    expect(shelve([]).all.patterns).toEqual([])
  })
})

/** Each option as `name: path, count`, the chosen one with a star. */
function offered(path: string): readonly string[] {
  const listing = shelf.listings.get(path)
  if (listing === undefined) throw new Error(`there is no page ${path}`)
  return optionsOf(listing, shelf).flatMap(({ options }) =>
    options.map(
      ({ value, chosen, to }) => `${chosen ? '*' : ''}${value.name}: ${pathOf(to.choice)}, ${to.patterns.length}`,
    ),
  )
}

describe('what a page offers next', () => {
  it('offers every value on the page of all', () => {
    expect(offered('')).toEqual([
      'Hat: kind/hat, 3',
      'Tea cosy: kind/tea-cosy, 1',
      'Basic: skill/basic, 1',
      'Easy: skill/easy, 3',
      'Super Fine (1): yarn/super-fine, 1',
      'Medium (4): yarn/medium, 2',
      'Babies: sizes/babies, 1',
      'Women: sizes/women, 2',
      'Women, 2X and up: sizes/women-2x, 1',
      'One size: sizes/one-size, 1',
    ])
  })

  it('offers what narrows or changes the choice, the way back, and nothing that would be empty', () => {
    expect(offered('kind/hat')).toEqual([
      '*Hat: , 4',
      'Tea cosy: kind/tea-cosy, 1',
      'Basic: skill/basic, 1',
      'Easy: kind/hat/skill/easy, 2',
      'Super Fine (1): yarn/super-fine, 1',
      'Medium (4): yarn/medium, 2',
      'Babies: sizes/babies, 1',
      'Women: sizes/women, 2',
      'Women, 2X and up: sizes/women-2x, 1',
    ])
    expect(offered('kind/hat/skill/easy')).toContain('*Easy: kind/hat, 3')
    expect(offered('kind/hat/skill/easy')).toContain('*Hat: skill/easy, 3')
  })

  it('tells the number that the page then has', () => {
    for (const listing of shelf.listings.values()) {
      for (const { options } of optionsOf(listing, shelf)) {
        for (const { value, chosen, to } of options) {
          const kept = listing.choice.filter(({ facet }) => facet !== value.facet)
          const wanted = chosen ? kept : [...kept, value]
          const expected = shelf.all.patterns.filter((each) => wanted.every((one) => shelf.holders.get(one)?.has(each)))
          expect(to.patterns).toEqual(expected)
        }
      }
    }
  })
})

describe('words', () => {
  it.each([
    ['', null],
    ['kind/tea-cosy', 'Tea cosy patterns'],
    ['kind/hat/skill/easy', 'Easy hat patterns'],
    ['yarn/super-fine', 'Patterns in super fine yarn'],
    ['sizes/women', 'Patterns for women'],
    ['sizes/women-2x', 'Patterns for women in 2X and up'],
    ['sizes/one-size', 'Patterns in one size'],
  ])('%s is headed %s', (path, heading) => {
    const listing = shelf.listings.get(path)
    expect(listing === undefined ? undefined : headingOf(listing)).toBe(heading)
  })

  it('tells of a page by its patterns, of a long one by the first', () => {
    const many = Array.from({ length: 7 }, (_, index) => pattern(`mat-${index}`, { kinds: ['mat'] }))
    expect(descriptionOf({ choice: [], patterns: [hat, cap] })).toBe('All patterns: Hat and Cap.')
    expect(descriptionOf({ choice: [], patterns: many })).toBe('All patterns: Mat 0, Mat 1, Mat 2, Mat 3 and 3 more.')
  })

  it.each([
    [['One size'], 'One size'],
    [['S', 'M', 'L', 'XL'], 'S, M, L, XL'],
    [['XS', 'S', 'M', 'L', 'XL'], 'XS to XL (5 sizes)'],
  ])('%j is %s', (sizes, range) => {
    expect(sizeRange(sizes)).toBe(range)
  })
})
