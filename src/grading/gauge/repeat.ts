import Fraction from 'fraction.js'
import type { Outcome, Span } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Gauge } from '../../formula/index.ts'
import { type Rate, readMean } from './mean.ts'
import { readSpan, type WrittenText } from './measurement.ts'

/** A stitch multiple with its own measures as the draft gives them: one shell of 6 stitches is 4.2 cm wide. */
export interface WrittenRepeat {
  readonly name: string
  readonly at: Span
  /** Whole, above zero; null where it is left out. */
  readonly stitches: number | null
  /** Of one, `4.2 cm`, or of several side by side, `5 per 21 cm`. */
  readonly width: readonly WrittenText[]
  readonly rows: number | null
  readonly height: readonly WrittenText[]
}

/** A stitch multiple, read. */
export interface Repeat {
  readonly name: string
  /** In stitches and rows, as far as both the count and the measure are known; null when it could not be read. */
  readonly gauge: Gauge | null
  /** Repeats in a centimetre of width and of height; null where that is not given. */
  readonly across: Fraction | null
  readonly up: Fraction | null
}

/** Reads a stitch multiple's own gauge; what can't be read is reported, and leaves the gauge null. */
export function readRepeat(written: WrittenRepeat): Outcome<Repeat> {
  const { name } = written
  const width = readSide('width', written.width, name)
  const height = readSide('height', written.height, name)
  const diagnostics = [...width.diagnostics, ...height.diagnostics]
  if (width.value === 'broken' || height.value === 'broken') {
    return { value: { name, gauge: null, across: null, up: null }, diagnostics }
  }
  const gauge: Gauge = {
    stitches: counted(written.stitches, width.value),
    rows: counted(written.rows, height.value),
    unit: width.value?.unit ?? height.value?.unit ?? 'cm',
  }
  const across = width.value?.perCentimetre ?? null
  return { value: { name, gauge, across, up: height.value?.perCentimetre ?? null }, diagnostics }
}

function counted(each: number | null, rate: Rate | null): Fraction | null {
  return each === null || rate === null ? null : rate.perCentimetre.mul(new Fraction(each))
}

function readSide(side: 'width' | 'height', written: readonly WrittenText[], name: string) {
  return readMean(written, {
    read: readSpan,
    finding: ({ text, at }) => diagnose('repeat-unreadable', at, { name, side, text }),
  })
}
