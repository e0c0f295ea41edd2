import type { Span } from '../../diagnostic/index.ts'
import { forSize } from '../count.ts'
import { foundationOf, rowNumbered } from '../past.ts'
import type { Target, Where } from '../step.ts'
import { countWords } from './extent.ts'
import { nextMeant } from './place.ts'
import { takeUp, takeUpRowEnds } from './source.ts'
import type { Stop, Work } from './state.ts'
import type { InPlaces } from './where.ts'

/*
 * Places that are not those of the row below, though no words before have turned to them.
 */

const anyPlace: Target = [{ kind: 'stitch', said: true }]

export function isChainOnly(where: Where): where is Where & { kind: 'next' | 'each' } {
  return (where.kind === 'next' || where.kind === 'each') && where.of.every((accept) => accept.kind === 'chain')
}

/** Along the chain between two pieces, from either side. */
export function alongBridge(
  work: Work,
  where: Where & { kind: 'next' | 'each' },
  at: Span,
  inPlaces: InPlaces,
): Stop | null {
  const asked = where.kind === 'next' ? forSize(where.count, work.size) : work.bridge
  return asked > work.bridge
    ? { why: 'too few', at, wanted: countWords(asked, where.of), there: work.bridge }
    : inPlaces(asked)
}

/** `3 sc in corner` between two edges of a piece that has no corner of its own there. */
export function turnsCorner(work: Work, where: Where): boolean {
  if (!work.alongEdges || !('of' in where) || where.kind === 'each') return false
  return where.of.every((accept) => accept.kind === 'corner') && nextMeant(work, where.of) < 0
}

/** A place further down: all of an older row are places of their own, a single one is reached past a stitch of the row below. */
export function inDepth(work: Work, where: Where & { kind: 'next' | 'each' }): Where | null {
  if (where.depth === undefined) return null
  const { depth, ...plain } = where
  const number = forSize(depth.number, work.size)
  const last = work.past?.last
  const isBelow = depth.kind === 'row' && (last?.number === number || last === undefined)
  const older = depth.kind === 'row' && !isBelow ? rowNumbered(work.past, number) : null
  const whole = where.kind === 'each' && work.made.places.length === 0
  if (older !== null && work.deepIn === older.order) return plain
  if (older !== null && (whole || (work.goesDeep && work.stitches === 0))) {
    takeUp(work, older.row)
    work.deepIn = older.order
    return plain
  }
  return isBelow ? plain : { ...plain, of: anyPlace }
}

/** Chains that are named after the row below has been worked to its end are those of the foundation. */
export function isBeyond(work: Work, where: Where): boolean {
  // Once a row, and by words of its own: a repeat that runs out has run out.
  if (work.around || work.loops > 0) return false
  if (!('of' in where) || !where.of.every((accept) => accept.kind === 'chain')) return false
  const done = work.made.places.length > 0 && work.below?.foundation === false && work.cursor >= work.end
  return done && foundationOf(work.past) !== null
}

/** The side of the piece is taken up when it is first named. */
export function toRowEnds(work: Work, of: Target): void {
  if (nextMeant(work, of) < 0) takeUpRowEnds(work)
}
