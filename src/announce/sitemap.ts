import type { Shelf } from '../finding/shelf.ts'
import { lastUpdated, updatedOn } from './dates.ts'
import { element, type XmlElement, xmlDocument } from './xml.ts'

/** Every page of the site by the sitemap protocol 0.9, each with the day of its newest edition. */
export function sitemap(shelf: Shelf, addressOf: (path: string) => string): string {
  const listings = [...shelf.listings].map(([path, { patterns }]) =>
    entryOf(addressOf(path === '' ? '' : `patterns/${path}/`), lastUpdated(patterns)),
  )
  const patterns = shelf.all.patterns.map((pattern) =>
    entryOf(addressOf(`patterns/${pattern.slug}/`), updatedOn(pattern)),
  )
  return xmlDocument(
    element('urlset', [...listings, ...patterns], { xmlns: 'http://www.sitemaps.org/schemas/sitemap/0.9' }),
  )
}

function entryOf(address: string, updated: string | null): XmlElement {
  return element('url', [element('loc', address), ...(updated === null ? [] : [element('lastmod', updated)])])
}
