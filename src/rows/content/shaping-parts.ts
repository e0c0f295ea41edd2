import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import type { Change } from '../phrase/evenly.ts'
import { readChange, readEnds, readEvenly, readWhichEnds, sumOf } from '../phrase/evenly.ts'
import { readTimes } from '../phrase/times.ts'
import type { Reader } from '../reader.ts'
import { attempt, one, spanSince, take, takeAll, takeNumber, textAt } from '../reader.ts'
import { rowWord } from './extent.ts'
import type { Timing } from './timing.ts'
import { readTimings } from './timing.ts'

/** A leg as it is read: `change` null for rows that are all plain. */
export interface Part extends Timing {
  readonly change: (Change & { readonly over: Count | null }) | null
  readonly at: Span
}

const mostParts = 200

function passJoint(reader: Reader): void {
  take(reader, ',', ';', '.')
  take(reader, 'and')
  take(reader, 'then')
}

/** As many as can be read, with a comma or `then` between them. */
export function several<T>(reader: Reader, read: (reader: Reader) => T | null): readonly T[] {
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

export function readPart(reader: Reader): readonly Part[] | null {
  return (
    attempt(reader, curve) ??
    attempt(reader, slope) ??
    attempt(reader, timedBefore) ??
    attempt(reader, plainRows) ??
    attempt(reader, around)
  )
}

/** `Sc across, decreasing 1 st at each end of row`: a single row. */
export function readOnce(reader: Reader): readonly Part[] | null {
  const from = reader.at
  const change = readEnds(reader)
  if (change === null) return null
  take(reader, 'of')
  take(reader, 'the', 'this')
  if (rowWord.test(textAt(reader))) reader.at += 1
  const at = spanSince(reader, from)
  return [{ every: one(reader), times: one(reader), until: null, change: { ...change, over: null }, at }]
}
