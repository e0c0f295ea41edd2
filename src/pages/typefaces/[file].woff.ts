import type { APIRoute } from 'astro'
import { readTypeface } from '../../print/fonts.ts'
import { typefaceFiles } from '../../print/typefaces.ts'

/** The typefaces of print-outs, for those that a reader makes: `/typefaces/literata-latin-600-normal.woff`. */
export const getStaticPaths = () => typefaceFiles.map((file) => ({ params: { file } }))

export const GET: APIRoute = ({ params: { file = '' } }) =>
  new Response(Buffer.from(readTypeface(file)), { headers: { 'Content-Type': 'font/woff' } })
