import type Fraction from 'fraction.js'
import type { PerSize } from './value.ts'

/**
 * Arithmetic goes size by size. Most values are the same for every size, so a result is taken over from
 * the first size wherever the operands are the very same objects.
 */

export function sameForAll<T>(value: T, sizes: number): PerSize<T> {
  return Array.from({ length: sizes }, () => value)
}

/** Applies `work` to every size; a size to which it does not apply (`null`) stays so. */
export function eachSize<A, R>(values: PerSize<A | null>, work: (value: A) => R | null): PerSize<R | null> {
  const results: (R | null)[] = []
  values.forEach((value, size) => {
    const again = size > 0 && value === values[0] ? results[0] : undefined
    results.push(again !== undefined ? again : value === null ? null : work(value))
  })
  return results
}

/** Applies `work` to both values of every size; null where either does not apply. */
export function eachPair<A, B, R>(
  left: PerSize<A | null>,
  right: PerSize<B | null>,
  work: (left: A, right: B) => R | null,
): PerSize<R | null> {
  const results: (R | null)[] = []
  left.forEach((a, size) => {
    const b = right[size] ?? null
    const again = size > 0 && a === left[0] && b === right[0] ? results[0] : undefined
    results.push(again !== undefined ? again : a === null || b === null ? null : work(a, b))
  })
  return results
}

/** Positions of the sizes for which `holds` is true. */
export function sizesWhere<T>(values: PerSize<T>, holds: (value: T, size: number) => boolean): readonly number[] {
  return values.flatMap((value, size) => (holds(value, size) ? [size] : []))
}

/** Whether every size has the same number, sizes without one included. */
export function isSteady(values: PerSize<Fraction | null>): boolean {
  const first = values[0] ?? null
  return values.every((value) => value === first || (value !== null && first !== null && value.equals(first)))
}
