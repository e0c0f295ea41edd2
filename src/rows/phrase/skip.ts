import type { Phrase, Reader } from '../reader.ts'
import { attempt, one, passClause, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step, Where } from '../step.ts'
import { withDepth } from './depth.ts'
import { goingBack } from './rejoin.ts'
import { anyStitch, readTarget } from './target.ts'
import { readUntil } from './until.ts'
import { readWhere } from './where.ts'

/** `2 sts`, `2`, `1 ch`, `dc` */
function counted(reader: Reader): Where | null {
  const noun = attempt(reader, (inner) => (textAt(inner, 1) === '-' ? readTarget(inner, false) : null))
  if (noun !== null) return { kind: 'next', count: one(reader), of: noun }
  take(reader, 'the')
  take(reader, 'center', 'centre', 'middle', 'next')
  const count = takeNumber(reader)
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
    if (attempt(reader, (inner) => (rest(inner) ? true : null))) return [{ kind: 'leave', at: spanSince(reader, from) }]
    const until = attempt(reader, readUntil)
    const where: Where | null =
      until === null ? (attempt(reader, counted) ?? attempt(reader, readWhere)) : { kind: 'each', of: anyStitch, until }
    if (where === null) return null
    return goingBack({ kind: 'skip', where: withDepth(reader, where), at: spanSince(reader, from) })
  },
}
