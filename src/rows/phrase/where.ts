import type { Reader } from '../reader.ts'
import { atClauseEnd, attempt, numberAt, one, take, takeAll, takeNumber, takeOrdinal, textAt } from '../reader.ts'
import type { Where } from '../step.ts'
import { readCounting } from './counting.ts'
import { readDepth, withDepth } from './depth.ts'

import { readDetermined, readEach } from './each.ts'
import { readGap } from './gaps.ts'
import { chainWords } from './nouns.ts'
import { readOpeningChain } from './opening-chain.ts'
import { takePattern } from './pattern.ts'

import { readRowEnds } from './row-ends.ts'
import { anyStitch, readTarget, saidStitch } from './target.ts'
import { readUntil } from './until.ts'
import { readWithin } from './within.ts'

const prepositions = 'in into on onto upon over around round to through across under at inside within'.split(' ')

/** `2nd ch from hook`; `4th ch` alone, which at the beginning of a chain is the same */
function fromHook(reader: Reader): Where | null {
  take(reader, 'the')
  const nth = takeOrdinal(reader)
  if (nth === null) return null
  const chain = take(reader, ...chainWords)
  if (!(chain || take(reader, 'st', 'stitch') || textAt(reader) === 'from')) return null
  const said = take(reader, 'from')
  if (said) {
    take(reader, 'the', 'your')
    if (!take(reader, 'hook', 'hk')) return null
  } else if (!chain || textAt(reader) === 'of') return null
  return { kind: 'fromHook', nth, counting: attempt(reader, readCounting), said }
}

/** `40 sc around the hair tie`: something that stitches are worked around */
const madeOf =
  /^(?:the |a |an |your )?(?:hair tie|hair elastic|hair band|hairband|elastic(?: band)?|(?:embroidery |metal |wooden )?hoop|(?:curtain|metal|plastic|key|jump|wooden|bone|brass|cabone) ring)(?= |$)/

/** `ring`, `center of ring`, `magic ring` */
function ring(reader: Reader): Where | null {
  if (takePattern(reader, madeOf) !== null) return { kind: 'ring', magic: true }
  take(reader, 'the', 'a', 'an')
  if (take(reader, 'center', 'centre', 'middle')) take(reader, 'of')
  take(reader, 'the', 'a', 'an')
  const magic = take(reader, 'magic', 'adjustable', 'sliding', 'double')
  if (magic && take(reader, 'loop')) return { kind: 'ring', magic }
  take(reader, 'ch', 'chain')
  if (take(reader, 'mr', 'mc', 'ml')) return { kind: 'ring', magic: true }
  return take(reader, 'ring', 'circle') ? { kind: 'ring', magic } : null
}

