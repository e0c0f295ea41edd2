import type { Fit, Pattern } from '../pattern/pattern.ts'

/** What the page's script needs of a pattern beside the page itself; it stands in the page as JSON. */
export interface ReaderData {
  readonly slug: string
  /** Names of the sizes, in the draft's order. */
  readonly sizes: readonly string[]
  readonly fit: Fit | null
}

export function readerData({ slug, sizes, fit }: Pattern): ReaderData {
  return { slug, sizes, fit }
}

/** As text of a script element, which ends at the first `</script`. */
export function readerJson(pattern: Pattern): string {
  return JSON.stringify(readerData(pattern)).replaceAll('<', '\\u003c')
}
