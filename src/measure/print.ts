import type Fraction from 'fraction.js'
import { agree, always, columns, notForThisSize, onceOrColumns } from './columns.ts'
import type { Format } from './format.ts'
import { printDecimal, printMixed } from './number.ts'
import { usualStep } from './precision.ts'
import { roundToStep } from './rounding.ts'
import type { Segment } from './segment.ts'
import { inSystem, textForSize } from './segment.ts'
import { fromBase, units } from './units.ts'
import type { Numeric, PerSize, Unit, Value } from './value.ts'
import { asOrdinal, inWords } from './words.ts'

/** The unit of the other system that stands in brackets. Millimetres are hook sizes and stand alone. */
const partners: Readonly<Record<Unit, Unit | null>> = {
  mm: null,
  cm: 'in',
  m: 'yd',
  in: 'cm',
  yd: 'm',
  g: 'oz',
  kg: 'lb',
  oz: 'g',
  lb: 'kg',
  '%': null,
}

const decimals = { ratio: 2, metric: 2, hook: 3 } as const

/**
 * A value as it is printed, in pieces for one size or all: `60 (72, 84)`, `24 cm (9½ in)`,
 * `52 (60, 68) cm [20½ (23½, 26¾) in]`. A value that is the same for every size stands once; `–` is a
 * size to which it does not apply. A count must be whole, and the format must suit the kind
 * (for `skeins` the value is a count of skeins).
 */
export function printMeasure(value: Value, format: Format | null): readonly Segment[] {
  if (value.bySize.every((cell) => cell === null)) return [always(notForThisSize)]
  if (value.kind === 'text') return onceOrColumns(value.bySize.map((text) => text ?? notForThisSize))
  if (format?.kind === 'skeins') return skeins(value)
  if (format?.kind === 'unit') return inOneUnit(value, format.unit, format.step)
  if (value.kind === 'length' || value.kind === 'mass') return measure(value)
  if (value.kind === 'share') return inOneUnit(value, '%', null)
  return onceOrColumns(value.bySize.map((number) => plain(number, format)))
}

/** One text for each size, as it reads on its own: the cells of a table. */
export function cellsOf(segments: readonly Segment[], sizes: number): PerSize<string> {
  return Array.from({ length: sizes }, (_, size) => textForSize(segments, size))
}

function plain(number: Fraction | null, format: Format | null): string {
  if (number === null) return notForThisSize
  if (format?.kind === 'words') return inWords(number.valueOf())
  if (format?.kind === 'ordinal') return asOrdinal(number.valueOf())
  return printDecimal(number, decimals.ratio)
}

function measure(value: Numeric): readonly Segment[] {
  const unit = value.unit ?? (value.kind === 'length' ? 'cm' : 'g')
  const partner = partners[unit]
  if (partner === null) return inOneUnit(value, unit, null)
  return inBothSystems(amounts(value, unit, null), unit, amounts(value, partner, null), partner)
}

/** Numbers in two units of which the second stands in brackets: `24 cm (9½ in)`, `52 (60) cm [20½ (23½) in]`. */
export function inBothSystems(
  first: PerSize<string>,
  unit: Unit,
  second: PerSize<string>,
  partner: Unit,
): readonly Segment[] {
  const once = agree(first) && agree(second)
  const [open, close] = once ? [' (', ')'] : [' [', ']']
  const part = (numbers: PerSize<string>, own: Unit): readonly Segment[] =>
    inSystem(units[own].system, once ? [always(`${numbers[0]} ${own}`)] : [...columns(numbers), always(` ${own}`)])
  return [
    ...part(first, unit),
    ...inSystem('both', [always(open)]),
    ...part(second, partner),
    ...inSystem('both', [always(close)]),
  ]
}

function inOneUnit(value: Numeric, unit: Unit, step: Fraction | null): readonly Segment[] {
  return [...onceOrColumns(amounts(value, unit, step)), always(unit === '%' ? unit : ` ${unit}`)]
}

/** The numbers in a unit, without it. A step that was asked for is kept; otherwise the usual one. */
function amounts(value: Numeric, unit: Unit, step: Fraction | null): PerSize<string> {
  const asFraction = units[unit].system === 'imperial'
  const places = unit === 'mm' && step === null ? decimals.hook : decimals.metric
  return roundedAmounts(value, unit, step).map((amount) => {
    if (amount === null) return notForThisSize
    return asFraction ? printMixed(amount) : printDecimal(amount, places)
  })
}

/** The numbers in a unit as they are printed: to the step asked for, or to the usual one. Millimetres stay as they are. */
export function roundedAmounts(value: Numeric, unit: Unit, step: Fraction | null): PerSize<Fraction | null> {
  const inUnit = value.bySize.map((base) => (base === null ? null : fromBase(base, unit)))
  const fineness = step ?? (unit === 'mm' ? null : usualStep(unit, value.bySize, inUnit))
  return inUnit.map((amount) => (amount === null || fineness === null ? amount : roundToStep(amount, fineness)))
}

/** `3 skeins`; where one size takes one and another takes more, each size has its own word. */
function skeins(value: Numeric): readonly Segment[] {
  const numbers = value.bySize.map((number) => plain(number, null))
  const words = numbers.map((number) => (number === '1' ? 'skein' : 'skeins'))
  if (!agree(words)) return onceOrColumns(numbers.map((number, size) => `${number} ${words[size]}`))
  return [...onceOrColumns(numbers), always(` ${words[0]}`)]
}
