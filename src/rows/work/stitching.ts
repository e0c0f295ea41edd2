import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { forSize } from '../count.ts'
import { habitKey } from '../habits.ts'
import type { Part, Step, StepOf, Where } from '../step.ts'
import { opensFoundation } from './first-skip.ts'
import { ahead, isUnderWay, picotAt, toChainFromHook, workPicot } from './from-hook.ts'
import { alone, makeClosed, makeInPlaces, makeParts } from './make.ts'
import { moveMarker } from './marker.ts'
import { settleOpening } from './opening.ts'
import { overPlaces } from './over-places.ts'
import { beginSpoke, beginsSpoke } from './spoke.ts'
import type { Stop, Work } from './state.ts'
import { goTo, isBackAtFirst } from './where.ts'

/** A special stitch over several places: its steps are worked from here on. */
export type RunSteps = (work: Work, steps: readonly Step[]) => Stop | null

/** `2 dc in next 2 sts`: two in each, or, as some write it, one in each. */
function perPlace(work: Work, step: StepOf<'work'>): readonly Part[] {
  const { where, parts } = step
  const part = parts[0]
  if (where.kind !== 'next' || where.each === true || part?.kind !== 'stitch' || parts.length > 1) return parts
  const places = forSize(where.count, work.size)
  if (places < 2 || forSize(part.count, work.size) !== places) return parts
  // Of three and more it goes without saying that one goes into each, but for a shell in each of three spaces.
  const stitches = where.of.every((accept) => /^(?:stitch|named|chain)$/.test(accept.kind))
  const single = work.choose(habitKey('each', step.at.start), 2, places > 2 && stitches ? 1 : 0) === 1
  return single ? [{ ...part, count: part.count.map((count) => (count === null ? null : 1)) }] : parts
}

/** A foundation stitch brings its own base. */
function isFoundationStitch(parts: readonly Part[]): boolean {
  return parts.every((part) => part.kind === 'stitch' && part.stitch.style === 'foundation')
}

function foundationStitches(work: Work, step: StepOf<'work'>): Stop | null {
  const times = step.where.kind === 'next' ? forSize(step.where.count, work.size) : 1
  for (let made = 0; made < times; made += 1) {
    const stop = makeParts(work, step.parts, alone, step.at)
    if (stop !== null) return stop
  }
  return null
}

function isPicotOnly(parts: readonly Part[]): boolean {
  return parts.every(
    (part) =>
      part.kind === 'picot' ||
      (part.kind === 'special' &&
        Array.isArray(part.special.makes) &&
        part.special.makes.every((own) => own.kind === 'picot')),
  )
}

export function workStitches(work: Work, step: StepOf<'work'>, run: RunSteps): Stop | null {
  const { where, parts, at } = step
  if (where.kind === 'nth' && opensFoundation(work))
    return workStitches(work, { ...step, where: { kind: 'fromHook', nth: where.nth, counting: null, said: true } }, run)
  if (where.kind === 'fromHook' && isUnderWay(work, where))
    return workStitches(work, { ...step, where: ahead(work, where) }, run)
  if (where.kind === 'fromHook') return inChainFromHook(work, where, parts, at)
  const settled = settleOpening(work)
  if (settled !== null) return settled
  work.into = []
  if (isPicotOnly(parts)) return makeParts(work, parts, alone, at)
  if (isFoundationStitch(parts)) return foundationStitches(work, step)
  if (where.kind === 'ring' && work.below !== null && !work.below.ring)
    return { why: 'no such place', at, wanted: 'ring' }
  // `dc in first sc` after the last chains of a round closes it.
  if (closesRound(work, where, parts)) {
    work.joined = true
    work.closedInLoop = work.kinds.list[work.made.places.at(-1) ?? -1]?.what === 'space'
    return null
  }
  const over = overPlaces(work, step, run)
  if (over !== 'in one place') return over
  if (opensInPlace(work, step)) return openInPlace(work, step)
  const each = perPlace(work, step)
  const from = work.made.places.length
  const stop = goTo(work, where, at, (places) => makeInPlaces(work, each, places, at))
  moveMarker(work, where, from)
  return stop
}

