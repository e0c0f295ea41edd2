import type { Phrase, Reader } from '../reader.ts'
import { attempt, maximalDepth, spanSince, take, textAt } from '../reader.ts'
import { readItems } from '../stated/items.ts'
import type { Counting, Step, Times } from '../step.ts'
import { readCounting } from './counting.ts'
import { markerPhrase } from './marker.ts'
import { partsOf } from './parts.ts'
import { isNote, isRemark } from './remark.ts'
import { readStandsFor } from './stands-for.ts'
import { readPlaces } from './stitch.ts'
import { readTimes } from './times.ts'

/** After brackets and paired stars `4 times` means four in all. */
export function inAll(times: Times): Times {
  return times.kind === 'said' ? { kind: 'exactly', count: times.count } : times
}

/** `(the skipped 2 ch count as a dc)` */
const skippedChains = /^(?:the|these|this|skipped|missed|beg|beginning|turning)$/

function content(reader: Reader, close: number): readonly Step[] | null {
  const open = reader.at
  reader.at = open + 1
  const marker = attempt(reader, (inner) => (markerPhrase.opens(inner) ? markerPhrase.read(inner) : null))
  if (marker !== null && reader.at === close) {
    reader.at = close + 1
    return marker
  }
  reader.at = open
  const counting = skippedChains.test(textAt(reader, 1)) ? attempt(reader, readCounting) : null
  if (counting !== null && reader.at === close + 1) return [{ kind: 'remark', counting, at: spanSince(reader, open) }]
  reader.at = open + 1
  if (isRemark(reader, close)) return remark(reader, open, close)
  reader.depth += 1
  const steps = reader.depth > maximalDepth ? null : reader.sequence(reader, close)
  reader.depth -= 1
  reader.at = open + 1
  if (steps === null && isNote(reader, close)) return remark(reader, open, close)
  if (steps !== null) reader.at = close + 1
  return steps
}

function remark(reader: Reader, open: number, close: number): readonly Step[] {
  reader.at = open
  const counting = attempt(reader, readCounting)
  reader.at = close + 1
  return [{ kind: 'remark', counting, at: spanSince(reader, open) }]
}

/** `3 ch. (to stand for 1st tr.), …`: a sentence seems to end before it. */
function readMeaning(reader: Reader): Counting | null {
  const before = reader.words[reader.at - 2]?.text ?? ''
  return /^chs?$|^chains?$/.test(before) && reader.words[reader.at - 1]?.text === '.' ? readStandsFor(reader) : null
}

/** `(2 dc, ch 2, 2 dc) in next sp` */
function inOnePlace(reader: Reader, steps: readonly Step[], from: number): readonly Step[] | null {
  take(reader, 'all')
  take(reader, 'worked')
  const parts = partsOf(steps)
  if (parts === null || parts.length === 0) return null
  const places = readPlaces(reader)
  if (places.length === 0) return null
  const at = spanSince(reader, from)
  return places.map((where) => ({ kind: 'work', parts, where, at }))
}

function counted(reader: Reader, steps: readonly Step[], from: number): readonly Step[] | null {
  const times = readTimes(reader, true)
  if (times === null) return null
  return [{ kind: 'repeat', body: steps, stop: null, ending: null, times: inAll(times), at: spanSince(reader, from) }]
}

/** What ends a step in so many words. */
const stepEnd =
  /^(?:sts?|stitch|stitches|chs?|sps?|spaces?|loops?|lps?|ring|around|across|end|sides?|[hd]?t?[sdt]?[cr]s?)$/

/** `2 sc in each ch (24 sc), sl st in next st`: what a part of the row comes to, right after its words. */
function countsOnly({ words, vocabulary }: Reader, open: number, close: number): boolean {
  if (!stepEnd.test(words[open - 1]?.text ?? '')) return false
  const items = readItems(words.slice(open + 1, close), vocabulary)
  return items?.every(({ of }) => of.kind === 'key' || of.kind === 'total') ?? false
}

/**
 * Brackets: a loop, a group in one place, or a remark, told apart by what follows.
 *
 *     (sc in next 4 sts, inc) 6 times     [2 dc, ch 1] in next sp     (corner made)
 *     ^
 */
export const bracketPhrase: Phrase = {
  name: 'bracket',
  opens: (reader) => /^[([{<]$/.test(textAt(reader)),
  read: (reader) => {
    const from = reader.at
    const close = reader.closing.get(from)
    if (close === undefined || close >= reader.end) return null
    const counting = attempt(reader, (inner) =>
      /count/.test(textAt(inner, 1)) ? readCounting(inner) : readMeaning(inner),
    )
    if (counting !== null) return [{ kind: 'remark', counting, at: spanSince(reader, from) }]
    const steps = content(reader, close)
    if (steps === null) return null
    return (
      attempt(reader, (inner) => counted(inner, steps, from)) ??
      attempt(reader, (inner) => inOnePlace(inner, steps, from)) ?? [
        countsOnly(reader, from, close)
          ? { kind: 'remark', counting: null, at: spanSince(reader, from) }
          : { kind: 'sequence', body: steps, at: spanSince(reader, from) },
      ]
    )
  },
}
