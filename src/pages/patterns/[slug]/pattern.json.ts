import { getCollection } from 'astro:content'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'

/** All that page and print-out are made from, as plain data: `/patterns/tide-line/pattern.json`. */
export const getStaticPaths = (async () => {
  const entries = await getCollection('patterns')
  return entries.flatMap(({ id, data: { pattern } }) =>
    pattern === null ? [] : [{ params: { slug: id }, props: { pattern } }],
  )
}) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { pattern } }) =>
  new Response(`${JSON.stringify(pattern)}\n`, { headers: { 'Content-Type': 'application/json' } })
