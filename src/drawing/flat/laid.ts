import type { PlaceKind, Row } from '../../rows/fabric.ts'
import type { FabricRow } from '../../rows/past.ts'
import { orderOf, positionOf } from '../../rows/past.ts'

/** A worked row that may be laid out flat, with what its label says. */
export interface FlatRow {
  readonly row: FabricRow
  readonly side: 'RS' | 'WS' | null
}

/** A row where it lies in the finished piece, seen from the right side: across in stitches, up in rows. */
export interface LaidRow {
  readonly order: number
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
  /** The row that it stands on, by its order; null for the first. */
  readonly below: number | null
  /** Worked from left to right as it is seen. */
  readonly forward: boolean
}

interface Lying extends LaidRow {
  /** The middle of each place, in stitches from the left edge of the drawing. */
  readonly middles: Float64Array
}

/** How many stitches wide a place is. An opening chain that does not count lies at the edge. */
export function widthOfPlace(kind: PlaceKind | undefined): number {
  if (kind?.what === 'space') return kind.chains
  return kind === undefined || kind.what === 'turning' ? 0 : 1
}

interface Parents {
  /** For each place the middle of what it goes into; NaN for what goes into nothing that is laid. */
  readonly middles: Float64Array
  readonly known: number
  /** The highest row that holds a good part of them. */
  readonly ground: Lying | null
  readonly span: number
}

/** Fewer than this part of a row's stitches that go deeper are spikes, not its ground. */
const groundShare = 0.15

function parentsOf({ row, trace }: FabricRow, lying: ReadonlyMap<number, Lying>): Parents {
  const { into, again } = trace()
  const middles = new Float64Array(row.places.length).fill(Number.NaN)
  const used = new Map<number, number>()
  let known = 0
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  into.forEach((ref, at) => {
    const places = [ref, ...(again.get(at) ?? [])].flatMap((each) => {
      const middle = each < 0 ? undefined : lying.get(orderOf(each))?.middles[positionOf(each)]
      return middle === undefined || Number.isNaN(middle) ? [] : [{ order: orderOf(each), middle }]
    })
    if (places.length === 0) return
    known += 1
    for (const { order, middle } of places) {
      used.set(order, (used.get(order) ?? 0) + 1)
      low = Math.min(low, middle)
      high = Math.max(high, middle)
    }
    middles[at] = places.reduce((sum, { middle }) => sum + middle, 0) / places.length
  })
  const all = [...used.values()].reduce((sum, count) => sum + count, 0)
  const rows = [...used].flatMap(([order, count]) => (count >= all * groundShare ? (lying.get(order) ?? []) : []))
  const [ground = null] = rows.sort((a, b) => b.top - a.top || b.order - a.order)
  return { middles, known, ground, span: high - low + 1 }
}

/** Whether the row runs from left to right: against what it goes into, else the other way than the row below. */
function runsForward({ middles, ground }: Parents): boolean {
  let slope = 0
  let before = Number.NaN
  for (const middle of middles) {
    if (Number.isNaN(middle)) continue
    if (!Number.isNaN(before)) slope += Math.sign(middle - before)
    before = middle
  }
  if (slope !== 0) return slope > 0
  return ground === null ? false : !ground.forward
}

/** Lace grows and shrinks in chains without growing in cloth: within this part of the row below it is as wide. */
const laceSlack = 0.15

/**
 * The width of a row, in stitches. Of plain stitches it is their count; chains between them count like stitches where
 * that comes near to what they lie over, and lie over it in any case.
 */
function widthOf(row: Row, kinds: readonly PlaceKind[], parents: Parents): number {
  let stitches = 0
  let chains = 0
  for (const number of row.places) {
    const kind = kinds[number]
    if (kind?.what === 'space') chains += kind.chains
    else stitches += widthOfPlace(kind)
  }
  if (chains === 0 || parents.known === 0) return stitches + chains
  return Math.abs(stitches + chains - parents.span) <= parents.span * laceSlack ? stitches + chains : parents.span
}

