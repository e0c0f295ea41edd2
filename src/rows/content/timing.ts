import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import { readTimes } from '../phrase/times.ts'
import type { Reader } from '../reader.ts'
import { attempt, one, take, takeNumber, takeOrdinal, textAt } from '../reader.ts'
import { rowWord } from './extent.ts'

/** Every so manieth row, so many times. */
export interface Timing {
  readonly every: Count
  /** Null where it goes on as long as the rows do, or until there are so many stitches. */
  readonly times: Count | null
  readonly until: Count | null
}

function passRowWord(reader: Reader): boolean {
  if (!rowWord.test(textAt(reader))) return false
  reader.at += 1
  return true
}

/** `other`, `alt`, `RS`, `4th`: every how manieth row */
function interval(reader: Reader): Count | null {
  const { sizes } = reader.vocabulary
  take(reader, 'foll', 'following')
  if (take(reader, 'other', 'alt', 'alternate', 'rs', 'ws')) return everySize(2, sizes)
  return takeOrdinal(reader)
}

/** `until 47 sts rem`, `until there are 47 sts`, `to 47 sts` */
export function readUntilStitches(reader: Reader): Count | null {
  return attempt(reader, (inner) => {
    take(inner, ',')
    if (!take(inner, 'until', 'till', 'til', 'to')) return null
    take(inner, 'there', 'you', 'only')
    take(inner, 'are', 'have', 'is')
    take(inner, 'only')
    const count = takeNumber(inner)
    if (count === null || rowWord.test(textAt(inner)) || textAt(inner) === 'last') return null
    for (let passed = 0; passed < 4 && /^\p{L}/u.test(textAt(inner)); passed += 1) inner.at += 1
    return count
  })
}

interface Said {
  readonly count: Count
  readonly more: boolean
}

function timesSaid(reader: Reader): Said | null {
  return attempt(reader, (inner) => {
    take(inner, ',')
    const opens = take(inner, '(', '[')
    take(inner, 'a', 'another')
    const said = readTimes(inner, false)
    if (said === null || said.kind === 'until') return null
    if (take(inner, 'in')) take(inner, 'all', 'total')
    take(inner, 'altogether', 'total')
    if (opens && !take(inner, ')', ']')) return null
    return { count: said.count, more: said.kind === 'more' }
  })
}

function lessOne(count: Count): Count {
  return count.map((value) => (value === null ? null : Math.max(0, value - 1)))
}

/** `every 4th row 6 times`, `each row`, `alt rows 4 times`, `every RS row until 30 sts rem` */
function everyRow(reader: Reader): Timing | null {
  const every = take(reader, 'every', 'each')
  const between = interval(reader)
  if (!(every || between !== null) || !passRowWord(reader)) return null
  const said = timesSaid(reader)
  const until = said === null ? readUntilStitches(reader) : null
  return { every: between ?? one(reader), times: said?.count ?? null, until }
}

/** `next row`, `next 8 rows`, `foll 4 alt rows`, `next RS row` */
function nextRows(reader: Reader): Timing | null {
  if (!take(reader, 'next', 'foll', 'following')) return null
  const count = takeNumber(reader)
  const between = interval(reader)
  if (!passRowWord(reader)) return null
  if (count === null) return { every: one(reader), times: one(reader), until: null }
  return { every: between ?? one(reader), times: count, until: null }
}

/** `next and every foll 4th row 6 times`, `next row and every other row 3 times more`, `next and foll 4 alt rows` */
function nextAndEvery(reader: Reader): readonly Timing[] | null {
  if (!take(reader, 'next', 'foll', 'following', 'this')) return null
  take(reader, 'rs', 'ws')
  const separate = passRowWord(reader)
  take(reader, ',')
  if (!take(reader, 'and', 'then')) return null
  take(reader, 'then')
  take(reader, 'of', 'on', 'in', 'at')
  const from = reader.at
  const rest = attempt(reader, everyRow) ?? attempt(reader, nextRows)
  if (rest === null) return null
  const own = { every: one(reader), times: one(reader), until: null }
  // The first of them is among the times, unless these are more or a number of rows of their own.
  const words = reader.words.slice(from, reader.at).map(({ text }) => text)
  const apart =
    words.includes('more') || /^(?:foll|following)$/.test(words[0] ?? '') || (separate && !words.includes('in'))
  const times = rest.times === null || apart ? rest.times : lessOne(rest.times)
  return [own, { ...rest, times }]
}

/**
 * When a row is shaped.
 *
 *     dec 1 st at each end of every 4th row 6 times
 *                          ^
 */
export function readTimings(reader: Reader): readonly Timing[] | null {
  take(reader, 'of', 'on', 'in', 'at')
  take(reader, 'the')
  const both = attempt(reader, nextAndEvery)
  if (both !== null) return both
  const single = attempt(reader, everyRow) ?? attempt(reader, nextRows)
  return single === null ? null : [single]
}
