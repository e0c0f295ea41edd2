import { isLengthUnit, printMeasure, readQuantity, units } from '../../measure/index.ts'
import type { Draft } from '../draft.ts'
import type { AllowanceFacts, SwatchFacts } from '../facts.ts'
import { asMeasured, gaugeText } from '../gauge.ts'
import type { Graded } from '../grade.ts'
import type { Adjustable, AdjustableGauge, AdjustableLength, AdjustableRate } from '../pattern.ts'
import { overOf } from './gauges.ts'

/** What a reader may change, in the order of the draft; what can't be changed is left out, and reported elsewhere. */
export function adjustablesOf(draft: Draft, graded: Graded): Adjustable[] {
  const { reader, swatch } = draft.facts.facts
  return Object.entries(reader).flatMap(([name, allowed]): Adjustable[] => {
    if (!('within' in allowed)) {
      const length = lengthOf(name, allowed, graded)
      return length === null ? [] : [length]
    }
    return Object.entries(swatch).flatMap(([own, written]) => gaugeOf(own, written, allowed.within, graded) ?? [])
  })
}

type Limits = Exclude<AllowanceFacts, { within: number }>

/** The least and the most, in centimetres; null where they are none. */
export function limitsOf({ from, to }: Limits): readonly [from: number, to: number] | null {
  const [least, most] = [readQuantity(from), readQuantity(to)]
  if (least === null || most === null || !isLengthUnit(least.unit) || !isLengthUnit(most.unit)) return null
  return least.base.valueOf() > 0 && least.base.compare(most.base) < 0
    ? [least.base.valueOf(), most.base.valueOf()]
    : null
}

function lengthOf(name: string, allowed: Limits, { settled }: Graded): AdjustableLength | null {
  const value = settled.values.get(name)
  const limits = limitsOf(allowed)
  if (value?.kind !== 'length' || limits === null) return null
  const [from, to] = limits
  const unit = value.unit !== null && units[value.unit].system === 'imperial' ? 'in' : 'cm'
  const bySize = value.bySize.map((cell) => cell?.valueOf() ?? null)
  return {
    kind: 'length',
    name,
    label: allowed.label ?? inWords(name),
    text: printMeasure(value, null),
    bySize,
    unit,
    from,
    to,
  }
}

/** `body_length` is `Body length`. */
function inWords(name: string): string {
  const words = name.replaceAll('_', ' ').trim()
  return words.charAt(0).toUpperCase() + words.slice(1)
}

function gaugeOf(name: string, written: SwatchFacts, within: number, graded: Graded): AdjustableGauge | null {
  const stitches = rateOf('stitches', name, written, graded)
  const rows = rateOf('rows', name, written, graded)
  if (stitches === null && rows === null) return null
  const label = name === '' ? 'Gauge' : `Gauge: ${name}`
  const text = gaugeText(written, name === '' ? null : name, graded.environment)
  return { kind: 'gauge', name, label, text, stitches, rows, within }
}

function rateOf(
  what: 'stitches' | 'rows',
  name: string,
  written: SwatchFacts,
  { environment }: Graded,
): AdjustableRate | null {
  const over = overOf(written[what])
  const length = readQuantity(over ?? '')
  const found = environment.gauge(name === '' ? null : name)
  const rate = found.kind === 'found' ? found.gauge[what] : null
  if (over === null || length === null || rate === null) return null
  return { count: rate.mul(length.base).valueOf(), over: asMeasured(over) }
}
