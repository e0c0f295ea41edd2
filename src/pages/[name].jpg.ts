import { getCollection, getEntry } from 'astro:content'
import type { APIRoute, GetStaticPaths } from 'astro'
import { cardImage } from '../announce/card/card.ts'
import { coverFile } from '../components/cover-file.ts'
import { siteShelf } from '../components/shelf.ts'
import { wholeAddress } from '../layouts/address.ts'

/** `/card.jpg`, what is shown of the site where it is shared: its name beside the cover of the newest pattern. */
export const getStaticPaths = (() =>
  wholeAddress('') === null ? [] : [{ params: { name: 'card' } }]) satisfies GetStaticPaths

export const GET: APIRoute = async () => {
  const studio = await getEntry('studio', 'studio')
  const { name, tagline } = studio?.data ?? { name: 'Crochet patterns', tagline: '' }
  const card = { studio: '', title: name, summary: tagline, facts: '', picture: await newestCover() }
  return new Response(Buffer.from(await cardImage(card)), { headers: { 'Content-Type': 'image/jpeg' } })
}

async function newestCover(): Promise<Uint8Array | null> {
  const { shelf } = await siteShelf()
  const newest = shelf.all.patterns.find(({ cover }) => cover !== null)
  const entries = await getCollection('patterns')
  return newest === undefined ? null : coverFile(newest, entries.find(({ id }) => id === newest.slug)?.filePath)
}
