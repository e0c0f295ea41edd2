import type { PlaceKind } from '../../rows/fabric.ts'
import { widthOfPlace } from '../flat/laid.ts'
import type { Point } from '../path.ts'
import { cornersByRow } from './corners.ts'
import { flatFrame, roundFrame } from './frame.ts'
import type { Lain, Laying } from './layout.ts'
import { layRow } from './layout.ts'
import type { ChartRow, Placed } from './model.ts'
import { placeRow } from './place.ts'
import { chainLength } from './size.ts'
import { cutRow, gapsOf } from './stands.ts'

/** A chart whose places are all found, and where each row begins. */
export interface LaidChart {
  readonly placed: readonly Placed[]
  readonly rows: readonly RowPlace[]
}

export interface RowPlace {
  readonly label: string
  /** The first symbol of the row, beside which its number stands. */
  readonly first: Placed | null
  /** In a chart of rows: whether it begins at the right. */
  readonly fromRight: boolean
  /** In a chart of rounds: where its number stands, before the first stitch. */
  readonly round: Point | null
  /** 1 where it goes on counter-clockwise, -1 the other way. */
  readonly ahead: -1 | 1
}

/** A chart of rounds: `corners` of a motif, 0 for a circle. Its ring has so many chains, none when it is drawn together. */
export interface Ring {
  readonly corners: number
  readonly chains: number
}

const loopRadius = 0.7

function ringRadius({ chains }: Ring): number {
  return Math.max(loopRadius, (chains * chainLength) / (2 * Math.PI))
}

export function layRounds(rows: readonly ChartRow[], kinds: readonly PlaceKind[], ring: Ring): LaidChart {
  const radius = ringRadius(ring)
  const frame = roundFrame(ring.corners)
  const laying: Laying = {
    frame,
    kinds,
    spots: new Map(),
    placed: [],
    period: frame.turn,
    ground: radius,
    direction: 1,
  }
  const middle = { x: 0, y: 0 }
  laying.placed.push({
    row: -1,
    at: null,
    sign: { what: 'ring', chains: ring.chains, radius },
    feet: [middle],
    head: middle,
  })
  return layAll(rows, laying, cornersByRow(rows, kinds, ring.corners))
}

/** In rounds the place of a row's number: beside the stem of its first stitch, on the side that it comes from. */
function beforeFirst({ frame }: Laying, lain: Lain): Point | null {
  const [along, up, foot] = [lain.alongs[0], lain.ups[0], lain.feet[0]]
  if (frame.turn === null || along === undefined || up === undefined || foot === undefined) return null
  // Over the slip stitch that closes the round before.
  const high = foot + 0.7 * (up - foot)
  return frame.place(along - (lain.direction * 0.65) / frame.stretch(high, lain.cornered), high, lain.cornered)
}

function layAll(rows: readonly ChartRow[], laying: Laying, corners: readonly (readonly number[] | null)[]): LaidChart {
  const places = rows.map((row, index): RowPlace => {
    const lain = layRow(row, laying, corners[index] ?? null)
    placeRow(row, index, laying, lain)
    // A row that goes into nothing laid stands on the one before.
    laying.ground = Math.max(laying.ground, ...lain.ups)
    laying.direction = lain.direction
    const first = laying.placed.find((each) => each.row === index) ?? null
    return {
      label: row.label,
      first,
      fromRight: lain.direction < 0,
      round: beforeFirst(laying, lain),
      ahead: lain.direction,
    }
  })
  return { placed: laying.placed, rows: places }
}

/** Whether the first row begins at the right: a right-side row does. Later rows may tell, since each turns. */
function beginsAtRight(rows: readonly ChartRow[]): boolean {
  const told = rows.findIndex(({ side }) => side !== null)
  const right = told < 0 || rows[told]?.side === 'RS'
  const turns = rows[0]?.row.row.circular === true ? 0 : told
  return told > 0 && turns % 2 === 1 ? !right : right
}

/** How many chains of its foundation the first row passes from the hook: they stand upright as its opening chain. */
function passedChains({ row }: ChartRow, kinds: readonly PlaceKind[]): number {
  const { below, into, opened } = row.trace()
  const { places } = row.row
  const isOpening = (at: number): boolean => {
    const kind = kinds[places[at] ?? -1]
    return kind?.what === 'turning' || (kind?.what === 'stitch' && kind.turning)
  }
  const used = into.map((ref, at) => (isOpening(at) ? -1 : below.refs.indexOf(ref))).filter((at) => at >= 0)
  const first = Math.min(...used, below.places.length)
  return first >= opened ? first : 0
}

