import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { takePattern } from '../phrase/pattern.ts'
import { readSteps } from '../read.ts'
import type { Reader } from '../reader.ts'
import { attempt, passClause, spanSince, take, takeAll, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import type { Extent } from './extent.ts'
import { passEnding, readExtent } from './extent.ts'
import type { RowsNamed } from './rows-named.ts'
import { readRowsNamed } from './rows-named.ts'
import { plainRow } from './schedule.ts'
import { isIdle, readTail } from './tail.ts'
import { readTimings } from './timing.ts'

/** Rows worked again, and how often. */
export interface Again {
  readonly rows: RowsNamed
  readonly extent: Extent | null
  /** `Rep dec row every 4th row`: with plain rows between. */
  readonly spaced: { readonly every: Count; readonly plain: readonly Step[] } | null
}

/** `Rep Rows 3 and 4`: rows worked as earlier ones. */
export interface Reference {
  readonly again: readonly Again[]
  /** Where the words name the rows. */
  readonly at: Span
  /** `increasing 1 st in each row`: whether the rows are said to make more or fewer stitches; null where nothing is said. */
  readonly says: 1 | -1 | null
  /** What is done besides at the end of the last of them. */
  readonly then: readonly Step[]
}

/** `Keeping continuity of pattern,` */
function passLead(reader: Reader): true | null {
  if (!take(reader, 'keeping', 'continuing', 'maintaining', 'working')) return null
  passClause(reader)
  return take(reader, ',') ? true : null
}

const goesBack = /^(?:rep|repeat|work|as)$/

/** `With B,` `Join B with sl st in first sc,`: what is done before the rows, and makes nothing. */
function passStart(reader: Reader): true | null {
  const from = reader.at
  for (let at = from; at + 1 < reader.end; at += 1) {
    const text = reader.words[at]?.text ?? ''
    if (goesBack.test(text) && !/^(?:,|then|and)$/.test(reader.words[at - 1]?.text ?? '')) return null
    if (!/^[,.]$/.test(text) || !goesBack.test(reader.words[at + 1]?.text ?? '')) continue
    const { steps } = readSteps(reader.words.slice(from, at), reader.vocabulary, reader.stitch)
    if (steps === null || !steps.every(isIdle)) return null
    reader.at = at + 1
    return true
  }
  return null
}

type Opening = 'rep' | 'work' | 'bare'

/** `Rep`, `Work`, `Same as`: after the last a number alone names a row. */
function opens(reader: Reader): Opening | null {
  if (attempt(reader, passLead) === null) attempt(reader, passStart)
  take(reader, 'then', 'and', 'now')
  const works = take(reader, 'work', 'worked', 'working', 'cont', 'continue', 'continuing')
  if (works && take(reader, 'to')) return take(reader, 'rep', 'repeat') ? 'rep' : null
  take(reader, 'the', 'by', 'exactly', 'in')
  if (take(reader, 'rep', 'repeat', 'repeating', 'reps')) return 'rep'
  if (take(reader, 'same', 'as', 'like', 'follow', 'following', 'similar', 'identical', 'ditto')) {
    while (take(reader, 'as', 'for', 'to', 'way', 'given', 'in'));
    return 'bare'
  }
  return works ? 'work' : null
}

/** `in pattern`, `as established`, `in this manner`, `alternately`: nothing that is not said already. */
function passManner(reader: Reader): void {
  for (;;) {
    const from = reader.at
    take(reader, ',')
    const alternating =
      take(reader, 'alternately', 'again', 'throughout', 'consecutively') ||
      (take(reader, ';') && take(reader, 'rep') && /^[.,;]?$/.test(textAt(reader))) ||
      (take(reader, 'alternating', 'alternate', 'changing') && takeRest(reader)) ||
      takeAll(reader, 'as', 'established') ||
      takeAll(reader, 'as', 'set') ||
      takeAll(reader, 'in', 'pattern') ||
      takeAll(reader, 'for', 'pattern') ||
      takeAll(reader, 'for', 'patt') ||
      takeAll(reader, 'for', 'pat') ||
      takeAll(reader, 'to', 'form', 'pattern') ||
      takeAll(reader, 'in', 'order') ||
      takeAll(reader, 'in', 'sequence') ||
      inStripes(reader) ||
      lastStitch(reader) ||
      inColour(reader)
    if (alternating) continue
    reader.at = from
    return
  }
}

/** `in the following colors: 1 row B, 2 rows C`, `in stripes of 3 rows A, 3 rows B` */
function inStripes(reader: Reader): boolean {
  const stripes =
    /^in (?:the (?:following|foll) )?(?:colou?rs?|colou?r (?:sequence|order)|stripes|stripe (?:sequence|pattern))(?= |$)/
  if (takePattern(reader, stripes) === null) return false
  while (reader.at < reader.end && textAt(reader) !== '.') reader.at += 1
  return true
}

/** `, working last dc in 3rd ch of ch-4`: where it goes there by itself */
function lastStitch(reader: Reader): boolean {
  if (takePattern(reader, /^(?:working|placing|making) (?:the )?last(?= )/) === null) return false
  passClause(reader)
  return true
}

function takeRest(reader: Reader): boolean {
  passClause(reader)
  return true
}

/** `in A`, `with MC`, `using B` */
function inColour(reader: Reader): boolean {
  const found = attempt(reader, (inner) => {
    if (!take(inner, 'in', 'with', 'using')) return null
    take(inner, 'color', 'colour', 'yarn')
    return take(inner, 'a', 'b', 'c', 'd', 'e', 'mc', 'cc', 'main', 'contrast', 'contrasting') ? true : null
  })
  if (found) take(reader, 'color', 'colour', 'yarn')
  return found !== null
}

/** `every 4th row 3 more times` */
function spacing(reader: Reader, rows: RowsNamed): Again | null {
  const from = reader.at
  take(reader, 'on', 'in', 'at')
  const [timing, ...others] = readTimings(reader) ?? []
  if (timing === undefined || others.length > 0) return null
  const extent: Extent | null =
    timing.times !== null
      ? { kind: 'times', count: timing.times, more: true }
      : timing.until !== null
        ? { kind: 'stitches', count: timing.until }
        : null
  const plain = plainRow(reader, reader.stitch, spanSince(reader, from))
  return { rows, extent, spaced: { every: timing.every, plain } }
}

/** `for the length required`, `to desired length` */
function asLongAs(reader: Reader): Extent | null {
  if (!take(reader, 'for', 'to')) return null
  take(reader, 'the', 'your', 'any')
  take(reader, 'desired', 'required', 'wanted')
  if (!take(reader, 'length', 'depth', 'width', 'size', 'height')) return null
  passClause(reader)
  return { kind: 'open' }
}

function howOften(reader: Reader, rows: RowsNamed): Again {
  passManner(reader)
  const spaced = attempt(reader, (inner) => spacing(inner, rows))
  if (spaced !== null) return spaced
  const extent = attempt(reader, readExtent) ?? attempt(reader, asLongAs)
  passManner(reader)
  passEnding(reader)
  return { rows, extent, spaced: null }
}

function again(reader: Reader): Again | null {
  const how = opens(reader)
  if (how === null) return null
  // `The same.`
  if (how === 'bare' && /^[.,;]?$/.test(textAt(reader)) && reader.words[reader.at - 1]?.text === 'same') {
    return { rows: { kind: 'back', back: 1 }, extent: null, spaced: null }
  }
  const rows = readRowsNamed(reader, how === 'bare')
  return rows === null || (how === 'work' && rows.kind === 'called') ? null : howOften(reader, rows)
}

/** `, then Row 2 once more` */
function further(reader: Reader): Again | null {
  while (take(reader, ',', ';', '.'));
  const then = take(reader, 'then', 'and', 'ending', 'finishing')
  take(reader, 'then')
  take(reader, 'with', 'on', 'rep', 'repeat', 'work', 'by')
  take(reader, 'rep', 'repeat', 'working', 'repeating')
  const rows = then ? readRowsNamed(reader, false) : null
  return rows === null || rows.kind === 'called' ? null : howOften(reader, rows)
}

/** `for second sleeve`, `to match`: the same once more for another piece, no rows of this one. */
function isForAnotherPiece(reader: Reader): boolean {
  const from = reader.at
  take(reader, ',', '.')
  const next = textAt(reader)
  const found =
    /^(?:for|on)$/.test(next) &&
    reader.words
      .slice(reader.at, reader.at + 4)
      .some(
        ({ text, kind }) => kind === 'number' || /^(?:other|another|next|left|right|each|both|back|front)$/.test(text),
      )
  reader.at = from
  return found
}

/** `but working in every stitch`, `except for the last st`: not the same, unless only the colour is another. */
function isChanged(reader: Reader): boolean {
  const from = reader.at
  take(reader, ',', ';')
  const changed = take(reader, 'but', 'except', 'excepting', 'only', 'however', 'omitting', 'replacing')
  const colour = changed && inColour(reader)
  reader.at = colour ? reader.at : from
  return changed && !colour
}

/** `, increasing 1 st in each row`: what the rows do that are repeated. */
function readSaid(reader: Reader): 1 | -1 | null {
  take(reader, ',', ';')
  take(reader, 'always', 'thus')
  const more = take(reader, 'increasing')
  if (!more && !take(reader, 'decreasing')) return null
  passClause(reader)
  return more ? 1 : -1
}

/**
 * Rows worked as earlier ones.
 *
 *     Rep Rows 3 and 4 until piece measures 31 cm.     Rep Rows 2 and 3 ten more times, then Row 2 once more.
 *     ^
 */
export function readReference(reader: Reader): Reference | null {
  const from = reader.at
  const first = again(reader)
  if (first === null) return null
  const at = spanSince(reader, from)
  const all: Again[] = [first]
  for (let next = attempt(reader, further); next !== null; next = attempt(reader, further)) all.push(next)
  if (isForAnotherPiece(reader) || isChanged(reader)) return null
  const says = attempt(reader, readSaid)
  const then = readTail(reader)
  return then === null ? null : { again: all, at, says, then }
}
