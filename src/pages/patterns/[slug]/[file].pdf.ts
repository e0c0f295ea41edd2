import { getCollection, getEntry } from 'astro:content'
import { readFileSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { pictureAt } from '../../../../plugins/read-beside.ts'
import { wholeAddress } from '../../../layouts/address.ts'
import type { Pattern } from '../../../pattern/pattern.ts'
import { printInBackground } from '../../../print/pool.ts'

const papers = ['a4', 'letter'] as const

/** A print-out of every pattern on both papers: `/patterns/tide-line/tide-line-a4.pdf`. */
export const getStaticPaths = (async () => {
  const entries = await getCollection('patterns')
  return entries.flatMap(({ id, data, filePath }) => {
    const { pattern } = data
    if (pattern === null) return []
    return papers.map((paper) => ({
      params: { slug: id, file: `${id}-${paper}` },
      props: { pattern, paper, filePath },
    }))
  })
}) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = async ({ props: { pattern, paper, filePath } }) => {
  const studio = await getEntry('studio', 'studio')
  const { name, address } = studio?.data ?? { name: '', address: null }
  // Where a reader with a print-out finds its newest edition; without that, the studio.
  const place = wholeAddress(`patterns/${pattern.slug}/`)?.replace(/^https?:\/\//, '') ?? address
  const options = { paper, studio: { name, address: place }, images: imagesOf(pattern, filePath) }
  const { bytes } = await printInBackground({ pattern, options })
  return new Response(Buffer.from(bytes), { headers: { 'Content-Type': 'application/pdf' } })
}

/** The bytes of the pictures that a print-out can show, read from beside the draft. */
function imagesOf(pattern: Pattern, filePath: string | undefined): Record<string, Uint8Array> {
  const src = pattern.cover?.src
  if (src === undefined || filePath === undefined || !/\.(?:png|jpe?g)$/i.test(src)) return {}
  const path = resolve(dirname(filePath), src)
  return pictureAt(path) === 'picture' ? { [src]: readFileSync(path) } : {}
}
