import type { Line, Setter } from './line.ts'
import { breakLines, measureRuns } from './line.ts'
import type { Look } from './look.ts'

/**
 * One column for each size, at the same place on every page, so that a size can be followed down the pages with a pen.
 * Places in points from the left edge of the page.
 */
export interface SizeColumns {
  readonly left: number
  readonly width: number
  /** Names of the sizes, set in their columns. */
  readonly names: readonly (readonly Line[])[]
}

/** Between the numbers of neighbouring columns, at least. */
export const columnSpace = 4

/** From this many sizes on, numbers stand in columns: a bracket of them can hardly be followed. */
const fromSizes = 6

/** The columns of the sizes; null where brackets do, or where the names of the sizes are too long for them. */
export function sizeColumns(
  sizes: readonly string[],
  left: number,
  end: number,
  setter: Setter,
  { styles }: Look,
): SizeColumns | null {
  if (sizes.length < fromSizes) return null
  const width = (end - left) / sizes.length
  const runs = sizes.map((text) => [{ text, style: styles.tiny }])
  if (runs.some((run) => measureRuns(setter, run).word > width - columnSpace)) return null
  return { left, width, names: runs.map((run) => breakLines(setter, run, width - columnSpace)) }
}
