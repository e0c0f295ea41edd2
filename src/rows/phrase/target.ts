import type { Reader } from '../reader.ts'
import { attempt, numberAt, peek, take, takeSpecial, takeStitch, textAt } from '../reader.ts'
import type { Accepts, Target } from '../step.ts'
import { amongNoun } from './among.ts'
import { rowEndNoun } from './row-ends.ts'

const spaceWords = ['sp', 'sps', 'space', 'spaces', 'loop', 'loops', 'lp', 'lps', 'arch', 'arches']
const joinedSpace = [
  'ch-sp',
  'ch-sps',
  'ch-space',
  'ch-spaces',
  'chain-space',
  'chain-spaces',
  'ch-lp',
  'ch-lps',
  'ch-loop',
  'ch-loops',
]
const chainWords = ['ch', 'chs', 'chain', 'chains']
const stitchWords = ['st', 'sts', 'stitch', 'stitches']

/** A phrase that names no noun: `next 5`, `sk 2`. */
export const anyStitch: Target = [{ kind: 'stitch', said: false }]
export const saidStitch: Target = [{ kind: 'stitch', said: true }]

/** `ch-2 sp`, `ch 2 sp`, `ch-sp`, `ch-2`, and bare `ch`. */
function chainNoun(reader: Reader): Accepts | null {
  if (take(reader, ...joinedSpace)) return { kind: 'space', chains: null }
  if (!take(reader, ...chainWords)) return null
  const hyphen = textAt(reader) === '-' ? 1 : 0
  const number = numberAt(reader, hyphen)
  const chains = number?.count[0] ?? null
  const spaceFollows = spaceWords.includes(textAt(reader, hyphen + (number === null ? 0 : 1)))
  if (number !== null && (hyphen === 1 || spaceFollows)) {
    reader.at += hyphen + 1
    take(reader, ...spaceWords)
    return { kind: 'space', chains }
  }
  if (hyphen === 1) reader.at += 1
  if (take(reader, ...spaceWords)) return { kind: 'space', chains: null }
  return hyphen === 1 ? null : { kind: 'chain' }
}

/** Whether a number ahead belongs to the noun: `next 2-ch sp`, `next 2ch sp`; not `next 2 ch sps`. */
export function isNumberedNoun(reader: Reader): boolean {
  if (textAt(reader, 1) === '-') return true
  const text = textAt(reader, 1)
  if (peek(reader, 1)?.glued !== true) return false
  if (joinedSpace.includes(text)) return true
  const after = textAt(reader, 2) === '-' ? textAt(reader, 3) : textAt(reader, 2)
  return chainWords.includes(text) && spaceWords.includes(after)
}

/** `2-ch sp`, `2ch sp`, `5-ch loop`, `2ch-sp` */
function numberedSpace(reader: Reader): Accepts | null {
  const number = numberAt(reader)
  if (number === null) return null
  reader.at += 1
  take(reader, '-')
  const chains = number.count[0] ?? null
  if (take(reader, ...joinedSpace)) return { kind: 'space', chains }
  if (!take(reader, ...chainWords)) return null
  take(reader, '-')
  return take(reader, ...spaceWords) ? { kind: 'space', chains } : null
}

/** `corner`, `corner ch-2 sp`, `corner sp` */
function corner(reader: Reader): Accepts | null {
  if (!take(reader, 'corner', 'corners', 'point', 'spine')) return null
  attempt(reader, chainNoun)
  take(reader, ...spaceWords, ...stitchWords)
  return { kind: 'corner' }
}

export const groupWords = /^(?:groups?|clusters?|shells?|fans?|gps?|blocks?)$/

/** `between groups`, `between next 2 3-dc groups` */
function gap(reader: Reader): Accepts | null {
  if (!take(reader, 'between', 'bet')) return null
  take(reader, 'the', 'next')
  if (numberAt(reader) !== null && textAt(reader, 1) !== '-') reader.at += 1
  if (numberAt(reader) !== null && textAt(reader, 1) === '-') {
    reader.at += 2
    takeStitch(reader)
  }
  if (!groupWords.test(textAt(reader))) return null
  reader.at += 1
  return { kind: 'gap' }
}

