import { getCollection } from 'astro:content'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { countsCsv } from '../../../proof/counts.ts'

/** The count of every row and size for a spreadsheet: `/patterns/tide-line/counts.csv`. */
export const getStaticPaths = (async () => {
  const entries = await getCollection('patterns')
  return entries.flatMap(({ id, data: { pattern } }) =>
    pattern === null ? [] : [{ params: { slug: id }, props: { pattern } }],
  )
}) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { pattern } }) =>
  new Response(countsCsv(pattern), { headers: { 'Content-Type': 'text/csv; charset=utf-8' } })
