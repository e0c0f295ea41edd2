import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import { takePattern } from '../phrase/pattern.ts'
import { readTimes } from '../phrase/times.ts'
import type { Reader } from '../reader.ts'
import { attempt, passClause, peek, take, takeNumber, takeOrdinal, textAt } from '../reader.ts'
import { readLength } from './length.ts'

/** How many rows something goes on for. */
export type Extent =
  | { readonly kind: 'rows'; readonly count: Count }
  /** So many times through all the rows named; `more` where the words say that the first time is not among them. */
  | { readonly kind: 'times'; readonly count: Count; readonly more: boolean }
  /** Until the piece, or this part of it, is so long (cm). */
  | { readonly kind: 'length'; readonly centimetres: Count; readonly wholePiece: boolean }
  /** Up to the row with a number. */
  | { readonly kind: 'through'; readonly row: Count }
  /** Until the piece has so many rows. */
  | { readonly kind: 'inAll'; readonly count: Count }
  /** Until something that no number is given for. */
  | { readonly kind: 'open' }
  /** Until the row has so many stitches. */
  | { readonly kind: 'stitches'; readonly count: Count }

export const rowWord = /^(?:row|rows|rnd|rnds|round|rounds|rd|rds)$/

function until(reader: Reader): boolean {
  return take(reader, 'until', 'till', 'til', 'to')
}

/** What is measured by itself, from where it begins. */
const part =
  /^(?:armholes?|yoke|cap|thumb|border|edging|ribbing|rib|hem|band|strap|straps|opening|slit|neck|neckline|cuff|brim)$/

function untilLength(reader: Reader): Extent | null {
  const opens = until(reader)
  if (!opens && !take(reader, 'for')) return null
  const from = reader.at
  for (let passed = 0; passed < 12 && reader.at < reader.end && textAt(reader) !== '.'; passed += 1) {
    const found = attempt(reader, readLength)
    if (found !== null) {
      const ofPart = reader.words.slice(from, reader.at).some(({ text }) => part.test(text))
      passClause(reader)
      return { kind: 'length', centimetres: found, wholePiece: opens && !ofPart }
    }
    reader.at += 1
  }
  return null
}

/** `until there are 47 (49, 53) sts`, `until 47 sts rem`, `to 47 sts` */
function untilStitches(reader: Reader): Extent | null {
  const opens = until(reader)
  if (!opens) return null
  take(reader, 'there', 'you')
  take(reader, 'are', 'is', 'have')
  take(reader, 'only', 'a', 'total')
  take(reader, 'of')
  const count = takeNumber(reader)
  if (count === null || rowWord.test(textAt(reader))) return null
  const from = reader.at
  while (!atEnd(reader) && reader.at - from < 5) reader.at += 1
  return atEnd(reader) ? { kind: 'stitches', count } : null
}

function atEnd(reader: Reader): boolean {
  return reader.at >= reader.end || /^[.,;]$/.test(textAt(reader))
}

/** `until there are 24 rows`, `until it fits around the wrist, about 24 rows` */
function untilRows(reader: Reader): Extent | null {
  if (!take(reader, 'until', 'till', 'til')) return null
  for (; reader.at < reader.end && textAt(reader) !== '.'; reader.at += 1) {
    const word = peek(reader)
    const noun = peek(reader, 1)
    if (word?.kind !== 'number' || word.ordinal || !rowWord.test(noun?.text ?? '')) continue
    while (reader.at < reader.end && textAt(reader) !== '.') reader.at += 1
    return { kind: 'inAll', count: word.count }
  }
  return null
}

/** `until it fits around the wrist`, `for desired length`, `to length desired` */
function untilSomething(reader: Reader): Extent | null {
  const wished =
    /^(?:for|to) (?:the |your )?(?:(?:desired|required|preferred|needed|wished) (?:length|size|height|width)|(?:length|size) (?:desired|required|wanted|needed))(?= |$)/
  if (takePattern(reader, wished) !== null) return { kind: 'open' }
  if (!take(reader, 'until', 'till', 'til')) return null
  while (reader.at < reader.end && textAt(reader) !== '.') {
    if (peek(reader)?.kind === 'number') return null
    reader.at += 1
  }
  return { kind: 'open' }
}

