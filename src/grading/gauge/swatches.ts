import type { Diagnostic, Outcome } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Gauge } from '../../formula/index.ts'
import { readGauge, type WrittenGauge } from './gauge.ts'
import { type Repeat, readRepeat, type WrittenRepeat } from './repeat.ts'

/** One swatch as the draft gives it. */
export interface WrittenSwatch extends WrittenGauge {
  /** Null for the only swatch of a draft. */
  readonly name: string | null
  /** Measured before blocking; the lines beside it are then those after blocking. */
  readonly unblocked: WrittenGauge | null
  readonly repeats: readonly WrittenRepeat[]
}

/** A gauge that formulas can name; `gauge` null when it could not be read, which has been reported. */
export interface Swatch {
  /** Null for the only swatch of a draft. */
  readonly name: string | null
  readonly gauge: Gauge | null
}

/** All gauges of a draft by the names that formulas use, the default first, and its stitch multiples. */
export interface Swatches {
  readonly swatches: readonly Swatch[]
  readonly repeats: readonly Repeat[]
}

/**
 * Reads a draft's swatches. Beside each stand what was measured before blocking, as `unblocked` (`"ribbing unblocked"` of
 * a named one), and its repeats by their names. A swatch that says nothing of its stitches or rows has them from the first
 * repeat that does.
 */
export function readSwatches(written: readonly WrittenSwatch[]): Outcome<Swatches> {
  const findings: Diagnostic[] = []
  const keep = <T>({ value, diagnostics }: Outcome<T>): T => {
    findings.push(...diagnostics)
    return value
  }
  const read = written.map((swatch) => {
    const repeats = swatch.repeats.map((repeat) => keep(readRepeat(repeat)))
    const own = filled(keep(readGauge(swatch)), repeats)
    const before = swatch.unblocked === null ? [] : [{ ...unblocked(swatch), gauge: keep(readGauge(swatch.unblocked)) }]
    return { own: { name: swatch.name, gauge: own }, before, repeats }
  })
  const repeats = read.flatMap((swatch) => swatch.repeats)
  const own = read.map((swatch) => swatch.own)
  findings.push(...namedTwice(written, own))
  return {
    value: { swatches: [...own, ...repeats, ...read.flatMap(({ before }) => before)], repeats },
    diagnostics: findings,
  }
}

function unblocked({ name }: WrittenSwatch): { readonly name: string } {
  return { name: name === null ? 'unblocked' : `${name} unblocked` }
}

function filled(gauge: Gauge | null, repeats: readonly Repeat[]): Gauge | null {
  if (gauge === null) return null
  const others = repeats.flatMap((repeat) => (repeat.gauge === null ? [] : [repeat.gauge]))
  const across = others.find(({ stitches }) => stitches !== null)
  const up = others.find(({ rows }) => rows !== null)
  const bare = gauge.stitches === null && gauge.rows === null
  return {
    stitches: gauge.stitches ?? across?.stitches ?? null,
    rows: gauge.rows ?? up?.rows ?? null,
    unit: bare ? (across?.unit ?? up?.unit ?? gauge.unit) : gauge.unit,
  }
}

/** A formula that names a gauge must know which is meant. */
function namedTwice(written: readonly WrittenSwatch[], swatches: readonly Swatch[]): Diagnostic[] {
  const seen = new Set(swatches.map(({ name }) => name))
  return written.flatMap(({ repeats }) =>
    repeats.flatMap(({ name, at }) => {
      if (seen.has(name)) return [diagnose('gauge-named-twice', at, { name })]
      seen.add(name)
      return []
    }),
  )
}
