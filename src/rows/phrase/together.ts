import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import {
  atClauseEnd,
  attempt,
  isWordAhead,
  namesShaping,
  numberAt,
  one,
  spanSince,
  take,
  takeNumber,
  takeStitch,
  textAt,
} from '../reader.ts'
import type { Step, Where } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import { anyStitch } from './target.ts'
import { readWhere } from './where.ts'

interface Together {
  readonly stitch: Stitch
  readonly name: string | null
  readonly legs: Count
  /** `in` leads to the place: one for all the legs. */
  readonly into: boolean
  readonly places: Where | null
  /** `dec 4` */
  readonly times?: Count
}

const decreaseWords = ['dec', 'decs', 'decrease', 'decreases', 'invdec', 'inv-dec']

/** `sc2tog`, `dc3tog` */
function glued(reader: Reader): Together | null {
  const match = /^(\p{L}+)(\d+)tog$/u.exec(textAt(reader))
  const stitch = reader.vocabulary.dictionary.stitches.get(match?.[1] ?? '')
  if (match === null || stitch === undefined) return null
  reader.at += 1
  const legs = everySize(Number(match[2]), reader.vocabulary.sizes)
  return { stitch, name: match[0], legs, into: saysInto(reader), places: attempt(reader, readWhere) }
}

/** `in next st`, `all in same st`; not `over next 2 sts` */
function saysInto(reader: Reader): boolean {
  return /^(?:in|into)$/.test(textAt(reader, textAt(reader) === 'all' ? 1 : 0))
}

/** `3 dc worked together in same st` */
function counted(reader: Reader): Together | null {
  const legs = takeNumber(reader)
  const stitch = legs === null ? null : takeStitch(reader)
  take(reader, 'worked', 'closed')
  if (legs === null || stitch === null || !take(reader, 'tog', 'together')) return null
  return { stitch, name: null, legs, into: saysInto(reader), places: attempt(reader, readWhere) }
}

/** `sc next 2 sts tog`, `dc 2 tog`, `sc 2 sts together` */
function parted(reader: Reader): Together | null {
  const stitch = takeStitch(reader)
  if (stitch === null) return null
  const where = attempt(reader, readWhere)
  const counts = where?.kind === 'next' || where?.kind === 'first' || where?.kind === 'last'
  const legs = counts ? where.count : takeNumber(reader)
  if (where === null) take(reader, 'st', 'sts', 'stitches')
  if (legs === null || !take(reader, 'tog', 'together')) return null
  const into = where === null && saysInto(reader)
  return { stitch, name: null, legs, into, places: where ?? attempt(reader, readWhere) }
}

/** `dec 1 sc`: the stitch that the decrease makes, and nothing after it. */
function passNoun(reader: Reader): void {
  attempt(reader, (inner) => (takeStitch(inner) !== null && atClauseEnd(inner) ? true : null))
}

/** `dec 4`: so many of them; not the `4` of `dec 4 times` or of `dec 4 sts` */
function timesAfter(reader: Reader): Count | null {
  const count = takeNumber(reader)
  if (count === null || /^(?:times|time|more|st|sts|stitch|stitches|tog|together|evenly)$/.test(textAt(reader)))
    return null
  if (textAt(reader) === 'x' && numberAt(reader, 1) === null) return null
  passNoun(reader)
  return count
}

/** `dec`, `invdec`, `sc dec`, `dec over next 2 sts` */
function decrease(reader: Reader): Together | null {
  const stitch = attempt(reader, takeStitch) ?? reader.stitch
  take(reader, 'inv', 'invisible')
  if (!take(reader, ...decreaseWords)) return null
  const legs = everySize(2, reader.vocabulary.sizes)
  const times = attempt(reader, timesAfter)
  if (times !== null) return { stitch, name: null, legs, into: false, places: null, times }
  const where = attempt(reader, readWhere)
  return { stitch, name: null, legs, into: false, places: where }
}

/** All legs in each of the places, closed as one there. */
function inOnePlace(reader: Reader, together: Together, at: Span): Step | null {
  const { stitch, name, legs, into, places } = together
  if (!into || places === null) return null
  const single = !('count' in places) || isOne(places.count)
  return single
    ? { kind: 'work', parts: [{ kind: 'together', stitch, name, legs, count: one(reader) }], where: places, at }
    : null
}

/** `2 dec` and `dec 2` name how many; `over next 2 sts` how many stitches go in. */
function placed(together: Together, times: Count): Where {
  const count = together.legs.map((legs, size) => {
    const by = times[size] ?? null
    return legs === null || by === null ? null : legs * by
  })
  const where = together.places
  if (where === null) return { kind: 'next', count, of: anyStitch }
  const single = (where.kind === 'next' || where.kind === 'first' || where.kind === 'last') && isOne(where.count)
  // `dec in next st` names where the first of them is; the legs are still as many as the name says.
  return single ? { ...where, count } : where
}

/** A place used before and a space have none beside them that the legs could go into. */
function isOneByKind(where: Where | null): boolean {
  if (where === null || !('of' in where)) return where?.kind === 'same' || where?.kind === 'ring'
  return where.of.every((accepts) => accepts.kind !== 'stitch' && accepts.kind !== 'named')
}

function isOne(count: Count): boolean {
  return count.every((value) => value === 1 || value === null)
}

/**
 * Stitches worked together.
 *
 *     sc2tog over next 2 sts     6 dec     dc next 3 sts tog     dc5tog in next st
 *     ^
 */
export const togetherPhrase: Phrase = {
  name: 'together',
  opens: (reader) => namesShaping(reader) && (isWordAhead(reader) || numberAt(reader) !== null),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const closed = attempt(reader, counted)
    const before = closed === null ? takeNumber(reader) : null
    if (before === null) take(reader, 'a', 'one')
    const together = closed ?? attempt(reader, glued) ?? attempt(reader, parted) ?? attempt(reader, decrease)
    if (together === null) return null
    const { stitch, name, legs } = together
    const at = spanSince(reader, from)
    const over: Step = {
      kind: 'together',
      stitch,
      name,
      legs,
      where: placed(together, before ?? together.times ?? one(reader)),
      at,
    }
    const inOne = before === null ? inOnePlace(reader, together, at) : null
    if (inOne === null) return [over]
    return isOneByKind(together.places)
      ? [inOne]
      : [{ kind: 'either', options: [[inOne], [over]], about: 'together', at }]
  },
}
