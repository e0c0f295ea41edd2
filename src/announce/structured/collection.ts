import type { CollectionPage, WithContext } from 'schema-dts'
import { headingOf } from '../../finding/heading.ts'
import { type Listing, pathOf } from '../../finding/shelf.ts'
import type { Surroundings } from './how-to.ts'

/** A page of patterns in schema.org's words: a `CollectionPage` with the list of its patterns in their order. */
export function collectionPage(
  listing: Listing,
  { studio, addressOf }: Pick<Surroundings, 'studio' | 'addressOf'>,
): WithContext<CollectionPage> {
  const path = pathOf(listing.choice)
  return {
    '@context': 'https://schema.org',
    '@type': 'CollectionPage',
    name: headingOf(listing) ?? studio,
    url: addressOf(path === '' ? '' : `patterns/${path}/`),
    inLanguage: 'en',
    mainEntity: {
      '@type': 'ItemList',
      numberOfItems: listing.patterns.length,
      itemListElement: listing.patterns.map(({ slug, title }, index) => ({
        '@type': 'ListItem',
        position: index + 1,
        name: title,
        url: addressOf(`patterns/${slug}/`),
      })),
    },
  }
}
