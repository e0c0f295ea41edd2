import { plainBySize, type Settled } from '../formula/index.ts'
import type { NamedValue } from './pattern.ts'

/** The names of the grading blocks with their values, as plain numbers in the unit they were written in. */
export function namedValues({ values }: Settled): Record<string, NamedValue> {
  const named = [...values].map(([name, value]): [string, NamedValue] => [
    name,
    { kind: value.kind, unit: value.unit, bySize: plainBySize(value) },
  ])
  return Object.fromEntries(named)
}
