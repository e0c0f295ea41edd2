import { cornersOf } from './corners.ts'
import type { Kinds, Row } from './fabric.ts'
import { stitchKey } from './terms/stitch.ts'

/** Stitches that belong together. */
export interface Group {
  /** The special stitch that they are; empty for none. */
  readonly name: string
  /** Their kinds, one entry a stitch. */
  readonly stitches: readonly string[]
  /** Worked into one place. */
  readonly placed: boolean
  /** Chains stand between them. */
  readonly spaced: boolean
}

/** A way of taking a row's stitches as groups. */
export interface Grouping {
  readonly name: string
  readonly groups: readonly Group[]
}

/** How a row is made up, beyond its single stitches: what designers count under names of their own. */
export interface Shape {
  /** Stitches in one place; the same parted by spaces; where there are none, stitches between spaces. Two or more each. */
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
  const groups = wholeGroups(groupsInPlaces(row, kinds), row, kinds)
  const parts = wholeGroups(groupsInPlaces(row, kinds, true), row, kinds)
  const alone = groups.every((group) => group.stitches.length < 2)
  const groupings = [
    { name: 'groups', groups },
    { name: 'parts of groups', groups: parts },
    // Only where nothing is worked in one place.
    { name: 'runs', groups: alone ? wholeGroups(runsBetweenSpaces(row, kinds), row, kinds) : [] },
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
  const found: { name: string; stitches: string[]; placed: boolean; spaced: boolean }[] = []
  let current = -1
  places.forEach((place, at) => {
    const group = groups[at] ?? -1
    const last = found.at(-1)
    if (!isStitch(kinds, place)) {
      if (split) current = -1
      else if (last !== undefined && group >= 0 && group === current) last.spaced = true
      return
    }
    if (group < 0 || group !== current) {
      found.push({ name: names[group] ?? '', stitches: [], placed: group >= 0, spaced: false })
    }
    current = group
    found.at(-1)?.stitches.push(keyOf(kinds, place))
  })
  return found
}

/** The commonest number of stitches in groups; 0 where there are none. */
function usualSize(groups: readonly Group[]): number {
  const counts = new Map<number, number>()
  for (const { stitches } of groups) {
    if (stitches.length > 1) counts.set(stitches.length, (counts.get(stitches.length) ?? 0) + 1)
  }
  return [...counts].reduce((best, each) => (each[1] > best[1] ? each : best), [0, 0])[0]
}

/** Groups with their beginnings: `ch 3, 2 dc in same sp` is one of threes, and a round may begin with half of its last. */
function wholeGroups(found: readonly Group[], row: Row, kinds: Kinds): readonly Group[] {
  const [first, second, ...rest] = found
  if (first === undefined || second === undefined) return found
  const usual = usualSize(found.slice(1))
  const kind = kinds.list[row.places[0] ?? -1]
  const opens = kind?.what === 'stitch' && kind.turning && first.stitches.length === 1
  // `ch 4, dc in same sp` is a V among V-stitches; elsewhere a single stitch is not known to share the chain's place.
  const shares = second.placed || rest.some((group) => group.spaced && group.stitches.length === usual)
  const size = first.stitches.length + second.stitches.length
  const whole = opens && shares && size === usual ? [joined(first, second), ...rest] : found
  return row.circular ? closed(whole, usual) : whole
}

/** A round that begins with a part of the group that it ends with. */
function closed(groups: readonly Group[], usual: number): readonly Group[] {
  const [first, ...rest] = groups
  const last = rest.at(-1)
  if (first === undefined || last === undefined) return groups
  const halves = [first, last].every(({ stitches }) => stitches.length < usual)
  const size = first.stitches.length + last.stitches.length
  return halves && size === usual ? [joined(last, first), ...rest.slice(0, -1)] : groups
}

function joined(first: Group, second: Group): Group {
  return { ...second, stitches: [...first.stitches, ...second.stitches] }
}

/** Stitches that stand side by side between two spaces. */
function runsBetweenSpaces({ places }: Row, kinds: Kinds): readonly Group[] {
  const found: string[][] = [[]]
  for (const place of places) {
    const kind = kinds.list[place]
    if (kind?.what === 'stitch') found.at(-1)?.push(keyOf(kinds, place))
    else if (kind?.what === 'space') found.push([])
  }
  return found.map((stitches) => ({ name: '', stitches, placed: false, spaced: false }))
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
