import type { Diagnostic, Outcome } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Gauge } from '../../formula/index.ts'
import { meanOf, type Rate, scatterOf } from './mean.ts'
import { type Measurement, readMeasurement, type WrittenText } from './measurement.ts'

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

/** The mean of what was measured; null for nothing, `broken` where a measurement has been reported. */
function readRate(what: 'stitches' | 'rows', written: readonly WrittenText[]): Outcome<Rate | null | 'broken'> {
  const measurements: Measurement[] = []
  const findings: Diagnostic[] = []
  for (const text of written) {
    const read = readMeasurement(text)
    if (typeof read !== 'string') measurements.push(read)
    else findings.push(diagnose(`gauge-${read}`, text.at, { what, text: text.text }))
  }
  if (findings.length > 0) return { value: 'broken', diagnostics: findings }
  return { value: meanOf(measurements), diagnostics: scatterOf(measurements) }
}
