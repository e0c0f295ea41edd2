import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { patternPaths } from '../../../components/pattern-paths.ts'
import { countsCsv } from '../../../proof/counts.ts'

/** The count of every row and size for a spreadsheet: `/patterns/tide-line/counts.csv`. */
export const getStaticPaths = patternPaths satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = ({ props: { pattern } }) =>
  new Response(countsCsv(pattern), { headers: { 'Content-Type': 'text/csv; charset=utf-8' } })
