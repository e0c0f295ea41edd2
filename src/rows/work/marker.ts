import type { MarkerPlace, Target, Where } from '../step.ts'
import type { Work } from './state.ts'

/*
 * Markers: the places of the row in the making that they hang in.
 */

export function isMarked(of: Target): boolean {
  return of.some((accept) => accept.kind === 'marked')
}

function hang(work: Work, at: number): void {
  if (at >= 0 && !work.marks.includes(at)) work.marks = [...work.marks, at]
}

function isSpace(work: Work, at: number): boolean {
  return work.kinds.list[work.made.places[at] ?? -1]?.what === 'space'
}

/** The middle of the places made from `from` on: a space among them, else the middle one. */
function middleFrom(work: Work, from: number): number {
  const { length } = work.made.places
  for (let at = from; at < length; at += 1) if (isSpace(work, at)) return at
  return (from + length - 1) >> 1
}

/** Where the group in one place began that the last place belongs to. */
function groupStart(work: Work): number {
  const { places, groups } = work.made
  const group = groups[places.length - 1] ?? -1
  let start = places.length - 1
  while (group >= 0 && start > 0 && groups[start - 1] === group) start -= 1
  return start
}

function lastSpace(work: Work): number {
  let at = work.made.places.length - 1
  while (at >= 0 && !isSpace(work, at)) at -= 1
  return at
}

/** Hangs a marker, or goes past the one that the hook stands before. */
export function hangMarker(work: Work, place: MarkerPlace): null {
  const { length } = work.made.places
  switch (place) {
    case 'passed':
      work.markPassed = work.cursor
      hang(work, length)
      return null
    case 'here':
      hang(work, length)
      return null
    case 'last':
      hang(work, length - 1)
      return null
    case 'middle':
      hang(work, middleFrom(work, groupStart(work)))
      return null
    case 'space':
      hang(work, lastSpace(work))
      return null
    case 'first':
      hang(work, 0)
      return null
  }
}

/** A marker goes up into the middle of what is worked into its stitch. */
export function moveMarker(work: Work, where: Where, from: number): void {
  if ('of' in where && isMarked(where.of) && work.made.places.length > from) hang(work, middleFrom(work, from))
}
