import type { PlaceRef } from './past.ts'
import { placeRef } from './past.ts'
import type { Special, Target } from './step.ts'
import type { Stitch } from './terms/stitch.ts'
import { stitchKey } from './terms/stitch.ts'

/** What a place that can be worked into is. */
export type PlaceKind =
  /** `name` of a special stitch that is one stitch, else null. `turning`: a turning chain that counts. */
  | { readonly what: 'stitch'; readonly stitch: Stitch | null; readonly name: string | null; readonly turning: boolean }
  /** A chain space. `grouped`: made between the stitches of one place, as at a corner. */
  | {
      readonly what: 'space'
      readonly chains: number
      readonly grouped: boolean
      /** Chains of the opening chain that it is part of; null for a space between stitches. */
      readonly opening: number | null
    }
  | { readonly what: 'chain' }
  /** The end of a row, along the side of the piece. */
  | { readonly what: 'rowEnd' }
  /** An opening chain that does not count as a stitch. */
  | { readonly what: 'turning' }

/** Kinds of place of a pattern, numbered so that a row is a list of small numbers. */
export interface Kinds {
  readonly list: PlaceKind[]
  readonly numbers: Map<string, number>
  /** Numbers of stitches made over and over, by the object that stands for each, so that no key is built. */
  readonly made: WeakMap<Stitch | Special, number>
  readonly accepted: WeakMap<Target, Acceptance>
}

/** Which kinds of place a target accepts, found once for each. */
export interface Acceptance {
  readonly byKind: (boolean | undefined)[]
  /** A kind alone tells whether a place is meant, and a place is used as a whole. */
  readonly simple: boolean
}

/**
 * A row as the next one finds it, in the order in which it is worked. `groups` numbers the special
 * stitch or the group in one place that a place belongs to, -1 for none; it may end before `places`, where
 * the rest belongs to none. `names` has the special
 * stitch's name by that number, empty for a group without a name.
 */
export interface Row {
  readonly places: readonly number[]
  readonly groups: readonly number[]
  readonly names: readonly string[]
  /** Where in the fabric each place is, whichever way round the row is seen; -1 for a place that is only supposed. */
  readonly refs: () => readonly PlaceRef[]
  readonly circular: boolean
  /** A ring, which takes any number of stitches. */
  readonly ring: boolean
  /** A foundation chain that nothing has been worked into. */
  readonly foundation: boolean
  /** Positions in which markers hang. */
  readonly marks?: readonly number[]
}

export function createKinds(): Kinds {
  return { list: [], numbers: new Map(), made: new WeakMap(), accepted: new WeakMap() }
}

function kindKey(kind: PlaceKind): string {
  if (kind.what === 'stitch') {
    return `stitch ${kind.stitch === null ? '' : stitchKey(kind.stitch)} ${kind.name ?? ''} ${kind.turning}`
  }
  return kind.what === 'space' ? `space ${kind.chains} ${kind.grouped} ${kind.opening}` : kind.what
}

/** The number of a kind of place; a kind not met before gets the next one. */
export function kindNumber(kinds: Kinds, kind: PlaceKind): number {
  const key = kindKey(kind)
  const known = kinds.numbers.get(key)
  if (known !== undefined) return known
  const number = kinds.list.length
  kinds.list.push(kind)
  kinds.numbers.set(key, number)
  return number
}

/** The number of a plain stitch. */
export function stitchNumber(kinds: Kinds, stitch: Stitch): number {
  const known = kinds.made.get(stitch)
  if (known !== undefined) return known
  const number = kindNumber(kinds, { what: 'stitch', stitch, name: null, turning: false })
  kinds.made.set(stitch, number)
  return number
}

/** What the chains are called that open a block of its own: a later one is worked into their loop. */
export const blockName = 'block'

/** What stitches closed as one are called among the kinds of place. */
export const closedName = 'closed'

/** The number of stitches closed as one. */
export function closedNumber(kinds: Kinds, stitch: Stitch): number {
  return kindNumber(kinds, { what: 'stitch', stitch, name: closedName, turning: false })
}

