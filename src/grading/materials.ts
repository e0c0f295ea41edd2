import { hooks } from '../standards/hooks.ts'
import { yarnWeights } from '../standards/yarn-weights.ts'
import { categoriesNamed } from './published-yarn.ts'

/** US letter and number of a hook by its millimetres, `K-10½`; null where the published list has none. */
export function usHook(millimetres: number): string | null {
  return hooks.find(({ mm }) => mm === millimetres)?.us ?? null
}

/** Published name of a yarn category, `Bulky`; null for a number that is none. */
export function yarnCategoryName(category: number): string | null {
  return yarnWeights.find((weight) => weight.category === category)?.name ?? null
}

/**
 * Number of a yarn category by its published name or another name of the trade, `worsted`; null where the words name none,
 * or several: `fingering` is 0 and 1.
 */
export function yarnCategoryNumber(words: string): number | null {
  const named = categoriesNamed(words)
  return named.length === 1 ? (named[0] ?? null) : null
}
