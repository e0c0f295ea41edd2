import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { patternPaths } from '../../../components/pattern-paths.ts'
import { spokenCss } from '../../../html/index.ts'

/** What is heard on a pattern's page: `/patterns/tide-line/spoken.css`. */
export const getStaticPaths = patternPaths satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { pattern } }) =>
  new Response(spokenCss(pattern), { headers: { 'Content-Type': 'text/css; charset=utf-8' } })
