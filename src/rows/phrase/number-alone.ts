import type { Count } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import { atClauseEnd, namesShaping, numberAt, one, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { readPlaces } from './stitch.ts'
import { anyStitch } from './target.ts'

const prepositions = /^(?:in|into|on|over|under)$/

function takeCount(reader: Reader): Count | null {
  return takeNumber(reader) ?? (take(reader, 'one') ? one(reader) : null)
}

/** `(1, inc) x 6`: a number by itself beside increases or decreases. */
function isAmongShaping(reader: Reader): boolean {
  const before = reader.words[reader.at - 1]?.text ?? '('
  const after = textAt(reader, 1)
  return namesShaping(reader) && /^[(,[*]$/.test(before) && (/^[,)\]*]$/.test(after) || reader.at + 1 === reader.end)
}

/**
 * A number without a stitch: as many of the stitch that the row is worked in.
 *
 *     1 dc in the first, 2 in the next     1 in each     three in the corner st     3 black, 2 gold
 *                        ^
 */
export const numberAlonePhrase: Phrase = {
  name: 'number alone',
  opens: (reader) =>
    (numberAt(reader) !== null || textAt(reader) === 'one') &&
    (prepositions.test(textAt(reader, 1)) || textAt(reader, 1) === 'coloured' || isAmongShaping(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const count = takeCount(reader)
    if (count === null) return null
    const plain = take(reader, 'coloured') || atClauseEnd(reader)
    if (plain) {
      const each = [{ kind: 'stitch', stitch: reader.stitch, count: one(reader) } as const]
      return [{ kind: 'work', parts: each, where: { kind: 'next', count, of: anyStitch }, at: spanSince(reader, from) }]
    }
    const places = readPlaces(reader)
    const parts = [{ kind: 'stitch', stitch: reader.stitch, count } as const]
    const at = spanSince(reader, from)
    return places.length === 0 ? null : places.map((where) => ({ kind: 'work', parts, where, at }))
  },
}
