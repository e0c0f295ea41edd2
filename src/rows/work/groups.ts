import { groupEnd } from '../corners.ts'
import type { Kinds, Row } from '../fabric.ts'
import type { Accepts, Member } from '../step.ts'

type Grouped = Accepts & { readonly kind: 'special' }

const namesIn = new WeakMap<Row, ReadonlySet<string>>()

/** Names of the special stitches that a row has. */
function namesOf(row: Row): ReadonlySet<string> {
  const known = namesIn.get(row)
  if (known !== undefined) return known
  const names = new Set(row.names)
  namesIn.set(row, names)
  return names
}

function isStitch(kinds: Kinds, row: Row, at: number): boolean {
  return kinds.list[row.places[at] ?? -1]?.what === 'stitch'
}

/** Positions of the stitches of the group that begins at a place. */
function stitchesOf(kinds: Kinds, row: Row, at: number): readonly number[] {
  const stitches: number[] = []
  const end = groupEnd(row, at)
  for (let place = at; place < end; place += 1) if (isStitch(kinds, row, place)) stitches.push(place)
  return stitches
}

/**
 * Whether a group begins at a place that a phrase means by name: a special stitch, or, where the row has none of the
 * name, stitches that are spelt out in one place.
 */
export function isGroupStart(kinds: Kinds, row: Row, at: number, { name, size }: Grouped): boolean {
  const group = row.groups[at] ?? -1
  if (group < 0 || row.groups[at - 1] === group) return false
  if (row.names[group] === name) return true
  if (row.names[group] !== '' || namesOf(row).has(name)) return false
  const count = stitchesOf(kinds, row, at).length
  return size === undefined ? count >= 2 : count === size
}

/** The place of a special stitch that is worked into: the space in its middle, or its middle stitch. */
function middleOf(kinds: Kinds, row: Row, at: number): number {
  const end = groupEnd(row, at)
  const middle = (at + end - 1) >> 1
  for (let place = at; place < end; place += 1) {
    if (kinds.list[row.places[place] ?? -1]?.what === 'space' && Math.abs(place - middle) <= 1) return place
  }
  return middle
}

/** The place of a whole group that is gone into, and where the hook stands after it. */
export function placeInGroup(kinds: Kinds, row: Row, at: number): { readonly at: number; readonly cursor: number } {
  return { at: middleOf(kinds, row, at), cursor: groupEnd(row, at) }
}

function memberOf(kinds: Kinds, row: Row, start: number, member: Member): number {
  if (member === 'middle') return middleOf(kinds, row, start)
  const stitches = stitchesOf(kinds, row, start)
  const named = member === 'first' ? stitches[0] : member === 'last' ? stitches.at(-1) : stitches[member - 1]
  return named ?? -1
}

/** Whether a place is the one of its group that a phrase names: `3rd dc of next shell`. */
export function isMember(kinds: Kinds, row: Row, at: number, group: Grouped, member: Member): boolean {
  const number = row.groups[at] ?? -1
  if (number < 0) return false
  let start = at
  while (start > 0 && row.groups[start - 1] === number) start -= 1
  return isGroupStart(kinds, row, start, group) && memberOf(kinds, row, start, member) === at
}

/** Whether a gap comes after a place: between two groups, a group and what stands beside it, or two stitches. */
export function isGap(kinds: Kinds, row: Row, at: number, between: 'groups' | 'stitches' | 'any'): boolean {
  const last = at === row.places.length - 1
  if (last && !row.circular) return false
  const next = last ? 0 : at + 1
  if (between === 'stitches') return isStitch(kinds, row, at) && isStitch(kinds, row, next)
  const group = row.groups[at] ?? -1
  const beside = row.groups[next] ?? -1
  if (group === beside) return false
  // A stitch of its own beside a group, as half a group at the edge has it; the edge itself is none.
  return group >= 0 || (beside >= 0 && (between === 'any' || (at > 0 && !row.circular)))
}

const centers = new WeakMap<Row, number>()

/** The place of the middle stitch of a row; -1 where it has an even number of them. */
export function centerOf(kinds: Kinds, row: Row): number {
  const known = centers.get(row)
  if (known !== undefined) return known
  // A round has no middle.
  const stitches = row.circular ? [] : row.places.flatMap((_, at) => (isStitch(kinds, row, at) ? [at] : []))
  const found = stitches.length % 2 === 1 ? (stitches[stitches.length >> 1] ?? -1) : -1
  centers.set(row, found)
  return found
}
