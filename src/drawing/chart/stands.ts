import type { PlaceKind } from '../../rows/fabric.ts'
import type { PlaceRef } from '../../rows/past.ts'
import type { Point } from '../path.ts'
import type { Frame } from './frame.ts'
import type { ChartRow } from './model.ts'
import { roomOf, roomOfChains } from './size.ts'

/** Where the head of a place is. */
export interface Spot {
  readonly along: number
  readonly up: number
  readonly point: Point
}

export type Spots = ReadonlyMap<PlaceRef, Spot>

/**
 * What stands on its foot in a row: a stitch, an opening chain, or a slip stitch that holds chains down. Between two of
 * them chains may lie.
 */
export interface Stand {
  /** Its position in the row; null for a slip stitch, which is no place of it. */
  readonly at: number | null
  /** Null for a slip stitch. */
  readonly kind: PlaceKind | null
  /** The places that it is worked into, as far as they are in the chart. */
  readonly parents: readonly Spot[]
  /** Chain spaces between the stand before it and this one. */
  readonly spaces: readonly Space[]
}

export interface Space {
  readonly at: number
  readonly chains: number
}

/** A row cut into what stands and what lies between. */
export interface Cut {
  readonly stands: readonly Stand[]
  /** Chain spaces after the last stand. */
  readonly trailing: readonly Space[]
}

export function cutRow({ row, places }: ChartRow, kinds: readonly PlaceKind[], spots: Spots): Cut {
  const { into, again, slips } = row.trace()
  const stands: Stand[] = []
  let spaces: Space[] = []
  const add = (at: number | null, kind: PlaceKind | null, refs: readonly PlaceRef[]): void => {
    stands.push({ at, kind, parents: refs.flatMap((ref) => spots.get(ref) ?? []), spaces })
    spaces = []
  }
  const holdDown = (after: number): void => {
    // Those at the beginning only travel.
    if (after === 0 || places !== null) return
    for (const slip of slips) if (slip.after === after) add(null, null, [slip.into])
  }
  row.row.places.forEach((number, at) => {
    holdDown(at)
    const kind = kinds[number]
    if (kind === undefined || (places !== null && !places.has(at))) return
    if (kind.what === 'space') spaces.push({ at, chains: kind.chains })
    else add(at, kind, [into[at] ?? -1, ...(again.get(at) ?? [])])
  })
  holdDown(row.row.places.length)
  return { stands, trailing: spaces }
}

function chainsRoom(spaces: readonly Space[]): number {
  return spaces.length === 0 ? 0 : roomOfChains(spaces.reduce((sum, { chains }) => sum + chains, 0)) - 0.2
}

/** Room for a round's number before its first stitch. */
const numberRoom = 0.6

/** Least distance of each stand from the one before it; of the first, from the last one of a round. */
export function gapsOf({ stands, trailing }: Cut): readonly number[] {
  return stands.map(({ kind, spaces }, index) => {
    const before = stands.at(index - 1)
    const between = index === 0 ? [...trailing, ...spaces] : spaces
    return (roomOf(before?.kind ?? null) + roomOf(kind)) / 2 + chainsRoom(between) + (index === 0 ? numberRoom : 0)
  })
}

/** The shortest way from one place along to another, in a round. */
function wayTo(from: number, to: number, period: number | null): number {
  const way = to - from
  return period === null ? way : way - period * Math.round(way / period)
}

/** Whether a row is worked along (1) or against (-1) its frame, by what it goes into; 0 where that does not tell. */
export function directionOf(stands: readonly Stand[], period: number | null): -1 | 0 | 1 {
  let slope = 0
  let before: number | null = null
  for (const { parents } of stands) {
    const [parent] = parents
    if (parent === undefined) continue
    if (before !== null) slope += Math.sign(Math.round(wayTo(before, parent.along, period) * 1e6))
    before = parent.along
  }
  return slope > 0 ? 1 : slope < 0 ? -1 : 0
}

/** The way on from one place to another; a little way back is one, a long way back is a longer one on. */
function wayOn(from: number, to: number, period: number | null): number {
  const way = to - from
  return period === null ? way : way - period * Math.round(way / period - 0.25)
}

/** Where each stand would be by what it goes into, counted in the direction of work and never coming round. */
export function wantedPlaces(
  stands: readonly Stand[],
  direction: -1 | 1,
  period: number | null,
): readonly (number | null)[] {
  let before: number | null = null
  return stands.map(({ parents }) => {
    const [first] = parents
    if (first === undefined) return null
    const middle = parents.reduce((sum, { along }) => sum + wayTo(first.along, along, period), 0) / parents.length
    const place = direction * (first.along + middle)
    before = before === null ? place : before + wayOn(before, place, period)
    return before
  })
}

/** How far up the feet of each stand are; where it goes into nothing that is charted, as far as its neighbours'. */
export function feetOf(stands: readonly Stand[], ground: number): readonly number[] {
  const own = stands.map(({ parents }) =>
    parents.length === 0 ? null : parents.reduce((sum, { up }) => sum + up, 0) / parents.length,
  )
  return own.map(
    (up, at) => up ?? own.slice(at).find((each) => each !== null) ?? own.findLast((each) => each !== null) ?? ground,
  )
}

/** The lengths of all gaps as steps along a frame, so far up. */
export function stepsOf(
  gaps: readonly number[],
  ups: readonly number[],
  frame: Frame,
  cornered: boolean,
): readonly number[] {
  return gaps.map((gap, at) => {
    const between = ((ups.at(at - 1) ?? 0) + (ups[at] ?? 0)) / 2
    return gap / frame.stretch(between, cornered)
  })
}
