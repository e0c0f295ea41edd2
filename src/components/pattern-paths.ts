import { getCollection } from 'astro:content'
import type { Pattern } from '../pattern/pattern.ts'

/** A place below a pattern's page, with what is made there. */
interface PatternPath {
  readonly params: { readonly slug: string }
  readonly props: { readonly pattern: Pattern; readonly filePath: string | undefined }
}

/** One path for each pattern that can be shown; `filePath` is its draft's. */
export async function patternPaths(): Promise<PatternPath[]> {
  const entries = await getCollection('patterns')
  return entries.flatMap(({ id, data: { pattern }, filePath }) =>
    pattern === null ? [] : [{ params: { slug: id }, props: { pattern, filePath } }],
  )
}
