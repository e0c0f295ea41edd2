import type { PlaceKind } from '../../rows/fabric.ts'
import { placeRef } from '../../rows/past.ts'
import { heightInChains } from '../../rows/terms/stitch.ts'
import type { Point } from '../path.ts'
import type { Lain, Laying } from './layout.ts'
import { footPoints, note, pointAt } from './layout.ts'
import type { ChartRow, Placed, Sign } from './model.ts'
import { chainLength } from './size.ts'
import type { Space, Spot, Stand } from './stands.ts'

/** One row being placed: `index` is its position among those charted. */
interface Placing {
  readonly row: ChartRow
  readonly index: number
  readonly laying: Laying
  readonly lain: Lain
}

function between(from: Point, to: Point, part: number): Point {
  return { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part }
}

function distance(from: Point, to: Point): number {
  return Math.hypot(to.x - from.x, to.y - from.y)
}

/**
 * Chains of an opening chain that stand upright. Those of a space that it goes on with lie behind it; of a foundation
 * chain some that are passed lie under that space.
 */
export function openingChains({ row }: ChartRow, at: number, kind: PlaceKind, kinds: readonly PlaceKind[]): number {
  const { opened, below } = row.trace()
  const next = kinds[row.row.places[at + 1] ?? -1]
  const lying = next?.what === 'space' && next.opening !== null ? next.chains : 0
  const onChain = kinds[below.places[0] ?? -1]?.what === 'chain'
  const stitch = kind.what === 'stitch' ? kind.stitch : null
  const most = onChain && lying > 0 && stitch !== null ? heightInChains[stitch.base] : opened
  return Math.max(1, Math.min(opened - lying, most))
}

function signOf(stand: Stand, { row, laying, lain }: Placing): Sign {
  const { kind, at } = stand
  if (kind === null || at === null) return { what: 'slip' }
  if (kind.what === 'turning' || (kind.what === 'stitch' && kind.turning)) {
    return { what: 'chains', count: openingChains(row, at, kind, laying.kinds), bend: null }
  }
  if (kind.what !== 'stitch') return { what: 'chains', count: 1, bend: null }
  const loop = row.row.trace().loops[at] ?? 0
  return { what: 'stitch', kind, loop, front: lain.front }
}

function placeStand(stand: Stand, at: number, placing: Placing): void {
  const { row, index, laying, lain } = placing
  const [along, up] = [lain.alongs[at] ?? 0, lain.ups[at] ?? 0]
  const point = pointAt(laying, along, up, lain.cornered)
  const feet = footPoints(stand, laying, lain, at)
  laying.placed.push({ row: index, at: stand.at, sign: signOf(stand, placing), feet, head: point })
  if (stand.at !== null) note(laying, row, stand.at, { along, up, point })
}

/** How far chains bend outwards that are longer than their way. */
function bulge(chains: number, way: number): number {
  const length = chains * chainLength
  return length <= way ? 0.18 : 0.18 + 0.5 * Math.sqrt(length * length - way * way)
}

/** Chains from one spot to another, bent outwards. */
function placeSpace({ at, chains }: Space, from: Spot, to: Spot, placing: Placing): void {
  const { row, index, laying, lain } = placing
  const along = (from.along + to.along) / 2
  const up = (from.up + to.up) / 2
  const outward = bulge(chains, distance(from.point, to.point))
  const bend = pointAt(laying, along, up + 2 * outward, lain.cornered)
  laying.placed.push({
    row: index,
    at,
    sign: { what: 'chains', count: chains, bend },
    feet: [from.point],
    head: to.point,
  })
  const point = between(between(from.point, to.point, 0.5), bend, 0.5)
  note(laying, row, at, { along, up: up + outward, point })
}

