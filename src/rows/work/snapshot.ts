import { cutTo } from './lay.ts'
import type { Work } from './state.ts'
import { takeBack } from './tally.ts'

/** What a repetition needs to be taken back: lists and tallies are cut, the rest is copied. */
export interface Snapshot {
  readonly scalars: Omit<Work, 'made' | 'tally' | 'inside'>
  readonly places: number
  readonly slipped: number
  readonly names: number
  readonly picots: number
  readonly tally: number
  readonly inside: number
}

export function snapshot(work: Work): Snapshot {
  return {
    scalars: { ...work },
    places: work.made.places.length,
    slipped: work.slippedInto.length,
    names: work.made.names.length,
    picots: work.made.picots.length,
    tally: work.tally.replaced.length,
    inside: work.inside.replaced.length,
  }
}

export function restore(work: Work, from: Snapshot): void {
  const { steps, loops } = work
  Object.assign(work, from.scalars)
  work.loops = loops
  // What was tried was done: a repeat may not try for ever.
  work.steps = steps
  cutTo(work.made, from.places)
  work.slippedInto.length = from.slipped
  work.slippedAfter.length = from.slipped
  work.made.names.length = from.names
  work.made.picots.length = from.picots
  takeBack(work.tally, from.tally)
  takeBack(work.inside, from.inside)
}
