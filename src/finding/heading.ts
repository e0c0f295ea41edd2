import type { FacetKey, FacetValue } from './facet.ts'
import type { Listing } from './shelf.ts'

/** `Easy hat patterns for women in medium yarn`; null for all patterns. */
export function headingOf({ choice }: Listing): string | null {
  if (choice.length === 0) return null
  const part = (facet: FacetKey): readonly string[] => choice.filter((value) => value.facet === facet).map(words)
  const text = [...part('skill'), ...part('kind'), 'patterns', ...part('sizes'), ...part('yarn')].join(' ')
  return text.charAt(0).toUpperCase() + text.slice(1)
}

function words({ facet, key, name }: FacetValue): string {
  const plain = name.toLowerCase()
  if (facet === 'yarn') return `in ${plain.replace(/ \(\d+\)$/, '')} yarn`
  if (facet !== 'sizes') return plain
  if (key === 'one-size') return 'in one size'
  return `for ${plain.replace(/, (\dx)/, ' in $1').replace(/\dx/, (size) => size.toUpperCase())}`
}

/** For those who meet the page as a line in a list: how many there are, and the first of them. */
export function descriptionOf(listing: Listing): string {
  const titles = listing.patterns.map(({ title }) => title)
  const told = titles.length > 5 ? [...titles.slice(0, 4), `${titles.length - 4} more`] : titles
  return `${headingOf(listing) ?? 'All patterns'}: ${new Intl.ListFormat('en-GB').format(told)}.`
}
