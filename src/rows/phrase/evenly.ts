import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import { atClauseEnd, attempt, one, passClause, spanSince, take, takeNumber, takeStitch, textAt } from '../reader.ts'
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

/** A change spread over stitches. */
export interface Evenly extends Change {
  /** Null for all the stitches there are. */
  readonly over: Count | null
  /** Whether the words say how many stitches the row has afterwards. */
  readonly whole: boolean
}

/** The same change at so many ends. */
export function sumOf(count: Count, ends: 1 | 2): Count {
  return ends === 1 ? count : count.map((value) => (value === null ? null : 2 * value))
}

/** `inc`, `decrease`: which way; the reader moves past it. */
export function readChange(reader: Reader): 1 | -1 | null {
  const change = changes[textAt(reader)]
  if (change === undefined) return null
  reader.at += 1
  return change
}

const singleEnds =
  'one beg beginning end start neck armhole front side inner outer inside outside shoulder right left center centre same opposite'.split(
    ' ',
  )

/** `each end`, `both ends`, `each side`, `beg and end`; `beg`, `one end`, `neck edge` */
export function readWhichEnds(reader: Reader): 1 | 2 | null {
  take(reader, 'at', 'on')
  take(reader, 'the')
  const both = take(reader, 'each', 'both')
  const single = !both && take(reader, ...singleEnds)
  if (!both && !single) return null
  if (take(reader, 'and')) {
    take(reader, 'at')
    return take(reader, 'end') ? 2 : null
  }
  const named = take(reader, 'end', 'ends', 'side', 'sides', 'edge', 'edges')
  return both ? (named ? 2 : null) : 1
}

/** `dec 1 st at each end`: what it changes in the whole row. */
export function readEnds(reader: Reader): Change | null {
  const change = readChange(reader)
  if (change === null) return null
  const count = takeNumber(reader) ?? one(reader)
  take(reader, 'one', 'a')
  if (!take(reader, 'st', 'sts', 'stitch', 'stitches')) reader.stitch = takeStitch(reader) ?? reader.stitch
  const ends = readWhichEnds(reader)
  return ends === null ? null : { change, count: sumOf(count, ends) }
}

/** `to 80 sts`: how many there are afterwards, which tells over how many it goes. */
function overBefore(reader: Reader, { change, count }: Change): Count | null {
  if (!take(reader, 'to')) return null
  const to = takeNumber(reader)
  take(reader, 'st', 'sts', 'stitch', 'stitches')
  return to?.map((value, size) => (value === null ? null : value - change * (count[size] ?? 0))) ?? null
}

/** `hdc evenly around, increasing 10 sts`: said of the stitches before. */
function saidBefore(reader: Reader): boolean {
  return atClauseEnd(reader) && reader.words.slice(0, reader.at).some((word) => word.text === 'evenly')
}

/** `inc 7 evenly over 93`, `dec 9 sts evenly`, `increase 20 evenly to 80 sts` */
export function readEvenly(reader: Reader): Evenly | null {
  const first = take(reader, 'evenly')
  const change = readChange(reader)
  const count = change === null ? null : takeNumber(reader)
  if (change === null || count === null) return null
  take(reader, 'st', 'sts', 'stitch', 'stitches')
  if (!(first || take(reader, 'evenly') || saidBefore(reader))) return null
  take(reader, 'spaced')
  const before = attempt(reader, (inner) => overBefore(inner, { change, count }))
  if (before !== null) return { change, count, over: before, whole: true }
  if (take(reader, 'over', 'across', 'around')) take(reader, 'the', 'these', 'next')
  return { change, count, over: takeNumber(reader), whole: false }
}

/** `even over 93`: nothing changes. */
function unchanged(reader: Reader): Evenly | null {
  if (!(take(reader, 'even') && take(reader, 'over'))) return null
  take(reader, 'the', 'these', 'next')
  const over = takeNumber(reader)
  return over === null ? null : { change: 1, count: everySize(0, reader.vocabulary.sizes), over, whole: false }
}

function evenly(reader: Reader): Evenly | null {
  const found = readEvenly(reader)
  if (found !== null) passClause(reader)
  return found
}

/**
 * Shaping that settles only the number of stitches.
 *
 *     inc 7 evenly over 93     dec 9 sts evenly     dec 1 st at each end     work even over 93
 *     ^                                                                           ^
 */
export const evenlyPhrase: Phrase = {
  name: 'evenly',
  opens: (reader) => /^even(?:ly)?$/.test(textAt(reader)) || changes[textAt(reader)] !== undefined,
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const spread = attempt(reader, evenly) ?? attempt(reader, unchanged)
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
