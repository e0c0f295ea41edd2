import { type FacetKey, type FacetValue, facets } from './facet.ts'
import { chosenFrom, type Listing, pathOf, type Shelf } from './shelf.ts'

/** A value as a reader of a listing may choose it next. */
export interface Option {
  readonly value: FacetValue
  readonly chosen: boolean
  /** What choosing it leads to; for one that is chosen, what giving it up leads to. */
  readonly to: Listing
}

export interface FacetOptions {
  readonly key: FacetKey
  readonly name: string
  readonly options: readonly Option[]
}

/** What a listing can be narrowed to or changed into, by facet. What would change nothing, or leave nothing, is not offered. */
export function optionsOf(listing: Listing, shelf: Shelf): readonly FacetOptions[] {
  return facets.flatMap(({ key, name }) => {
    const options = shelf.values.flatMap((value) => (value.facet === key ? optionFor(value, listing, shelf) : []))
    return options.length === 0 ? [] : [{ key, name, options }]
  })
}

function optionFor(value: FacetValue, listing: Listing, shelf: Shelf): Option[] {
  const chosen = listing.choice.includes(value)
  const others = listing.choice.filter(({ facet }) => facet !== value.facet)
  const to = listingFor(chosen ? others : [...others, value], shelf)
  return to === null || to === listing ? [] : [{ value, chosen, to }]
}

/** The page with just the patterns that are all of a choice, under as much of it as it takes; null where there is none. */
function listingFor(choice: readonly FacetValue[], shelf: Shelf): Listing | null {
  const wanted = chosenFrom(shelf, choice).length
  const inOrder = shelf.values.filter((value) => choice.includes(value))
  const parts = inOrder.flatMap((one, position) => [...inOrder.slice(position + 1).map((other) => [one, other]), [one]])
  const fitting = [...parts, []].sort((one, other) => other.length - one.length)
  for (const part of fitting) {
    const listing = shelf.listings.get(pathOf(part))
    if (listing !== undefined && wanted > 0 && listing.patterns.length === wanted) return listing
  }
  return null
}
