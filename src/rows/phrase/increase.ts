import { everySize } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import {
  attempt,
  isWordAhead,
  namesShaping,
  numberAt,
  one,
  spanSince,
  take,
  takeNumber,
  takeStitch,
  textAt,
} from '../reader.ts'
import type { Step } from '../step.ts'
import { readPlaces } from './stitch.ts'
import { anyStitch } from './target.ts'

const increaseWords = ['inc', 'incs', 'increase', 'increases']

function numberAfter(reader: Reader) {
  const after = textAt(reader, 1)
  if (after === 'x' && numberAt(reader, 2) !== null) return takeNumber(reader)
  return /^(?:times|time|x|more)$/.test(after) ? null : takeNumber(reader)
}

/**
 * An increase by its name: two stitches of the row's kind in one place.
 *
 *     inc     2 inc     inc in each st around     sc inc
 *     ^
 */
export const increasePhrase: Phrase = {
  name: 'increase',
  opens: (reader) => namesShaping(reader) && (isWordAhead(reader) || numberAt(reader) !== null),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const before = takeNumber(reader)
    if (before === null) take(reader, 'a', 'an', 'one')
    const stitch = attempt(reader, takeStitch) ?? reader.stitch
    // `increase as before` leaves to the rows before where and how.
    if (!take(reader, ...increaseWords) || textAt(reader) === 'as') return null
    const count = before ?? attempt(reader, numberAfter) ?? one(reader)
    const parts = [{ kind: 'stitch', stitch, count: everySize(2, reader.vocabulary.sizes) } as const]
    const places = readPlaces(reader)
    const at = spanSince(reader, from)
    if (places.length === 0) return [{ kind: 'work', parts, where: { kind: 'next', count, of: anyStitch }, at }]
    const single = [{ kind: 'stitch', stitch, count: one(reader) } as const]
    return places.flatMap((where) => {
      const more: Step = { kind: 'work', parts, where, at }
      // `increase in every 4th st`: the others are worked as they are.
      if (where.kind !== 'each' || where.interval === undefined) return [more]
      return [more, { kind: 'work', parts: single, where: { kind: 'each', of: where.of, until: where.until }, at }]
    })
  },
}