/** The number of a special stitch that is one stitch. */
export function specialNumber(kinds: Kinds, special: Special): number {
  const known = kinds.made.get(special)
  if (known !== undefined) return known
  const number = kindNumber(kinds, { what: 'stitch', stitch: null, name: special.name, turning: false })
  kinds.made.set(special, number)
  return number
}

/** The places of a row made as `order`th of the fabric. */
export function refsOf(order: number, count: number): readonly PlaceRef[] {
  return Array.from({ length: count }, (_, at) => placeRef(order, at))
}

export function chainRow(kinds: Kinds, chains: number, order: number): Row {
  const chain = kindNumber(kinds, { what: 'chain' })
  return {
    places: new Array<number>(chains).fill(chain),
    groups: [],
    names: [],
    refs: () => refsOf(order, chains),
    circular: false,
    ring: false,
    foundation: true,
  }
}

export const ringRow: Row = {
  places: [],
  groups: [],
  names: [],
  refs: () => [],
  circular: true,
  ring: true,
  foundation: true,
}

/** The foundation joined into a ring: its chains can be worked into one by one, or the ring as a whole. */
export function joinedRow(row: Row): Row {
  return { ...turned(row, false), circular: true, ring: row.foundation }
}

function refsAt(row: Row, order: readonly number[]): readonly PlaceRef[] {
  const refs = row.refs()
  return order.map((at) => refs[at] ?? -1)
}

function markedIn(marks: readonly number[], order: readonly number[]): readonly number[] {
  return order.flatMap((at, place) => (marks.includes(at) ? [place] : []))
}

function ordered(row: Row, order: readonly number[]): Row {
  return {
    ...row,
    places: order.map((at) => row.places[at] ?? 0),
    refs: () => refsAt(row, order),
    groups: row.groups.length === 0 ? [] : order.map((at) => row.groups[at] ?? -1),
    ...(row.marks === undefined ? {} : { marks: markedIn(row.marks, order) }),
  }
}

/** A group for every place; none at all where no place belongs to one. */
function allGroups({ places, groups }: Row): readonly number[] {
  if (groups.length === 0 || groups.length === places.length) return groups
  return [...groups, ...new Array<number>(places.length - groups.length).fill(-1)]
}

/** The row seen from the other side. A joined round goes back from its joining stitch. */
export function turned(row: Row, joined: boolean): Row {
  if (!(joined && row.circular)) {
    const places = row.places.toReversed()
    const marks = row.marks?.map((at) => row.places.length - 1 - at)
    const seen = { ...row, places, refs: () => row.refs().toReversed(), groups: allGroups(row).toReversed() }
    return marks === undefined ? seen : { ...seen, marks }
  }
  const order = row.places.map((_, at) => (at === 0 ? 0 : row.places.length - at))
  return ordered(row, order)
}

/** The round begun at another place: slip stitches have travelled there. */
export function rotated(row: Row, by: number): Row {
  const count = row.places.length
  return ordered(
    row,
    row.places.map((_, at) => (at + by) % count),
  )
}

/** Two stretches of fabric as one row: the second is worked after the first. */
export function joinedTo(first: Row, second: Row): Row {
  const shift = first.names.length
  const groups =
    second.groups.length === 0
      ? allGroups(first)
      : [...paddedGroups(first), ...second.groups.map((group) => (group < 0 ? group : group + shift))]
  return {
    ...first,
    places: [...first.places, ...second.places],
    refs: () => [...first.refs(), ...second.refs()],
    groups,
    names: [...first.names, ...second.names],
    marks: [...(first.marks ?? []), ...(second.marks ?? []).map((at) => at + first.places.length)],
  }
}

function paddedGroups({ places, groups }: Row): readonly number[] {
  return [...groups, ...new Array<number>(places.length - groups.length).fill(-1)]
}

/** Some places of a row, in the order given. */
export function chosenPlaces(row: Row, order: readonly number[]): Row {
  return ordered(row, order)
}
