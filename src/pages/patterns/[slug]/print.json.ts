import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { printPictures } from '../../../../plugins/print-pictures.ts'
import type { PrintParts } from '../../../client/mine/job.ts'
import { patternPaths } from '../../../components/pattern-paths.ts'
import { printWords } from '../../../layouts/print-words.ts'

/** What a print-out is made from beside the pattern, for a reader who makes one: `/patterns/tide-line/print.json`. */
export const getStaticPaths = patternPaths satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = async ({ props: { pattern, filePath } }) => {
  const pictures = filePath === undefined ? {} : await printPictures(pattern, filePath, 'usual')
  const images = Object.entries(pictures).map(([src, bytes]) => [src, Buffer.from(bytes).toString('base64')] as const)
  const parts: PrintParts = { words: await printWords(pattern), images: Object.fromEntries(images) }
  return new Response(`${JSON.stringify(parts)}\n`, { headers: { 'Content-Type': 'application/json' } })
}
