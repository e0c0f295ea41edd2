import { getCollection } from 'astro:content'
import type { ImageMetadata } from 'astro'
import { type Shelf, shelve } from '../finding/shelf.ts'

export interface SiteShelf {
  readonly shelf: Shelf
  /** By the pattern's slug. */
  readonly covers: ReadonlyMap<string, ImageMetadata>
  /** Slugs of drafts that cannot be shown yet; only in preview are there any. */
  readonly unresolved: readonly string[]
}

/** All patterns of the site with the pages that they are found on. */
export async function siteShelf(): Promise<SiteShelf> {
  const entries = await getCollection('patterns')
  const shelf = shelve(entries.flatMap(({ data: { pattern } }) => pattern ?? []))
  const covers = new Map(
    entries.flatMap(({ id, data: { coverImage } }) => (coverImage === undefined ? [] : [[id, coverImage] as const])),
  )
  return { shelf, covers, unresolved: entries.flatMap(({ id, data }) => (data.pattern === null ? [id] : [])) }
}
