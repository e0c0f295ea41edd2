import { cornersOf } from './corners.ts'
import type { Kinds, Row } from './fabric.ts'
import { stitchKey } from './terms/stitch.ts'

/** Stitches that belong together. */
export interface Group {
  /** The special stitch that they are; empty for none. */
  readonly name: string
  /** Their kinds, one entry a stitch. */
  readonly stitches: readonly string[]
}

/** A way of taking a row's stitches as groups. */
export interface Grouping {
  readonly name: string
  readonly groups: readonly Group[]
}

/** How a row is made up, beyond its single stitches: what designers count under names of their own. */
export interface Shape {
  /** Stitches in one place; the same with the first and the last of a round as one; stitches between spaces. Two or more each. */
  readonly groupings: readonly Grouping[]
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
  const apart = groupsInPlaces(row, kinds)
  const groups = opened(apart, row, kinds)
  const groupings = [
    { name: 'groups', groups },
    { name: 'groups apart', groups: apart },
    { name: 'closed groups', groups: closed(groups) },
    { name: 'parts of groups', groups: opened(groupsInPlaces(row, kinds, true), row, kinds) },
    { name: 'runs', groups: closed(runsBetweenSpaces(row, kinds), row.circular && !endsInSpace(row, kinds)) },
  ]
  const several = groupings.map((each) => ({
    ...each,
    groups: each.groups.filter((group) => group.stitches.length > 1),
  }))
  const shape = { groupings: several, ...sidesOf(row, kinds) }
  shapes.set(row, shape)
  return shape
}

function isStitch(kinds: Kinds, place: number | undefined): boolean {
  return kinds.list[place ?? -1]?.what === 'stitch'
}

function keyOf(kinds: Kinds, place: number): string {
  const kind = kinds.list[place]
  if (kind?.what !== 'stitch') return ''
  return kind.stitch === null ? `special:${kind.name ?? ''}` : stitchKey(kind.stitch)
}

/** The stitches of each group, in order; a stitch that belongs to none is a group of one. `split`: spaces part them. */
function groupsInPlaces({ places, groups, names }: Row, kinds: Kinds, split = false): readonly Group[] {
  const found: { name: string; stitches: string[] }[] = []
  let current = -1
  places.forEach((place, at) => {
    if (!isStitch(kinds, place)) {
      if (split) current = -1
      return
    }
    const group = groups[at] ?? -1
    if (group < 0 || group !== current) found.push({ name: names[group] ?? '', stitches: [] })
    current = group
    found.at(-1)?.stitches.push(keyOf(kinds, place))
  })
  return found
}

/** The opening chain and the stitches of its place are one group: `ch 3, 2 dc in same sp`. */
function opened(found: readonly Group[], { places, groups }: Row, kinds: Kinds): readonly Group[] {
  const first = kinds.list[places[0] ?? -1]
  const [own, second, ...rest] = found
  if (first?.what !== 'stitch' || !first.turning || own === undefined || second === undefined) return found
  const next = kinds.list[places[1] ?? -1]?.what === 'space' ? 2 : 1
  return (groups[next] ?? -1) >= 0 ? [joined(own, second), ...rest] : found
}

function joined(first: Group, second: Group): Group {
  return { name: second.name, stitches: [...first.stitches, ...second.stitches] }
}

/** Stitches that stand side by side between two spaces. */
function runsBetweenSpaces({ places }: Row, kinds: Kinds): readonly Group[] {
  const found: string[][] = [[]]
  for (const place of places) {
    const kind = kinds.list[place]
    if (kind?.what === 'stitch') found.at(-1)?.push(keyOf(kinds, place))
    else if (kind?.what === 'space') found.push([])
  }
  return found.map((stitches) => ({ name: '', stitches }))
}

function endsInSpace({ places }: Row, kinds: Kinds): boolean {
  return kinds.list[places.at(-1) ?? -1]?.what === 'space'
}

/** A round may begin with the second half of the group that it ends with. */
function closed(groups: readonly Group[], closes = true): readonly Group[] {
  const [first, ...rest] = groups
  const last = rest.at(-1)
  if (first === undefined || last === undefined) return groups
  const halves = first.stitches.length > 1 && last.stitches.length > 1
  return !halves || !closes ? groups : [joined(last, first), ...rest.slice(0, -1)]
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
