import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, numberAt, one, take, takeAll, takeNumber, textAt } from '../reader.ts'
import type { Interval, Target, Until, Where } from '../step.ts'
import { readInterval } from './interval.ts'
import { chainWords, numberedSpace, readGroup } from './nouns.ts'
import { takePattern } from './pattern.ts'
import { anyStitch, readTarget, saidStitch } from './target.ts'
import { readUntil } from './until.ts'

/** A noun with a number of its own: `3-ch lp`, `3-dc group` */
function numbered(reader: Reader): Target | null {
  if (numberAt(reader) === null) return null
  const noun =
    attempt(reader, numberedSpace) ??
    attempt(reader, (inner) => (numberAt(inner) === null ? null : readGroup(inner))) ??
    (textAt(reader, 1) === '-' ? (readTarget(reader, false)?.[0] ?? null) : null)
  return noun === null ? null : [noun]
}

/** `2 sts`, `3-ch lp`, `shell` after a word like `next`; null where no number is said and none is meant. */
export function readDetermined(reader: Reader, kind: 'next' | 'first' | 'last', fallback: Count | null): Where | null {
  const noun = attempt(reader, numbered)
  if (noun !== null) return { kind, count: one(reader), of: noun }
  const count = takeNumber(reader) ?? fallback
  if (count === null) return null
  const of = readTarget(reader, false)
  if (of !== null) return { kind, count, of }
  return kind === 'next' ? { kind, count, of: anyStitch, elliptic: true } : { kind, count, of: anyStitch }
}

/** `each 4 ch`: a loop told by its chains */
function loopOf(reader: Reader): Target | null {
  const chains = takeNumber(reader)?.[0] ?? null
  return chains !== null && take(reader, ...chainWords) ? [{ kind: 'space', chains }] : null
}

const section =
  /^(?:of|on|across|along) (?:the )?(?:left |right |first |second )?(?:back|front|sleeve|body)(?: section)?(?: (?:sts?|stitches))?(?= ,)/
const space = /^, \S+ in (?:the )?(?:next |same |last )?(?:ch - # )?(?:ch-sp|sp|space|corner)(?= |$)/

/** `each dc of back, dc in next ch-1 sp`: as far as the space that comes next */
function ofSection(reader: Reader): Until | null {
  if (takePattern(reader, section) === null) return null
  const at = reader.at
  const leads = takePattern(reader, space) !== null
  reader.at = at
  return leads ? { kind: 'reaching', of: [{ kind: 'space', chains: null }] } : null
}

function allOf(reader: Reader, interval: Interval | null): Where {
  const of = attempt(reader, numbered) ?? attempt(reader, (inner) => readTarget(inner, true)) ?? saidStitch
  const until = attempt(reader, ofSection) ?? attempt(reader, readUntil) ?? { kind: 'end' }
  return interval === null ? { kind: 'each', of, until } : { kind: 'each', of, until, interval }
}

/** `each of next 6 ch around`: the number says how far. */
function countedTo(reader: Reader): Where | null {
  const where = readDetermined(reader, 'next', one(reader))
  if (/^(?:across|around)$/.test(textAt(reader))) attempt(reader, readUntil)
  return where
}

/** `2 sc in each of next 3`: two in each, beyond doubt. */
function inEach(where: Where | null): Where | null {
  return where?.kind === 'next' ? { ...where, each: true } : where
}

function ofEach(reader: Reader): Where | null {
  const of = take(reader, 'of')
  take(reader, 'the', 'these', 'those')
  if (take(reader, 'next', 'following', 'foll')) return inEach(countedTo(reader))
  if (take(reader, 'first')) return readDetermined(reader, 'first', one(reader))
  if (take(reader, 'last')) return readDetermined(reader, 'last', one(reader))
  if (take(reader, 'others', 'rest')) {
    takeAll(reader, 'of', 'the')
    return allOf(reader, null)
  }
  take(reader, 'rem', 'remaining', 'other')
  const loop = of ? null : attempt(reader, loopOf)
  if (loop !== null) return { kind: 'each', of: loop, until: attempt(reader, readUntil) ?? { kind: 'end' } }
  // `each of 12 sts`: so many, not all.
  const counted = numberAt(reader) === null ? null : attempt(reader, (inner) => countedOf(inner))
  return counted ?? allOf(reader, null)
}

function countedOf(reader: Reader): Where | null {
  if (attempt(reader, numbered) !== null) return null
  const counted = readDetermined(reader, 'next', null)
  if (counted !== null) attempt(reader, readUntil)
  return inEach(counted)
}

/**
 * Every place of a kind, or every so manieth.
 *
 *     each st across     each of next 4 sts     every other st     each     each of the rest
 *     ^
 */
export function readEach(reader: Reader): Where | null {
  if (textAt(reader) === 'alternate') return allOf(reader, readInterval(reader))
  if (!take(reader, 'each', 'every', 'all', 'ea')) return null
  const interval = attempt(reader, readInterval)
  if (interval !== null) return allOf(reader, interval)
  if (textAt(reader, 1) !== 'crochet') take(reader, 'single', 'one')
  return ofEach(reader)
}
