import type { PerSize } from '../measure/value.ts'

/** A whole number for every size; null for a size that does not work it. */
export type Count = PerSize<number | null>

/** The same number for every size. */
export function everySize(value: number, sizes: number): Count {
  return new Array<number>(sizes).fill(value)
}

export function forSize(count: Count, size: number): number {
  return count[size] ?? 0
}

/** Sizes, as positions, for which `holds`. */
export function sizesWhere(sizes: number, holds: (size: number) => boolean): readonly number[] {
  const found: number[] = []
  for (let size = 0; size < sizes; size += 1) if (holds(size)) found.push(size)
  return found
}

/** `60 (72, 84)`, or one number where all sizes agree; a dash for a size to which it does not apply. */
export function printCount(count: Count): string {
  const texts = count.map((value) => (value === null ? '–' : String(value)))
  const [first = '', ...rest] = texts
  if (rest.every((text) => text === first)) return first
  return `${first} (${rest.join(', ')})`
}
