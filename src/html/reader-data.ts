import type { Fit, Pattern } from '../pattern/pattern.ts'
import { onceOrEach, type RowData, rowsData } from './reader-rows.ts'

/** What the page's script needs of a pattern beside the page itself; it stands in the page as JSON. */
export interface ReaderData {
  readonly slug: string
  readonly edition: string | null
  /** Names of the sizes, in the draft's order. */
  readonly sizes: readonly string[]
  readonly fit: Fit | null
  readonly pieces: readonly PieceData[]
  readonly rows: readonly RowData[]
}

export interface PieceData {
  readonly name: string
  /** How often it is made: for every size, or one number each. */
  readonly times: number | readonly number[]
}

export function readerData(pattern: Pattern): ReaderData {
  const { slug, edition, sizes, fit } = pattern
  const pieces = pattern.pieces.map(({ name, times }) => ({ name, times: onceOrEach(times) }))
  return { slug, edition, sizes, fit, pieces, rows: rowsData(pattern) }
}

/** As text of a script element, which ends at the first `</script`. */
export function readerJson(pattern: Pattern): string {
  return JSON.stringify(readerData(pattern)).replaceAll('<', '\\u003c')
}
