import type { Environment } from '../formula/index.ts'
import { toFit } from '../grading/index.ts'
import { type Numeric, roundedAmounts } from '../measure/index.ts'
import type { FinishedMeasure } from './finished.ts'
import type { Graded } from './grade.ts'
import type { Fit, FitMeasure } from './pattern.ts'

/** What a reader's own measure is held against; null where the draft names no body table. */
export function fitOf({ body, environment }: Graded, finished: readonly FinishedMeasure[]): Fit | null {
  const fit = body === null ? null : toFit(body)
  if (fit === null) return null
  const made = madeAround(fit.label, finished)?.value ?? null
  return {
    label: fit.label,
    unit: leadingUnit(environment),
    low: inBothUnits(fit.low),
    high: inBothUnits(fit.high),
    made: made === null || made.kind === 'text' ? null : inBothUnits(made),
  }
}

/** Body tables are printed in the unit of the swatch. */
export function leadingUnit(environment: Environment): 'cm' | 'in' {
  const found = environment.gauge(null)
  return found.kind === 'found' ? found.gauge.unit : 'in'
}

function inBothUnits(value: Numeric): FitMeasure {
  const numbers = (unit: 'cm' | 'in') => roundedAmounts(value, unit, null).map((amount) => amount?.valueOf() ?? null)
  return { cm: numbers('cm'), in: numbers('in') }
}

/**
 * The finished measure around the same place: `Bust` or `Chest` for a bust, `Head` or `Circumference` for a head
 * circumference. The one whose words say most of it, of equals the first.
 */
export function madeAround(body: string, finished: readonly FinishedMeasure[]): FinishedMeasure | null {
  const wanted = wordsOf(body)
  const found = finished.flatMap((measure) => {
    const words = wordsOf(measure.label)
    const shared = words.filter((word) => wanted.includes(word)).length
    const strange = words.length - shared
    return measure.value.kind === 'length' && shared > 0 && strange === 0 ? [{ measure, shared }] : []
  })
  const [best] = found.toSorted((a, b) => b.shared - a.shared)
  return best?.measure ?? null
}

/** Words that say nothing about the place. */
const idle = new Set(['finished', 'actual', 'full', 'total', 'the', 'at', 'of'])

/** A bust and a chest are one place, and so are a circumference and a width around. */
const alike: Readonly<Record<string, string>> = { chest: 'bust', around: 'circumference', girth: 'circumference' }

function wordsOf(label: string): string[] {
  const words = label.toLowerCase().match(/\p{L}+/gu) ?? []
  return words.filter((word) => !idle.has(word)).map((word) => alike[word] ?? word)
}
