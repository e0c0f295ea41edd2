import type Fraction from 'fraction.js'
import type { Diagnostic, Outcome, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Format, Numeric, PerSize, Segment, Value } from '../measure/index.ts'
import {
  eachSize,
  fromBase,
  isPositive,
  isWhole,
  printMeasure,
  printPhrase,
  sizesWhere,
  units,
} from '../measure/index.ts'
import { describeCell } from './describe.ts'
import type { Environment } from './environment.ts'
import { excerpt } from './print.ts'
import type { Settled } from './settle.ts'
import { sortNames } from './sort.ts'
import type { Formula } from './tree.ts'
import { unroundedIn } from './unrounded.ts'

/**
 * The printed pieces of a placeholder's value. Null when it cannot be printed as it asks, which is
 * reported: a count that is not whole, centimetres of a weight, skeins of an unknown size.
 */
export function printValue(
  value: Value,
  formula: Formula,
  environment: Environment,
  settled: Settled | null = null,
): Outcome<readonly Segment[] | null> {
  const fitted = fitFormat(value, formula, environment)
  if ('code' in fitted) return { value: null, diagnostics: [fitted] }
  const finding = formula.format?.kind === 'unit' ? null : findNotWhole(fitted, formula, environment, settled)
  if (finding !== null) return { value: null, diagnostics: [finding] }
  if (fitted.kind === 'text' && fitted.phrase) {
    return { value: printPhrase(fitted.bySize, environment.sizes), diagnostics: [] }
  }
  return { value: printMeasure(fitted, formula.format), diagnostics: [] }
}

/** What else can be printed as a kind: a plain number as a count, half of something as 50 %. */
const passFor: Readonly<Record<'count' | 'share' | 'length' | 'mass', readonly Value['kind'][]>> = {
  count: ['number'],
  share: ['number', 'count'],
  length: [],
  mass: [],
}

/** The value as its format wants it, or why it cannot be had. */
function fitFormat(value: Value, { format, at }: Formula, environment: Environment): Value | Diagnostic {
  if (format === null || value.bySize.every((cell) => cell === null)) return value
  if (format.kind === 'skeins') return inSkeins(value, at, environment)
  const wanted = format.kind === 'unit' ? units[format.unit].kind : 'count'
  return value.kind === wanted || passFor[wanted].includes(value.kind)
    ? value
    : diagnose('format-kind', at, { format: nameOf(format), found: sortNames[value.kind] })
}

function nameOf(format: Format): string {
  return `as ${format.kind === 'unit' ? format.unit : format.kind}`
}

/** Whole skeins, always rounded up: a knotted-on end of another skein is better than none. */
function inSkeins(value: Value, at: Span, { skein }: Environment): Value | Diagnostic {
  if (value.kind === 'count') return value
  if (value.kind !== 'mass' && value.kind !== 'length') {
    return diagnose('format-kind', at, { format: 'as skeins', found: sortNames[value.kind] })
  }
  const one = (value.kind === 'mass' ? skein?.mass : skein?.length) ?? null
  if (one === null || !isPositive(one)) return diagnose('skein-unknown', at, { what: value.kind })
  return { kind: 'count', unit: null, bySize: eachSize(value.bySize, (amount) => amount.div(one).ceil()) }
}

/**
 * The finding for a count that is to be printed or worked and is not whole for some size; null when it
 * is whole everywhere, or no count.
 */
function findNotWhole(
  value: Value,
  formula: Formula,
  environment: Environment,
  settled: Settled | null,
): Diagnostic | null {
  if (value.kind !== 'count' && (value.kind !== 'number' || formula.format === null)) return null
  const sizes = sizesWhere(value.bySize, (cell) => cell !== null && !isWhole(cell))
  if (sizes.length === 0) return null
  const cases = sizes.map((size) => `${environment.sizes[size]}: ${describeCell(value, size)}`).join('; ')
  const [name = null] = settled === null ? [] : unroundedIn(formula.expression, settled)
  return diagnose('count-not-whole', formula.at, { formula: excerpt(formula.expression), name, cases }, { sizes })
}

/** Whole numbers for every size, null where the value does not apply; null when some size's is not whole, or it is no count. */
export function wholeBySize(value: Value): PerSize<number | null> | null {
  if (value.kind !== 'count' && value.kind !== 'number') return null
  const whole = value.bySize.every((cell) => cell === null || isWhole(cell))
  return whole ? value.bySize.map((cell) => cell?.valueOf() ?? null) : null
}

/** Numbers in the value's own unit, or its words: what the machine-readable output shows. */
export function plainBySize(value: Value): PerSize<number | string | null> {
  return value.kind === 'text' ? value.bySize : value.bySize.map((cell) => inOwnUnit(value, cell))
}

function inOwnUnit({ unit }: Numeric, cell: Fraction | null): number | null {
  if (cell === null) return null
  return (unit === null ? cell : fromBase(cell, unit)).valueOf()
}
