import type { Phrase, Reader } from '../reader.ts'
import { attempt, numberAt, one, passClause, spanSince, take, takeNumber, takeStitch, textAt } from '../reader.ts'
import type { Step, Target, Where } from '../step.ts'
import { readCounting } from './counting.ts'
import { withDepth } from './depth.ts'
import { numberedSpace, readNoun } from './nouns.ts'
import { readOpeningChain } from './opening-chain.ts'
import { takePattern } from './pattern.ts'
import { goingBack } from './rejoin.ts'
import { anyStitch, readTarget } from './target.ts'
import { readUntil } from './until.ts'
import { passBelonging, readWhere } from './where.ts'

/** `2 sts`, `2`, `1 ch`, `dc` */
function counted(reader: Reader): Where | null {
  take(reader, 'the')
  take(reader, 'center', 'centre', 'middle', 'next')
  const noun = attempt(reader, numberedSpace)
  if (noun !== null) return { kind: 'next', count: one(reader), of: [noun] }
  const count = takeNumber(reader) ?? (take(reader, 'one', 'a') ? one(reader) : null)
  const of = attempt(reader, (inner) => readTarget(inner, false))
  if (count === null && of === null) return null
  return { kind: 'next', count: count ?? one(reader), of: of ?? anyStitch }
}

function rest(reader: Reader): boolean {
  take(reader, 'the')
  if (!take(reader, 'rem', 'remaining', 'rest')) return false
  passClause(reader)
  return true
}

/** `all dc to next corner`, `to next corner sp` */
function upTo(reader: Reader): Where | null {
  take(reader, 'all', 'the')
  const of = attempt(reader, (inner) => readTarget(inner, false)) ?? anyStitch
  const until = readUntil(reader)
  return until === null ? null : { kind: 'each', of, until }
}

/** `miss st at base of 3 ch` */
function base(reader: Reader): Where | null {
  const where = readOpeningChain(reader)
  return where?.kind === 'same' ? where : null
}

/** `skip sleeve sts`: all up to the next space, corner or marker, where no number is said */
function section(reader: Reader): Where | null {
  const found = takePattern(
    reader,
    /^(?:(?:all|the|next|first|second|each|of|left|right) )*(?:sleeve|underarm|armhole)(?: section)?(?: (?:sts?|stitches))?(?= [,;.:)]| and| for|$)/,
  )
  const of: Target = [{ kind: 'space', chains: null }, { kind: 'corner' }, { kind: 'marked' }]
  return found === null ? null : { kind: 'each', of: anyStitch, until: { kind: 'reaching', of } }
}

function place(reader: Reader): Where | null {
  return (
    attempt(reader, section) ??
    attempt(reader, base) ??
    attempt(reader, upTo) ??
    attempt(reader, counted) ??
    readWhere(reader)
  )
}

/** `first dc and ch-1 sp` */
function bareSpace(reader: Reader): Where | null {
  const noun = readNoun(reader)
  return noun?.kind === 'space' ? { kind: 'next', count: one(reader), of: [noun] } : null
}

/** `…, next 26 sts and next ch-1 sp`: more that is skipped, which no stitch stands before. */
function further(reader: Reader): Where | null {
  take(reader, ',')
  const joined = take(reader, 'and')
  const said = /^(?:next|following|the|all|also)$/.test(textAt(reader))
  const where = said || numberAt(reader) !== null ? place(reader) : joined ? bareSpace(reader) : null
  if (where === null || /^(?:in|into|over|on)$/.test(textAt(reader))) return null
  // `miss 1, 1 treble` goes on with a stitch; `miss 1-ch sp, 18 tr and next 1-ch sp` is a list.
  return said || joined || textAt(reader) === 'and' ? where : null
}

/** `skip sl st`: it is no place of the row below. */
function passSlip(reader: Reader): true | null {
  while (take(reader, 'the', 'first', 'a'));
  return takeStitch(reader)?.base === 'slipStitch' ? true : null
}

/** `for armhole`, `for the left sleeve`: what the stitches are left for. */
function passPurpose(reader: Reader): void {
  takePattern(
    reader,
    /^(?:for|as|at) (?:(?:the|an?|left|right|first|second|front|back|center|centre|each|your|#) )*(?:armholes?|sleeves?|thumb|thumbhole|thumb hole|thumb opening|neck|neckline|underarm|buttonhole|body|front|back|eyelet|opening|hole|leg|tail|pocket|instep|heel)(?: (?:opening|hole|edge|sts?|stitches|side))?(?= |$)/,
  )
}

/**
 * Stitches or spaces passed over.
 *
 *     sk 2 sts     sk next ch-1 sp     miss 1     sk first st     skip to next corner sp
 *     ^
 */
export const skipPhrase: Phrase = {
  name: 'skip',
  opens: (reader) => /^(?:sk|skip|miss|skipping|missing)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    reader.at += 1
    if (attempt(reader, passSlip)) return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
    if (attempt(reader, (inner) => (rest(inner) ? true : null))) return [{ kind: 'leave', at: spanSince(reader, from) }]
    const first = attempt(reader, place)
    if (first === null) return null
    passBelonging(reader)
    const at = spanSince(reader, from)
    const counting = attempt(reader, (inner) => (/^[([]$/.test(textAt(inner)) ? readCounting(inner) : null))
    const skip = { kind: 'skip', where: withDepth(reader, first), at } as const
    const steps = [...goingBack(counting === null ? skip : { ...skip, counting })]
    for (let where = attempt(reader, further); where !== null; where = attempt(reader, further)) {
      steps.push({ kind: 'skip', where, at: spanSince(reader, from) })
    }
    passPurpose(reader)
    return steps
  },
}
