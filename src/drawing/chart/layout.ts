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

/** How far each stand may be lower or higher than the one before it: a chain, and one more for each between them. */
function fallsOf({ stands, trailing }: Cut): readonly number[] {
  return stands.map(({ spaces }, at) => {
    const between = at === 0 ? [...trailing, ...spaces] : spaces
    return chainLength * between.reduce((sum, { chains }) => sum + chains, 1)
  })
}

/** Raises low stitches beside tall ones, so that a row stays a row; in a round the last stands beside the first. */
function levelled(own: readonly number[], cut: Cut, round: boolean): readonly number[] {
  const ups = [...own]
  const falls = fallsOf(cut)
  const raise = (at: number, beside: number, fall: number): void => {
    ups[at] = Math.max(ups[at] ?? 0, (ups.at(beside) ?? 0) - fall)
  }
  const { length } = own
  const steps = Array.from({ length: round ? 2 * length : length }, (_, step) => step % length)
  for (const at of steps) if (round || at > 0) raise(at, at - 1, falls[at] ?? 0)
  for (const at of steps.toReversed()) if (round || at > 0) raise((at + length - 1) % length, at, falls[at] ?? 0)
  return ups
}

/** How high up the heads are: each its own height over its feet, and all so far out that they have room side by side. */
function headsOf(
  { cut, opened }: { readonly cut: Cut; readonly opened: number },
  feet: readonly number[],
  frame: Frame,
  cornered: boolean,
): readonly number[] {
  const own = cut.stands.map(({ kind }, at) => (feet[at] ?? 0) + standHeight(kind, opened))
  const level = levelled(own, cut, frame.turn !== null)
  if (frame.turn === null) return level
  const length = gapsOf(cut).reduce((sum, gap) => sum + gap, 0)
  const middle = level.reduce((sum, up) => sum + up, 0) / level.length
  const needed = length / (frame.turn * frame.stretch(1, cornered))
  return needed > middle ? level.map((up) => up + needed - middle) : level
}

const mostOpened = 4

/** A slip stitch lies on what it goes into; an opening chain that does not count is as high as its chains. */
function standHeight(kind: PlaceKind | null, opened: number): number {
  if (kind === null) return 0.25
  return kind.what === 'turning' ? Math.max(1, Math.min(opened, mostOpened)) * chainLength : heightOf(kind)
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
  return scaled(places, (turn - closing) / (last - first))
}

function scaled(places: readonly number[], by: number): readonly number[] {
  const middle = ((places[0] ?? 0) + (places.at(-1) ?? 0)) / 2
  return places.map((place) => middle + (place - middle) * by)
}

/** Where a circle begins it is open for its number; further out that is less of the way round, and the rest takes it. */
function closedUp(places: readonly number[], closing: number, turn: number): readonly number[] {
  const whole = (places.at(-1) ?? 0) - (places[0] ?? 0)
  const widest = Math.max(...places.slice(1).map((place, at) => place - (places[at] ?? 0)), 0)
  return whole > 0 ? scaled(places, Math.max(1, Math.min(turn / (whole + widest), (turn - closing) / whole))) : places
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

/** A round of stitches beside each other, with increases of three at most and nothing between them. */
function isPlain({ stands, trailing }: Cut): boolean {
  const crowded = stands.some((stand, at) => at > 2 && stand.parents[0] === stands[at - 3]?.parents[0])
  return trailing.length === 0 && !crowded && stands.every(({ spaces }) => spaces.length === 0)
}

/** Plain rounds take most of the way round, evenly: so much of it they may be held to. */
const mostHeld = 0.94

function loosened(steps: readonly number[], turn: number): readonly number[] {
  const all = steps.reduce((sum, step) => sum + step, 0)
  return steps.map((step) => step * Math.max(1, (mostHeld * turn) / all))
}

/** Where a place of a row is among its stands: on one, or between two. */
function alongOf(at: number, { stands }: Cut, places: readonly number[], turn: number): number {
  const next = stands.findIndex((stand) => stand.at !== null && stand.at >= at)
  if (next >= 0 && stands[next]?.at === at) return places[next] ?? 0
  const before = next <= 0 ? (places.at(-1) ?? 0) - (next === 0 ? turn : 0) : (places[next - 1] ?? 0)
  const after = next < 0 ? (places[0] ?? 0) + turn : (places[next] ?? 0)
  return (before + after) / 2
}

/** Places of a round in its shape: its corners in corners, a circle closed. */
function settle(
  places: readonly number[],
  cut: Cut,
  corners: readonly number[] | null,
  closing: number,
  turn: number | null,
): readonly number[] {
  if (turn === null) return places
  if (corners === null) return closedUp(places, closing, turn)
  const found = corners.map((at) => alongOf(at, cut, places, turn)).sort((a, b) => a - b)
  return anchored(places, found, turn)
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
  const ups = headsOf({ cut, opened: row.row.trace().opened }, feet, frame, cornered)
  const least = stepsOf(gapsOf(cut), ups, frame, cornered)
  const steps = frame.turn === null || cornered || !isPlain(cut) ? least : loosened(least, frame.turn)
  const wanted = wantedPlaces(stands, direction, period)
  const free = wanted.every((place) => place === null)
  const own =
    free && frame.turn !== null ? around(gapsOf(cut), frame.turn) : spaced(filled(wanted, steps[1] ?? 1), steps)
  const places = fitted(own, steps[0] ?? 0, frame.turn)
  const { turn } = frame
  const settled = settle(places, cut, corners, steps[0] ?? 0, turn)
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
