import type { Outcome } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { DrawnValue, Figure, SchematicGauge } from '../drawing/index.ts'
import { drawSchematic, flatPlan, isRound, roundPlans, withoutEdging, workedRows } from '../drawing/index.ts'
import type { Environment } from '../formula/index.ts'
import type { Segment } from '../measure/index.ts'
import type { Ledger } from '../rows/ledger.ts'
import type { Asked } from './drawings.ts'

/** What drawings are made from, beside what is asked for. */
export interface DrawingSource {
  readonly ledger: Ledger
  readonly environment: Environment
  readonly sizes: readonly string[]
  readonly value: (segments: readonly Segment[]) => DrawnValue
}

/** The gauge to measure by; null, with a finding, where it can't be had. */
function gaugeFor({ at, piece, words }: Asked, environment: Environment): Outcome<SchematicGauge | null> {
  const swatch = words.swatch ?? null
  const found = environment.gauge(swatch)
  // What is wrong with the swatch has been said.
  if (found.kind === 'broken') return { value: null, diagnostics: [] }
  const lacks = (missing: 'stitches' | 'rows' | null): Outcome<null> => ({
    value: null,
    diagnostics: [diagnose('schematic-without-gauge', at, { piece, swatch, missing })],
  })
  if (found.kind !== 'found') return lacks(swatch === null ? 'stitches' : null)
  const { stitches, rows, unit } = found.gauge
  if (stitches === null) return lacks('stitches')
  if (rows === null) return lacks('rows')
  return { value: { stitches, rows, unit }, diagnostics: [] }
}

/** The schematic asked for; null, with findings, where it can't be drawn. */
export function schematicFor(
  asked: Asked,
  { ledger, environment, sizes, value }: DrawingSource,
): Outcome<Figure | null> {
  const { piece, entries, size } = asked
  const { value: gauge, diagnostics } = gaugeFor(asked, environment)
  if (gauge === null) return { value: null, diagnostics }
  const density = { stitches: gauge.stitches.valueOf(), rows: gauge.rows.valueOf() }
  const own = withoutEdging(ledger, entries)
  const rows = sizes.map((_, each) => workedRows(ledger, own, each))
  const plans = isRound(rows[size] ?? [])
    ? roundPlans(rows, size, ledger.kinds, density)
    : rows.map((each) => flatPlan(each, ledger.kinds, density))
  const figure = drawSchematic(piece, sizes.length < 2 ? null : (sizes[size] ?? null), { plans, size, gauge, value })
  return { value: figure, diagnostics }
}
