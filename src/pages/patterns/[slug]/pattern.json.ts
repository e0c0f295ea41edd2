import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { patternPaths } from '../../../components/pattern-paths.ts'

/** All that page and print-out are made from, as plain data: `/patterns/tide-line/pattern.json`. */
export const getStaticPaths = patternPaths satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { pattern } }) =>
  new Response(`${JSON.stringify(pattern)}\n`, { headers: { 'Content-Type': 'application/json' } })
