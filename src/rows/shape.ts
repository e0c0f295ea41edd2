import { cornersOf } from './corners.ts'
import type { Kinds, Row } from './fabric.ts'

/** How a row is made up, beyond its single stitches: what designers count under names of their own. */
export interface Shape {
  /** Groups in one place by their number of stitches, two or more; the opening chain is one of the group it opens. */
  readonly groups: ReadonlyMap<number, number>
  /** The same with the first and the last group of a round taken as two halves of one. */
  readonly closedGroups: ReadonlyMap<number, number>
  readonly corners: number
  /** Stitches between one corner and the next. In a flat row what stands before the first and after the last are sides too. */
  readonly sides: readonly number[]
  /** The same without the stitches that are worked into the corners. */
  readonly innerSides: readonly number[]
}

const shapes = new WeakMap<Row, Shape>()

/** The shape of a row as it was made, found when it is first asked for. */
export function shapeOf(row: Row, kinds: Kinds): Shape {
  const known = shapes.get(row)
  if (known !== undefined) return known
  const groups = groupSizes(row, kinds)
  const shape = {
    groups: bySize(groups),
    closedGroups: bySize(closed(groups)),
    ...sidesOf(row, kinds),
  }
  shapes.set(row, shape)
  return shape
}

function isStitch(kinds: Kinds, place: number | undefined): boolean {
  return kinds.list[place ?? -1]?.what === 'stitch'
}

/** The stitches of each group, in order; a stitch that belongs to none is a group of one. */
function groupSizes({ places, groups }: Row, kinds: Kinds): number[] {
  const sizes: number[] = []
  let current = -1
  places.forEach((place, at) => {
    if (!isStitch(kinds, place)) return
    const group = groups[at] ?? -1
    if (group < 0 || group !== current) sizes.push(0)
    current = group
    sizes[sizes.length - 1] = (sizes.at(-1) ?? 0) + 1
  })
  return opened(sizes, places, groups, kinds)
}

/** The opening chain and the stitches of its place are one group: `ch 3, 2 dc in same sp`. */
function opened(sizes: number[], places: readonly number[], groups: readonly number[], kinds: Kinds): number[] {
  const first = kinds.list[places[0] ?? -1]
  if (first?.what !== 'stitch' || !first.turning) return sizes
  const space = kinds.list[places[1] ?? -1]
  const next = space?.what === 'space' ? 2 : 1
  const grouped = (groups[next] ?? -1) >= 0
  const [, second = 0, ...rest] = sizes
  return grouped && (next === 1 || second > 1) ? [1 + second, ...rest] : sizes
}

/** A round may begin with the second half of the group that it ends with. */
function closed(sizes: readonly number[]): readonly number[] {
  const last = sizes.at(-1)
  const [first, ...rest] = sizes
  if (first === undefined || last === undefined || rest.length === 0 || first + last < 2) return sizes
  return [first + last, ...rest.slice(0, -1)]
}

function bySize(sizes: readonly number[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>()
  for (const size of sizes) if (size > 1) counts.set(size, (counts.get(size) ?? 0) + 1)
  return counts
}

function sidesOf(row: Row, kinds: Kinds): Pick<Shape, 'corners' | 'sides' | 'innerSides'> {
  const corners = [...cornersOf(row, kinds)]
  if (corners.length === 0) return { corners: 0, sides: [], innerSides: [] }
  const cornerGroups = new Set(corners.map((at) => row.groups[at] ?? -1))
  const sides: number[] = []
  const inner: number[] = []
  let from = 0
  for (const to of [...corners, row.places.length]) {
    let all = 0
    let plain = 0
    for (let at = from; at < to; at += 1) {
      if (!isStitch(kinds, row.places[at])) continue
      all += 1
      if (!cornerGroups.has(row.groups[at] ?? -1)) plain += 1
    }
    sides.push(all)
    inner.push(plain)
    from = to + 1
  }
  return { corners: corners.length, sides: around(sides, row), innerSides: around(inner, row) }
}

/** In a round what stands before the first corner goes on with what stands after the last. */
function around(sides: readonly number[], { circular }: Row): readonly number[] {
  const [first = 0, ...rest] = sides
  return circular && rest.length > 0 ? [...rest.slice(0, -1), (rest.at(-1) ?? 0) + first] : sides
}
