import type Fraction from 'fraction.js'
import type { Linear } from './linear.ts'
import { add, constant, isConstant, negate, scale } from './linear.ts'

/** The largest or the smallest of some sums; one sum alone is both. */
export interface Form {
  readonly takes: 'max' | 'min'
  /** One or more. */
  readonly of: readonly Linear[]
}

/** More sums side by side than any need has; the limit keeps nested `max` and `min` from multiplying without end. */
const most = 64

export function plain(sum: Linear): Form {
  return { takes: 'max', of: [sum] }
}

export function fixed(value: Fraction): Form {
  return plain(constant(value))
}

/** The only sum of a form; null when there are several. */
export function onlySum(form: Form): Linear | null {
  return form.of.length === 1 ? (form.of[0] ?? null) : null
}

/** The number of a form in which nothing is unknown; null for any other. */
export function fixedValue(form: Form): Fraction | null {
  const sum = onlySum(form)
  return sum !== null && isConstant(sum) ? sum.constant : null
}

/** Null where the largest of some is added to the smallest of others: neither can be said for the whole. */
export function addForms(a: Form, b: Form): Form | null {
  const takes = common([a, b])
  if (takes === null || a.of.length * b.of.length > most) return null
  return { takes, of: a.of.flatMap((left) => b.of.map((right) => add(left, right))) }
}

export function scaleForm(form: Form, by: Fraction): Form {
  const flips = by.s < 0n && by.n !== 0n
  const takes = flips === (form.takes === 'max') ? 'min' : 'max'
  return { takes, of: form.of.map((sum) => scale(sum, by)) }
}

export function negateForm({ takes, of }: Form): Form {
  return { takes: takes === 'max' ? 'min' : 'max', of: of.map(negate) }
}

/** The largest or smallest of several forms; null where it is the largest of a smallest, or the other way round. */
export function extreme(forms: readonly Form[], takes: Form['takes']): Form | null {
  const of = forms.flatMap((form) => form.of)
  const apart = forms.some((form) => form.of.length > 1 && form.takes !== takes)
  return apart || of.length === 0 || of.length > most ? null : { takes, of }
}

function common(forms: readonly Form[]): Form['takes'] | null {
  const severals = forms.filter((form) => form.of.length > 1)
  const takes = severals[0]?.takes ?? 'max'
  return severals.every((form) => form.takes === takes) ? takes : null
}
