import { describe, expect, it } from 'vitest'
import { atomFeed } from '../../src/announce/atom.ts'
import { pattern } from '../finding/pattern.ts'

const site = {
  name: 'Mats & More',
  tagline: 'A studio.',
  addressOf: (path: string): string => `https://studio.example/${path}`,
}

const idsIn = (feed: string): readonly string[] => [...feed.matchAll(/<id>(.*?)<\/id>/g)].map(([, id]) => id ?? '')

describe('the feed', () => {
  it('has the newest edition first, and nothing without a day', () => {
    const changed = {
      published: '2026-01-01',
      changes: [
        { edition: '1.1', date: '2026-02-01', note: 'Row 2.' },
        { edition: '1.2', date: '2026-05-01', note: 'Row 3.' },
      ],
    }
    const feed = atomFeed([pattern('old', { published: '2026-03-01' }), pattern('none'), pattern('new', changed)], site)
    expect(idsIn(feed)).toEqual([
      'https://studio.example/',
      'https://studio.example/patterns/new/',
      'https://studio.example/patterns/old/',
    ])
    expect(feed).toContain('<summary>New Edition 1.2: Row 3.</summary>')
    expect(feed).toContain('<title>Mats &amp; More</title>')
    expect(feed.indexOf('<updated>2026-05-01T00:00:00Z</updated>')).toBeLessThan(feed.indexOf('<entry>'))
  })

  it('is a feed still where there is nothing to tell', () => {
    const feed = atomFeed([pattern('none')], site)
    expect(idsIn(feed)).toEqual(['https://studio.example/'])
    expect(feed).toContain('<updated>1970-01-01T00:00:00Z</updated>')
  })

  it('holds the fifty newest', () => {
    const many = Array.from({ length: 60 }, (_, index) =>
      pattern(`mat-${index}`, { published: `2026-01-${String((index % 28) + 1).padStart(2, '0')}` }),
    )
    expect(idsIn(atomFeed(many, site))).toHaveLength(51)
  })
})
