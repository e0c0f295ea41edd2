import type { Span } from '../../diagnostic/index.ts'
import { everySize, forSize } from '../count.ts'
import { ringRow } from '../fabric.ts'
import type { Accepts, Target, Where } from '../step.ts'
import { alongBridge, inDepth, isBeyond, isChainOnly, toRowEnds, turnsCorner } from './beyond.ts'
import { beginAtSpace, leaveSlipped, meansRing, nounBefore, pastHalfUsed } from './ellipsis.ts'
import { countWords, extentEnd, isNowhere, noSuchPlace, target } from './extent.ts'
import { advanceEvery } from './interval.ts'
import { toNth } from './nth.ts'
import { firstPlace } from './opening.ts'
import { passAfterSkip, passOver, passSpaces } from './passed.ts'
import { advance, countMeant, fromEnd } from './place.ts'
import { goesIntoRing, isAnySpace, isRing } from './ring.ts'
import { goAround, workSource } from './source.ts'
import { downSpoke } from './spoke.ts'
import type { Stop, Work } from './state.ts'
import { mostStitches } from './state.ts'
import { intoTurning, loopBefore, turningPlace, withoutTurningChain } from './turning.ts'

/** What is done in so many places that have been found, one after the other. */
export type InPlaces = (places: number) => Stop | null

const anyPlace: Target = [{ kind: 'stitch', said: false }]

function nothingThere(work: Work, at: Span): Stop | null {
  return work.below === null ? { why: 'nothing there', at } : null
}

/** `dc in each dc` where stitches are left, but no dc among them. */
function nothingMeant(work: Work, of: Target, at: Span): Stop | null {
  const there = countMeant(work, [{ kind: 'stitch', said: true }], work.cursor, work.end)
  return there === 0 ? null : noSuchPlace(of, at)
}

/** A place that lies among stitches: a space, a special stitch, a corner. */
function isBetween(accept: Accepts): boolean {
  return accept.kind === 'space' || accept.kind === 'special' || accept.kind === 'corner' || accept.kind === 'gap'
}

/** After a stitch the next space is the one right behind it. */
function backToGap(work: Work, of: Target): void {
  const isSpace = (accept: Accepts): boolean => accept.kind === 'gap' && accept.between !== 'stitches'
  const fromGap = work.lastTarget?.some((accept) => accept.kind === 'gap') ?? false
  if (of.every(isSpace) && !fromGap && work.cursor > 0 && work.last === work.cursor - 1) work.cursor -= 1
}

function eachPlace(work: Work, where: Where & { kind: 'each' }, at: Span, inPlaces: InPlaces): Stop | null {
  const end = extentEnd(work, where.until, at)
  if (typeof end !== 'number') return end
  const of = target(work, where.of)
  const outer = work.end
  // A round that begins with slip stitches to a space begins in that space.
  const arrived = work.yarnJoined || work.below?.circular === true
  if (work.slips > 0 && arrived && work.stitches === 0 && work.cursor === work.last + 1) {
    work.cursor = work.last
  }
  work.end = where.until.kind === 'end' && work.namesTurningChain ? withoutTurningChain(work, end) : end
  backToGap(work, of)
  const { interval } = where
  const from = work.cursor
  const done = interval === undefined ? advance(work, of, Number.POSITIVE_INFINITY) : advanceEvery(work, of, interval)
  if (done > 0 && where.until.kind !== 'reaching') passSpaces(work, from, work.end, of)
  let stop = done > 0 ? inPlaces(done) : null
  if (done === 0 && stop === null && where.until.kind === 'end') stop = nothingMeant(work, where.of, at)
  work.end = outer
  // What lies before the end and is not meant has been passed over by name.
  if (stop === null) {
    // After the last space or shell the stitches beyond it are still there for the words that follow.
    if (!(where.until.kind === 'end' && of.every(isBetween))) work.cursor = Math.max(work.cursor, end)
    work.lastTarget = of
    work.swept = work.cursor
    if (where.until.kind === 'end' && work.namesTurningChain) work.cursor = withoutTurningChain(work, end)
  }
  return stop
}

/** Where the row below has been worked to its end: on around the chain, or along the side. Returns how many are found. */
function further(work: Work, of: Target, asked: number, at: Span): number {
  const { below } = work
  const oval = below?.foundation === true && !below.circular && work.style === 'round'
  if (work.around || below === null || work.cursor < below.places.length || !oval) return 0
  goAround(work, at)
  return advance(work, of, asked)
}

