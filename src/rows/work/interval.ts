import { forSize } from '../count.ts'
import type { Interval, Target } from '../step.ts'
import { advance } from './place.ts'
import type { Work } from './state.ts'

/** Moves on over all places that are meant, taking every nth of them. Returns how many were taken. */
export function advanceEvery(work: Work, of: Target, { every, before }: Interval): number {
  const between = forSize(every, work.size) - 1
  const into: number[] = []
  for (let passed = forSize(before, work.size); ; passed = between) {
    work.into = []
    if (advance(work, of, passed) < passed) break
    work.into = []
    if (advance(work, of, 1) === 0) break
    into.push(work.last)
  }
  work.into = into
  return into.length
}
