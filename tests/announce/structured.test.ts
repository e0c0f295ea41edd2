import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { howTo } from '../../src/announce/structured/how-to.ts'
import { scriptText } from '../../src/announce/structured/json.ts'
import { findablePages, listingPages, patternPages, siteFolder } from '../browser/site.ts'
import { pattern } from '../finding/pattern.ts'
import { tideLine } from '../print/fixture.ts'
import { vocabularyFaults } from './vocabulary.ts'

const surroundings = {
  studio: 'Mats & More',
  addressOf: (path: string): string => `https://studio.example/${path}`,
  images: ['https://studio.example/card.jpg'],
}

/** The structured data of a built page. */
function blockOf(path: string): { type: string; json: string } {
  const page = readFileSync(join(siteFolder, path, 'index.html'), 'utf8')
  const json = /<script type="application\/ld\+json">(.*?)<\/script>/s.exec(page)?.[1] ?? ''
  const type = /"@type":"(\w+)"/.exec(json)?.[1] ?? ''
  return { type, json }
}

describe('structured data', () => {
  it('of every built page is in the vocabulary of schema.org', () => {
    const blocks = findablePages.map(blockOf)
    expect(vocabularyFaults(blocks)).toEqual([])
    expect(blocks.map(({ type }) => type)).toEqual(
      findablePages.map((path) => (patternPages.includes(path) ? 'HowTo' : 'CollectionPage')),
    )
    expect(listingPages.length).toBeGreaterThan(0)
  })

  it('of a bare pattern and of a full one is in the vocabulary', () => {
    const full = tideLine(undefined, { cover: { src: './a.jpg', alt: 'A cowl' } })
    const texts = [pattern('mat'), full].map((each) => JSON.stringify(howTo(each, surroundings)))
    expect(vocabularyFaults(texts.map((json) => ({ type: 'HowTo', json })))).toEqual([])
  })

  it.each([
    ['a property that a type has not', 'HowTo', '{"@context":"https://schema.org","@type":"HowTo","hook":"5 mm"}'],
    ['a value that a property does not take', 'HowTo', '{"@context":"https://schema.org","@type":"HowTo","tool":5}'],
    ['another type', 'HowTo', '{"@context":"https://schema.org","@type":"Pattern","name":"Mat"}'],
  ])('would be told of %s', (_, type, json) => {
    expect(vocabularyFaults([{ type, json }])).not.toEqual([])
  })

  it('says what the pattern says, and links to the parts that hold rows', () => {
    const data = howTo(tideLine(), surroundings)
    expect(data).toMatchObject({
      name: 'Tide Line',
      url: 'https://studio.example/patterns/tide-line/',
      version: '1.1',
      datePublished: '2026-03-14',
      dateModified: '2026-05-02',
      educationalLevel: 'Easy',
      keywords: 'crochet, cowl',
      author: { name: 'Mats & More' },
    })
    expect(JSON.stringify(data.step)).toContain('https://studio.example/patterns/tide-line/#')
  })

  it('cannot end its own block', () => {
    const text = scriptText(howTo(pattern('mat', { title: '</script><script>alert(1)' }), surroundings))
    expect(text).not.toContain('<')
    expect(JSON.parse(text)).toMatchObject({ name: '</script><script>alert(1)' })
  })
})
