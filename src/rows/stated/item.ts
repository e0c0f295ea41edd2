import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import type { MadeByRow } from '../written.ts'

/** What a stated number counts. */
export type Counted =
  /** All stitches of the row. */
  | { readonly kind: 'total' }
  /** Whatever is counted under this key while the row is worked: `doubleCrochet`, `space:2`; `space` for spaces of any length. */
  | { readonly kind: 'key'; readonly key: string }
  /** A special stitch by its name. `defined`: the draft says what it is. */
  | { readonly kind: 'special'; readonly name: string; readonly defined: boolean }
  /** `12 sts each side`: what stands between two corners; `key` null for all stitches. */
  | { readonly kind: 'side'; readonly key: string | null }
  | { readonly kind: 'corner' }
  /** `5 fans`, `12 3-dc groups`: a name that the draft gives no meaning. `size`: the stitches of each, where that is said. */
  | { readonly kind: 'named'; readonly name: string; readonly size: number | null }

/** A way of counting: see `meaning.ts` for what each comes to. */
export type CountingRule = string

/** One number that a row states. */
export interface StatedItem {
  /** The key of the ledger: `total`, `dc`, `ch-2 sp`, `shell`. */
  readonly shown: string
  readonly of: Counted
  readonly count: Count | ((row: MadeByRow) => Count)
  /** The ways in which the row or the pattern counts it; null for the usual one. */
  readonly by: readonly CountingRule[] | null
}

export interface Stated {
  readonly items: readonly StatedItem[]
  readonly at: Span
}

/** The number that an item states for a size; null for none, or one that the row itself fills in. */
export function statedFor(item: StatedItem, size: number): number | null {
  return typeof item.count === 'function' ? null : (item.count[size] ?? null)
}
