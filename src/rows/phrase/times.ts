import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import type { Reader } from '../reader.ts'
import { atClauseEnd, attempt, passClause, take, takeAll, takeNumber, takeStitch } from '../reader.ts'
import type { Times } from '../step.ts'
import { stitchWords } from './nouns.ts'
import { readUntil } from './until.ts'

const inWords: Readonly<Record<string, number>> = { once: 1, twice: 2, thrice: 3 }

function counted(reader: Reader, count: Count): Times | null {
  const more = take(reader, 'more')
  if (!take(reader, 'times', 'time', 'x')) return null
  if (more || take(reader, 'more')) return { kind: 'more', count }
  if (take(reader, 'in', 'total', 'altogether')) {
    take(reader, 'all', 'total')
    return { kind: 'exactly', count }
  }
  return { kind: 'said', count }
}

function byWord(reader: Reader): Times | null {
  for (const [word, value] of Object.entries(inWords)) {
    if (!take(reader, word)) continue
    const count = everySize(value, reader.vocabulary.sizes)
    return { kind: take(reader, 'more') ? 'more' : 'said', count }
  }
  return null
}

/** `x 6` and, for brackets, `* 6` and a bare `6` */
function multiplied(reader: Reader, afterBracket: boolean): Times | null {
  const marked = take(reader, 'x') || (afterBracket && take(reader, '*'))
  const count = takeNumber(reader)
  if (count === null) return null
  if (marked) {
    take(reader, 'times')
    return { kind: 'exactly', count }
  }
  return afterBracket && atClauseEnd(reader) ? { kind: 'exactly', count } : null
}

/** `until there are 12 tr in all`, `until you have 16 dc, counting the ch 4 as one` */
export function readUntilMade(reader: Reader): Times | null {
  if (!take(reader, 'until', 'till', 'til')) return null
  if (!(takeAll(reader, 'there', 'are') || takeAll(reader, 'you', 'have'))) return null
  take(reader, 'a', 'total')
  take(reader, 'of')
  const count = takeNumber(reader)
  const stitch = takeStitch(reader)
  if (count === null || (stitch === null && !take(reader, ...stitchWords))) return null
  if (take(reader, 'in')) take(reader, 'all', 'total', 'the')
  take(reader, 'altogether', 'ring', 'circle')
  if (takeAll(reader, ',', 'counting')) passClause(reader)
  return atClauseEnd(reader) ? { kind: 'made', count, stitch } : null
}

/**
 * How often something is repeated. `said` leaves open whether the first time is counted.
 *
 *     rep from * 4 more times
 *                ^^^^^^^^^^^^
 */
export function readTimes(reader: Reader, afterBracket: boolean): Times | null {
  take(reader, 'for')
  if (takeAll(reader, 'a', 'total', 'of')) {
    const count = takeNumber(reader)
    return count !== null && take(reader, 'times') ? { kind: 'exactly', count } : null
  }
  const number = attempt(reader, (inner) => {
    const count = takeNumber(inner)
    return count === null ? null : counted(inner, count)
  })
  if (number !== null) return number
  const word = attempt(reader, byWord) ?? attempt(reader, (inner) => multiplied(inner, afterBracket))
  if (word !== null) return word
  const until = attempt(reader, readUntil)
  return until === null ? null : { kind: 'until', until }
}
