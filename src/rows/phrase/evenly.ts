import type { Count } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import { attempt, one, passClause, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'

const changes: Readonly<Record<string, 1 | -1>> = {
  inc: 1,
  increase: 1,
  increasing: 1,
  dec: -1,
  decrease: -1,
  decreasing: -1,
}

export interface Change {
  readonly change: 1 | -1
  readonly count: Count
}

function doubled(count: Count): Count {
  return count.map((value) => (value === null ? null : 2 * value))
}

/** `each end`, `both ends`, `each side`, `beg and end`; `beg`, `one end`, `neck edge` */
function ends(reader: Reader): 1 | 2 | null {
  take(reader, 'at', 'on')
  take(reader, 'the')
  const both = take(reader, 'each', 'both')
  const single = !both && take(reader, 'one', 'beg', 'beginning', 'end', 'start', 'neck', 'armhole')
  if (!both && !single) return null
  if (take(reader, 'and')) {
    take(reader, 'at')
    return take(reader, 'end') ? 2 : null
  }
  take(reader, 'end', 'ends', 'side', 'sides', 'edge', 'edges')
  return both ? 2 : 1
}

/** `dec 1 st at each end`: what it changes in the whole row. */
export function readEnds(reader: Reader): Change | null {
  const change = changes[textAt(reader)]
  if (change === undefined) return null
  reader.at += 1
  const count = takeNumber(reader) ?? one(reader)
  take(reader, 'st', 'sts', 'stitch', 'stitches')
  const number = ends(reader)
  if (number === null) return null
  return { change, count: number === 2 ? doubled(count) : count }
}

function evenly(reader: Reader): (Change & { readonly over: Count | null }) | null {
  const first = take(reader, 'evenly')
  const change = changes[textAt(reader)]
  if (change === undefined) return null
  reader.at += 1
  const count = takeNumber(reader)
  if (count === null) return null
  take(reader, 'st', 'sts', 'stitch', 'stitches')
  if (!(first || take(reader, 'evenly'))) return null
  take(reader, 'spaced')
  take(reader, 'over', 'across', 'around')
  take(reader, 'the', 'these', 'next')
  const over = takeNumber(reader)
  passClause(reader)
  return { change, count, over }
}

/**
 * Shaping that settles only the number of stitches.
 *
 *     inc 7 evenly over 93     dec 9 sts evenly     dec 1 st at each end
 *     ^
 */
export const evenlyPhrase: Phrase = {
  name: 'evenly',
  opens: (reader) => textAt(reader) === 'evenly' || changes[textAt(reader)] !== undefined,
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const spread = attempt(reader, evenly)
    const change = spread ?? attempt(reader, readEnds)
    if (change === null) return null
    if (spread === null) passRow(reader)
    const at = spanSince(reader, from)
    const { stitch } = reader
    return [{ kind: 'evenly', change: change.change, count: change.count, over: spread?.over ?? null, stitch, at }]
  },
}

function passRow(reader: Reader): void {
  take(reader, 'of', 'this')
  take(reader, 'the', 'this')
  take(reader, 'row', 'rnd', 'round')
}
