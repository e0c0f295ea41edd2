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

/** A round along both sides of a chain comes back to what it has gone into: an oval, for which there is no layout. */
function goesBack({ row, places }: ChartRow): boolean {
  const { below, into } = row.trace()
  if (places !== null || !row.row.circular) return false
  const used = into.map((ref) => below.refs.indexOf(ref)).filter((at) => at >= 0)
  const left = used.filter((at, index) => at !== used[index + 1])
  return new Set(left).size < left.length - 1
}

/** Why there is no chart: it fits on no page, or its first round goes along both sides of a chain. */
export type NoChart = 'too-large' | 'both-sides'

/** A stitch chart of worked rows, and the names of stitches that have no symbol. */
export function chartOf(
  { piece, caption, rows }: ChartAsked,
  ledger: Ledger,
  dictionary: Dictionary,
): { readonly figure: Figure; readonly own: readonly string[] } | NoChart {
  const places = rows.reduce((sum, row) => sum + (row.places?.size ?? row.row.row.places.length), 0)
  if (places > mostPlaces) return 'too-large'
  if (rows.slice(0, 1).some(goesBack)) return 'both-sides'
  const laid = layChart(rows, ledger)
  const naming = { terms: ledger.terms, dictionary }
  return drawChart({ piece, caption, rows, laid, kinds: ledger.kinds, naming }) ?? 'too-large'
}
