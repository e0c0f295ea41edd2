import type Fraction from 'fraction.js'
import type { Numeric } from '../measure/index.ts'
import { fromBase, notForThisSize, printDecimal } from '../measure/index.ts'
import type { Evaluated } from './sort.ts'
import { isNumeric } from './sort.ts'

/** A value of one size as it is quoted in a message: exact enough to see why a comparison failed. */
export function describeCell(value: Evaluated, size: number): string {
  if (isNumeric(value)) return describeNumber(value, value.bySize[size] ?? null)
  const cell = value.bySize[size]
  return cell === null || cell === undefined ? notForThisSize : String(cell)
}

function describeNumber({ unit }: Numeric, cell: Fraction | null): string {
  if (cell === null) return notForThisSize
  const text = printDecimal(unit === null ? cell : fromBase(cell, unit), 3)
  return unit === null ? text : `${text} ${unit}`
}
