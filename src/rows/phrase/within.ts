import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, numberAt, one, take, takeNumber, takeOrdinal, takeStitch, textAt } from '../reader.ts'
import type { Accepts, Member, Where } from '../step.ts'
import { chainWords, numberedSpace, readGroup, readNoun, spaceWords, stitchWords } from './nouns.ts'
import { readUntil } from './until.ts'

/** A place of a group: which one, or, for null, the space in its middle. */
interface Named {
  readonly member: Member | null
  /** The space itself, where one is named. */
  readonly space: Accepts | null
}

function passNoun(reader: Reader): void {
  if (attempt(reader, takeStitch) !== null) return
  take(reader, 'one', ...stitchWords, ...chainWords, ...spaceWords)
}

/** `center dc`, `3rd st`, `ch-2 sp`, `last dc` */
function memberAt(reader: Reader): Named | null {
  take(reader, 'the')
  if (take(reader, 'center', 'centre', 'middle', 'central', 'eye')) {
    passNoun(reader)
    return { member: 'middle', space: null }
  }
  const edge = textAt(reader)
  if (take(reader, 'first', 'last')) {
    passNoun(reader)
    return { member: edge === 'first' ? 'first' : 'last', space: null }
  }
  const nth = takeOrdinal(reader)?.[0] ?? null
  if (nth !== null) {
    passNoun(reader)
    return { member: nth, space: null }
  }
  const space = attempt(reader, readNoun)
  return space?.kind === 'space' || space?.kind === 'gap' ? { member: null, space } : null
}

/** `5 tr`, `7 ch`: stitches or chains told by their number */
function told(reader: Reader): Accepts | null {
  const size = takeNumber(reader)?.[0] ?? null
  if (size === null) return null
  if (take(reader, ...chainWords)) return { kind: 'space', chains: size }
  const stitch = takeStitch(reader) !== null || take(reader, ...stitchWords)
  if (!stitch) return null
  attempt(reader, (inner) => (take(inner, 'in') && take(inner, 'corner') ? true : null))
  return { kind: 'special', name: 'group', size }
}

/** What the place is within: a group, a corner, a loop of chains. */
function container(reader: Reader): Accepts | null {
  take(reader, 'the')
  const noun = attempt(reader, (inner) => {
    const found = readGroup(inner) ?? readNoun(inner)
    return found !== null && /^(?:special|corner|space)$/.test(found.kind) ? found : null
  })
  return noun ?? attempt(reader, numberedSpace) ?? attempt(reader, told)
}

function asMember(accept: Accepts, { member, space }: Named, known: boolean): Accepts {
  // `ch-3 sp of next block`: the space tells more than a noun that the pattern does not define.
  if (space?.kind === 'space' && !known) return space
  return accept.kind === 'special' && member !== null ? { ...accept, member } : accept
}

type Which = 'next' | 'first' | 'last' | 'each' | 'same'

/** `of next`, `of each`, `of the 2nd`, or none of them */
function whichOne(reader: Reader): Which {
  take(reader, 'the', 'these')
  if (take(reader, 'each', 'every', 'all')) {
    take(reader, 'of')
    take(reader, 'the', 'next', 'following')
    return 'each'
  }
  if (take(reader, 'first')) return 'first'
  if (take(reader, 'last', 'final')) return 'last'
  if (take(reader, 'same', 'that', 'this')) return 'same'
  take(reader, 'next', 'following', 'foll', 'any', 'a')
  return 'next'
}

/** `of next 3 shells`: so many of them, where the number is not the group's own. */
function howMany(reader: Reader): Count | null {
  if (numberAt(reader) === null) return null
  return attempt(reader, (inner) => {
    const count = takeNumber(inner)
    const at = inner.at
    const sized = attempt(inner, container)
    inner.at = at
    return sized !== null && sized.kind !== 'space' ? count : null
  })
}

/**
 * One place of a group, a corner or a loop.
 *
 *     sc in center dc of next shell     V-st in ch-1 sp of each V-st across     in 3rd of each 5 ch
 *           ^
 */
export function readWithin(reader: Reader): Where | null {
  const named = memberAt(reader)
  if (named === null || !take(reader, 'of', 'in', 'on')) return null
  const which = whichOne(reader)
  const whole = attempt(reader, container)
  const count = whole === null ? howMany(reader) : null
  const accept = whole ?? (count === null ? null : container(reader))
  if (accept === null) return null
  const known = accept.kind !== 'special' || reader.vocabulary.specials.has(accept.name.toLowerCase())
  const of = [asMember(accept, named, known)]
  if (which === 'same') return { kind: 'same', start: false }
  if (which === 'each' && count === null)
    return { kind: 'each', of, until: attempt(reader, readUntil) ?? { kind: 'end' } }
  return { kind: which === 'each' ? 'next' : which, count: count ?? one(reader), of }
}
