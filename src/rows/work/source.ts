import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import type { Row } from '../fabric.ts'
import { chosenPlaces, joinedTo, kindNumber, turned } from '../fabric.ts'
import type { FabricRow } from '../past.ts'
import { foundationOf, rowNumbered, rowsOf, usedPlaces } from '../past.ts'
import type { Source, StepOf } from '../step.ts'
import { workPiece } from './pieces.ts'
import type { Opening } from './runs.ts'
import { bridgeOver, firstRun, longestRun } from './runs.ts'
import type { Stop, Work } from './state.ts'

/** The row goes into these places from here on: in place of the row below, or, once it has begun, after it. */
export function takeUp(work: Work, row: Row): void {
  const begun = work.made.places.length > 0 || work.cursor > 0
  if (!begun || work.below === null) {
    work.below = row
    work.cursor = 0
    work.last = -1
    work.lastTarget = null
    work.joinedBelow = false
  } else {
    work.cursor = work.below.places.length
    work.below = { ...joinedTo(work.below, row), circular: work.below.circular || row.circular, foundation: false }
  }
  work.sub = 0
  work.passed = 0
  work.end = work.below.places.length
}

function missing(at: Span, wanted: string): Stop {
  return { why: 'no such place', at, wanted }
}

/** Goes back to a row that was left, at the first stitch that has not been used. */
function unworked(work: Work, row: number | null, at: Span): Stop | null {
  const number = row ?? [...work.resting.keys()].at(-1)
  const rest = number === undefined ? undefined : work.resting.get(number)
  if (number === undefined || rest === undefined) return passedOver(work, row, at)
  takeUp(work, rest.row)
  work.cursor = rest.cursor
  work.resumed = number
  return null
}

/** Stitches that later rows have passed over: of the row with a number, or the longest stretch of any. */
function passedOver(work: Work, row: number | null, at: Span): Stop | null {
  const of = row === null ? null : rowNumbered(work.past, row)
  // The row just below is there as it is.
  if (of !== null && of === work.past?.last) return null
  const run = of === null ? null : firstRun(work.past, of, work.kinds)
  const opening = row === null ? longestRun(work.past, work.kinds) : of === null || run === null ? null : { of, run }
  if (opening === null) return missing(at, 'stitches left unworked')
  takeUp(work, { ...chosenPlaces(opening.of.row, opening.run), circular: false })
  return null
}

/** The chains over a stretch, seen from their free side: one place each. */
function freeSide(work: Work, { ref, chains }: { readonly ref: number; readonly chains: number }): Row {
  const chain = kindNumber(work.kinds, { what: 'chain' })
  return {
    places: new Array<number>(chains).fill(chain),
    groups: [],
    names: [],
    refs: () => new Array<number>(chains).fill(ref),
    circular: true,
    ring: false,
    foundation: false,
  }
}

/** An armhole or a thumb hole as a round: its stitches, and the free side of the chains over them. */
function openingRound(work: Work, opening: Opening, from: 'stitches' | 'chain' | 'middle'): Row {
  const stitches = { ...chosenPlaces(opening.of.row, opening.run), circular: true }
  const bridge = bridgeOver(opening, work.past, work.kinds)
  if (bridge === null) return stitches
  const half = Math.ceil(bridge.chains / 2)
  const chains = (count: number): Row => freeSide(work, { ...bridge, chains: count })
  if (from === 'stitches') return joinedTo(stitches, chains(bridge.chains))
  if (from === 'chain') return joinedTo(chains(bridge.chains), stitches)
  return joinedTo(joinedTo(chains(half), stitches), chains(bridge.chains - half))
}

function armhole(work: Work, from: 'stitches' | 'chain' | 'middle', at: Span): Stop | null {
  const opening = longestRun(work.past, work.kinds)
  if (opening === null) return missing(at, 'stitches that were passed over')
  takeUp(work, openingRound(work, opening, from))
  work.around = true
  return null
}

/** The chain that this row itself is worked on, seen from its free side; its far end may be shared by both sides. */
function backAlong(work: Work, chain: Row, endShared: boolean): Row {
  const end = chain.places.length - (endShared ? 1 : 0)
  const order: number[] = []
  for (let at = end - 1; at >= work.begunAt; at -= 1) order.push(at)
  return chosenPlaces(chain, order)
}

