import { getEntry } from 'astro:content'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { atomFeed } from '../announce/atom.ts'
import { sitemap } from '../announce/sitemap.ts'
import { siteShelf } from '../components/shelf.ts'
import { wholeAddress } from '../layouts/address.ts'

/** `/feed.xml` and `/sitemap.xml`, where the site knows its own address: both must name pages in full. */
export const getStaticPaths = (async () => {
  if (wholeAddress('') === null) return []
  const { shelf } = await siteShelf()
  const studio = await getEntry('studio', 'studio')
  const { name, tagline } = studio?.data ?? { name: 'Crochet patterns', tagline: '' }
  const addressOf = (path: string): string => wholeAddress(path) ?? path
  const feed = atomFeed(shelf.all.patterns, { name, tagline, addressOf })
  return [
    { params: { name: 'sitemap' }, props: { text: sitemap(shelf, addressOf), type: 'application/xml' } },
    { params: { name: 'feed' }, props: { text: feed, type: 'application/atom+xml' } },
  ]
}) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { text, type } }) =>
  new Response(text, { headers: { 'Content-Type': `${type}; charset=utf-8` } })
