import type { PlaceKind } from '../../rows/fabric.ts'
import type { FabricRow } from '../../rows/past.ts'
import { orderOf } from '../../rows/past.ts'
import type { FlatRow } from '../flat/laid.ts'
import { widthOfPlace } from '../flat/laid.ts'

/** A round by what it measures. */
export interface Round {
  readonly row: FabricRow
  /** How many stitches long it is; chains between stitches count like them. */
  readonly around: number
}

/** Whether a good part of a round goes into the one before it. */
function goesOnFrom({ trace }: FabricRow, before: FabricRow): boolean {
  const { into } = trace()
  const own = into.filter((ref) => ref >= 0)
  return own.filter((ref) => orderOf(ref) === before.order).length * 3 >= own.length && own.length > 0
}

function aroundOf({ row }: FabricRow, kinds: readonly PlaceKind[]): number {
  return row.places.reduce((sum, number) => sum + widthOfPlace(kinds[number]), 0)
}

/** The rounds of a piece that are worked one on the other, from the first; parts that branch off later are left out. */
export function roundsOf(rows: readonly FlatRow[], kinds: readonly PlaceKind[]): readonly Round[] {
  const rounds: Round[] = []
  for (const { row } of rows) {
    if (!row.row.circular || row.row.foundation) continue
    const before = rounds.at(-1)
    if (before !== undefined && !goesOnFrom(row, before.row)) continue
    rounds.push({ row, around: aroundOf(row, kinds) })
  }
  return rounds
}

/** A round whose edge is this many rounds from the middle, at most, is the middle of a piece. */
const [mostAtBeginning, mostAtEnd] = [4, 2]
/** A round that is shorter than this part of a circle's edge stands up: it is no longer flat. */
const flatShare = 0.72

function fromMiddle({ around }: Round, rowsPerStitch: number): number {
  return (around * rowsPerStitch) / (2 * Math.PI)
}

/** Whether a piece begins in its middle: its first round goes into a ring, or into one stitch, and is small. */
export function beginsClosed([first]: readonly Round[], rowsPerStitch: number): boolean {
  if (first === undefined || fromMiddle(first, rowsPerStitch) > mostAtBeginning) return false
  return new Set(first.row.trace().into.filter((ref) => ref >= 0)).size <= 1
}

/** Whether a piece ends in a hole that is drawn together. */
export function endsClosed(rounds: readonly Round[], rowsPerStitch: number): boolean {
  const last = rounds.at(-1)
  return last !== undefined && fromMiddle(last, rowsPerStitch) <= mostAtEnd
}

/** More even rounds than this part of all at the edge of a flat piece stand up, as those of a basket do. */
const mostEven = 0.2

/**
 * How many rounds lie flat around a closed middle, from there out. `rowsPerStitch`: how many rows high a stitch is wide.
 */
export function flatRounds(rounds: readonly Round[], rowsPerStitch: number): number {
  const end = rounds.findIndex((round, index) => fromMiddle(round, rowsPerStitch) < flatShare * (index + 1))
  const flat = end < 0 ? rounds.length : end
  const grown = lastGrown(rounds, flat)
  return end < 0 && flat - grown <= mostEven * flat ? flat : grown
}

/** Of so many rounds, those up to the last one that is longer than the one before it. */
function lastGrown(rounds: readonly Round[], count: number): number {
  let last = count
  while (last > 1 && (rounds[last - 1]?.around ?? 0) <= (rounds[last - 2]?.around ?? 0)) last -= 1
  return last
}
