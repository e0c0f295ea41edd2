import type Fraction from 'fraction.js'
import type { Diagnostic, Outcome, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Gauge } from '../formula/index.ts'
import { isLengthUnit, isUnit, readNumber, toBase, units } from '../measure/index.ts'

/** Words of the front matter with their place. */
export interface WrittenText {
  readonly text: string
  readonly at: Span
}

/** The gauge of one swatch as the draft gives it; null where it leaves a line out. */
export interface WrittenGauge {
  readonly stitches: WrittenText | null
  readonly rows: WrittenText | null
}

/**
 *     12 per 10 cm     16 sts per 4 in     8½ rows over 10 cm
 */
const form =
  /^([-−]?)([\d\s./½¼¾⅛⅜⅝⅞]{1,24}?)\s*(?:[a-z]{1,12}\.?\s+)?(?:per|to|over|in|=)\s*([\d\s./½¼¾⅛⅜⅝⅞]{1,24}?)\s*([a-z]{1,2})$/i

interface Rate {
  readonly perCentimetre: Fraction
  readonly unit: 'cm' | 'in'
}

/**
 * Reads a swatch's gauge exactly, from either system. Null when a line cannot be read or counts nothing,
 * which is reported; a line that is left out only leaves its part null.
 */
export function readGauge(written: WrittenGauge): Outcome<Gauge | null> {
  const stitches = written.stitches === null ? null : readRate('stitches', written.stitches)
  const rows = written.rows === null ? null : readRate('rows', written.rows)
  const diagnostics = [stitches, rows].flatMap((read) => (read !== null && 'code' in read ? [read] : []))
  if (isFinding(stitches) || isFinding(rows)) return { value: null, diagnostics }
  const unit = stitches?.unit ?? rows?.unit ?? 'cm'
  return {
    value: { stitches: stitches?.perCentimetre ?? null, rows: rows?.perCentimetre ?? null, unit },
    diagnostics,
  }
}

function isFinding(read: Rate | Diagnostic | null): read is Diagnostic {
  return read !== null && 'code' in read
}

function readRate(what: 'stitches' | 'rows', { text, at }: WrittenText): Rate | Diagnostic {
  const [, minus, amount = '', over = '', unit = ''] = form.exec(text.trim()) ?? []
  const count = readNumber(amount)
  const length = readNumber(over)
  if (count === null || length === null || !isUnit(unit) || !isLengthUnit(unit)) {
    return diagnose('gauge-unreadable', at, { what, text })
  }
  if (minus !== '' || count.n === 0n || length.n === 0n) return diagnose('gauge-not-positive', at, { what, text })
  return { perCentimetre: count.div(toBase(length, unit)), unit: units[unit].system === 'metric' ? 'cm' : 'in' }
}
