import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { visitor } from './browser.ts'
import { patternPages, siteFolder } from './site.ts'

const visit = visitor()

/** What the feed and each of its entries hold, as a browser's own XML parser reads it: names of elements with how many there are. */
interface ReadFeed {
  readonly root: string
  readonly namespace: string | null
  readonly broken: boolean
  readonly feed: Readonly<Record<string, number>>
  readonly entries: readonly Readonly<Record<string, number>>[]
  readonly moments: readonly string[]
  readonly ids: readonly string[]
  readonly links: readonly (string | null)[]
}

function parse(text: string): ReadFeed {
  const document = new DOMParser().parseFromString(text, 'application/xml')
  const root = document.documentElement
  const counts = (parent: Element): Record<string, number> => {
    const names = [...parent.children].map(({ localName }) => localName)
    return Object.fromEntries(names.map((name) => [name, names.filter((other) => other === name).length]))
  }
  const texts = (name: string) => [...root.getElementsByTagName(name)].map(({ textContent }) => textContent ?? '')
  return {
    root: root.localName,
    namespace: root.namespaceURI,
    broken: document.querySelector('parsererror') !== null,
    feed: counts(root),
    entries: [...root.getElementsByTagName('entry')].map(counts),
    moments: [...texts('updated'), ...texts('published')],
    ids: texts('id'),
    links: [...root.getElementsByTagName('link')].map((link) => link.getAttribute('rel')),
  }
}

test('the feed is well formed and has what RFC 4287 asks for', async () => {
  const text = readFileSync(join(siteFolder, 'feed.xml'), 'utf8')
  const feed = await visit('/', {}, (page) => page.evaluate(parse, text))
  expect(feed).toMatchObject({ root: 'feed', namespace: 'http://www.w3.org/2005/Atom', broken: false })
  // RFC 4287 (Nottingham and Sayre, 2005), 4.1.1: exactly one id, title and updated; an author, since entries have none;
  // a link with the relation "self" should be there.
  expect(feed.feed).toMatchObject({ id: 1, title: 1, updated: 1, author: 1 })
  expect(feed.links).toContain('self')
  // 4.1.2: in each entry exactly one id, title and updated; without content a link with the relation "alternate".
  expect(feed.entries).toHaveLength(patternPages.length)
  for (const entry of feed.entries) expect(entry).toMatchObject({ id: 1, title: 1, updated: 1, link: 1, summary: 1 })
  expect(feed.links.filter((rel) => rel === 'alternate')).toHaveLength(patternPages.length + 1)
  // 3.3: moments by RFC 3339. 4.2.6: ids are whole IRIs, each once.
  for (const moment of feed.moments) expect(moment).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/)
  expect(new Set(feed.ids).size).toBe(feed.ids.length)
  for (const id of feed.ids) expect(URL.canParse(id)).toBe(true)
})