/** `to Row 24`, `through Row 24`, `until Row 24 is complete` */
function untilRow(reader: Reader): Extent | null {
  const from = reader.at
  const opens = until(reader) || take(reader, 'through', 'thru')
  if (!opens) return null
  take(reader, 'end', 'the')
  take(reader, 'of')
  if (!rowWord.test(textAt(reader))) {
    const row = takeOrdinal(reader)
    if (row === null || !rowWord.test(textAt(reader)) || reader.at === from) return null
    reader.at += 1
    return { kind: 'through', row }
  }
  reader.at += 1
  const row = takeNumber(reader)
  if (row === null) return null
  attempt(reader, (inner) =>
    take(inner, 'is', 'has') && take(inner, 'complete', 'completed', 'done', 'been') ? true : null,
  )
  take(reader, 'completed', 'worked', 'inclusive', 'incl')
  return { kind: 'through', row }
}

/** `for 12 more rows`, `12 rows`, `a total of 12 rows` */
export function readRows(reader: Reader): Count | null {
  take(reader, 'for', 'over')
  take(reader, 'the', 'a', 'another')
  take(reader, 'next', 'following', 'foll', 'total', 'further')
  take(reader, 'of')
  const count = takeNumber(reader) ?? (take(reader, 'one') ? everySize(1, reader.vocabulary.sizes) : null)
  if (count === null) return null
  take(reader, 'more', 'further', 'additional')
  if (!rowWord.test(textAt(reader))) return null
  reader.at += 1
  take(reader, 'more')
  attempt(reader, (inner) => (take(inner, 'in') && take(inner, 'all', 'total') ? true : null))
  return count
}

function forRows(reader: Reader): Extent | null {
  const count = readRows(reader)
  return count === null ? null : { kind: 'rows', count }
}

const oneMore: Readonly<Record<string, number>> = { again: 1, once: 1, twice: 2, thrice: 3 }

/** `4 more times`, `(4 more times)`, `another 4 times`, `for the 2nd time` */
function times(reader: Reader): Extent | null {
  const opens = take(reader, '(', '[')
  const another = take(reader, 'another', 'a', 'further')
  take(reader, 'further')
  const word = oneMore[textAt(reader)]
  const found = attempt(reader, (inner) => readTimes(inner, false))
  if (found === null && word === undefined) return null
  if (found?.kind === 'until') return null
  if (found === null) reader.at += 1
  const more = take(reader, 'more', 'again') || another || found?.kind === 'more'
  if (opens && !take(reader, ')', ']')) return null
  const count = found?.count ?? everySize(word ?? 1, reader.vocabulary.sizes)
  return { kind: 'times', count, more }
}

/** `until …`, `for 12 rows`, `4 more times`; null where the words say nothing of the kind. */
export function readExtent(reader: Reader): Extent | null {
  take(reader, ',', ';', '–')
  const found = firstExtent(reader)
  // `for 60 more rows or until it measures 50 cm`: the first of the two.
  if (found !== null && take(reader, 'or')) passClause(reader)
  return found
}

function firstExtent(reader: Reader): Extent | null {
  return (
    attempt(reader, untilStitches) ??
    attempt(reader, untilRow) ??
    attempt(reader, forRows) ??
    attempt(reader, untilLength) ??
    attempt(reader, times) ??
    attempt(reader, untilRows) ??
    attempt(reader, untilSomething)
  )
}

/** `, ending with a WS row`: which row is last follows from how many there are. */
export function passEnding(reader: Reader): void {
  attempt(reader, (inner) => {
    take(inner, ',', ';')
    if (!take(inner, 'ending', 'ends', 'end', 'finishing')) return null
    if (!take(inner, 'with', 'on', 'after')) return null
    passClause(inner)
    return true
  })
}
