import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, passClause, peek, spanSince, take, takeNumber, takeOrdinal, takeStitch, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { chainPhrase } from './chain.ts'
import type { Change } from './evenly.ts'
import { readChange, readEnds, readEvenly, readWhichEnds, sumOf } from './evenly.ts'
import { joinPhrase } from './slip.ts'
import { readTimes } from './times.ts'
import { turnPhrase } from './turn.ts'

/** So many times: plain rows, and then one that is worked as `last` says. */
export interface Leg {
  readonly every: Count
  readonly times: Count
  readonly last: readonly Step[]
}

/** Rows that are plain but for the last of each leg's group. */
export interface Schedule {
  readonly even: readonly Step[]
  readonly legs: readonly Leg[]
}

/** A leg as it is read: `change` null for rows that are all plain. */
interface Part {
  readonly every: Count
  readonly times: Count
  readonly change: (Change & { readonly over: Count | null }) | null
  readonly at: Span
}

const rowWord = /^(?:row|rows|rnd|rnds|round|rounds)$/
const mostParts = 200

/** One stitch in each stitch. */
export function plainRow(reader: Reader, stitch: Stitch, at: Span): readonly Step[] {
  const count = everySize(1, reader.vocabulary.sizes)
  const where = { kind: 'each', of: [{ kind: 'stitch', said: true }], until: { kind: 'end' } } as const
  return [{ kind: 'work', parts: [{ kind: 'stitch', stitch, count }], where, at }]
}

function everyRow(reader: Reader): Count | null {
  take(reader, 'of', 'on', 'in')
  take(reader, 'next', 'foll', 'following')
  take(reader, 'and')
  if (!take(reader, 'every', 'each')) return null
  take(reader, 'foll', 'following')
  const other = take(reader, 'other', 'alt', 'alternate')
  const side = take(reader, 'rs', 'ws')
  const { sizes } = reader.vocabulary
  const every = other || side ? everySize(2, sizes) : (takeOrdinal(reader) ?? everySize(1, sizes))
  if (!rowWord.test(textAt(reader))) return null
  reader.at += 1
  return every
}

function timesSaid(reader: Reader): Count | null {
  const said = attempt(reader, (inner) => readTimes(inner, false))
  return said === null || said.kind === 'until' ? null : said.count
}

/** `of every 4th row 6 times`, `every other row`, `every row 3 times` */
function leg(reader: Reader, change: Change): Part | null {
  const from = reader.at
  const every = everyRow(reader)
  if (every === null) return null
  const times = timesSaid(reader) ?? everySize(1, reader.vocabulary.sizes)
  return { every, times, change: { ...change, over: null }, at: spanSince(reader, from) }
}

function passJoint(reader: Reader): void {
  take(reader, ',', ';')
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

/** `dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times` */
function slope(reader: Reader): readonly Part[] | null {
  const change = readEnds(reader)
  if (change === null) return null
  const legs = several(reader, (inner) => leg(inner, change))
  return legs.length === 0 ? null : legs
}

/** `dec at neck edge of every row 5 sts once, 3 sts twice` */
function curve(reader: Reader): readonly Part[] | null {
  const change = readChange(reader)
  const ends = change === null ? null : readWhichEnds(reader)
  const every = ends === null ? null : everyRow(reader)
  if (change === null || ends === null || every === null) return null
  const runs = several(reader, (inner): Part | null => {
    const from = inner.at
    const count = takeNumber(inner)
    if (count === null || !take(inner, 'st', 'sts', 'stitch', 'stitches')) return null
    const times = timesSaid(inner)
    if (times === null) return null
    const whole = { change, count: sumOf(count, ends), over: null }
    return { every, times, change: whole, at: spanSince(inner, from) }
  })
  return runs.length === 0 ? null : runs
}

/** `work 3 rows even`, `work even for 3 rows` */
function plainRows(reader: Reader): readonly Part[] | null {
  const from = reader.at
  take(reader, 'work', 'cont', 'continue')
  const before = take(reader, 'even')
  take(reader, 'for')
  const count = takeNumber(reader)
  if (count === null || !rowWord.test(textAt(reader))) return null
  reader.at += 1
  if (!(before || take(reader, 'even'))) return null
  return [{ every: everySize(1, reader.vocabulary.sizes), times: count, change: null, at: spanSince(reader, from) }]
}

/** `increase 20 evenly to 80 sts`, `inc 12 sts evenly in next rnd`: a row of its own */
function around(reader: Reader): readonly Part[] | null {
  const from = reader.at
  const change = readEvenly(reader)
  if (change === null || !(isNextRow(reader) || change.whole)) return null
  const once = everySize(1, reader.vocabulary.sizes)
  return [{ every: once, times: once, change, at: spanSince(reader, from) }]
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
  return attempt(reader, curve) ?? attempt(reader, slope) ?? attempt(reader, plainRows) ?? attempt(reader, around)
}

/** `Working in dc,` and `Dc across,` say what the plain stitches are. */
function passStitch(reader: Reader): true | null {
  const works = take(reader, 'work', 'working', 'worked', 'cont', 'continue', 'continuing')
  const within = take(reader, 'in')
  const stitch = takeStitch(reader)
  if (stitch === null || stitch.base === 'slipStitch') return null
  if (take(reader, 'in')) {
    if (!(take(reader, 'each', 'every') && take(reader, 'st', 'stitch'))) return null
    take(reader, 'across', 'around')
  } else if (!(take(reader, 'across', 'around') || works || within)) return null
  if (textAt(reader) !== ',') return null
  reader.stitch = stitch
  return true
}

/** `ch 1,` before the shaping and `, turn` after it belong to each of its rows. */
function opening(reader: Reader): readonly Step[] {
  const steps: Step[] = []
  for (const phrase of [chainPhrase, turnPhrase]) {
    steps.push(...((phrase.opens(reader) ? attempt(reader, phrase.read) : null) ?? []))
    while (take(reader, ',', '.'));
  }
  attempt(reader, passStitch)
  while (take(reader, ',', '.'));
  return steps
}

function closing(reader: Reader): readonly Step[] {
  const steps: Step[] = []
  for (const phrase of [joinPhrase, turnPhrase]) {
    while (take(reader, ',', '.', ';'));
    take(reader, 'and')
    steps.push(...((phrase.opens(reader) ? attempt(reader, phrase.read) : null) ?? []))
  }
  while (take(reader, ',', '.', ';'));
  if (take(reader, 'fasten')) passClause(reader)
  return steps
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
  const parts = several(reader, part).flat()
  const after = closing(reader)
  while (take(reader, '.', ',', ';', ':'));
  const [first, ...others] = parts
  // One row by itself is no schedule, and `work 4 rows even` has a form of its own.
  if (first === undefined || peek(reader) !== undefined) return null
  const bare = before.length + after.length === 0
  if (others.length === 0 && (first.change === null ? bare : first.change.over !== null)) return null
  const { stitch } = reader
  const row = (steps: readonly Step[]): readonly Step[] => [...before, ...steps, ...after]
  const even = row(plainRow(reader, stitch, spanSince(reader, from)))
  const legs = parts.map(({ every, times, change, at }): Leg => {
    const last =
      change === null
        ? even
        : row([{ kind: 'evenly', change: change.change, count: change.count, over: change.over, stitch, at }])
    return { every, times, last }
  })
  return { even, legs }
}
