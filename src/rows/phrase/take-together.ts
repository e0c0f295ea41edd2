import type { Phrase, Reader } from '../reader.ts'
import { namesShaping, numberAt, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { anyStitch, readTarget } from './target.ts'

function opens(reader: Reader): boolean {
  return numberAt(reader) !== null || /^(?:take|taking|the|next)$/.test(textAt(reader))
}

/**
 * Stitches taken together, of the stitch that the row is worked in.
 *
 *     10 dc, take 2 together     work the next 2 together     2 together
 *            ^
 */
export const takeTogetherPhrase: Phrase = {
  name: 'take together',
  opens: (reader) => namesShaping(reader) && opens(reader),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    take(reader, 'take', 'taking')
    take(reader, 'the')
    take(reader, 'next')
    const legs = takeNumber(reader)
    const of = readTarget(reader, false) ?? anyStitch
    if (legs === null || !take(reader, 'together', 'tog')) return null
    if (take(reader, 'as')) take(reader, 'one')
    const where = { kind: 'next', count: legs, of } as const
    return [{ kind: 'together', stitch: reader.stitch, name: null, legs, where, at: spanSince(reader, from) }]
  },
}
