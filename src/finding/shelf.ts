import type { Pattern } from '../pattern/pattern.ts'
import { type FacetValue, facets } from './facet.ts'

/** A page of patterns that have something in common; without a choice it is all of them. */
export interface Listing {
  /** At most one value of a facet, in the order of the facets. */
  readonly choice: readonly FacetValue[]
  readonly patterns: readonly Pattern[]
}

/** All patterns with the pages that they can be found on. */
export interface Shelf {
  /** Every value that some pattern has, in the order of the facets and of their values. */
  readonly values: readonly FacetValue[]
  /** The patterns of each value. */
  readonly holders: ReadonlyMap<FacetValue, ReadonlySet<Pattern>>
  readonly all: Listing
  /** Every page by its path, that of all patterns by the empty one. */
  readonly listings: ReadonlyMap<string, Listing>
}

/**
 * The pages that there are: all patterns, those of each value, and those of two values of different facets where both narrow the
 * list. None is empty, and of a few hundred patterns there are a few hundred.
 */
export function shelve(patterns: readonly Pattern[]): Shelf {
  const all: Listing = { choice: [], patterns: inOrder(patterns) }
  const values = valuesIn(patterns)
  const holders = new Map(values.map((value) => [value, new Set(all.patterns.filter((each) => has(each, value)))]))
  const shelf = { values, holders, all }
  const singles = values.map((value) => ({ choice: [value], patterns: chosenFrom(shelf, [value]) }))
  const listings = [all, ...singles, ...pairsOf(shelf)]
  return { ...shelf, listings: new Map(listings.map((listing) => [pathOf(listing.choice), listing])) }
}

/** Newest first; undated ones last, by title. */
function inOrder(patterns: readonly Pattern[]): readonly Pattern[] {
  return [...patterns].sort(
    (one, other) =>
      (other.published ?? '').localeCompare(one.published ?? '') || one.title.localeCompare(other.title, 'en'),
  )
}

function valuesIn(patterns: readonly Pattern[]): readonly FacetValue[] {
  return facets.flatMap(({ order, valuesOf }) => {
    const found = new Map(patterns.flatMap(valuesOf).map((value) => [value.key, value]))
    found.delete('')
    return [...found.values()].sort((one, other) =>
      order === null ? one.name.localeCompare(other.name, 'en') : order.indexOf(one.key) - order.indexOf(other.key),
    )
  })
}

function has(pattern: Pattern, { facet, key }: FacetValue): boolean {
  return facets.some((each) => each.key === facet && each.valuesOf(pattern).some((value) => value.key === key))
}

function pairsOf(shelf: Omit<Shelf, 'listings'>): readonly Listing[] {
  return shelf.values.flatMap((one, position) =>
    shelf.values.slice(position + 1).flatMap((other): Listing[] => {
      if (one.facet === other.facet) return []
      const patterns = chosenFrom(shelf, [one, other])
      const least = Math.min(shelf.holders.get(one)?.size ?? 0, shelf.holders.get(other)?.size ?? 0)
      return patterns.length > 0 && patterns.length < least ? [{ choice: [one, other], patterns }] : []
    }),
  )
}

/** The patterns that are all that is chosen, in the order of all patterns. */
export function chosenFrom({ all, holders }: Omit<Shelf, 'listings'>, choice: readonly FacetValue[]) {
  const sets = choice.map((value) => holders.get(value))
  return all.patterns.filter((pattern) => sets.every((set) => set?.has(pattern)))
}

/** `kind/hat/skill/easy`; empty for all patterns. */
export function pathOf(choice: readonly FacetValue[]): string {
  return choice.map(({ facet, key }) => `${facet}/${key}`).join('/')
}
