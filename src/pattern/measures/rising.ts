import type Fraction from 'fraction.js'
import type { Diagnostic } from '../../diagnostic/index.ts'
import { diagnose } from '../../diagnostic/index.ts'
import type { Expression } from '../../formula/index.ts'
import { toFit } from '../../grading/index.ts'
import type { Numeric, PerSize } from '../../measure/index.ts'
import { isLengthUnit, printDecimal } from '../../measure/index.ts'
import type { FinishedMeasure } from '../finished.ts'
import { madeAround } from '../fit.ts'
import type { Graded } from '../grade.ts'
import type { HeldMeasure } from './held.ts'
import { lengthWords } from './words.ts'

/** Two sizes that follow each other among those that have a value. */
interface Step<T> {
  readonly smaller: number
  readonly larger: number
  readonly from: T
  readonly to: T
}

function stepsOf<T>(values: PerSize<T | null>): readonly Step<T>[] {
  const there = values.flatMap((value, size) => (value === null ? [] : [{ value, size }]))
  return there.slice(1).flatMap(({ value, size }, index) => {
    const before = there[index]
    return before === undefined ? [] : [{ smaller: before.size, larger: size, from: before.value, to: value }]
  })
}

/** The steps from one size to the next on which a value falls. */
export function fallsOf(values: PerSize<Fraction | null>): readonly Step<Fraction>[] {
  return stepsOf(values).filter(({ from, to }) => to.lt(from))
}

function amount({ unit }: Numeric, cell: Fraction): string {
  return unit !== null && isLengthUnit(unit) ? lengthWords(cell, unit) : printDecimal(cell, 2)
}

/** A measure that says how a body and a piece go together may fall. */
const mayFall = /\bease\b/i

/** A finished measure that is less in a size than in the next smaller one. */
export function fallOf({ label, at, value }: FinishedMeasure, { environment }: Graded): Diagnostic | null {
  if (value.kind === 'text' || mayFall.test(label)) return null
  const [fall] = fallsOf(value.bySize)
  if (fall === undefined) return null
  const { smaller, larger, from, to } = fall
  const names = [environment.sizes[smaller] ?? '', environment.sizes[larger] ?? ''] as const
  const amounts = [amount(value, from), amount(value, to)] as const
  return diagnose('measure-falls', at, { label, names, amounts }, { sizes: [smaller, larger] })
}

/**
 * Two sizes whose bodies differ and whose measure around the same place does not, as where rounding makes one of them of
 * both. A measure that was to be the same is meant to be, and so is one that is for all sizes.
 */
export function sameSizes(held: readonly HeldMeasure[], { body, environment }: Graded): Diagnostic | null {
  const fit = body === null ? null : toFit(body)
  const finished = held.map((each) => each.finished)
  const around = fit === null ? null : madeAround(fit.label, finished)
  const own = held.find((each) => each.finished === around)
  if (fit === null || own === undefined) return null
  const { label, at } = own.finished
  const steps = stepsOf(own.made.bySize)
  if (own.target === null && steps.every(isSame)) return null
  const aims = own.target?.bySize ?? fit.low.bySize
  const same = steps.find((step) => isSame(step) && differs(fit.low.bySize, step) && differs(aims, step))
  if (same === undefined) return null
  const { smaller, larger, to } = same
  const names = [environment.sizes[smaller] ?? '', environment.sizes[larger] ?? ''] as const
  return diagnose('measure-same', at, { label, names, amount: amount(own.made, to) }, { sizes: [smaller, larger] })
}

function isSame({ from, to }: Step<Fraction>): boolean {
  return from.equals(to)
}

function differs(values: Numeric['bySize'], { smaller, larger }: Step<unknown>): boolean {
  const [less, more] = [values[smaller] ?? null, values[larger] ?? null]
  return less !== null && more !== null && !less.equals(more)
}

/** Whether a formula is lengths that were typed, one a size. */
function isTyped(node: Expression): boolean {
  if (node.kind === 'withUnit') return isTyped(node.operand)
  const items = node.kind === 'list' ? node.items : node.kind === 'bySize' ? node.entries.map(({ value }) => value) : []
  return items.length > 0 && items.every(({ kind }) => kind === 'number' || kind === 'none')
}

/** As often as typed lengths must rise before a single fall among them looks like a slip. */
const mostlyRises = 2

/** Typed lengths that rise with size but for a single step. */
export function listFalls({ settled, environment }: Graded): readonly Diagnostic[] {
  return [...settled.values].flatMap(([name, value]) => {
    const formula = settled.formulas.get(name)
    if (value.kind !== 'length' || formula === undefined || !isTyped(formula)) return []
    const falls = fallsOf(value.bySize)
    const rises = stepsOf(value.bySize).filter(({ from, to }) => to.gt(from))
    const [fall] = falls
    if (fall === undefined || falls.length > 1 || rises.length < mostlyRises) return []
    const { smaller, larger, from, to } = fall
    const names = [environment.sizes[smaller] ?? '', environment.sizes[larger] ?? ''] as const
    const amounts = [amount(value, from), amount(value, to)] as const
    return [diagnose('list-falls', formula.at, { name, names, amounts }, { sizes: [smaller, larger] })]
  })
}
