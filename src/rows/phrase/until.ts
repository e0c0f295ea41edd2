import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, numberAt, one, peek, take, takeAll, takeNumber, textAt } from '../reader.ts'
import type { Target, Until } from '../step.ts'
import { numberedSpace } from './nouns.ts'
import { readOpeningChain } from './opening-chain.ts'
import { takePattern } from './pattern.ts'
import { passEdge } from './row-ends.ts'
import { anyStitch, readTarget, saidStitch } from './target.ts'
import { readWithin } from './within.ts'

const rowWords = ['row', 'rnd', 'round', 'side', 'edge', 'piece', 'top', 'circle', 'work', 'ch', 'chain', 'ring']

/** `of the row`, `the ch`; true when such words were there. A bare `ch` may begin `ch-2 sp`. */
function passRowWord(reader: Reader): boolean {
  const from = reader.at
  take(reader, 'of')
  while (take(reader, 'the', 'this', 'each', 'entire', 'whole', 'all', 'foundation'));
  const chain = /^(?:ch|chain|ring)$/.test(textAt(reader))
  const passed = !(chain && reader.at === from) && take(reader, ...rowWords)
  const noun = peek(reader)
  const goesOn = noun?.kind === 'number' || noun?.text === '-' || /^(?:sps?|spaces?)$/.test(noun?.text ?? '')
  if (!passed || (chain && goesOn)) reader.at = from
  return passed
}

/** `2 tr and dc`: the second adds its own. */
function andMore(reader: Reader): Count | null {
  if (!take(reader, 'and')) return null
  const count = takeNumber(reader) ?? one(reader)
  const of = attempt(reader, (inner) => readTarget(inner, false))
  return of?.every((accepts) => accepts.kind === 'stitch' || accepts.kind === 'named') === true ? count : null
}

/** `last 3 sts`, `last st`, `last shell`, `last 2 tr and dc`, `last but one` */
function last(reader: Reader): { count: Count; of: Target } | null {
  take(reader, 'the')
  if (!take(reader, 'last', 'final', 'remaining')) return null
  if (takeAll(reader, 'but', 'one')) return { count: one(reader), of: anyStitch }
  const space = attempt(reader, numberedSpace)
  const count = space === null ? (takeNumber(reader) ?? one(reader)) : one(reader)
  const of = space === null ? (readTarget(reader, false) ?? anyStitch) : [space]
  take(reader, 'one', 'ones')
  const more = attempt(reader, andMore)
  // `last 1-ch sp and dc`: what is left begins at the space.
  if (more === null || isRare(of)) return { count, of }
  return { count: count.map((value, size) => (value === null ? null : value + (more[size] ?? 0))), of: saidStitch }
}

/** `within 2 sts of end`, `2 sts before end` */
function within(reader: Reader): { count: Count; of: Target } | null {
  take(reader, 'within')
  const named = attempt(reader, last)
  if (named !== null) return named
  const count = takeNumber(reader)
  if (count === null) return null
  const of = readTarget(reader, false) ?? anyStitch
  if (!take(reader, 'of', 'before', 'from') || !(take(reader, 'the') || true) || !take(reader, 'end')) return null
  passRowWord(reader)
  return { count, of }
}

/** `3 sts rem`, `3 sts are left` */
function remaining(reader: Reader): { count: Count; of: Target } | null {
  take(reader, 'only')
  const count = takeNumber(reader)
  if (count === null) return null
  const of = readTarget(reader, false) ?? anyStitch
  take(reader, 'are')
  return take(reader, 'rem', 'remain', 'remains', 'remaining', 'left') ? { count, of } : null
}

/** Places that a row has few of, so that the words may name one without saying which. */
function isRare(of: Target): boolean {
  return of.every((accepts) => accepts.kind !== 'stitch' && accepts.kind !== 'named' && accepts.kind !== 'chain')
}

/** `to center st`, without a group that it would be the middle of */
const center = /^(?:the )?(?:center|centre|middle) (?:sts?|stitch|sc|dc|hdc|tr|htr)(?= [,;.:)]|$)/

