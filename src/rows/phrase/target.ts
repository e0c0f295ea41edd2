import type { Reader } from '../reader.ts'
import { attempt, numberAt, peek, take, textAt } from '../reader.ts'
import type { Accepts, Target } from '../step.ts'
import { numberedSpace, readNoun } from './nouns.ts'

/** A phrase that names no noun: `next 5`, `sk 2`. */
export const anyStitch: Target = [{ kind: 'stitch', said: false }]
export const saidStitch: Target = [{ kind: 'stitch', said: true }]

/** `st and ch-1 sp`, `dc and each ch`, `ch or dc` */
function further(reader: Reader, joined: boolean): Accepts | null {
  if (!take(reader, ...(joined ? ['and', 'or'] : ['or']))) return null
  take(reader, 'in', 'into')
  take(reader, 'each', 'every')
  const numbered = numberAt(reader) !== null && attempt(reader, numberedSpace)
  if (numbered) return numbered
  if (peek(reader)?.kind !== 'word' || take(reader, 'next', 'last', 'same', 'first', 'corner')) return null
  return readNoun(reader)
}

/**
 * The places that a phrase names.
 *
 *     sc in each st and ch-1 sp across
 *                ^^^^^^^^^^^^^^
 */
export function readTarget(reader: Reader, joined: boolean): Target | null {
  const first = attempt(reader, readNoun)
  if (first === null) return null
  const accepts = [first]
  const listed = joined ? attempt(reader, list) : null
  if (listed !== null) return [first, ...listed]
  const next = (): Accepts | null => attempt(reader, (inner) => further(inner, joined))
  for (let more = next(); more !== null; more = next()) accepts.push(more)
  return accepts
}

/** `, ch-1 sp and dc`: the rest of a list of three or more, which an `and` must end */
function list(reader: Reader): readonly Accepts[] | null {
  const found: Accepts[] = []
  while (take(reader, ',') && textAt(reader) !== 'and') {
    const noun = attempt(reader, numberedSpace) ?? attempt(reader, readNoun)
    if (noun === null) return null
    found.push(noun)
  }
  const last = found.length > 0 ? attempt(reader, (inner) => further(inner, true)) : null
  return last === null ? null : [...found, last]
}
