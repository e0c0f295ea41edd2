import type { PlaceKind } from '../../rows/fabric.ts'
import type { FabricRow, LoopCode } from '../../rows/past.ts'
import type { Point } from '../path.ts'

/** A row that is charted. */
export interface ChartRow {
  readonly row: FabricRow
  /** As it is numbered in the chart. */
  readonly label: string
  /** `Rnd 2`, for words. */
  readonly name: string
  readonly side: 'RS' | 'WS' | null
  /** Places of it that are charted; null for all. */
  readonly places: ReadonlySet<number> | null
}

/** Something in its place in the chart; points in chain stitches, upwards. */
export interface Placed {
  /** Position of its row among those charted, -1 for what they are worked on. */
  readonly row: number
  /** Its position in the row; null for what is no place of the fabric: picots, joins, travelling slip stitches. */
  readonly at: number | null
  readonly sign: Sign
  /** Where it is worked into; its own foot first. */
  readonly feet: readonly Point[]
  readonly head: Point
}

/** What is drawn in a place. */
export type Sign =
  | {
      readonly what: 'stitch'
      readonly kind: PlaceKind & { readonly what: 'stitch' }
      readonly loop: LoopCode
      readonly front: boolean
    }
  /** Chains from foot to head: between stitches, bent outwards, or upright as an opening chain. */
  | { readonly what: 'chains'; readonly count: number; readonly bend: Point | null }
  | { readonly what: 'slip' }
  | { readonly what: 'picot'; readonly chains: number }
  | { readonly what: 'ring'; readonly chains: number; readonly radius: number }
  /** A stitch of the row before those charted. */
  | { readonly what: 'ground' }