/** `(ch 3, 2 dc, ch 2, 3 dc) in same sp` at the beginning of a row: its first chain is the opening one. */
function opensInPlace(work: Work, { parts, where }: StepOf<'work'>): boolean {
  const [first, second] = parts
  if (first?.kind !== 'chain' || second === undefined || forSize(first.count, work.size) < 2) return false
  const { below } = work
  const begins = work.made.places.length === 0 && work.stitches === 0 && (below?.foundation !== true || below.ring)
  if (!begins) return false
  return /^(?:same|first|ring)$/.test(where.kind) || (where.kind === 'next' && isOne(work, where.count))
}

function isOne(work: Work, count: Count): boolean {
  return forSize(count, work.size) === 1
}

function openInPlace(work: Work, { parts, where, at }: StepOf<'work'>): Stop | null {
  const [first, ...rest] = parts
  if (first?.kind !== 'chain') return null
  const chains = forSize(first.count, work.size)
  return goTo(work, where, at, () => {
    const { into } = work
    work.opening = { at, chains, counting: null }
    return settleOpening(work) ?? makeInto(work, rest, into, at)
  })
}

function makeInto(work: Work, parts: readonly Part[], into: number[], at: Span): Stop | null {
  work.into = into
  return makeInPlaces(work, parts, 1, at)
}

function inChainFromHook(
  work: Work,
  where: Where & { kind: 'fromHook' },
  parts: readonly Part[],
  at: Span,
): Stop | null {
  if (beginsSpoke(work, where, false)) {
    beginSpoke(work, where, true)
    return makeInPlaces(work, parts, 1, at)
  }
  if (work.opening === null && picotAt(work, forSize(where.nth, work.size))) return workPicot(work)
  return toChainFromHook(work, where, parts, at) ?? makeInPlaces(work, parts, 1, at)
}

/** `…, ch 2, dc in first sc`: one stitch back at the first closes the round. */
function closesRound(work: Work, where: Where, parts: readonly Part[]): boolean {
  const [part] = parts
  const single = part?.kind === 'stitch' && parts.length === 1 && forSize(part.count, work.size) === 1
  return single && where.kind === 'first' && (isBackAtFirst(work) || isBridged(work))
}

/** The chains made last lie over the stitches that are left before the first. */
function isBridged({ kinds, made, below, cursor, end, passed, loops }: Work): boolean {
  const last = kinds.list[made.places.at(-1) ?? -1]
  return (
    loops === 0 &&
    below?.circular === true &&
    cursor > 1 &&
    last?.what === 'space' &&
    cursor + last.chains >= end - passed
  )
}

/** What so many decreases make: one stitch each, over `legs` of the places gone into. */
function makeTogether(work: Work, step: StepOf<'together'>, count: number, legs: number): Stop | null {
  const { stitch, name, at } = step
  if (!work.traces) return makeClosed(work, { stitch, name, count: step.legs.map(() => count) }, alone, at)
  const closed = { stitch, name, count: step.legs.map(() => 1) }
  for (let made = 0; made < count; made += 1) {
    const [base = -1, ...further] = work.into.slice(made * legs, (made + 1) * legs)
    const stop = makeClosed(work, closed, { ...alone, base }, at)
    if (stop !== null) return stop
    for (const leg of further) work.made.again.push({ made: work.made.places.length - 1, base: leg })
  }
  return null
}

export function workTogether(work: Work, step: StepOf<'together'>): Stop | null {
  const settled = settleOpening(work)
  if (settled !== null) return settled
  const legs = forSize(step.legs, work.size)
  if (step.where.kind === 'same' || step.where.kind === 'ring') {
    return goTo(work, step.where, step.at, (places) => makeTogether(work, step, places, 1))
  }
  if (step.where.kind === 'fromHook') return { why: 'no such place', at: step.at, wanted: 'stitches to work together' }
  let taken = 0
  const stop = goTo(work, step.where, step.at, (places) => {
    taken = places
    return makeTogether(work, step, legs > 0 ? Math.floor(places / legs) : 0, legs)
  })
  if (stop !== null || taken % legs === 0) return stop
  const done = Math.floor(taken / legs)
  return {
    why: 'repeat',
    at: step.at,
    done,
    asked: null,
    left: taken % legs,
    uses: legs,
  }
}
