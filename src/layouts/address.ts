import type { Listing } from '../finding/shelf.ts'
import { pathOf } from '../finding/shelf.ts'
import type { Pattern } from '../pattern/pattern.ts'
import type { PrintOut } from './print-outs.ts'
import { printFile } from './print-outs.ts'

/**
 * The address of a place on this site, from its path below the top: `patterns/tide-line/`. Works where
 * the site does not stand at the top of its host.
 */
export function siteAddress(path: string): string {
  const base = import.meta.env.BASE_URL
  return `${base.endsWith('/') ? base : `${base}/`}${path}`
}

/** The same with the site's own address before it; null where the studio's words do not give one. */
export function wholeAddress(path: string): string | null {
  const { SITE } = import.meta.env
  return SITE === undefined ? null : new URL(siteAddress(path), SITE).href
}

/** The whole address where the site's own is known, else the one on this site. */
export function fullestAddress(path: string): string {
  return wholeAddress(path) ?? siteAddress(path)
}

export function patternAddress(slug: string): string {
  return siteAddress(`patterns/${slug}/`)
}

/** The count of every row, on a page of its own. */
export function countsAddress(slug: string): string {
  return `${patternAddress(slug)}counts/`
}

/** One of the files that a pattern is printed from. */
export function printAddress(pattern: Pick<Pattern, 'slug' | 'terms'>, printOut: PrintOut): string {
  return `${patternAddress(pattern.slug)}${printFile(pattern, printOut)}.pdf`
}

/** The patterns that have something in common; all of them on the first page. */
export function listingAddress({ choice }: Listing): string {
  return siteAddress(choice.length === 0 ? '' : `patterns/${pathOf(choice)}/`)
}

/** What is heard on a pattern's page; `version` tells one that says something else. */
export function spokenAddress(slug: string, version: string): string {
  return `${patternAddress(slug)}spoken.css?${version}`
}

/** What a reader's own numbers are worked from; `version` tells one recipe from another. */
export function recipeAddress(slug: string, version: string): string {
  return `${patternAddress(slug)}recipe.json?${version}`
}
