import { everySize } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import { atClauseEnd, attempt, numberAt, one, passClause, spanSince, take, takeNumber, takeStitch } from '../reader.ts'
import type { Step, Where } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { takePattern } from './pattern.ts'
import { readPiece } from './piece-named.ts'
import { goingBack, readUnworked } from './rejoin.ts'
import { readSourceAfter, readUnderarm } from './source.ts'
import { passManner } from './standing.ts'
import { readPlaces } from './stitch.ts'
import { anyStitch } from './target.ts'

/** `sl st to ch 2`: to the chain that the round began with */
const openingChain = /^(?:to|into|in|on) (?:the )?(?:top of )?(?:ch|chain)(?: (?:- )?#)?(?= |$)/
/** `to top`, `to 3rd ch`: of the opening chain, which goes without saying. */
const toTop =
  /^to (?:the )?(?:top|(?:first|second|third|fourth|1st|2nd|3rd|4th|5th)(?: (?:ch|chain))?|beg|beginning|start)(?= [,;.)]|$)/

/**
 * Slip stitches: to travel, to bind off, or to join.
 *
 *     sl st in next 2 dc and in next ch-2 sp     sl st to join     sl st to top of ch-3
 *     ^
 */
export const slipPhrase: Phrase = {
  name: 'slip stitch',
  opens: () => true,
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const before = takeNumber(reader)
    if (before === null) take(reader, 'a')
    if (takeStitch(reader)?.base !== 'slipStitch') return null
    const after = before ?? (numberAt(reader) === null ? null : takeNumber(reader))
    if (attempt(reader, (inner) => (take(inner, 'to') && take(inner, 'join', 'close') ? true : null))) {
      passClause(reader, 'and', 'turn')
      return [{ kind: 'join', at: spanSince(reader, from) }]
    }
    take(reader, 'loosely', 'tightly')
    if (attempt(reader, (inner) => (takePattern(inner, openingChain) === null || !atClauseEnd(inner) ? null : true)))
      return [{ kind: 'join', at: spanSince(reader, from) }]
    if (before === null && takePattern(reader, toTop) !== null) return [{ kind: 'join', at: spanSince(reader, from) }]
    const places = readPlaces(reader)
    const closes = attempt(reader, (inner) => (take(inner, 'to') && take(inner, 'join', 'close', 'form') ? true : null))
    if (closes) passClause(reader, 'and', 'turn')
    const at = spanSince(reader, from)
    if (closes) return [{ kind: 'join', at }]
    const count = after ?? one(reader)
    if (places.length === 0) return [{ kind: 'slip', where: { kind: 'next', count, of: anyStitch }, at }]
    return places.map((where) => ({ kind: 'slip', where: arriving(reader, where), at }))
  },
}

/** `sl st to corner sp` ends in the space, it does not stop before it. */
function arriving(reader: Reader, where: Where): Where {
  if (where.kind !== 'each' || where.until.kind !== 'reaching') return where
  return { kind: 'next', count: one(reader), of: where.until.of }
}

const yarnWords = 'new color colour colors yarn a b c d e mc cc main contrast contrasting next white black'.split(' ')

/** `join with sc in any st`: the first stitch of a row, not a closing one. */
function standing(reader: Reader): readonly Step[] | null {
  while (take(reader, ...yarnWords));
  if (!take(reader, 'with')) return null
  take(reader, 'a')
  const from = reader.at
  passManner(reader)
  const stitch = takeStitch(reader)
  if (stitch === null || stitch.base === 'slipStitch') return null
  const [where] = readPlaces(reader)
  if (where === undefined || !(where.kind === 'next' || where.kind === 'first')) return null
  const count = everySize(1, reader.vocabulary.sizes)
  return [{ kind: 'work', parts: [{ kind: 'stitch', stitch, count }], where, at: spanSince(reader, from) }]
}

/** `join yarn with sl st in any corner sp` moves to that place. */
function joinedYarn(reader: Reader, from: number): readonly Step[] | null {
  while (take(reader, ...yarnWords));
  attempt(reader, (inner) => (take(inner, 'with') && (take(inner, 'a') || true) && takeStitch(inner) ? true : null))
  const unworked = readUnworked(reader)
  const underarm = readUnderarm(reader)
  if (underarm !== null) return [underarm]
  const [where] = readPlaces(reader)
  if (where === undefined) return null
  attempt(reader, (inner) => (take(inner, 'with') && (take(inner, 'a') || true) && takeStitch(inner) ? true : null))
  const source = readSourceAfter(reader) ?? unworked
  const slip = goingBack({ kind: 'slip', where, yarn: true, at: spanSince(reader, from) })
  return source === null || slip.length > 1 ? slip : [source, ...slip]
}

/** `join to first leg with a sc`: one stitch there; `join with sl st to first leg`: only the way there. */
function toPiece(reader: Reader): readonly Step[] | null {
  const from = reader.at
  const before = attempt(reader, withStitch)
  const piece = readPiece(reader)
  const stitch = before ?? attempt(reader, withStitch)
  if (piece === null) return null
  if (stitch === null || stitch.base === 'slipStitch') return [piece]
  const parts = [{ kind: 'stitch', stitch, count: one(reader) } as const]
  const where = { kind: 'next', count: one(reader), of: anyStitch } as const
  return [piece, { kind: 'work', parts, where, at: spanSince(reader, from) }]
}

function withStitch(reader: Reader): Stitch | null {
  if (!take(reader, 'with', 'by')) return null
  take(reader, 'a', 'an')
  return takeStitch(reader)
}

/**
 * The join of a round, or yarn joined in a place.
 *
 *     join with sl st in first sc     join to top of beg ch-3     join yarn in any corner sp
 *     ^
 */
export const joinPhrase: Phrase = {
  name: 'join',
  opens: (reader) => {
    const word = reader.words[reader.at]?.text ?? ''
    return word === 'join' || word === 'joining' || word === 'rejoin' || word === 'attach'
  },
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    reader.at += 1
    const onPiece = attempt(reader, toPiece)
    if (onPiece !== null) return onPiece
    const stands = attempt(reader, standing)
    if (stands !== null) return stands
    const words = wordsOfClause(reader)
    if (words.includes('any') || words.some((word) => /^(?:yarn|colou?r|mc|cc)$/.test(word))) {
      const moved = attempt(reader, (inner) => joinedYarn(inner, from))
      if (moved !== null) return moved
      passClause(reader)
      return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
    }
    passClause(reader, 'turn')
    return [{ kind: 'join', at: spanSince(reader, from) }]
  },
}

function wordsOfClause(reader: Reader): readonly string[] {
  const from = reader.at
  passClause(reader)
  const words = reader.words.slice(from, reader.at).map((word) => word.text)
  reader.at = from
  return words
}
