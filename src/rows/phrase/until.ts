import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, one, take, takeAll, takeNumber, textAt } from '../reader.ts'
import type { Accepts, Target, Until } from '../step.ts'
import { passEdge } from './row-ends.ts'
import { anyStitch, readTarget } from './target.ts'

const rowWords = ['row', 'rnd', 'round', 'side', 'edge', 'piece']

function passRowWord(reader: Reader): void {
  const from = reader.at
  take(reader, 'of')
  take(reader, 'the', 'this', 'each', 'entire', 'whole')
  if (!take(reader, ...rowWords)) reader.at = from
}

/** `last 3 sts`, `last st`, `last shell` */
function last(reader: Reader): { count: Count; of: Target } | null {
  take(reader, 'the')
  if (!take(reader, 'last', 'final', 'remaining')) return null
  const count = takeNumber(reader) ?? one(reader)
  return { count, of: readTarget(reader, false) ?? anyStitch }
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

function isMark(accepts: Accepts): boolean {
  return accepts.kind === 'space' || accepts.kind === 'corner' || accepts.kind === 'special'
}

/** `next corner sp`, `corner`, `the next ch-2 sp`, `ch-2 sp` */
function reaching(reader: Reader): Until | null {
  take(reader, 'the')
  const said = take(reader, 'next', 'following', 'first')
  const plain = said || /^(?:corner|center|centre|middle)$/.test(textAt(reader))
  take(reader, 'raglan', 'center', 'centre', 'middle')
  const of = readTarget(reader, false)
  // `to ch-2 sp` is the next one, `to dc` would be any.
  return of !== null && (plain || of.every(isMark)) ? { kind: 'reaching', of } : null
}

function turningChain(reader: Reader): Until | null {
  take(reader, 'the', 'top', 'of', 'beg', 'beginning', 'turning', 't')
  if (take(reader, 'tch', 't-ch')) return { kind: 'end' }
  if (!take(reader, 'beg', 'beginning', 'turning', 'ch')) return null
  take(reader, 'ch', 'chain')
  if (take(reader, '-')) takeNumber(reader)
  // `to ch-2 sp` is a place on the way.
  return /^(?:sps?|spaces?|lps?|loops?)$/.test(textAt(reader)) ? null : { kind: 'end' }
}

function afterTo(reader: Reader): Until | null {
  take(reader, 'the')
  if (take(reader, 'end', 'ends')) {
    passRowWord(reader)
    return { kind: 'end' }
  }
  const counted = attempt(reader, last) ?? attempt(reader, within) ?? attempt(reader, remaining)
  if (counted !== null) return { kind: 'leaving', ...counted }
  return attempt(reader, turningChain) ?? attempt(reader, reaching)
}

function to(reader: Reader): Until | null {
  if (takeAll(reader, 'up', 'to') || take(reader, 'to', 'until', 'till', 'til')) return afterTo(reader)
  if (!take(reader, 'except', 'excluding')) return null
  take(reader, 'in', 'for')
  const counted = last(reader)
  return counted === null ? null : { kind: 'leaving', ...counted }
}

/**
 * How far a repetition goes.
 *
 *     dc in each st across to last 3 sts
 *                   ^^^^^^^^^^^^^^^^^^^^
 */
export function readUntil(reader: Reader): Until | null {
  take(reader, 'all')
  if (attempt(reader, (inner) => (passEdge(inner) ? true : null))) return attempt(reader, to) ?? { kind: 'end' }
  if (take(reader, 'across', 'around', 'round', 'along')) {
    // `fpdc around next dc` is a place, not an extent.
    if (/^(?:next|each|every|post|first|last|same|the|both|corner)$/.test(textAt(reader))) return null
    passRowWord(reader)
    return attempt(reader, to) ?? { kind: 'end' }
  }
  return attempt(reader, to)
}
