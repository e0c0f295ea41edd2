import type { Kinds } from '../fabric.ts'
import type { FabricRow, Past } from '../past.ts'
import { orderOf, positionOf, rowsOf, usedPlaces } from '../past.ts'

/** Neighbouring places of one row that nothing has been worked into, by position. */
export type Run = readonly number[]

/** A stretch of a row that was passed over, with the row that passed it. */
export interface Opening {
  readonly of: FabricRow
  readonly run: Run
}

/** Stretches of a row that no later row goes into; of a round the one across its join is one. */
function unusedRuns(past: Past | null, of: FabricRow, kinds: Kinds): readonly Run[] {
  const used = usedPlaces(past, of)
  if (used.size === 0) return []
  const runs: number[][] = []
  of.row.places.forEach((number, at) => {
    if (used.has(at) || kinds.list[number]?.what === 'turning') return
    const last = runs.at(-1)
    if (last !== undefined && last.at(-1) === at - 1) last.push(at)
    else runs.push([at])
  })
  const [first] = runs
  const last = runs.at(-1)
  const wraps = of.row.circular && runs.length > 1 && first?.[0] === 0 && last?.at(-1) === of.row.places.length - 1
  if (!wraps || first === undefined || last === undefined) return runs
  return [[...last, ...first], ...runs.slice(1, -1)]
}

/** The longest stretch that was passed over in any earlier row, of equals the one in the newest row; null for none. */
export function longestRun(past: Past | null, kinds: Kinds): Opening | null {
  let found: Opening | null = null
  for (const of of rowsOf(past)) {
    if (of.row.foundation) continue
    for (const run of unusedRuns(past, of, kinds)) {
      if (run.length > (found?.run.length ?? 0)) found = { of, run }
    }
  }
  return found
}

/** The first stretch of a row that was passed over; null for none. */
export function firstRun(past: Past | null, of: FabricRow, kinds: Kinds): Run | null {
  return unusedRuns(past, of, kinds)[0] ?? null
}

/** Chains that bridge a stretch: made by a later row between the places on either side of it. */
export function bridgeOver(
  { of, run }: Opening,
  past: Past | null,
  kinds: Kinds,
): { ref: number; chains: number } | null {
  const [first = -1] = run
  const last = run.at(-1) ?? -1
  const { length } = of.row.places
  const before = of.row.circular ? (first - 1 + length) % length : first - 1
  const after = of.row.circular ? (last + 1) % length : last + 1
  for (const row of rowsOf(past)) {
    if (row.order <= of.order) break
    const found = bridgeIn(row, of.order, [before, after], kinds)
    if (found !== null) return found
  }
  return null
}

/** A space of `row` whose neighbours go into the two places, one on either side. */
function bridgeIn(
  row: FabricRow,
  order: number,
  sides: readonly [number, number],
  kinds: Kinds,
): { ref: number; chains: number } | null {
  const { into } = row.trace()
  const goesInto = (at: number): number => {
    const ref = into[at] ?? -1
    return ref >= 0 && orderOf(ref) === order ? positionOf(ref) : -1
  }
  for (const [at, number] of row.row.places.entries()) {
    const kind = kinds.list[number]
    if (kind?.what !== 'space') continue
    const next = at + 1 === row.row.places.length && row.row.circular ? 0 : at + 1
    const around = [goesInto(at - 1), goesInto(next)]
    if (around.includes(sides[0]) && around.includes(sides[1])) {
      return { ref: row.row.refs()[at] ?? -1, chains: kind.chains }
    }
  }
  return null
}
