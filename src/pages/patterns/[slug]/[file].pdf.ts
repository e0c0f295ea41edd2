import { getEntry } from 'astro:content'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { printPictures } from '../../../../plugins/print-pictures.ts'
import { patternPaths } from '../../../components/pattern-paths.ts'
import { offeredPrintOuts, printFile } from '../../../layouts/print-outs.ts'
import { printWords } from '../../../layouts/print-words.ts'
import { printInBackground } from '../../../print/pool.ts'

/** Every print-out of every pattern: `/patterns/tide-line/tide-line-a4.pdf`. */
export const getStaticPaths = (async () => {
  const paths = await patternPaths()
  const studio = await getEntry('studio', 'studio')
  return paths.flatMap(({ params: { slug }, props }) =>
    offeredPrintOuts(props.pattern, studio?.data.print.terms ?? 'own').flatMap(({ printOuts }) =>
      printOuts.map((printOut) => ({
        params: { slug, file: printFile(props.pattern, printOut) },
        props: { ...props, printOut },
      })),
    ),
  )
}) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = async ({ props: { pattern, printOut, filePath } }) => {
  const { form, paper, terms } = printOut
  const options = {
    ...(await printWords(pattern)),
    form,
    paper,
    choice: { size: null, terms, units: 'both' },
    images: filePath === undefined ? {} : await printPictures(pattern, filePath, form),
  } as const
  const { bytes } = await printInBackground({ pattern, options })
  return new Response(Buffer.from(bytes), { headers: { 'Content-Type': 'application/pdf' } })
}
