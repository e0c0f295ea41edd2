import type { PlaceKind } from './fabric.ts'
import type { FabricRow, LoopCode, PlaceRef } from './past.ts'

/** What goes into one place, or chains that go into none: neighbours that are made there, of the same kind or not. */
export interface Worked {
  readonly kind: 'worked'
  /** First and last place made, counted from 1; twice the one before for an opening chain that does not count. */
  readonly made: readonly [first: number, last: number]
  /** Places of the row below, counted from 1 in the order in which the hook meets them; empty for none. */
  readonly into: readonly number[]
  /** What each place made is. */
  readonly makes: readonly PlaceKind[]
  /** The special stitch that it is part of; empty for none. */
  readonly name: string
  readonly loop: LoopCode
  /** The position after it in the row. */
  readonly end: number
}

/** One line of a row as it is followed with the hook. */
export type Followed =
  /** The same in each of so many places, one after the other. */
  | { readonly kind: 'run'; readonly first: Worked; readonly times: number }
  /** Places of the row below that nothing goes into. */
  | { readonly kind: 'passed'; readonly from: number; readonly to: number }
  /** The last so many lines once more, so many times, up to a place of this row. */
  | { readonly kind: 'again'; readonly lines: number; readonly times: number; readonly upTo: number }

interface Walk {
  readonly row: FabricRow
  readonly kinds: readonly PlaceKind[]
  /** Counted from 1, by place of the fabric. An opening chain that does not count has no number. */
  readonly numbered: ReadonlyMap<PlaceRef, number>
  /** The number of each place made, likewise. */
  readonly made: readonly number[]
  /** Places below that have a number. */
  readonly below: number
}

/** Numbers for places, those of an opening chain that does not count left out: they repeat the one before. */
function numbersOf(places: readonly number[], kinds: readonly PlaceKind[]): readonly number[] {
  let last = 0
  return places.map((number) => {
    if (kinds[number]?.what !== 'turning') last += 1
    return last
  })
}

function walkOf(row: FabricRow, kinds: readonly PlaceKind[]): Walk {
  const { places, refs } = row.trace().below
  const numbers = numbersOf(places, kinds)
  const numbered = new Map<PlaceRef, number>()
  refs.forEach((ref, at) => {
    if (kinds[places[at] ?? -1]?.what !== 'turning') numbered.set(ref, numbers[at] ?? 0)
  })
  return { row, kinds, numbered, made: numbersOf(row.row.places, kinds), below: numbers.at(-1) ?? 0 }
}

function intoOf({ row, numbered }: Walk, at: number): readonly number[] {
  const { into, again } = row.trace()
  const refs = [into[at] ?? -1, ...(again.get(at) ?? [])]
  return refs.flatMap((ref) => numbered.get(ref) ?? [])
}

function sameList(first: readonly number[], second: readonly number[]): boolean {
  return first.length === second.length && first.every((value, at) => value === second[at])
}

/** From `at` on, all that goes into the same place. */
function workedAt(walk: Walk, at: number): Worked {
  const { places, groups, names } = walk.row.row
  const into = intoOf(walk, at)
  const group = groups[at] ?? -1
  let end = at + 1
  const belongs = (next: number): boolean => {
    if (group >= 0) return (groups[next] ?? -1) === group
    if ((groups[next] ?? -1) >= 0 || !sameList(intoOf(walk, next), into)) return false
    // In a ring, and along an edge, all of a kind stand together.
    return into.length > 0 || places[next] === places[at]
  }
  while (end < places.length && belongs(end)) end += 1
  const makes = places.slice(at, end).flatMap((number) => walk.kinds[number] ?? [])
  const name = group >= 0 ? (names[group] ?? '') : ''
  const made = [walk.made[at] ?? 0, walk.made[end - 1] ?? 0] as const
  return { kind: 'worked', made, into, makes, name, loop: walk.row.trace().loops[at] ?? 0, end }
}