/** The mean of the middle half: shaping at an edge does not move the stitches that go on. */
function middleMean(values: number[]): number {
  values.sort((a, b) => a - b)
  const cut = Math.floor(values.length / 4)
  const kept = values.slice(cut, values.length - cut)
  return kept.reduce((sum, value) => sum + value, 0) / Math.max(1, kept.length)
}

/** How far each place reaches along the row, from its beginning. */
function reaches(row: Row, kinds: readonly PlaceKind[], width: number): Float64Array {
  const widths = row.places.map((number) => widthOfPlace(kinds[number]))
  const scale =
    width /
    Math.max(
      1,
      widths.reduce((sum, each) => sum + each, 0),
    )
  let reached = 0
  return Float64Array.from(widths, (each) => {
    reached += each * scale
    return reached - (each * scale) / 2
  })
}

/** What is worked along a side, around, or into another piece is no part of this one. */
function goesOn({ row, trace }: FabricRow, kinds: readonly PlaceKind[], { known }: Parents): boolean {
  const { into } = trace()
  let [stitches, loose] = [0, 0]
  row.places.forEach((number, at) => {
    if (kinds[number]?.what !== 'stitch') return
    stitches += 1
    if ((into[at] ?? -1) < 0) loose += 1
  })
  return known > 0 && loose * 3 <= stitches
}

function lay(row: FabricRow, kinds: readonly PlaceKind[], lying: ReadonlyMap<number, Lying>): Lying | null {
  const parents = parentsOf(row, lying)
  if (row.row.circular || (lying.size > 0 && !goesOn(row, kinds, parents))) return null
  const foundation = row.row.foundation
  const forward = foundation ? true : runsForward(parents)
  const width = widthOf(row.row, kinds, parents)
  const along = reaches(row.row, kinds, width)
  const sign = forward ? 1 : -1
  const offsets = [...along].flatMap((reach, at) => {
    const middle = parents.middles[at]
    return middle === undefined || Number.isNaN(middle) ? [] : [middle - sign * reach]
  })
  const start = offsets.length === 0 ? (forward ? 0 : width) : halves(middleMean(offsets))
  const end = start + sign * width
  const ground = parents.ground?.top ?? 0
  return {
    order: row.order,
    left: Math.min(start, end),
    right: Math.max(start, end),
    bottom: ground,
    top: foundation ? 0 : ground + 1,
    below: parents.ground?.order ?? null,
    forward,
    middles: along.map((reach) => start + sign * reach),
  }
}

/** Stitches lie on stitches, or half-way between them. */
function halves(value: number): number {
  return Math.round(value * 2) / 2
}

function asSeen({ order, left, right, bottom, top, below, forward }: Lying, mirror: boolean): LaidRow {
  if (!mirror) return { order, left, right, bottom, top, below, forward }
  return { order, left: -right, right: -left, bottom, top, below, forward: !forward }
}

/** A right-side row is worked from right to left; where labels do not say, the first row is one. */
function isMirrored(laid: ReadonlyMap<number, Lying>, rows: readonly FlatRow[]): boolean {
  const told = rows.find(({ row, side }) => side !== null && laid.has(row.order) && !row.row.foundation)
  return told !== undefined && laid.get(told.row.order)?.forward === (told.side === 'RS')
}

/**
 * Lays rows out as the finished piece lies, by what their stitches go into; rows that go into nothing laid so far are
 * left out, but for the first.
 *
 * @param kinds what the places of the rows are, by number
 */
export function layFlat(rows: readonly FlatRow[], kinds: readonly PlaceKind[]): readonly LaidRow[] {
  const laid = new Map<number, Lying>()
  for (const { row } of rows) {
    const lying = lay(row, kinds, laid)
    if (lying !== null) laid.set(row.order, lying)
  }
  const mirror = isMirrored(laid, rows)
  return [...laid.values()].map((row) => asSeen(row, mirror))
}
