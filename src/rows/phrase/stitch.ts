import type { Count } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import {
  attempt,
  isWordAhead,
  numberAt,
  one,
  passClause,
  peek,
  spanSince,
  take,
  takeNumber,
  takeSpecial,
  takeStitch,
  textAt,
} from '../reader.ts'
import type { Part, Special, Step, Target, Where } from '../step.ts'
import { plain } from '../terms/stitch.ts'
import { numberedSpace, readNoun } from './nouns.ts'
import { readAlongChain, readPiece } from './piece-named.ts'
import { passEdge } from './row-ends.ts'
import { readSourceAfter } from './source.ts'
import { passManner } from './standing.ts'
import { anyStitch } from './target.ts'
import { readWhere } from './where.ts'

interface Named {
  readonly before: Count | null
  readonly part: (count: Count) => Part
  readonly special: Special | null
}

function named(reader: Reader): Named | null {
  // `3-dc cluster`: the number is the name's.
  const whole = numberAt(reader) === null ? null : attempt(reader, takeSpecial)
  if (whole !== null)
    return { before: null, special: whole, part: (count) => ({ kind: 'special', special: whole, count }) }
  const before = takeNumber(reader)
  // A stitch of the draft's own may be called A.
  if (before === null && reader.vocabulary.specials.get(textAt(reader)) === undefined) {
    take(reader, 'a', 'an', 'another', 'one')
  }
  const special = takeSpecial(reader)
  if (special !== null) return { before, special, part: (count) => ({ kind: 'special', special, count }) }
  passManner(reader)
  const mannered = takeSpecial(reader)
  if (mannered !== null)
    return { before, special: mannered, part: (count) => ({ kind: 'special', special: mannered, count }) }
  const stitch = takeStitch(reader)
  if (stitch === null || stitch.base === 'slipStitch') return null
  // `8 single crochet stitches into it`
  if (before !== null) take(reader, 'stitch', 'stitches')
  // What increases and decreases are made of later: a foundation stitch is the first of its kind, not one to go on with.
  reader.stitch = stitch.style === 'foundation' ? plain(stitch.base) : stitch
  return { before, special: null, part: (count) => ({ kind: 'stitch', stitch, count }) }
}

/** `sc 5`, `sc5`; not the `5` of `sc 5 times` */
function numberAfter(reader: Reader): Count | null {
  const number = numberAt(reader)
  const after = textAt(reader, 1)
  if (number === null || /^(?:times|time|more|x)$/.test(after)) return null
  // `sc 4-5`, but `sc 4 - repeat`
  if (after === '-' && peek(reader, 1)?.glued === true) return null
  return takeNumber(reader)
}

/** Further places of the same stitch: `and in each ch across`. */
function further(reader: Reader): Where | null {
  take(reader, ',')
  if (!take(reader, 'and')) return null
  return attempt(reader, readWhere) ?? alsoIn(reader)
}

/** `next tr and 1-ch sp`: the noun alone, where it is a space. */
function alsoIn(reader: Reader): Where | null {
  const noun = attempt(reader, numberedSpace) ?? readNoun(reader)
  const rare = noun?.kind === 'space' || noun?.kind === 'corner'
  return rare ? { kind: 'next', count: one(reader), of: [noun] } : null
}

/** All the places that follow; none for a stitch without a place. */
export function readPlaces(reader: Reader): readonly Where[] {
  const places: Where[] = []
  for (let where = attempt(reader, readWhere); where !== null; where = attempt(reader, further)) places.push(where)
  return places
}

function isPicot(special: Special | null): boolean {
  return special !== null && Array.isArray(special.makes) && special.makes.every((part) => part.kind === 'picot')
}

/** `4 dc on the first 4 dc`: one on each of as many. */
function oneOnEach(count: Count, where: Where): Count {
  const counted = where.kind === 'next' || where.kind === 'first' || where.kind === 'last'
  const asMany = counted && where.count.every((places, size) => places === count[size])
  return asMany ? count.map((value) => (value === null ? null : 1)) : count
}

function placeless(reader: Reader, stitch: Named, count: Count, from: number): Step {
  const at = spanSince(reader, from)
  // A picot stands on the stitch just made.
  if (isPicot(stitch.special)) {
    return { kind: 'work', parts: [stitch.part(count)], where: { kind: 'same', start: false }, at }
  }
  return {
    kind: 'work',
    parts: [stitch.part(one(reader))],
    where: { kind: 'next', count, of: anyStitch },
    at,
  }
}

/** `46 sc evenly along edge`, `sc evenly down side`, `24 sc along the front edge` */
function alongEdge(reader: Reader, stitch: Named, count: Count | null, from: number): readonly Step[] | null {
  const evenly = take(reader, 'evenly')
  if (evenly) take(reader, 'spaced')
  const edge = passEdge(reader)
  if (!(evenly || (count !== null && edge))) return null
  const part = stitch.part(one(reader))
  if (part.kind !== 'stitch') return null
  passClause(reader, 'and')
  return [{ kind: 'pickUp', stitch: part.stitch, count, at: spanSince(reader, from) }]
}

/** `sc 12 around first leg`, `sc 3 along the ch`: so many of them, or one in each. */
function alongPiece(reader: Reader, stitch: Named, count: Count | null, from: number): readonly Step[] | null {
  const source = readPiece(reader)
  const chain = source === null && readAlongChain(reader)
  if (source === null && !chain) return null
  const of = chain ? chainPlace : anyStitch
  const where: Where = count === null ? { kind: 'each', of, until: { kind: 'end' } } : { kind: 'next', count, of }
  const step: Step = { kind: 'work', parts: [stitch.part(one(reader))], where, at: spanSince(reader, from) }
  return source === null ? [step] : [source, step]
}

const chainPlace: Target = [{ kind: 'chain' }]

/**
 * A stitch or special stitch with its places.
 *
 *     sc in 2nd ch from hook and in each ch across
 *     ^
 *     2 dc in next st     sc 5     5 sc     shell in next sp
 */
export const stitchPhrase: Phrase = {
  name: 'stitch',
  opens: (reader) => isWordAhead(reader) || numberAt(reader) !== null,
  read: (reader) => {
    const from = reader.at
    const stitch = named(reader)
    if (stitch === null) return null
    const after = stitch.before === null ? attempt(reader, numberAfter) : null
    const edge = attempt(reader, (inner) => alongEdge(inner, stitch, stitch.before ?? after, from))
    if (edge !== null) return edge
    const count = stitch.before ?? after ?? one(reader)
    const said = stitch.before !== null || after !== null
    const onPiece = attempt(reader, (inner) => alongPiece(inner, stitch, said ? count : null, from))
    if (onPiece !== null) return onPiece
    const on = /^(?:on|over)$/.test(textAt(reader))
    const places = readPlaces(reader)
    if (places.length === 0) return [placeless(reader, stitch, count, from)]
    const at = spanSince(reader, from)
    const steps: Step[] = places.map((where) => {
      const parts = [stitch.part(on ? oneOnEach(count, where) : count)]
      return { kind: 'work', parts, where, at }
    })
    const source = readSourceAfter(reader) ?? readPiece(reader)
    return source === null ? steps : [source, ...steps]
  },
}
