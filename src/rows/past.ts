import type { Row } from './fabric.ts'

/** Where in the fabric a place is: the row in order of working, and the position in it, as one number. */
export type PlaceRef = number

/** Rows hold fewer places than this. */
const refStep = 65_536

export function placeRef(order: number, at: number): PlaceRef {
  return order * refStep + at
}

export function orderOf(ref: PlaceRef): number {
  return Math.floor(ref / refStep)
}

export function positionOf(ref: PlaceRef): number {
  return ref % refStep
}

/** Which loop of a stitch is worked: 0 both, 1 the front one, 2 the back one. The other stays free. */
export type LoopCode = 0 | 1 | 2

/** A finished row of the fabric, in the order in which it was worked: what a chart or a later row reads. */
export interface FabricRow {
  readonly order: number
  /** The number that its label has for this size; null for none. */
  readonly number: number | null
  readonly row: Row
  /** Found when it is first asked for, by working the row once more: most rows are only counted. */
  readonly trace: () => Trace
}

/** What the places of a row are worked into. */
export interface Trace {
  /** What it was worked on, in the order in which the hook met it: kinds of place, and which place of the fabric each is. */
  readonly below: { readonly places: readonly number[]; readonly refs: readonly PlaceRef[] }
  /** For each place the first one it goes into, -1 for chains and others that go into none. */
  readonly into: readonly PlaceRef[]
  /** Further places of stitches worked together, by position. */
  readonly again: ReadonlyMap<number, readonly PlaceRef[]>
  /** The loop that each place is worked into; may end before the row does, where the rest takes both. */
  readonly loops: readonly LoopCode[]
  /** Chains that it opens with, or has passed from the hook in its foundation; 0 for none. */
  readonly opened: number
  /** Picots: how many of its places are made before each, and of how many chains it is. */
  readonly picots: readonly { readonly after: number; readonly chains: number }[]
  /** Slip stitches that are no places of it: what each goes into, and how many places are made before it. */
  readonly slips: readonly { readonly into: PlaceRef; readonly after: number }[]
  /** Whether it is closed into a round. */
  readonly joined: boolean
}

/** The rows of a piece so far, the newest first. It is only ever added to: sizes share what they have in common. */
export interface Past {
  readonly last: FabricRow
  readonly before: Past | null
}

/** A chain or ring goes into nothing. */
export function untraced(): Trace {
  return {
    below: { places: [], refs: [] },
    into: [],
    again: new Map(),
    loops: [],
    opened: 0,
    picots: [],
    slips: [],
    joined: false,
  }
}

/** Rows from the newest to the oldest. */
export function* rowsOf(past: Past | null): Generator<FabricRow> {
  for (let at = past; at !== null; at = at.before) yield at.last
}

/** The newest row with a number; null when there is none. */
export function rowNumbered(past: Past | null, number: number): FabricRow | null {
  for (const row of rowsOf(past)) if (row.number === number && !row.row.foundation) return row
  return null
}

/** The chain that the piece, or this part of it, was begun on; null for a ring or none. */
export function foundationOf(past: Past | null): FabricRow | null {
  for (const row of rowsOf(past)) if (row.row.foundation && row.row.places.length > 0) return row
  return null
}

/** Positions of a row that later rows have worked into, with the loops taken: 1 front, 2 back, 3 both. */
export function usedPlaces(past: Past | null, of: FabricRow): ReadonlyMap<number, number> {
  const used = new Map<number, number>()
  const note = (ref: PlaceRef | undefined, loop: LoopCode): void => {
    if (ref === undefined || ref < 0 || orderOf(ref) !== of.order) return
    const at = positionOf(ref)
    used.set(at, (used.get(at) ?? 0) | (loop === 0 ? 3 : loop))
  }
  for (const row of rowsOf(past)) {
    if (row.order <= of.order) break
    const { into, again, loops } = row.trace()
    into.forEach((ref, at) => {
      note(ref, loops[at] ?? 0)
    })
    for (const [at, refs] of again) for (const ref of refs) note(ref, loops[at] ?? 0)
  }
  return used
}
