import { type Wearer, yarnCategoryName } from '../grading/index.ts'
import type { Pattern } from '../pattern/pattern.ts'

/** Project levels by the names that the yarn trade publishes them under. */
export const skillNames = {
  basic: 'Basic',
  easy: 'Easy',
  intermediate: 'Intermediate',
  complex: 'Complex',
} satisfies Record<NonNullable<Pattern['skill']>, string>

export const sizesNames = {
  babies: 'Babies',
  children: 'Children',
  women: 'Women',
  'women-2x': 'Women, 2X and up',
  men: 'Men',
  'men-2x': 'Men, 2X and up',
  'one-size': 'One size',
} satisfies Record<Wearer | 'one-size', string>

/** All that are published. */
export const yarnCategories: readonly number[] = [0, 1, 2, 3, 4, 5, 6, 7]

/** `Medium (4)`: categories go by name and by number. */
export function yarnName(category: number): string {
  const name = yarnCategoryName(category)
  return name === null ? `Category ${category}` : `${name} (${category})`
}

/** With a capital, as the names of the other facets have. */
export function kindName(kind: string): string {
  return kind.charAt(0).toUpperCase() + kind.slice(1)
}

/** `Child, Adult S, Adult L`; of many sizes the ends: `X-Small to 5X (9 sizes)`. */
export function sizeRange(sizes: readonly string[]): string {
  return sizes.length > 4 ? `${sizes[0]} to ${sizes.at(-1)} (${sizes.length} sizes)` : sizes.join(', ')
}