/** Words that say which place, where the place is found by its order all the same. */
const adjectives = (
  'center centre middle indicated designated specified given unworked unused underarm armhole sleeve held reserved skipped ' +
  'parked live foundation base'
).split(' ')

function noun(reader: Reader): Accepts | null {
  while (take(reader, ...adjectives));
  const special = attempt(reader, takeSpecial)
  if (special !== null) return { kind: 'special', name: special.name }
  const stitch = attempt(reader, takeStitch)
  if (stitch !== null) {
    take(reader, ...stitchWords)
    return { kind: 'named', stitch }
  }
  if (take(reader, ...stitchWords)) return { kind: 'stitch', said: true }
  const loop = /^loops?$/.test(textAt(reader))
  if (take(reader, ...spaceWords)) {
    return attempt(reader, gap) ?? (loop ? { kind: 'space', chains: null, loop } : { kind: 'space', chains: null })
  }
  return (
    attempt(reader, amongNoun) ??
    attempt(reader, rowEndNoun) ??
    attempt(reader, corner) ??
    attempt(reader, chainNoun) ??
    attempt(reader, numberedSpace)
  )
}

/** `center dc of next shell`, `ch-1 sp of V-st`: the place within the special stitch. */
function within(reader: Reader): Accepts | null {
  if (!take(reader, 'of', 'in')) return null
  take(reader, 'the')
  take(reader, 'next', 'same', 'each', 'every', 'first', 'last', 'following', 'foll')
  if (take(reader, 'corner', 'corners')) return { kind: 'corner' }
  const special = takeSpecial(reader)
  return special === null ? null : { kind: 'special', name: special.name }
}

const groupNouns =
  /^(?:groups?|gps?|blocks?|tiles?|box|boxes|motifs?|squares?|meshes|mesh|fans?|scallops?|petals?|pairs?|repeats?|patterns?)$/

/** `of next block`, `of previous tile`: which one it is follows from the order. */
function ofGroup(reader: Reader): true | null {
  if (!take(reader, 'of', 'in')) return null
  take(reader, 'the')
  take(reader, 'next', 'previous', 'prev', 'first', 'last', 'same', 'each', 'every', 'following', 'foll')
  if (numberAt(reader) !== null && textAt(reader, 1) === '-') {
    reader.at += 2
    takeStitch(reader)
  }
  if (!groupNouns.test(textAt(reader))) return null
  reader.at += 1
  return true
}

/** `center of next shell`, `eye of each star` */
function middleOf(reader: Reader): Accepts | null {
  return take(reader, 'center', 'centre', 'middle', 'eye', 'top') ? within(reader) : null
}

/** `st and ch-1 sp`, `dc and each ch`, `ch or dc` */
function further(reader: Reader, joined: boolean): Accepts | null {
  if (!take(reader, ...(joined ? ['and', 'or'] : ['or']))) return null
  take(reader, 'in')
  take(reader, 'each', 'every')
  if (peek(reader)?.kind !== 'word' || take(reader, 'next', 'last', 'same', 'first', 'corner')) return null
  return noun(reader)
}

/**
 * The places that a phrase names.
 *
 *     sc in each st and ch-1 sp across
 *                ^^^^^^^^^^^^^^
 */
export function readTarget(reader: Reader, joined: boolean): Target | null {
  const first = attempt(reader, noun) ?? attempt(reader, middleOf)
  if (first === null) return null
  const inside = attempt(reader, within)
  if (inside !== null) return [inside]
  if (attempt(reader, ofGroup) !== null) return [first]
  const accepts = [first]
  const next = (): Accepts | null => attempt(reader, (inner) => further(inner, joined))
  for (let more = next(); more !== null; more = next()) accepts.push(more)
  return accepts
}
