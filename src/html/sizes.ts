import type { Segment } from '../measure/segment.ts'

/**
 * The class names that the page's switches work by: `s s3` shows only for the size at position 3, `c` only
 * where all sizes stand side by side, `only s0 s2` only for the sizes named; `u-metric` and `u-imperial` where that system
 * is asked for, `u-both` where both are; `t-own` in the draft's terms, `t-other` in the other country's. `r7` is a word
 * that the reading with this number explains.
 */

/** Classes of a printed piece; null where it shows in every view and needs no element of its own. */
export function segmentClass(show: Segment['show']): readonly string[] | null {
  if (show === 'always') return null
  return show === 'columns' ? ['c'] : sizeClass(show)
}

/** Classes of what belongs to one size: a figure, a cell, a column. `size` is a position. */
export function sizeClass(size: number): readonly string[] {
  return ['s', `s${size}`]
}

/** Classes of what is for some sizes only, as positions; none when it is for all. */
export function onlyClass(sizes: readonly number[] | null): readonly string[] {
  return sizes === null ? [] : ['only', ...sizes.map((size) => `s${size}`)]
}

export function systemClass(system: NonNullable<Segment['system']>): string {
  return `u-${system}`
}

export function termClass(terms: 'own' | 'other'): string {
  return `t-${terms}`
}

export function readingClass(reading: number): string {
  return `r${reading}`
}
