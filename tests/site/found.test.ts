import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { countsPages, findablePages, siteFolder } from '../browser/site.ts'

const host = 'https://lowwater.example'
const read = (path: string): string => readFileSync(join(siteFolder, path), 'utf8')

/** The content of a page's `meta` or `link`, by the text that opens it. */
function said(page: string, opening: string): string | null {
  return new RegExp(`<(?:meta|link) ${opening} (?:content|href)="([^"]*)"`).exec(page)?.[1] ?? null
}

describe('every page', () => {
  it('is in the sitemap, and nothing else is', () => {
    const listed = [...read('sitemap.xml').matchAll(/<loc>(.*?)<\/loc>/g)].map(([, address]) => address)
    expect(listed.toSorted()).toEqual(findablePages.map((path) => `${host}${path}`).toSorted())
  })

  it.each(findablePages)('%s says where it really stands and brings a card that is there', (path) => {
    const page = read(`${path}index.html`)
    expect(said(page, 'rel="canonical"')).toBe(`${host}${path}`)
    expect(said(page, 'property="og:url"')).toBe(`${host}${path}`)
    expect(said(page, 'property="og:title"')).not.toBe(null)
    const card = said(page, 'property="og:image"') ?? ''
    expect(card.startsWith(`${host}/`)).toBe(true)
    expect(existsSync(join(siteFolder, card.slice(host.length)))).toBe(true)
    expect(said(page, 'property="og:image:alt"')).not.toBe('')
  })
})

it.each(['404.html', 'offline/index.html', ...countsPages.map((path) => `${path}index.html`)])(
  '%s is not found by itself',
  (path) => {
    const page = read(path)
    expect(said(page, 'name="robots"')).toBe('noindex')
    expect(said(page, 'rel="canonical"')).toBe(null)
  },
)

it('robots.txt lets everyone in and leads to the sitemap', () => {
  expect(read('robots.txt')).toBe(`User-agent: *\nDisallow:\n\nSitemap: ${host}/sitemap.xml\n`)
})
