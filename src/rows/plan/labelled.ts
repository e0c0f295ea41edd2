import type { ReadRow } from '../cut.ts'

/** How many rows a row's label stands for; null when it leaves that to the words. */
export function labelled(row: ReadRow, size: number): number | null {
  const numbers = row.label?.numbers
  if (numbers?.kind === 'next') return numbers.count === null ? null : (numbers.count[size] ?? 0)
  return numbers?.kind === 'list' ? numbers.items.filter((item) => item[size] !== null).length : null
}
