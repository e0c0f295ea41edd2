import type { Kind, Numeric, PerSize, Value } from '../measure/index.ts'

/** What a formula gives: a kind of number, words, yes or no; `none` fits everywhere. */
export type Sort = Kind | 'text' | 'none' | 'condition'

/** Yes or no for every size; null where it does not apply. */
export interface Truth {
  readonly kind: 'condition'
  readonly unit: null
  readonly bySize: PerSize<boolean | null>
}

export type Evaluated = Value | Truth

export function isNumeric(value: Evaluated): value is Numeric {
  return value.kind !== 'text' && value.kind !== 'condition'
}

/** The sort of a value; one that applies to no size fits everywhere. */
export function sortOf(value: Evaluated): Sort {
  return value.bySize.every((cell) => cell === null) ? 'none' : value.kind
}

export function isCount(sort: Sort): boolean {
  return sort === 'count' || sort === 'number' || sort === 'none'
}

/** The sort of two values side by side, as in a sum; null when they do not mix. */
export function joinSorts(a: Sort, b: Sort): Sort | null {
  if (a === b || b === 'none') return a
  if (a === 'none') return b
  return isCount(a) && isCount(b) ? 'count' : null
}

/** The sort of a sum or a difference. A percentage is taken of what stands before it: `60 cm + 5 %` is 63 cm. */
export function addSorts(a: Sort, b: Sort): Sort | null {
  if (!(isCalculable(a) && isCalculable(b))) return null
  return isShareOf(a, b) ? a : joinSorts(a, b)
}

/** Whether `b` is a percentage that is taken of `a` where the two are added. */
export function isShareOf(a: Sort, b: Sort): boolean {
  return b === 'share' && a !== 'share' && a !== 'none'
}

/** Whether two values can be compared: such as mix in a sum, and percentages with plain numbers. */
export function canCompare(a: Sort, b: Sort): boolean {
  return joinSorts(a, b) !== null || (a === 'share' && isCount(b)) || (isCount(a) && b === 'share')
}

/** The sort of a product; null for an area and other things that the trade does not reckon with. */
export function multiplySorts(a: Sort, b: Sort): Sort | null {
  if (!(isCalculable(a) && isCalculable(b))) return null
  if (a === 'none' || b === 'none') return a === 'none' ? b : a
  if (a === 'share' || b === 'share') return a === 'share' ? b : a
  if (isCount(a) && isCount(b)) return joinSorts(a, b)
  if (isCount(b)) return a
  return isCount(a) ? b : null
}

export function divideSorts(a: Sort, b: Sort): Sort | null {
  if (!(isCalculable(a) && isCalculable(b))) return null
  if (isCount(a) && isCount(b)) return joinSorts(a, b)
  if (a === b) return 'number'
  if (b === 'share') return a
  return isCount(b) ? a : a === 'none' ? 'number' : null
}

export function isCalculable(sort: Sort): boolean {
  return sort !== 'text' && sort !== 'condition'
}

/** How a sort is called in a message. */
export const sortNames: Readonly<Record<Sort, string>> = {
  count: 'a count',
  number: 'a plain number',
  length: 'a length',
  mass: 'a weight',
  share: 'a percentage',
  text: 'words',
  none: '`none`',
  condition: 'a comparison',
}
