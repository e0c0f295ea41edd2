import { cellsOf, inBothSystems, printMeasure } from './print.ts'
import type { Segment } from './segment.ts'
import type { Numeric, PerSize, Unit } from './value.ts'

/**
 * Lengths from one measure to another, in both systems: `71–76 (81–86) cm [28–30 (32–34) in]`. A size whose
 * two ends are the same has one number.
 */
export function printRange(low: Numeric, high: Numeric, first: 'cm' | 'in'): readonly Segment[] {
  const second = first === 'cm' ? 'in' : 'cm'
  return inBothSystems(ends(low, high, first), first, ends(low, high, second), second)
}

function ends(low: Numeric, high: Numeric, unit: Unit): PerSize<string> {
  const lows = amounts(low, unit)
  return amounts(high, unit).map((end, size) => (lows[size] === end ? end : `${lows[size] ?? ''}–${end}`))
}

function amounts(value: Numeric, unit: Unit): PerSize<string> {
  const segments = printMeasure(value, { kind: 'unit', unit, step: null })
  return cellsOf(segments, value.bySize.length).map((cell) => cell.replace(` ${unit}`, ''))
}
