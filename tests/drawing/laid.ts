import type { LaidChart } from '../../src/drawing/chart/lay-chart.ts'
import { layRounds, layRows } from '../../src/drawing/chart/lay-chart.ts'
import type { ChartRow, Placed } from '../../src/drawing/chart/model.ts'
import { chartRows } from '../../src/drawing/chart/select.ts'
import type { Ledger } from '../../src/rows/ledger.ts'
import { work } from '../rows/draft.ts'

/** A chart of worked rows. */
export interface Charted {
  readonly ledger: Ledger
  readonly rows: readonly ChartRow[]
  readonly laid: LaidChart
}

export function rowsOf(text: string): { readonly ledger: Ledger; readonly rows: readonly ChartRow[] } {
  const { ledger, found } = work(text)
  const wrong = found.filter(({ severity }) => severity === 'error').map(({ message }) => message)
  if (wrong.length > 0) throw new Error(wrong.join('\n'))
  return { ledger, rows: chartRows(ledger, [...ledger.rows.keys()], 0) }
}

export function flatChart(text: string): Charted {
  const { ledger, rows } = rowsOf(text)
  return { ledger, rows, laid: layRows(rows, ledger.kinds) }
}

/** `corners` of a motif, 0 for a circle; its ring is drawn together, or has so many chains. */
export function roundChart(text: string, corners = 0, chains = 0): Charted {
  const { ledger, rows } = rowsOf(text)
  return { ledger, rows, laid: layRounds(rows, ledger.kinds, { corners, chains }) }
}

/** What is drawn for the places of a row, in their order. */
export function placesOf({ laid }: Charted, row: number): readonly Placed[] {
  return laid.placed.filter((each) => each.row === row && each.at !== null).sort((a, b) => (a.at ?? 0) - (b.at ?? 0))
}

/** Angle around the middle in degrees, from the top, counter-clockwise. */
export function angleOf({ x, y }: Placed['head']): number {
  const degrees = (Math.atan2(y, x) * 180) / Math.PI - 90
  return Math.round(((degrees + 720) % 360) * 100) / 100
}