/** Whether one goes on as the other does, `by` places further. */
function isAlike(first: Worked, second: Worked, by: number): boolean {
  return (
    first.name === second.name &&
    first.loop === second.loop &&
    first.makes.length === second.makes.length &&
    first.makes.every((kind, at) => kind === second.makes[at]) &&
    sameList(
      first.into.map((place) => place + by),
      second.into,
    )
  )
}

function stepOf(first: Worked, second: Worked): number {
  return (second.into[0] ?? 0) - (first.into[0] ?? 0)
}

type Line = Exclude<Followed, { readonly kind: 'again' }>

/** Lines without repetition: runs of the same, and what is passed between them. */
function* lines(walk: Walk): Generator<Line> {
  const { length } = walk.row.row.places
  let reached = 0
  for (let at = 0; at < length; ) {
    const first = workedAt(walk, at)
    const from = first.into[0] ?? 0
    if (from > reached + 1) yield { kind: 'passed', from: reached + 1, to: from - 1 }
    const wide = first.into.length
    let times = 1
    let next = first.end
    while (next < length && wide > 0) {
      const other = workedAt(walk, next)
      if (!isAlike(first, other, times * wide) || stepOf(first, other) !== times * wide) break
      times += 1
      next = other.end
    }
    yield { kind: 'run', first, times }
    reached = Math.max(reached, ...first.into.map((place) => place + (times - 1) * wide))
    at = next
  }
  if (reached < walk.below) yield { kind: 'passed', from: reached + 1, to: walk.below }
}

/** Whether a line is another one, `by` places further in the row below. */
function repeats(first: Line, second: Line, by: number): boolean {
  if (first.kind === 'passed') {
    return second.kind === 'passed' && second.from - first.from === by && second.to - first.to === by
  }
  return second.kind === 'run' && first.times === second.times && isAlike(first.first, second.first, by)
}

function firstPlace(line: Line): number {
  return line.kind === 'passed' ? line.from : (line.first.into[0] ?? 0)
}

/** How often the `length` lines from `at` on come again right after themselves. */
function timesAgain(all: readonly Line[], at: number, length: number): number {
  const base = all.slice(at, at + length)
  const anchor = base.findIndex((line) => firstPlace(line) > 0)
  let times = 0
  for (let from = at + length; from + length <= all.length && anchor >= 0; from += length) {
    const other = all[from + anchor]
    const own = base[anchor]
    if (other === undefined || own === undefined) break
    const by = firstPlace(other) - firstPlace(own)
    if (by <= 0 || !base.every((line, index) => repeats(line, all[from + index] ?? line, by))) break
    times += 1
  }
  return times
}

const longestPass = 12

function lastMade(all: readonly Line[], end: number): number {
  for (let at = end - 1; at >= 0; at -= 1) {
    const line = all[at]
    if (line?.kind !== 'run') continue
    const [first, last] = line.first.made
    return first + line.times * (last - first + 1) - 1
  }
  return 0
}

/** The shortest stretch from `at` on that comes at least twice more; 0 for none. */
function passFrom(all: readonly Line[], at: number): { readonly length: number; readonly times: number } | null {
  for (let length = 2; length <= longestPass; length += 1) {
    const times = timesAgain(all, at, length)
    if (times >= 2) return { length, times }
  }
  return null
}

/**
 * A row as one follows it with the hook, place by place, what repeats told once.
 *
 * @param kinds what the places are, by number, as in the ledger
 */
export function followRow(row: FabricRow, kinds: readonly PlaceKind[]): readonly Followed[] {
  const all = [...lines(walkOf(row, kinds))]
  const found: Followed[] = []
  for (let at = 0; at < all.length; ) {
    const pass = passFrom(all, at)
    const own = all.slice(at, at + (pass?.length ?? 1))
    found.push(...own)
    at += own.length
    if (pass === null) continue
    at += pass.length * pass.times
    found.push({ kind: 'again', lines: pass.length, times: pass.times, upTo: lastMade(all, at) })
  }
  return found
}
