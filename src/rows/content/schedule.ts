import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import { chainPhrase } from '../phrase/chain.ts'
import type { Change } from '../phrase/evenly.ts'
import { readChange, readEnds, readEvenly, readWhichEnds, sumOf } from '../phrase/evenly.ts'
import { joinPhrase } from '../phrase/slip.ts'
import { readTimes } from '../phrase/times.ts'
import { turnPhrase } from '../phrase/turn.ts'
import type { Reader } from '../reader.ts'
import { attempt, one, peek, spanSince, take, takeAll, takeNumber, takeStitch, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { rowWord } from './extent.ts'
import { readTail } from './tail.ts'
import type { Timing } from './timing.ts'
import { readTimings } from './timing.ts'

/** So many times: plain rows, and then one that is worked as `last` says. */
export interface Leg extends Timing {
  readonly last: readonly Step[]
  /** How many stitches more each of its shaped rows has; negative for fewer. */
  readonly by: Count
}

/** Rows that are plain but for the last of each leg's group. */
export interface Schedule {
  readonly even: readonly Step[]
  readonly legs: readonly Leg[]
  /** What is done in the same rows besides. */
  readonly besides: readonly (readonly Leg[])[]
  readonly then: readonly Step[]
}

/** A leg as it is read: `change` null for rows that are all plain. */
interface Part extends Timing {
  readonly change: (Change & { readonly over: Count | null }) | null
  readonly at: Span
}

const mostParts = 200

/** One stitch in each stitch. */
export function plainRow(reader: Reader, stitch: Stitch, at: Span): readonly Step[] {
  const count = everySize(1, reader.vocabulary.sizes)
  const where = { kind: 'each', of: [{ kind: 'stitch', said: true }], until: { kind: 'end' } } as const
  return [{ kind: 'work', parts: [{ kind: 'stitch', stitch, count }], where, at }]
}

function passJoint(reader: Reader): void {
  take(reader, ',', ';', '.')
  take(reader, 'and')
  take(reader, 'then')
}

/** As many as can be read, with a comma or `then` between them. */
function several<T>(reader: Reader, read: (reader: Reader) => T | null): readonly T[] {
  const found: T[] = []
  let end = reader.at
  for (let next = attempt(reader, read); next !== null && found.length < mostParts; next = attempt(reader, read)) {
    found.push(next)
    end = reader.at
    passJoint(reader)
  }
  reader.at = end
  return found
}

function timed(reader: Reader, change: Change): readonly Part[] | null {
  const from = reader.at
  const timings = readTimings(reader)
  if (timings === null) return null
  const at = spanSince(reader, from)
  return timings.map((timing) => ({ ...timing, change: { ...change, over: null }, at }))
}

/** `dec 2 sts every other rnd`: in the whole row */
function readWhole(reader: Reader): Change | null {
  const change = readChange(reader)
  const count = change === null ? null : takeNumber(reader)
  if (change === null || count === null || !take(reader, 'st', 'sts', 'stitch', 'stitches')) return null
  return /^(?:every|each|on|in|this|next|evenly)$/.test(textAt(reader)) ? { change, count } : null
}

/** `dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times` */
function slope(reader: Reader): readonly Part[] | null {
  const change = attempt(reader, readEnds) ?? attempt(reader, readWhole)
  if (change === null) return null
  const legs = several(reader, (inner) => timed(inner, change)).flat()
  return legs.length === 0 ? null : legs
}

/** `on every 4th row, dec 1 st at each end 6 times` */
function timedBefore(reader: Reader): readonly Part[] | null {
  const from = reader.at
  const timings = readTimings(reader)
  if (timings === null) return null
  take(reader, ',', ':')
  const change = readEnds(reader)
  if (change === null) return null
  const [first, ...others] = timings
  const times = others.length === 0 ? timesSaid(reader) : null
  if (first === undefined) return null
  const at = spanSince(reader, from)
  const own = { ...first, times: times ?? first.times }
  return [own, ...others].map((timing) => ({ ...timing, change: { ...change, over: null }, at }))
}

function timesSaid(reader: Reader): Count | null {
  const said = attempt(reader, (inner) => readTimes(inner, false))
  return said === null || said.kind === 'until' ? null : said.count
}

/** `dec at neck edge of every row 5 sts once, 3 sts twice` */
function curve(reader: Reader): readonly Part[] | null {
  const change = readChange(reader)
  const ends = change === null ? null : readWhichEnds(reader)
  const timing = ends === null ? null : (readTimings(reader)?.[0] ?? null)
  if (change === null || ends === null || timing === null) return null
  const { every } = timing
  const runs = several(reader, (inner): Part | null => {
    const from = inner.at
    const count = takeNumber(inner)
    if (count === null || !take(inner, 'st', 'sts', 'stitch', 'stitches')) return null
    const times = timesSaid(inner)
    if (times === null) return null
    const whole = { change, count: sumOf(count, ends), over: null }
    return { every, times, until: null, change: whole, at: spanSince(inner, from) }
  })
  return runs.length === 0 ? null : runs
}

/** `work 3 rows even`, `work even for 3 rows`, `3 rows straight` */
function plainRows(reader: Reader): readonly Part[] | null {
  const from = reader.at
  take(reader, 'work', 'cont', 'continue')
  const before = take(reader, 'even', 'straight')
  take(reader, 'for')
  const count = takeNumber(reader)
  if (count === null || !rowWord.test(textAt(reader))) return null
  reader.at += 1
  if (!(before || take(reader, 'even', 'straight', 'plain') || takeAll(reader, 'without', 'shaping'))) return null
  return [{ every: one(reader), times: count, until: null, change: null, at: spanSince(reader, from) }]
}

/** `increase 20 evenly to 80 sts`, `inc 12 sts evenly in next rnd`: a row of its own */
function around(reader: Reader): readonly Part[] | null {
  const from = reader.at
  const change = readEvenly(reader)
  if (change === null || !(isNextRow(reader) || change.whole)) return null
  return [{ every: one(reader), times: one(reader), until: null, change, at: spanSince(reader, from) }]
}

function isNextRow(reader: Reader): boolean {
  const found = attempt(reader, (inner) => {
    if (!(take(inner, 'in', 'on') && take(inner, 'next', 'foll', 'following'))) return null
    return rowWord.test(textAt(inner)) ? inner.at : null
  })
  if (found !== null) reader.at += 1
  return found !== null
}

function part(reader: Reader): readonly Part[] | null {
  return (
    attempt(reader, curve) ??
    attempt(reader, slope) ??
    attempt(reader, timedBefore) ??
    attempt(reader, plainRows) ??
    attempt(reader, around)
  )
}

/** `at the same time,` */
function passMeanwhile(reader: Reader): true | null {
  take(reader, ',', ';', '.')
  take(reader, 'and', 'while')
  const said = takeAll(reader, 'at', 'the', 'same', 'time') || takeAll(reader, 'at', 'same', 'time')
  if (!(said || take(reader, 'meanwhile', 'also'))) return null
  take(reader, ',', ':')
  return true
}

function besides(reader: Reader): readonly (readonly Part[])[] {
  return several(reader, (inner) => {
    if (passMeanwhile(inner) === null) return null
    const parts = several(inner, part).flat()
    return parts.length === 0 ? null : parts
  })
}

/** `Working in dc,` and `Dc across,` say what the plain stitches are. */
function passStitch(reader: Reader): true | null {
  const works = take(reader, 'work', 'working', 'worked', 'cont', 'continue', 'continuing', 'keeping')
  const within = take(reader, 'in')
  if (works && takePattern(reader)) return endsClause(reader)
  const stitch = takeStitch(reader)
  if (stitch === null || stitch.base === 'slipStitch') return null
  if (take(reader, 'in')) {
    if (!(take(reader, 'each', 'every') && take(reader, 'st', 'stitch'))) return null
    take(reader, 'across', 'around')
  } else if (!(take(reader, 'across', 'around') || works || within)) return null
  reader.stitch = stitch
  return endsClause(reader)
}

function takePattern(reader: Reader): boolean {
  return take(reader, 'pattern', 'patt', 'pat', 'even', 'straight')
}

function endsClause(reader: Reader): true | null {
  take(reader, 'correct', 'and', 'but')
  return /^[,;.]$/.test(textAt(reader)) || /^(?:dec|inc)/.test(textAt(reader)) ? true : null
}

/** `ch 1, turn,` before what a row is: it belongs to each of its rows. */
export function readOpening(reader: Reader): readonly Step[] {
  const steps: Step[] = []
  for (const phrase of [turnPhrase, chainPhrase, turnPhrase]) {
    steps.push(...((phrase.opens(reader) ? attempt(reader, phrase.read) : null) ?? []))
    while (take(reader, ',', '.', ';'));
  }
  return steps
}

/** `ch 1,` before the shaping, and what its plain stitches are. */
function opening(reader: Reader): { readonly steps: readonly Step[]; readonly works: boolean } {
  const steps = readOpening(reader)
  const works = attempt(reader, passStitch) !== null
  attempt(reader, (inner) => (take(inner, 'continue', 'cont', 'begin', 'start') && take(inner, 'to') ? true : null))
  while (take(reader, ',', '.', ';'));
  return { steps, works }
}

function closing(reader: Reader): readonly Step[] {
  const steps: Step[] = []
  for (const phrase of [joinPhrase, turnPhrase]) {
    while (take(reader, ',', '.', ';'));
    take(reader, 'and')
    steps.push(...((phrase.opens(reader) ? attempt(reader, phrase.read) : null) ?? []))
  }
  return steps
}

/** `Sc across, decreasing 1 st at each end of row`: a single row. */
function once(reader: Reader): readonly Part[] | null {
  const from = reader.at
  const change = readEnds(reader)
  if (change === null) return null
  take(reader, 'of')
  take(reader, 'the', 'this')
  if (rowWord.test(textAt(reader))) reader.at += 1
  const at = spanSince(reader, from)
  return [{ every: one(reader), times: one(reader), until: null, change: { ...change, over: null }, at }]
}

/**
 * Shaping laid over rows that are otherwise plain: several rows in one sentence.
 *
 *     Dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times, then work 2 rows even.
 *     ^
 */
export function readSchedule(reader: Reader): Schedule | null {
  const from = reader.at
  const before = opening(reader)
  const read = several(reader, part).flat()
  const parts = read.length === 0 && before.works ? (attempt(reader, once) ?? []) : read
  const others = besides(reader)
  const after = closing(reader)
  const then = readTail(reader)
  if (parts.length === 0 || then === null || peek(reader) !== undefined) return null
  if (isSingle(parts, before.steps.length + after.length === 0) && others.length === 0) return null
  const { stitch } = reader
  const row = (steps: readonly Step[]): readonly Step[] => [...before.steps, ...steps, ...after]
  const even = row(plainRow(reader, stitch, spanSince(reader, from)))
  const leg = (each: Part): Leg => legOf(each, even, row, stitch)
  return { even, legs: parts.map(leg), besides: others.map((other) => other.map(leg)), then }
}

/** One row by itself is no schedule, and `work 4 rows even` has a form of its own. */
function isSingle([first, ...others]: readonly Part[], bare: boolean): boolean {
  if (first === undefined || others.length > 0) return false
  return first.change === null ? bare : first.change.over !== null
}

function legOf(
  { every, times, until, change, at }: Part,
  even: readonly Step[],
  row: (steps: readonly Step[]) => readonly Step[],
  stitch: Stitch,
): Leg {
  if (change === null) return { every, times, until, last: even, by: every.map(() => 0) }
  const step: Step = { kind: 'evenly', change: change.change, count: change.count, over: change.over, stitch, at }
  const by = change.count.map((count) => (count === null ? null : change.change * count))
  return { every, times, until, last: row([step]), by }
}
