import type { Pattern } from '../pattern/pattern.ts'
import { lastUpdated, updatedOn } from './dates.ts'
import { element, type XmlElement, xmlDocument } from './xml.ts'

/** A site that a feed can tell of. */
export interface FeedSite {
  readonly name: string
  readonly tagline: string
  /** The whole address of a place on the site by its path below the top. */
  readonly addressOf: (path: string) => string
}

/** Readers of feeds look at the newest; whoever wants all has the site. */
const mostEntries = 50

/** A feed must give a moment even where nothing in it does. */
const undated = '1970-01-01'

/** The feed of new patterns and new editions, by RFC 4287 (Atom). A pattern that gives no date is not in it. */
export function atomFeed(patterns: readonly Pattern[], { name, tagline, addressOf }: FeedSite): string {
  const dated = patterns.flatMap((pattern) => {
    const updated = updatedOn(pattern)
    return updated === null ? [] : [{ pattern, updated }]
  })
  const newest = dated.toSorted((one, other) => (one.updated < other.updated ? 1 : -1)).slice(0, mostEntries)
  return xmlDocument(
    element(
      'feed',
      [
        element('title', name),
        element('subtitle', tagline),
        element('id', addressOf('')),
        element('updated', moment(lastUpdated(patterns) ?? undated)),
        element('author', [element('name', name), element('uri', addressOf(''))]),
        element('link', [], { rel: 'alternate', type: 'text/html', href: addressOf('') }),
        element('link', [], { rel: 'self', type: 'application/atom+xml', href: addressOf('feed.xml') }),
        ...newest.map((entry) => entryOf(entry.pattern, entry.updated, addressOf)),
      ],
      { xmlns: 'http://www.w3.org/2005/Atom', 'xml:lang': 'en' },
    ),
  )
}

function entryOf(pattern: Pattern, updated: string, addressOf: FeedSite['addressOf']): XmlElement {
  const address = addressOf(`patterns/${pattern.slug}/`)
  return element('entry', [
    element('title', pattern.title),
    element('id', address),
    element('updated', moment(updated)),
    ...(pattern.published === null ? [] : [element('published', moment(pattern.published))]),
    element('link', [], { rel: 'alternate', type: 'text/html', href: address }),
    element('summary', summaryOf(pattern)),
    ...pattern.kinds.map((kind) => element('category', [], { term: kind })),
  ])
}

/** What it is, and what is new in the newest edition. */
function summaryOf({ title, summary, changes }: Pattern): string {
  const change = changes.toSorted((one, other) => ((one.date ?? '') < (other.date ?? '') ? 1 : -1))[0]
  const news = change === undefined ? [] : [`Edition ${change.edition}: ${change.note}`]
  return [summary ?? title, ...news].join(' ')
}

/** Drafts know days only. */
function moment(day: string): string {
  return `${day}T00:00:00Z`
}
