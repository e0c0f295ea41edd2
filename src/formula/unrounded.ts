import { isWhole } from '../measure/index.ts'
import { namesIn } from './order.ts'
import type { Settled } from './settle.ts'
import type { Expression } from './tree.ts'

/** Whether a name stands for a count that is not whole for some size. */
function isUnrounded(name: string, { values }: Settled): boolean {
  const value = values.get(name)
  if (value === undefined || value.kind !== 'count') return false
  return value.bySize.some((cell) => cell !== null && !isWhole(cell))
}

/**
 * The names from which a formula has a count that is not whole: those whose formulas make it so out of whole counts and
 * measures. They are where it is to be rounded. Empty where the formula does so itself.
 */
export function unroundedIn(expression: Expression, settled: Settled): readonly string[] {
  const found = new Set<string>()
  const seen = new Set<string>()
  const visit = (name: string): void => {
    if (seen.has(name) || !isUnrounded(name, settled)) return
    seen.add(name)
    const formula = settled.formulas.get(name)
    const deeper = formula === undefined ? [] : [...namesIn(formula)].filter((used) => isUnrounded(used, settled))
    if (deeper.length === 0) found.add(name)
    for (const used of deeper) visit(used)
  }
  for (const name of namesIn(expression)) visit(name)
  return [...found]
}
