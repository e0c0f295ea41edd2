import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { atClauseEnd, attempt, numberAt, one, take, takeAll, takeNumber, takeOrdinal, textAt } from '../reader.ts'
import type { Until, Where } from '../step.ts'
import { readCounting } from './counting.ts'
import { withDepth } from './depth.ts'
import { readInterval } from './interval.ts'
import { takePattern } from './pattern.ts'
import { readRowEnds } from './row-ends.ts'
import { anyStitch, groupWords, isNumberedNoun, readTarget, saidStitch } from './target.ts'
import { readUntil } from './until.ts'

const prepositions = ['in', 'into', 'on', 'over', 'around', 'to', 'through', 'across', 'under', 'at']
const chainWords = ['ch', 'chs', 'chain', 'chains']
const openings = ['beg', 'beginning', 'turning', 't', 'starting', 'first', 'initial']

/** `-3` or `3` after `ch` */
function passChainNumber(reader: Reader): void {
  take(reader, '-')
  if (numberAt(reader) !== null) reader.at += 1
}

const spaceWord = /^(?:sps?|spaces?|lps?|loops?)$/

/** `top of beg ch-3`, `turning ch`, `tch`, `3rd ch of beg ch-3` */
function turningChain(reader: Reader): Where | null {
  const ordinal = takeOrdinal(reader)
  // `3rd of ch-4` leaves out of what it is the third.
  if (ordinal !== null) take(reader, ...chainWords)
  if (ordinal !== null && !take(reader, 'of')) return null
  const top = ordinal !== null || takeAll(reader, 'top', 'of')
  take(reader, 'the')
  let named = false
  // `first ch` is a chain of the row below, `first ch-3` the one that opened it.
  const firstChain = textAt(reader) === 'first' && chainWords.includes(textAt(reader, 1))
  if (firstChain && !top && (textAt(reader, 2) !== '-' || spaceWord.test(textAt(reader, 4)))) return null
  while (take(reader, ...openings, 'skipped')) named = true
  if (take(reader, 'tch', 't-ch')) return { kind: 'turningChain', space: take(reader, 'sp', 'space') }
  const number = numberAt(reader) !== null
  if (number) reader.at += 1
  if (number) take(reader, '-')
  if (number && ordinal !== null && atClauseEnd(reader)) return { kind: 'turningChain', space: false }
  if (!take(reader, ...chainWords) || !(named || top)) return null
  passChainNumber(reader)
  if (take(reader, 'from')) return null
  return { kind: 'turningChain', space: take(reader, 'sp', 'space') }
}