const skipped =
  /^(?:the |each of |next |first |last |both )*(?:the )?(?:# )?(?:just |previously |last )?(?:skipped|missed)(?: just)? (?:sts?|stitch|stitches|chs?|(?:fp|bp)?(?:[dhs]cs?|hdcs?|d?trs?|htrs?)|trebles?|doubles?)(?= |$)|^(?:the )?(?:# )?(?:sts?|stitch|stitches|[dhs]cs?|hdcs?|d?trs?|htrs?) (?:just |you |you just )(?:skipped|missed)(?= |$)/

/** `skipped st`, `each of 2 skipped dc`, `st just missed` */
function passedBefore(reader: Reader): Where | null {
  const from = reader.at
  if (takePattern(reader, skipped) === null) return null
  attempt(reader, readUntil)
  const number = reader.words.slice(from, reader.at).find((word) => word.kind === 'number')
  const count = number?.kind === 'number' ? number.count : one(reader)
  // `dc in skipped sc 3 rows below` is not one that this row has passed over.
  const depth = attempt(reader, readDepth)
  return depth === null ? { kind: 'skipped', count } : { kind: 'next', count, of: anyStitch, depth }
}

/** `same st as beg ch-3`, `same place`, `it` */
function same(reader: Reader): Where | null {
  take(reader, 'the', 'that', 'this')
  if (take(reader, 'it')) return { kind: 'same', start: false }
  // `in that sp`, not yet a noun of its own
  if (!take(reader, 'same') && !/^(?:that|this)$/.test(reader.words[reader.at - 1]?.text ?? '')) return null
  const noun = take(reader, 'place', 'spot') ? null : attempt(reader, (inner) => readTarget(inner, false))
  take(reader, 'where', 'just')
  if (!take(reader, 'as')) return noun === null ? { kind: 'same', start: false } : { kind: 'same', start: false, noun }
  take(reader, 'the')
  const start = /^(?:beg|beginning|join|joining|joined|first|starting|sl|ss|turning|tch|t-ch)$/.test(textAt(reader))
  while (!atClauseEnd(reader) && textAt(reader) !== 'and') reader.at += 1
  return { kind: 'same', start }
}

function rest(reader: Reader): Where {
  takeNumber(reader)
  const of = attempt(reader, (inner) => readTarget(inner, true)) ?? saidStitch
  return { kind: 'each', of, until: attempt(reader, readUntil) ?? { kind: 'end' } }
}

/** `3rd st`, `the second` */
function nth(reader: Reader): Where | null {
  const found = takeOrdinal(reader)
  if (found === null) return null
  // The first is where it stands, whatever it is called.
  if (found.every((value) => value === 1)) return readDetermined(reader, 'first', one(reader))
  const of = attempt(reader, (inner) => readTarget(inner, false)) ?? anyStitch
  return { kind: 'nth', nth: found, of }
}

/** `in top of each puff st` */
function topOfEach(reader: Reader): Where | null {
  take(reader, 'the')
  return take(reader, 'top', 'tops') && take(reader, 'of') ? readEach(reader) : null
}

function ordered(reader: Reader): Where | null {
  take(reader, 'the')
  takeAll(reader, 'top', 'of')
  take(reader, 'the')
  if (textAt(reader, 1) === 'post') take(reader, 'front', 'back')
  takeAll(reader, 'post', 'of')
  take(reader, 'the')
  if (take(reader, 'next', 'following', 'foll')) return readDetermined(reader, 'next', one(reader))
  if (take(reader, 'first')) return readDetermined(reader, 'first', one(reader))
  if (/^corners?$/.test(textAt(reader, 1)) && take(reader, 'beg', 'beginning', 'starting', 'joining'))
    return readDetermined(reader, 'first', one(reader))
  if (take(reader, 'last', 'final')) return readDetermined(reader, 'last', one(reader))
  if (take(reader, 'any')) return readDetermined(reader, 'next', one(reader))
  if (take(reader, 'rem', 'remaining', 'rest', 'others')) return rest(reader)
  return nth(reader)
}

/** `under 5 ch`: a loop told by its chains */
function loopUnder(reader: Reader, preposition: string): Where | null {
  if (!/^(?:under|over|on|upon)$/.test(preposition)) return null
  const chains = numberAt(reader)?.count[0] ?? null
  if (chains === null) return null
  reader.at += 1
  take(reader, '-')
  return take(reader, ...chainWords) ? { kind: 'next', count: one(reader), of: [{ kind: 'space', chains }] } : null
}

/** `in front loop 2 rows below`: the row tells the place. */
function below(reader: Reader): Where | null {
  const depth = readDepth(reader)
  return depth === null ? null : { kind: 'next', count: one(reader), of: anyStitch, depth }
}

/** `in ch-2 sp`, `over 3 sts`, `in corner` */
function bare(reader: Reader, preposition: string): Where | null {
  take(reader, 'a', 'the')
  const loop = attempt(reader, (inner) => loopUnder(inner, preposition))
  if (loop !== null) return loop
  if (numberAt(reader) !== null) return readDetermined(reader, 'next', null)
  const of = readTarget(reader, false)
  return of === null ? null : { kind: 'next', count: one(reader), of, bare: true }
}

const belonging =
  /^(?:of|in|from) (?:the |this |that )?(?:(?:last|previous|prev|preceding|prior|former|first|next|same|other|adjacent|neighbouring) )+(?:row|rnd|round|block|blocks|tile|motif|square|box|petal|flower|hexagon|piece)(?= |$)|^between (?:the )?petals(?= |$)|^between (?:the )?(?:next |these |last )*(?:# )?(?:sts?|stitches|scs?|dcs?|hdcs?|trs?|htrs?)(?= |$)|^of (?:the )?(?:turning (?:ch|chain)|tch|(?:first|next|same) (?:ch - # )?(?:lp|loop|sp|space|arch)|yoke|body|back|front|sleeve|ring|circle|ch|chain|foundation|foundation ch|foundation chain|throw|blanket|afghan|shawl|scarf|cloth|hat|bag|cushion|cowl|panel|row below|rnd below|square|motif|piece|edge|edging)(?= |$)/

/** `of previous row`, `of next block`: which of the like it is, where its place tells that already. */
export function passBelonging(reader: Reader): void {
  takePattern(reader, belonging)
}

const formed =
  /^(?:the )?(?:last )?(?:(?:ch - # |#-ch |# ch |ch )?(?:loop|lp|sp|space|arch)|ch-sp|ch-lp) (?:just |last )?(?:formed|made|completed)(?= |$)/

/** `in loop just formed`: where the last stitch of the round before has left the hook */
function justFormed(reader: Reader): Where | null {
  return takePattern(reader, formed) === null ? null : { kind: 'same', start: false }
}

const finders: readonly ((reader: Reader) => Where | null)[] = [
  readRowEnds,
  fromHook,
  readOpeningChain,
  ring,
  justFormed,
  passedBefore,
  readGap,
  topOfEach,
  readWithin,
  readEach,
  same,
  ordered,
]

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
  if (prepositions.includes(textAt(reader, 1))) take(reader, 'all', 'both')
  const preposition = textAt(reader)
  const said = take(reader, ...prepositions)
  // `sl st over to the corner`
  if (said && preposition !== 'to') take(reader, 'to')
  for (const find of finders) {
    const where = attempt(reader, find)
    if (where !== null) return settled(reader, where)
  }
  const where = said ? (attempt(reader, below) ?? attempt(reader, (inner) => bare(inner, preposition))) : null
  return where === null ? null : settled(reader, where)
}

function settled(reader: Reader, where: Where): Where {
  const placed = withDepth(reader, where)
  passBelonging(reader)
  return placed
}
