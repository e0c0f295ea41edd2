import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import {
  attempt,
  holdsLetters,
  isWordAhead,
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
  readonly places: Where | null
}

const namesTogether = holdsLetters('tog')
const namesDecrease = holdsLetters('dec')

const decreaseWords = ['dec', 'decs', 'decrease', 'decreases', 'invdec', 'inv-dec']

/** `sc2tog`, `dc3tog` */
function glued(reader: Reader): Together | null {
  const match = /^(\p{L}+)(\d+)tog$/u.exec(textAt(reader))
  const stitch = reader.vocabulary.dictionary.stitches.get(match?.[1] ?? '')
  if (match === null || stitch === undefined) return null
  reader.at += 1
  return {
    stitch,
    name: match[0],
    legs: everySize(Number(match[2]), reader.vocabulary.sizes),
    places: attempt(reader, readWhere),
  }
}

/** `sc next 2 sts tog`, `dc 2 tog`, `sc 2 sts together` */
function parted(reader: Reader): Together | null {
  const stitch = takeStitch(reader)
  if (stitch === null) return null
  const where = attempt(reader, readWhere)
  const legs = where?.kind === 'next' ? where.count : takeNumber(reader)
  if (where === null) take(reader, 'st', 'sts', 'stitches')
  if (legs === null || !take(reader, 'tog', 'together')) return null
  return { stitch, name: null, legs, places: where ?? attempt(reader, readWhere) }
}

/** `dec`, `invdec`, `sc dec`, `dec over next 2 sts` */
function decrease(reader: Reader): Together | null {
  const stitch = attempt(reader, takeStitch) ?? reader.stitch
  take(reader, 'inv', 'invisible')
  if (!take(reader, ...decreaseWords)) return null
  const legs = everySize(2, reader.vocabulary.sizes)
  const where = attempt(reader, readWhere)
  return { stitch, name: null, legs, places: where }
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

function isOne(count: Count): boolean {
  return count.every((value) => value === 1 || value === null)
}

/**
 * Stitches worked together.
 *
 *     sc2tog over next 2 sts     6 dec     dc next 3 sts tog
 *     ^
 */
export const togetherPhrase: Phrase = {
  name: 'together',
  opens: (reader) =>
    (namesDecrease(reader) || namesTogether(reader)) && (isWordAhead(reader) || numberAt(reader) !== null),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const before = takeNumber(reader)
    if (before === null) take(reader, 'a', 'one')
    const together = attempt(reader, glued) ?? attempt(reader, parted) ?? attempt(reader, decrease)
    if (together === null) return null
    const { stitch, name, legs } = together
    const where = placed(together, before ?? one(reader))
    return [{ kind: 'together', stitch, name, legs, where, at: spanSince(reader, from) }]
  },
}