const base =
  /^(?:(?:st|stitch|sp|place) )?(?:(?:at|in) )?(?:the )?(?:same )?base of (?:(?:the|beg|beginning|first|turning|starting|this|same|joining) )*(?:ch - #|# - ch|ch #|# ch|chain|ch|tch|t-ch|join)(?= |$)/

/** `st at base of 3ch`: where the opening chain stands */
function baseOfChain(reader: Reader): Where | null {
  return takePattern(reader, base) === null ? null : { kind: 'same', start: true }
}

/** `2nd ch from hook` */
function fromHook(reader: Reader): Where | null {
  take(reader, 'the')
  const nth = takeOrdinal(reader)
  if (nth === null || !(take(reader, 'ch', 'chain', 'st', 'stitch') || textAt(reader) === 'from')) return null
  const said = take(reader, 'from')
  if (said) {
    take(reader, 'the', 'your')
    if (!take(reader, 'hook', 'hk')) return null
  } else if (textAt(reader) === 'of') return null
  return { kind: 'fromHook', nth, counting: attempt(reader, readCounting), said }
}

/** `ring`, `center of ring`, `magic ring` */
function ring(reader: Reader): Where | null {
  take(reader, 'the', 'a')
  if (take(reader, 'center', 'centre')) take(reader, 'of')
  take(reader, 'the', 'a')
  const magic = take(reader, 'magic', 'adjustable')
  if (magic && take(reader, 'loop')) return { kind: 'ring', magic }
  take(reader, 'ch')
  if (take(reader, 'mr', 'mc', 'ml')) return { kind: 'ring', magic: true }
  return take(reader, 'ring', 'circle') ? { kind: 'ring', magic } : null
}

/** `next 2 sts`, where two sizes may have other numbers than the rest; `between next 2 sts` */
function between(reader: Reader): Where | null {
  take(reader, 'the', 'next')
  take(reader, 'sp', 'space')
  if (!take(reader, 'between', 'bet')) return null
  if (groupWords.test(textAt(reader))) return null
  while (!atClauseEnd(reader) && textAt(reader) !== 'and') reader.at += 1
  return { kind: 'between' }
}

function determined(reader: Reader, kind: 'next' | 'first' | 'last', fallback: Count | null): Where | null {
  // `next 3-ch lp`: the number belongs to the noun.
  const noun = attempt(reader, (inner) => (isNumberedNoun(inner) ? readTarget(inner, false) : null))
  if (noun !== null) return { kind, count: one(reader), of: noun }
  const count = takeNumber(reader) ?? fallback
  if (count === null) return null
  return { kind, count, of: readTarget(reader, false) ?? anyStitch }
}

/** `2 sc in each of next 3`: two in each, beyond doubt. */
function ofEach(where: Where | null): Where | null {
  return where?.kind === 'next' ? { ...where, each: true } : where
}

/** `each st across`, `each of next 4 sts`, `every ch-1 sp to last 2 sts` */
function each(reader: Reader): Where | null {
  if (!take(reader, 'each', 'every', 'all')) return null
  take(reader, 'of')
  take(reader, 'the', 'these')
  if (take(reader, 'next', 'following', 'foll')) return ofEach(determined(reader, 'next', one(reader)))
  if (take(reader, 'first')) return determined(reader, 'first', one(reader))
  if (take(reader, 'last')) return determined(reader, 'last', one(reader))
  const interval = attempt(reader, readInterval)
  take(reader, 'rem', 'remaining', 'other')
  // `each of 12 sts`: so many, not all.
  const counted = numberAt(reader) === null ? null : attempt(reader, (inner) => determined(inner, 'next', null))
  if (counted !== null) {
    attempt(reader, readUntil)
    return ofEach(counted)
  }
  const of = attempt(reader, (inner) => readTarget(inner, true)) ?? (interval === null ? null : anyStitch)
  if (of === null) return null
  const until: Until = attempt(reader, readUntil) ?? { kind: 'end' }
  return interval === null ? { kind: 'each', of, until } : { kind: 'each', of, until, interval }
}

/** `same st as beg ch-3`, `same place`, `it` */
function same(reader: Reader): Where | null {
  take(reader, 'the', 'that')
  if (take(reader, 'it')) return { kind: 'same', start: false }
  if (!take(reader, 'same')) return null
  if (!take(reader, 'place', 'spot')) attempt(reader, (inner) => readTarget(inner, false))
  take(reader, 'where', 'just')
  if (!take(reader, 'as')) return { kind: 'same', start: false }
  take(reader, 'the')
  const start = /^(?:beg|beginning|join|joining|joined|first|starting|sl|ss|turning|tch|t-ch)$/.test(textAt(reader))
  while (!atClauseEnd(reader) && textAt(reader) !== 'and') reader.at += 1
  return { kind: 'same', start }
}

function ordered(reader: Reader): Where | null {
  take(reader, 'the')
  takeAll(reader, 'top', 'of')
  take(reader, 'the')
  takeAll(reader, 'post', 'of')
  if (take(reader, 'next', 'following', 'foll')) return determined(reader, 'next', one(reader))
  if (take(reader, 'first')) return determined(reader, 'first', one(reader))
  if (take(reader, 'last', 'final')) return determined(reader, 'last', one(reader))
  if (take(reader, 'any')) return determined(reader, 'next', one(reader))
  if (take(reader, 'rem', 'remaining')) {
    takeNumber(reader)
    const of = attempt(reader, (inner) => readTarget(inner, true)) ?? saidStitch
    return { kind: 'each', of, until: attempt(reader, readUntil) ?? { kind: 'end' } }
  }
  const nth = takeOrdinal(reader)
  if (nth === null) return null
  if (nth.every((value) => value === 1)) return determined(reader, 'first', one(reader))
  return { kind: 'nth', nth, of: readTarget(reader, false) ?? anyStitch }
}

/** `in ch-2 sp`, `over 3 sts`, `in corner` */
function bare(reader: Reader): Where | null {
  take(reader, 'a', 'the')
  const number = numberAt(reader)
  if (number !== null) return determined(reader, 'next', null)
  const from = reader.at
  const of = readTarget(reader, false)
  if (of === null) return null
  // `in ch-2 sp of each shell across`
  const all = reader.words.slice(from, reader.at).some((word) => word.text === 'each' || word.text === 'every')
  if (all) return { kind: 'each', of, until: attempt(reader, readUntil) ?? { kind: 'end' } }
  return { kind: 'next', count: one(reader), of }
}

/**
 * A place, with its preposition or, where the trade leaves it out, without: `sc each st`.
 * An extent alone, `sc across`, means each stitch.
 *
 *     dc in each st across to last 3 sts
 *        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
 */
export function readWhere(reader: Reader): Where | null {
  const extent = attempt(reader, readUntil)
  if (extent !== null) return { kind: 'each', of: anyStitch, until: extent }
  take(reader, 'all', 'both')
  const said = take(reader, ...prepositions)
  const found =
    attempt(reader, baseOfChain) ??
    attempt(reader, readRowEnds) ??
    attempt(reader, fromHook) ??
    attempt(reader, turningChain) ??
    attempt(reader, ring) ??
    attempt(reader, between) ??
    attempt(reader, each) ??
    attempt(reader, same) ??
    attempt(reader, ordered)
  const place = found ?? (said ? attempt(reader, bare) : null)
  return place === null ? null : withDepth(reader, place)
}
