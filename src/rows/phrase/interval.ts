import { everySize } from '../count.ts'
import type { Reader } from '../reader.ts'
import { take, takeOrdinal, textAt } from '../reader.ts'
import type { Interval } from '../step.ts'

const rows = /^(?:rows?|rnds?|rounds?)$/

/**
 * Which of the places in turn, after `every`.
 *
 *     1 dc in every other st     2 dc in every fifth st     6 tr in every alternate loop
 *                   ^^^^^
 */
export function readInterval(reader: Reader): Interval | null {
  const { sizes } = reader.vocabulary
  if (take(reader, 'other', 'alternate')) return { every: everySize(2, sizes), before: everySize(0, sizes) }
  const every = takeOrdinal(reader)
  if (every === null || rows.test(textAt(reader)) || every.some((value) => value !== null && value < 2)) return null
  return { every, before: every.map((value) => (value === null ? null : value - 1)) }
}
