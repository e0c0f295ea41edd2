import { getCollection } from 'astro:content'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { spokenCss } from '../../../html/index.ts'

/** What is heard on a pattern's page: `/patterns/tide-line/spoken.css`. */
export const getStaticPaths = (async () => {
  const entries = await getCollection('patterns')
  return entries.flatMap(({ id, data: { pattern } }) =>
    pattern === null ? [] : [{ params: { slug: id }, props: { pattern } }],
  )
}) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { pattern } }) =>
  new Response(spokenCss(pattern), { headers: { 'Content-Type': 'text/css; charset=utf-8' } })
