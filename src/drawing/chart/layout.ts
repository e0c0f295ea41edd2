import type { PlaceKind } from '../../rows/fabric.ts'
import type { PlaceRef } from '../../rows/past.ts'
import { placeRef } from '../../rows/past.ts'
import type { Point } from '../path.ts'
import type { Frame } from './frame.ts'
import type { ChartRow, Placed } from './model.ts'
import { chainLength, heightOf } from './size.ts'
import { filled, spaced } from './spacing.ts'
import type { Cut, Spot, Stand } from './stands.ts'
import { cutRow, directionOf, feetOf, gapsOf, stepsOf, wantedPlaces } from './stands.ts'

/** A chart in the making: what is laid so far, and where the heads of its places are. */
export interface Laying {
  readonly frame: Frame
  readonly kinds: readonly PlaceKind[]
  readonly spots: Map<PlaceRef, Spot>
  readonly placed: Placed[]
  /** How far along a round comes to its beginning again, in rows drawn flat too; null for rows that end. */
  readonly period: number | null
  /** How far up the row before reaches where nothing else is known: the ring, the foundation. */
  ground: number
  direction: -1 | 1
}

/** Where each stand of a row has its foot and its head. */
export interface Lain {
  readonly cut: Cut
  readonly direction: -1 | 1
  /** Worked with the right side facing: from right to left, or counter-clockwise. */
  readonly front: boolean
  readonly cornered: boolean
  readonly alongs: readonly number[]
  readonly feet: readonly number[]
  readonly ups: readonly number[]
}

/** A low stitch beside tall ones stands so much lower at most: its row stays a row. */
const mostFall = 2 * chainLength

/** How high up the heads are: each its own height over its feet, and all so far out that they have room side by side. */
function headsOf(cut: Cut, feet: readonly number[], frame: Frame, cornered: boolean): readonly number[] {
  const own = cut.stands.map(({ kind }, at) => (feet[at] ?? 0) + standHeight(kind))
  const highest = Math.max(...own)
  const level = own.map((up) => Math.max(up, highest - mostFall))
  if (frame.turn === null) return level
  const length = gapsOf(cut).reduce((sum, gap) => sum + gap, 0)
  const middle = level.reduce((sum, up) => sum + up, 0) / level.length
  const needed = length / (frame.turn * frame.stretch(1, cornered))
  return needed > middle ? level.map((up) => up + needed - middle) : level
}

/** A slip stitch lies on what it goes into. */
function standHeight(kind: PlaceKind | null): number {
  if (kind === null) return 0.25
  return kind.what === 'turning' ? chainLength : heightOf(kind)
}

/** A first round around its ring: side by side, each with its share of the way round. */
function around(gaps: readonly number[], turn: number): readonly number[] {
  const all = gaps.reduce((sum, gap) => sum + gap, 0)
  let reached = -(gaps[0] ?? 0) / 2
  return gaps.map((gap) => {
    reached += gap
    return (turn * reached) / all
  })
}

/** Places of a round that would run into its beginning are drawn together. */
function fitted(places: readonly number[], closing: number, turn: number | null): readonly number[] {
  const [first, last] = [places[0] ?? 0, places.at(-1) ?? 0]
  if (turn === null || last - first + closing <= turn || last === first) return places
  const middle = (first + last) / 2
  const scale = (turn - closing) / (last - first)
  return places.map((place) => middle + (place - middle) * scale)
}

/** Moves a round's places so that its corners lie in corners, what is between them in proportion. */
function anchored(places: readonly number[], corners: readonly number[], turn: number): readonly number[] {
  const first = corners[0]
  if (first === undefined) return places
  const base = Math.round(first)
  const ends = [(corners.at(-1) ?? 0) - turn, ...corners, first + turn]
  return places.map((place) => {
    const at = Math.max(
      1,
      ends.findIndex((end) => end > place),
    )
    const [from, to] = [ends[at - 1] ?? 0, ends[at] ?? 0]
    return base + at - 2 + (place - from) / Math.max(to - from, 1e-9)
  })
}

/** Where a place of a row is among its stands: on one, or between two. */
function alongOf(at: number, { stands }: Cut, places: readonly number[], turn: number): number {
  const next = stands.findIndex((stand) => stand.at !== null && stand.at >= at)
  if (next >= 0 && stands[next]?.at === at) return places[next] ?? 0
  const before = next <= 0 ? (places.at(-1) ?? 0) - (next === 0 ? turn : 0) : (places[next - 1] ?? 0)
  const after = next < 0 ? (places[0] ?? 0) + turn : (places[next] ?? 0)
  return (before + after) / 2
}

/** Finds the places of a row's stands. `corners`: positions of its corners, null for none. */
export function layRow(row: ChartRow, laying: Laying, corners: readonly number[] | null): Lain {
  const { frame, kinds, spots, period, ground } = laying
  const cut = cutRow(row, kinds, spots)
  const { stands } = cut
  const found = directionOf(stands, period)
  const direction = found === 0 ? laying.direction : found
  const cornered = corners !== null
  const feet = feetOf(stands, ground)
  const ups = headsOf(cut, feet, frame, cornered)
  const steps = stepsOf(gapsOf(cut), ups, frame, cornered)
  const wanted = wantedPlaces(stands, direction, period)
  const free = wanted.every((place) => place === null)
  const own =
    free && frame.turn !== null ? around(gapsOf(cut), frame.turn) : spaced(filled(wanted, steps[1] ?? 1), steps)
  const places = fitted(own, steps[0] ?? 0, frame.turn)
  const { turn } = frame
  const settled =
    corners === null || turn === null
      ? places
      : anchored(
          places,
          corners.map((at) => alongOf(at, cut, places, turn)).sort((a, b) => a - b),
          turn,
        )
  const front = row.row.row.circular && turn === null ? true : (turn === null) === direction < 0
  return { cut, direction, front, cornered, alongs: settled.map((place) => place * direction), feet, ups }
}

export function pointAt({ frame }: Laying, along: number, up: number, cornered: boolean): Point {
  return frame.place(along, up, cornered)
}

/** Notes where a place's head is, for the rows that go into it. */
export function note(laying: Laying, row: ChartRow, at: number, spot: Spot): void {
  laying.spots.set(placeRef(row.row.order, at), spot)
}

export function footPoints(stand: Stand, laying: Laying, lain: Lain, index: number): readonly Point[] {
  if (stand.parents.length > 0) return stand.parents.map(({ point }) => point)
  return [pointAt(laying, lain.alongs[index] ?? 0, lain.feet[index] ?? 0, lain.cornered)]
}