/** Chain spaces one after the other share the way. */
function placeSpaces(spaces: readonly Space[], from: Spot, to: Spot, placing: Placing): void {
  const all = spaces.reduce((sum, { chains }) => sum + chains, 0)
  const spot = (part: number): Spot => ({
    along: from.along + (to.along - from.along) * part,
    up: from.up + (to.up - from.up) * part,
    point: between(from.point, to.point, part),
  })
  let passed = 0
  for (const space of spaces) {
    placeSpace(space, spot(passed / all), spot((passed + space.chains) / all), placing)
    passed += space.chains
  }
}

function spotOf(at: number, { laying, lain }: Placing): Spot {
  const [along, up] = [lain.alongs.at(at) ?? 0, lain.ups.at(at) ?? 0]
  return { along, up, point: pointAt(laying, along, up, lain.cornered) }
}

/** Where chains end that nothing follows in a row, or begin that nothing comes before. */
function loose(spaces: readonly Space[], from: Spot, towards: -1 | 1, { laying, lain }: Placing): Spot {
  const chains = spaces.reduce((sum, each) => sum + each.chains, 0)
  const along =
    from.along + (towards * lain.direction * chains * chainLength) / laying.frame.stretch(from.up, lain.cornered)
  return { along, up: from.up, point: pointAt(laying, along, from.up, lain.cornered) }
}

function placeEnds(placing: Placing): void {
  const { stands, trailing } = placing.lain.cut
  const leading = stands[0]?.spaces ?? []
  const [first, last] = [spotOf(0, placing), spotOf(-1, placing)]
  if (placing.laying.frame.turn !== null) {
    // From the last stitch on to the first one of the round.
    placeSpaces([...trailing, ...leading], last, comingRound(first, last, placing), placing)
    return
  }
  placeSpaces(leading, loose(leading, first, -1, placing), first, placing)
  placeSpaces(trailing, last, loose(trailing, last, 1, placing), placing)
}

function comingRound(first: Spot, last: Spot, { laying, lain }: Placing): Spot {
  const turn = laying.frame.turn ?? 0
  const ahead = (last.along - first.along) * lain.direction
  return { ...first, along: first.along + lain.direction * turn * Math.ceil(ahead / turn) }
}

/** How far over the head of its place what has no place of its own is drawn. */
const clear = 0.3

function over(spot: Spot, by: number, { laying, lain }: Placing): Point {
  return pointAt(laying, spot.along, spot.up + by, lain.cornered)
}

function placePicots(placing: Placing): void {
  const { row, index, laying } = placing
  for (const { after, chains } of row.row.trace().picots) {
    const spot = laying.spots.get(placeRef(row.row.order, after - 1))
    if (spot === undefined || (row.places !== null && !row.places.has(after - 1))) continue
    const head = over(spot, 1.1, placing)
    laying.placed.push({
      row: index,
      at: null,
      sign: { what: 'picot', chains },
      feet: [over(spot, 0.05, placing)],
      head,
    })
  }
}

function placeSlips(placing: Placing): void {
  const { row, index, laying, lain } = placing
  const { slips, joined } = row.row.trace()
  const dot = (head: Point): Placed => ({ row: index, at: null, sign: { what: 'slip' }, feet: [head], head })
  for (const { into, after } of slips) {
    const spot = laying.spots.get(into)
    if (spot !== undefined && after === 0) laying.placed.push(dot(over(spot, clear, placing)))
  }
  if (joined && row.places === null) {
    const [first] = lain.cut.stands
    const spot = first === undefined ? null : spotOf(0, placing)
    if (spot !== null) laying.placed.push(dot(over(spot, clear, placing)))
  }
}

/** Places all of a row whose stands have been laid. */
export function placeRow(row: ChartRow, index: number, laying: Laying, lain: Lain): void {
  const placing = { row, index, laying, lain }
  lain.cut.stands.forEach((stand, at) => {
    placeStand(stand, at, placing)
    if (at > 0) placeSpaces(stand.spaces, spotOf(at - 1, placing), spotOf(at, placing), placing)
  })
  if (lain.cut.stands.length > 0) placeEnds(placing)
  placePicots(placing)
  placeSlips(placing)
}
