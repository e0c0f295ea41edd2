import { getCollection } from 'astro:content'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'

/** What a reader's own numbers are worked from, for patterns that allow them: `/patterns/tide-line/recipe.json`. */
export const getStaticPaths = (async () => {
  const entries = await getCollection('patterns')
  return entries.flatMap(({ id, data: { recipe } }) =>
    recipe === null ? [] : [{ params: { slug: id }, props: { recipe } }],
  )
}) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { recipe } }) =>
  new Response(`${JSON.stringify(recipe)}\n`, { headers: { 'Content-Type': 'application/json' } })