/** Whether the place used last holds more than one stitch: the turn around the end of a chain. */
function turnsInGroup(work: Work): boolean {
  const group = work.made.groups[work.made.places.length - 1] ?? -1
  return group >= 0
}

/** On along the free side of the chain that the row is worked on: an oval. */
export function goAround(work: Work, at: Span): void {
  const { below } = work
  if (below === null) return
  const first = turnsInGroup(work)
  const shared = work.choose(`far end ${at.start}`, 2) === 0 ? first : !first
  takeUp(work, backAlong(work, below, shared))
  work.around = true
}

/** Positions of the foundation that are worked into: those before them were only chained to turn. */
function foundationUsed(work: Work, foundation: FabricRow): readonly number[] {
  const used = [...usedPlaces(work.past, foundation).keys()].sort((a, b) => a - b)
  const last = used.at(-1)
  if (last === undefined) return foundation.row.places.map((_, at) => at)
  return Array.from({ length: last + 1 }, (_, at) => at)
}

function otherSide(work: Work, at: Span): Stop | null {
  // The chain between two pieces is there from both sides.
  if (work.bridge > 0) return null
  if (work.below?.foundation === true && work.made.places.length > 0) {
    goAround(work, at)
    return null
  }
  const foundation = foundationOf(work.past)
  if (foundation === null) return missing(at, 'chain that the piece was begun on')
  const free = chosenPlaces(foundation.row, foundationUsed(work, foundation))
  // From the far end back: the row has been worked the other way.
  takeUp(work, { ...(foundation.row.circular ? free : turned(free, false)), foundation: false, ring: false })
  work.around = work.made.places.length > 0
  return null
}

/** Places of a row with one loop free. */
function looseIn(work: Work, row: FabricRow): readonly number[] {
  return [...usedPlaces(work.past, row)].flatMap(([at, loops]) => (loops === 3 ? [] : [at])).sort((a, b) => a - b)
}

function freeLoops(work: Work, number: number | null, at: Span): Stop | null {
  const of = number === null ? null : rowNumbered(work.past, number)
  // Of the row just below all loops are free still.
  if (number !== null && of === work.past?.last) return null
  for (const row of of === null ? rowsOf(work.past) : [of]) {
    const loose = looseIn(work, row)
    if (loose.length === 0) continue
    takeUp(work, chosenPlaces(row.row, loose))
    return null
  }
  return of === null ? missing(at, 'loops left free') : earlierRow(work, of)
}

function earlierRow(work: Work, of: FabricRow): null {
  if (of !== work.past?.last) takeUp(work, of.row)
  return null
}

/** Turns to the places that a source names. */
export function workSource(work: Work, { source, at }: StepOf<'source'>): Stop | null {
  const row = 'row' in source && source.row !== null ? forSize(source.row, work.size) : null
  return from(work, source, row, at)
}

function from(work: Work, source: Source, row: number | null, at: Span): Stop | null {
  switch (source.kind) {
    case 'unworked':
      return unworked(work, row, at)
    case 'otherSide':
      return otherSide(work, at)
    case 'freeLoops':
      return freeLoops(work, row, at)
    case 'piece':
      return workPiece(work, source, at)
    case 'opening':
      return armhole(work, source.from, at)
    case 'row': {
      const of = row === null ? null : rowNumbered(work.past, row)
      return of === null ? missing(at, `a row numbered ${row ?? 'so'}`) : earlierRow(work, of)
    }
  }
}

/** The ends of the rows so far, one for each: the side of the piece. */
export function takeUpRowEnds(work: Work): void {
  const rows = [...rowsOf(work.past)].filter((row) => !row.row.foundation)
  const end = kindNumber(work.kinds, { what: 'rowEnd' })
  takeUp(work, {
    places: rows.map(() => end),
    groups: [],
    names: [],
    refs: () => rows.map((row) => row.row.refs()[0] ?? -1),
    circular: work.below?.circular ?? false,
    ring: false,
    foundation: false,
  })
}