/** Yarn is joined in a place, which stitches without a place of their own then begin in. */
function beginAtYarn(work: Work, of: Target): void {
  const unsaid = of.every((accept) => accept.kind === 'stitch' && !accept.said)
  const joined = work.yarnJoined && work.stitches === 0 && work.cursor === work.last + 1
  if (unsaid && joined) work.cursor = work.last
}

function nextPlaces(work: Work, where: Where & { kind: 'next' }, at: Span, inPlaces: InPlaces): Stop | null {
  const asked = forSize(where.count, work.size)
  if (asked < 0) return { why: 'below zero', at, number: asked }
  // A ring takes any number of stitches: `12 dc` needs no place of its own.
  const inRing = goesIntoRing(work, where)
  if (asked > mostStitches) return { why: 'too many', at, most: mostStitches }
  const of = (where.elliptic === true ? nounBefore(work, at) : null) ?? target(work, where.of)
  if (of.every(isAnySpace) && meansRing(work, at)) return inPlaces(1)
  beginAtYarn(work, of)
  if (where.bare === true && standsOn(work, of)) return inLast(work, inPlaces)
  passAfterSkip(work, of)
  backToGap(work, of)
  leaveSlipped(work, of)
  beginAtSpace(work, of)
  const from = work.cursor
  const used = inRing ? asked : advance(work, of, asked) || further(work, of, asked, at) || intoTurning(work, of, asked)
  if (used > 0) passSpaces(work, from, work.last, of)
  if (used > 0 && from === 0) work.firstTaken = true
  const stop = used > 0 ? inPlaces(used) : null
  if (stop !== null || used === asked) return stop
  if (isNowhere(work, of)) return noSuchPlace(of, at)
  return { why: 'too few', at, wanted: countWords(asked, of), there: used }
}

function oneOf(work: Work, of: Target): Where & { kind: 'next' } {
  return { kind: 'next', count: everySize(1, work.size + 1), of }
}

/** Once more into the place used last. */
function inLast(work: Work, inPlaces: InPlaces): Stop | null {
  work.into = [work.last]
  return inPlaces(1)
}

/** Whether nothing but an opening chain has been made, and the hook stands on a place that is meant. */
function standsOn(work: Work, of: Target): boolean {
  if (work.last < 0 || work.cursor !== work.last + 1 || work.stitches > work.turningStitches) return false
  return countMeant(work, of, work.last, work.last + 1) > 0
}

/** The first place of the row, also when an opening chain stands on it already. Later in the row it is the next. */
function firstPlaces(work: Work, where: Where & { kind: 'first' }, at: Span, inPlaces: InPlaces): Stop | null {
  if (forSize(where.count, work.size) === 1 && standsOn(work, target(work, where.of))) return inLast(work, inPlaces)
  if (isBackAtFirst(work) || isBackAtCorner(work, where.of))
    return samePlace(work, { kind: 'same', start: true }, at, inPlaces)
  return nextPlaces(work, { ...where, kind: 'next' }, at, inPlaces)
}

/** `dc in beg corner sp` at the end of a round that began in a corner: no further one is left. */
function isBackAtCorner(work: Work, of: Target): boolean {
  if (work.below?.circular !== true || work.made.places.length === 0 || !of.every((accept) => accept.kind === 'corner'))
    return false
  const begun = work.made.bases.find((base) => base >= 0) ?? -1
  return begun >= 0 && countMeant(work, of, begun, begun + 1) > 0 && countMeant(work, of, work.cursor, work.end) === 0
}

/** Whether a round has been worked to where it began. */
export function isBackAtFirst(work: Work): boolean {
  if (work.made.places.length === 0 || work.below?.circular !== true) return false
  return work.cursor > 1 && work.cursor >= work.end - work.passed
}

/** `in skipped st`: into what was passed over last, without going on; where nothing was, the next. */
function skippedPlaces(work: Work, where: Where & { kind: 'skipped' }, at: Span, inPlaces: InPlaces): Stop | null {
  const count = forSize(where.count, work.size)
  const there = countMeant(work, anyPlace, work.skippedFrom, work.skippedTo)
  if (there === 0) return nextPlaces(work, { kind: 'next', count: where.count, of: anyPlace }, at, inPlaces)
  if (count > there) return { why: 'too few', at, wanted: `${count} skipped stitches`, there }
  for (let left = count; left > 0; work.skippedFrom += 1) {
    if (countMeant(work, anyPlace, work.skippedFrom, work.skippedFrom + 1) === 0) continue
    work.into.push(work.skippedFrom)
    left -= 1
  }
  return inPlaces(count)
}

