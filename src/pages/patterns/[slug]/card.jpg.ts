import { getEntry } from 'astro:content'
import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro'
import { cardImage } from '../../../announce/card/card.ts'
import { coverFile } from '../../../components/cover-file.ts'
import { patternPaths } from '../../../components/pattern-paths.ts'
import { sizeRange, skillNames } from '../../../finding/names.ts'
import { wholeAddress } from '../../../layouts/address.ts'
import type { Pattern } from '../../../pattern/pattern.ts'

/** What is shown of a pattern where its page is shared: `/patterns/tide-line/card.jpg`. */
export const getStaticPaths = (async () => (wholeAddress('') === null ? [] : patternPaths())) satisfies GetStaticPaths

type Props = InferGetStaticPropsType<typeof getStaticPaths>

export const GET: APIRoute<Props> = async ({ props: { pattern, filePath } }) => {
  const studio = await getEntry('studio', 'studio')
  const bytes = await cardImage({
    studio: studio?.data.name ?? '',
    title: pattern.title,
    summary: pattern.summary ?? '',
    facts: factsOf(pattern),
    picture: coverFile(pattern, filePath),
  })
  return new Response(Buffer.from(bytes), { headers: { 'Content-Type': 'image/jpeg' } })
}

/** `Easy · Child, Adult S, Adult L` */
function factsOf({ skill, sizes }: Pattern): string {
  return [...(skill === null ? [] : [skillNames[skill]]), sizeRange(sizes)].join(' · ')
}
