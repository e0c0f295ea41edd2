import { readdirSync, readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'

/** The built site. */
export const siteFolder = resolve('site')

/** The address of every page, in the order of the alphabet: `/`, `/patterns/tide-line/`, … */
export const everyPage: readonly string[] = readdirSync(siteFolder, { recursive: true, encoding: 'utf8' })
  .filter((path) => path === 'index.html' || path.endsWith('/index.html'))
  .map((path) => `/${path.slice(0, -'index.html'.length)}`)
  .sort()

/** Those of counts, which belong to a pattern's page and are not found by themselves. */
export const countsPages: readonly string[] = everyPage.filter((path) => path.endsWith('/counts/'))

/** What a reader sees of a page that is not on the device, without a connection. */
export const offlinePage = '/offline/'

/** All others but the manual, which is for designers. */
export const findablePages: readonly string[] = everyPage.filter(
  (path) => !countsPages.includes(path) && !path.startsWith('/manual/') && path !== offlinePage,
)

/** Those of patterns that have something in common. */
export const listingPages: readonly string[] = everyPage.filter((path) =>
  /^\/patterns(?:\/(?:kind|skill|yarn|sizes)\/[^/]+)+\/$/.test(path),
)

/** One with a single choice and one with two stand for all of these: they differ in nothing but their patterns. */
const sampleListings = [5, 7].flatMap((parts) => listingPages.find((path) => path.split('/').length === parts) ?? [])

/** Every page, of pages that are alike only a few. */
export const pages: readonly string[] = everyPage.filter(
  (path) => !listingPages.includes(path) || sampleListings.includes(path),
)

/** Only those of patterns. */
export const patternPages: readonly string[] = pages.filter((path) => /^\/patterns\/[^/]+\/$/.test(path))

/** Those with more than one size to choose from. */
export const switchPages: readonly string[] = patternPages.filter((path) =>
  readFileSync(join(siteFolder, path, 'index.html'), 'utf8').includes('id="size-all"'),
)

export const notFoundPage = '/there/is/no/such/page/'