/** A way this far along the row below is not passed over: what is worked on lies in another place. */
const farthest = 8

/** Positions below that the charted places of a row go into, each once, in the order of work. */
function usedBy({ row, places }: ChartRow): readonly number[] {
  const { below, into, again } = row.trace()
  const charted = row.row.places.flatMap((_, at) => (places === null || places.has(at) ? [at] : []))
  const refs = charted.flatMap((at) => [into[at] ?? -1, ...(again.get(at) ?? [])])
  return [...new Set(refs.map((ref) => below.refs.indexOf(ref)).filter((at) => at >= 0))]
}

/**
 * Positions below that are laid, in their order: all, or as far as what is charted of the row goes into them. Where it is
 * picked up here and there only those that it uses, as it uses them.
 */
function groundOf(first: ChartRow): readonly number[] {
  const used = usedBy(first)
  const { below } = first.row.trace()
  if (first.row.row.circular && used.some((at, index) => index > 0 && Math.abs(at - (used[index - 1] ?? 0)) > farthest))
    return used
  const [from, to] = first.places === null ? [0, below.places.length - 1] : [Math.min(...used), Math.max(...used)]
  return below.places.flatMap((_, at) => (at >= from && at <= to ? [at] : []))
}

/** The ground is drawn out so far at most. */
const mostSpread = 1.6

/** Room that the stitches of a row need which go several into a chain space; 0 where none do. */
function roomOnSpaces(row: ChartRow, kinds: readonly PlaceKind[]): number {
  const { below, into } = row.row.trace()
  const shared = into.some((ref, at) => {
    const kind = kinds[below.places[below.refs.indexOf(ref)] ?? -1]
    return ref >= 0 && ref === into[at - 1] && kind?.what === 'space'
  })
  return shared ? gapsOf(cutRow(row, kinds, new Map())).reduce((sum, gap) => sum + gap, 0) : 0
}

/** How far the ground is drawn out, so that what goes into chain spaces further up has room over it. */
function spreadOf(rows: readonly ChartRow[], first: ChartRow, kinds: readonly PlaceKind[]): number {
  const { places } = first.row.trace().below
  const width = groundOf(first).reduce((sum, at) => sum + groundWidth(places[at] ?? -1, kinds), 0)
  const room = Math.max(...rows.map((row) => roomOnSpaces(row, kinds)))
  return Math.min(mostSpread, Math.max(1, room / Math.max(width, 1)))
}

function groundWidth(number: number, kinds: readonly PlaceKind[]): number {
  return Math.max(widthOfPlace(kinds[number]), 0.2)
}

/** Lays the places that the first row is worked on, drawn out so far, and gives how wide they are. */
function layGround(first: ChartRow, laying: Laying, spread: number): number {
  const { below, opened } = first.row.trace()
  const chain = below.places.every((number) => laying.kinds[number]?.what === 'chain')
  const skipped = chain && opened > 0 ? passedChains(first, laying.kinds) : 0
  let reached = 0
  for (const at of groundOf(first)) {
    const [number, ref] = [below.places[at] ?? -1, below.refs[at] ?? -1]
    const width = spread * groundWidth(number, laying.kinds)
    const along = laying.direction * (reached + width / 2)
    reached += width
    laying.spots.set(ref, { along, up: 0, point: { x: along, y: 0 } })
    if (at < skipped || laying.kinds[number]?.what === 'turning') continue
    const half = (laying.direction * chainLength) / 2
    const sign = chain ? ({ what: 'chains', count: 1, bend: null } as const) : ({ what: 'ground' } as const)
    laying.placed.push({ row: -1, at, sign, feet: [{ x: along - half, y: 0 }], head: { x: along + half, y: 0 } })
  }
  return reached
}

/** Rows one on the other; rounds too that are long and do not grow, with the right side facing throughout. */
export function layRows(rows: readonly ChartRow[], kinds: readonly PlaceKind[]): LaidChart {
  const [first] = rows
  if (first === undefined) return { placed: [], rows: [] }
  const laying: Laying & { period: number | null } = {
    frame: flatFrame,
    kinds,
    spots: new Map(),
    placed: [],
    period: null,
    ground: 0,
    direction: beginsAtRight(rows) ? -1 : 1,
  }
  const width = layGround(first, laying, spreadOf(rows, first, kinds))
  if (first.row.row.circular) laying.period = width
  return layAll(
    rows,
    laying,
    rows.map(() => null),
  )
}
