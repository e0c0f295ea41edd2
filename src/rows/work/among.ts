import type { Kinds, Row } from '../fabric.ts'
import type { Accepts } from '../step.ts'

/** A place that is named by where it stands among others of its kind. */
export type Run = Accepts & { readonly kind: 'run' }

/** Whether a place counts among those that stand side by side. */
function belongs(kinds: Kinds, row: Row, { stitch }: Run, at: number): boolean {
  const kind = kinds.list[row.places[at] ?? -1]
  if (kind?.what !== 'stitch') return stitch === null && kind?.what === 'chain'
  return stitch === null || kind.stitch?.base === stitch.base
}

/** Where the stitches side by side begin that a place stands among: a group in one place begins anew. */
function runStart(kinds: Kinds, row: Row, run: Run, at: number): number {
  let start = at
  while (start > 0 && belongs(kinds, row, run, start - 1) && row.groups[start - 1] === row.groups[at]) start -= 1
  return start
}

/** Where they end, the place after the last. */
function runEnd(kinds: Kinds, row: Row, run: Run, at: number): number {
  let end = at + 1
  while (end < row.places.length && belongs(kinds, row, run, end) && row.groups[end] === row.groups[at]) end += 1
  return end
}

/**
 * `in the middle one of the 5 tr`, `in the 2nd of each 3 dc`: whether this place is the one. They are so many and no
 * more; of a long row of like stitches none stands in the middle of three.
 */
export function isAmong(kinds: Kinds, row: Row, run: Run, at: number): boolean {
  if (run.of < 1 || !belongs(kinds, row, run, at)) return false
  const start = runStart(kinds, row, run, at)
  const within = at - start
  return (
    within === (run.nth === null ? (run.of - 1) >> 1 : run.nth - 1) && runEnd(kinds, row, run, at) - start === run.of
  )
}