function lastPlaces(work: Work, where: Where & { kind: 'last' }, at: Span, inPlaces: InPlaces): Stop | null {
  const of = target(work, where.of)
  const count = forSize(where.count, work.size)
  const outer = work.end
  if (work.namesTurningChain && count > 1) work.end = withoutTurningChain(work, work.end)
  const from = fromEnd(work, of, count)
  work.end = outer
  if (from < 0) {
    const there = countMeant(work, of, work.cursor, work.end)
    return { why: 'too few', at, wanted: countWords(count, of), there }
  }
  passOver(work, from, of)
  work.cursor = from
  work.sub = 0
  return nextPlaces(work, { ...where, kind: 'next' }, at, inPlaces)
}

function samePlace(work: Work, { start, noun }: Where & { kind: 'same' }, at: Span, inPlaces: InPlaces): Stop | null {
  if (work.below?.ring === true && work.below.places.length === 0) return inPlaces(1)
  if (start && work.last >= 0) {
    if (work.below === null || work.below.places.length === 0) return { why: 'nothing there', at }
    work.into = [work.made.bases.find((base) => base >= 0) ?? work.last]
    return inPlaces(1)
  }
  if (work.last < 0) {
    const first = firstPlace(work)
    if (first < 0) return nothingThere(work, at) ?? { why: 'no such place', at, wanted: 'stitches' }
    work.last = first
    work.cursor = first + 1
  }
  pastHalfUsed(work, noun)
  return inLast(work, inPlaces)
}

function turningChain(
  work: Work,
  { space, loop }: Where & { kind: 'turningChain' },
  at: Span,
  inPlaces: InPlaces,
): Stop | null {
  const found = turningPlace(work, space)
  const instead = loop === undefined || loop === null ? null : loopBefore(work, loop, found)
  if (instead !== null)
    return nextPlaces(
      work,
      { kind: 'next', count: new Array<number>(work.size + 1).fill(1), of: instead },
      at,
      inPlaces,
    )
  if (found < 0) return { why: 'no such place', at, wanted: 'turning chain' }
  passOver(work, found, [])
  work.last = found
  work.cursor = found + 1
  work.sub = 0
  return inLast(work, inPlaces)
}

/**
 * Goes to the place or places a phrase names and does `inPlaces` there, at most once.
 * `fromHook` and `ring` are settled by the caller, who knows what is made there.
 */
export function goTo(work: Work, where: Where, at: Span, inPlaces: InPlaces): Stop | null {
  work.into = []
  const further = where.kind === 'each' || where.kind === 'next' ? inDepth(work, where) : null
  if (further !== null) return goTo(work, further, at, inPlaces)
  // `6 sc in magic ring` as the first words of a piece makes the ring too.
  if (isRing(where) && work.below === null) work.below = ringRow
  if (turnsCorner(work, where)) return inPlaces(1)
  const down = downSpoke(work, where, at, inPlaces)
  if (down !== undefined) return down
  if (work.bridge > 0 && isChainOnly(where)) return alongBridge(work, where, at, inPlaces)
  const missing = where.kind === 'same' || where.kind === 'ring' ? null : nothingThere(work, at)
  if (missing !== null) return missing
  if ('of' in where && where.of.some((accept) => accept.kind === 'rowEnd')) toRowEnds(work, where.of)
  if (isBeyond(work, where)) workSource(work, { kind: 'source', source: { kind: 'otherSide' }, at })
  switch (where.kind) {
    case 'next':
      return nextPlaces(work, where, at, inPlaces)
    case 'each':
      return eachPlace(work, where, at, inPlaces)
    case 'first':
      return firstPlaces(work, where, at, inPlaces)
    case 'last':
      return lastPlaces(work, where, at, inPlaces)
    case 'nth':
      return toNth(work, where, at) ?? nextPlaces(work, oneOf(work, where.of), at, inPlaces)
    case 'same':
      return samePlace(work, where, at, inPlaces)
    case 'turningChain':
      return turningChain(work, where, at, inPlaces)
    case 'skipped':
      return skippedPlaces(work, where, at, inPlaces)
    case 'ring':
      work.intoRing = true
      return inPlaces(1)
    case 'aside':
    case 'fromHook':
      return inPlaces(1)
  }
}
