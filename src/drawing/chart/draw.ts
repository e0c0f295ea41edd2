import type { Ledger } from '../../rows/ledger.ts'
import type { Dictionary } from '../../rows/terms/dictionary.ts'
import type { Figure } from '../drawing.ts'
import { cornerCount } from '../round/corners.ts'
import { drawChart } from './chart.ts'
import type { LaidChart } from './lay-chart.ts'
import { layRounds, layRows } from './lay-chart.ts'
import type { ChartRow } from './model.ts'

export interface ChartAsked {
  readonly piece: string
  readonly caption: string
  readonly rows: readonly ChartRow[]
}

/** More places than this fit on no page, however small. */
const mostPlaces = 2500
/** A ring of more chains than this is a foundation, not the middle of a motif. */
const longestRing = 12

function layChart(rows: readonly ChartRow[], { kinds }: Ledger): LaidChart {
  const [first] = rows
  const below = first?.row.trace().below.places.length ?? 0
  const inRounds = first?.row.row.circular === true && below <= longestRing && first.places === null
  if (!inRounds) return layRows(rows, kinds)
  const corners = cornerCount(
    rows.map(({ row }) => ({ row, around: 0 })),
    kinds,
  )
  return layRounds(rows, kinds, { corners, chains: below })
}

/** A stitch chart of worked rows, and the names of stitches that have no symbol; null where it fits on no page. */
export function chartOf(
  { piece, caption, rows }: ChartAsked,
  ledger: Ledger,
  dictionary: Dictionary,
): { readonly figure: Figure; readonly own: readonly string[] } | null {
  const places = rows.reduce((sum, row) => sum + (row.places?.size ?? row.row.row.places.length), 0)
  if (places > mostPlaces) return null
  const laid = layChart(rows, ledger)
  const naming = { terms: ledger.terms, dictionary }
  return drawChart({ piece, caption, rows, laid, kinds: ledger.kinds, naming })
}
