import type { Count } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import { numberAt, one, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { readPlaces } from './stitch.ts'

const prepositions = /^(?:in|into|on|over|under)$/

function takeCount(reader: Reader): Count | null {
  return takeNumber(reader) ?? (take(reader, 'one') ? one(reader) : null)
}

/**
 * A number without a stitch: as many of the stitch that the row is worked in.
 *
 *     1 dc in the first, 2 in the next     1 in each     three in the corner st
 *                        ^
 */
export const numberAlonePhrase: Phrase = {
  name: 'number alone',
  opens: (reader) => (numberAt(reader) !== null || textAt(reader) === 'one') && prepositions.test(textAt(reader, 1)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const count = takeCount(reader)
    if (count === null) return null
    const places = readPlaces(reader)
    const parts = [{ kind: 'stitch', stitch: reader.stitch, count } as const]
    const at = spanSince(reader, from)
    return places.length === 0 ? null : places.map((where) => ({ kind: 'work', parts, where, at }))
  },
}
