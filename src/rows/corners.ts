import type { Kinds, Row } from './fabric.ts'

const found = new WeakMap<Row, ReadonlySet<number>>()

/**
 * Positions of a row's corners: its longest spaces made between stitches of one place, else its longest spaces, else
 * the middle stitches of groups of three or more.
 */
export function cornersOf(row: Row, kinds: Kinds): ReadonlySet<number> {
  const known = found.get(row)
  if (known !== undefined) return known
  const corners = new Set(spacesAtCorners(row, kinds) ?? middles(row))
  found.set(row, corners)
  return corners
}

const middlesFound = new WeakMap<Row, ReadonlySet<number>>()

/** Positions in the middle of groups of three or more in one place. */
export function groupMiddles(row: Row): ReadonlySet<number> {
  const known = middlesFound.get(row)
  if (known !== undefined) return known
  const found = new Set(middles(row))
  middlesFound.set(row, found)
  return found
}

/** Null where the row has no spaces. */
function spacesAtCorners(row: Row, kinds: Kinds): readonly number[] | null {
  const spaces: { at: number; chains: number; grouped: boolean }[] = []
  row.places.forEach((number, at) => {
    const kind = kinds.list[number]
    if (kind?.what === 'space') spaces.push({ at, chains: kind.chains, grouped: kind.grouped })
  })
  const grouped = spaces.filter((space) => space.grouped)
  const from = grouped.length > 0 ? grouped : spaces
  const most = Math.max(0, ...from.map((space) => space.chains))
  return from.length === 0 ? null : from.filter((space) => space.chains === most).map((space) => space.at)
}

/** Middle stitches of groups of three or more in one place. */
function middles(row: Row): readonly number[] {
  const middle: number[] = []
  for (let at = 0; at < row.groups.length; ) {
    const end = groupEnd(row, at)
    if ((row.groups[at] ?? -1) >= 0 && end - at >= 3) middle.push((at + end - 1) >> 1)
    at = end
  }
  return middle
}

/** The end of the group that the place belongs to; a place without one is its own. */
export function groupEnd(row: Row, at: number): number {
  const group = row.groups[at] ?? -1
  let end = at + 1
  while (group >= 0 && end < row.groups.length && row.groups[end] === group) end += 1
  return end
}