/** `next corner sp`, `corner`, `first ch-2 sp`, `center st of next shell` */
function place(reader: Reader): Target | null {
  if (attempt(reader, readOpeningChain) !== null) return null
  const within = attempt(reader, readWithin)
  if (within !== null) return 'of' in within ? within.of : null
  if (takePattern(reader, center) !== null) return [{ kind: 'center' }]
  take(reader, 'the')
  const next = take(reader, 'next', 'following', 'foll')
  if (!next) take(reader, 'first', 'each', 'every')
  const of = readTarget(reader, false)
  return of !== null && (next || isRare(of)) ? of : null
}

/** `1 st before marker`, `last st before ch-2 sp`, `st before corner` */
function before(reader: Reader): Count | null {
  take(reader, 'the')
  const count = take(reader, 'last') ? one(reader) : (takeNumber(reader) ?? one(reader))
  if (readTarget(reader, false) === null) return null
  take(reader, 'just')
  return take(reader, 'before') ? count : null
}

/** Up to a place that is named. */
function reaching(reader: Reader): Until | null {
  const of = place(reader)
  return of === null ? null : { kind: 'reaching', of }
}

function turningChain(reader: Reader): Until | null {
  if (attempt(reader, (inner) => (readOpeningChain(inner)?.kind === 'turningChain' ? true : null)))
    return { kind: 'end' }
  take(reader, 'the', 'top', 'of', 'beg', 'beginning', 'turning', 't')
  if (take(reader, 'tch', 't-ch')) return { kind: 'end' }
  if (!take(reader, 'beg', 'beginning', 'turning', 'ch')) return null
  take(reader, 'ch', 'chain')
  if (take(reader, '-')) takeNumber(reader)
  return { kind: 'end' }
}

/** `1 st before marker`: the place that is named, and how many before it are left. */
function beforePlace(reader: Reader): Until | null {
  const ahead = before(reader)
  const of = ahead === null ? null : place(reader)
  return of === null || ahead === null ? null : { kind: 'reaching', of, before: ahead }
}

function afterTo(reader: Reader): Until | null {
  const short = attempt(reader, beforePlace)
  if (short !== null) return short
  take(reader, 'the')
  if (take(reader, 'end', 'ends')) {
    passRowWord(reader)
    return { kind: 'end' }
  }
  const counted = attempt(reader, last) ?? attempt(reader, within) ?? attempt(reader, remaining)
  if (counted !== null) return { kind: 'leaving', ...counted }
  return attempt(reader, reaching) ?? attempt(reader, turningChain)
}

function to(reader: Reader): Until | null {
  if (takeAll(reader, 'up', 'to') || take(reader, 'to', 'until', 'till', 'til')) return afterTo(reader)
  if (!take(reader, 'except', 'excluding')) return null
  take(reader, 'in', 'for')
  const counted = last(reader)
  return counted === null ? null : { kind: 'leaving', ...counted }
}

/** `fpdc around next dc`, `over 4 sts`: the word leads to a place, it is no extent. */
function leadsToPlace(reader: Reader): boolean {
  if (numberAt(reader) !== null || reader.vocabulary.dictionary.stitches.has(textAt(reader))) return true
  return /^(?:next|each|every|post|posts|back|front|first|last|same|the|both|corner|following|top|that|this)$/.test(
    textAt(reader),
  )
}

function alongRow(reader: Reader): Until | null {
  if (!take(reader, 'across', 'around', 'round', 'along', 'accross', 'arround', 'aroud', 'acros')) return null
  if (!passRowWord(reader) && leadsToPlace(reader)) return null
  return attempt(reader, to) ?? { kind: 'end' }
}

/**
 * How far a repetition goes.
 *
 *     dc in each st across to last 3 sts
 *                   ^^^^^^^^^^^^^^^^^^^^
 */
export function readUntil(reader: Reader): Until | null {
  take(reader, 'evenly')
  if (take(reader, 'all')) takeAll(reader, 'the', 'way')
  if (attempt(reader, (inner) => (passEdge(inner) ? true : null))) return attempt(reader, to) ?? { kind: 'end' }
  return attempt(reader, alongRow) ?? attempt(reader, to)
}
