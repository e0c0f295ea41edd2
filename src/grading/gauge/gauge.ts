import type { Outcome } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Gauge } from '../../formula/index.ts'
import { type Rate, readMean } from './mean.ts'
import { readMeasurement, type WrittenText } from './measurement.ts'

/** The gauge of one swatch as the draft gives it: every place that was measured; none where it leaves a line out. */
export interface WrittenGauge {
  readonly stitches: readonly WrittenText[]
  readonly rows: readonly WrittenText[]
}

/**
 * Reads a swatch's gauge exactly, from either system; of several measurements, the mean. Null when one cannot be read or
 * counts nothing, which is reported; a line that is left out only leaves its part null.
 */
export function readGauge(written: WrittenGauge): Outcome<Gauge | null> {
  const stitches = readRate('stitches', written.stitches)
  const rows = readRate('rows', written.rows)
  const diagnostics = [...stitches.diagnostics, ...rows.diagnostics]
  if (stitches.value === 'broken' || rows.value === 'broken') return { value: null, diagnostics }
  const unit = stitches.value?.unit ?? rows.value?.unit ?? 'cm'
  const gauge = {
    stitches: stitches.value?.perCentimetre ?? null,
    rows: rows.value?.perCentimetre ?? null,
    unit,
  }
  return { value: gauge, diagnostics }
}

function readRate(what: 'stitches' | 'rows', written: readonly WrittenText[]): Outcome<Rate | null | 'broken'> {
  return readMean(written, {
    read: readMeasurement,
    finding: ({ text, at }, misread) => diagnose(`gauge-${misread}`, at, { what, text }),
  })
}
