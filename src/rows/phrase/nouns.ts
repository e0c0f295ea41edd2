import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, numberAt, peek, take, takeNumber, takeSpecial, takeStitch, textAt } from '../reader.ts'
import type { Accepts } from '../step.ts'
import { amongNoun } from './among.ts'
import { takePattern } from './pattern.ts'
import { rowEndNoun } from './row-ends.ts'

export const chainWords = ['ch', 'chs', 'chain', 'chains']
export const stitchWords = ['st', 'sts', 'stitch', 'stitches']
const spaces = ['sp', 'space', 'loop', 'lp', 'arch', 'hole', 'mesh']
export const spaceWords = [...spaces, ...spaces.map((word) => `${word}s`), 'arches', 'meshes']
const chainSpace = /^(?:ch|chain)-(?:sp|space|loop|lp|arch|hole)(s|es)?$/
const manySpaces = /^(?:sps|spaces|loops|lps|arches|archs|holes|meshes)$/

/** Chains of a space whose number differs by size are told by the space alone. */
function sameFor(count: Count): number | null {
  const [first = null, ...rest] = count
  return rest.every((value) => value === first) ? first : null
}

/** `loop of 3 chain`: the chains that are said after the noun. */
function chainsAfter(reader: Reader): number | null {
  const number = attempt(reader, (inner) => {
    const of = take(inner, 'of') ? numberAt(inner) : null
    if (of === null) return null
    inner.at += 1
    take(inner, '-')
    return take(inner, ...chainWords) ? of : null
  })
  return number === null ? null : sameFor(number.count)
}

/** `ch-2 sp`, `ch 2 sp`, `ch-sp`, `ch-2`, and bare `ch`. */
function chainNoun(reader: Reader): Accepts | null {
  if (chainSpace.test(textAt(reader))) {
    reader.at += 1
    return { kind: 'space', chains: chainsAfter(reader) }
  }
  if (!take(reader, ...chainWords)) return null
  const hyphen = textAt(reader) === '-' ? 1 : 0
  const number = numberAt(reader, hyphen)
  const chains = number === null ? null : sameFor(number.count)
  const spaceFollows = spaceWords.includes(textAt(reader, hyphen + (number === null ? 0 : 1)))
  if (number !== null && (hyphen === 1 || spaceFollows || textAt(reader, 1) === 'corner')) {
    reader.at += hyphen + 1
    const space = take(reader, ...spaceWords)
    return take(reader, 'corner', 'corners') && (space || take(reader, ...spaceWords) || true)
      ? { kind: 'corner' }
      : { kind: 'space', chains }
  }
  if (hyphen === 1) reader.at += 1
  if (take(reader, ...spaceWords)) return { kind: 'space', chains: chainsAfter(reader) }
  return hyphen === 1 ? null : { kind: 'chain' }
}

/** `2-ch sp`, `2ch sp`, `5-ch loop`, `3ch-sp`; `3 ch-sps` are three of any length */
export function numberedSpace(reader: Reader): Accepts | null {
  const number = numberAt(reader)
  if (number === null) return null
  reader.at += 1
  const glued = peek(reader)?.glued === true
  const together = chainSpace.exec(textAt(reader))
  if (together !== null) {
    reader.at += 1
    return glued || together[1] === undefined ? { kind: 'space', chains: sameFor(number.count) } : null
  }
  const hyphen = take(reader, '-')
  if (!take(reader, ...chainWords)) return null
  if (take(reader, 'corner', 'corners')) {
    take(reader, ...spaceWords)
    return { kind: 'corner' }
  }
  take(reader, '-')
  const many = manySpaces.test(textAt(reader))
  if (!take(reader, ...spaceWords)) return hyphen ? { kind: 'space', chains: sameFor(number.count) } : null
  return many && !(glued || hyphen) ? null : { kind: 'space', chains: sameFor(number.count) }
}

/** `corner`, `corner ch-2 sp`, `corner sp`, `corner 2-ch sp`, `corner dc` */
function corner(reader: Reader): Accepts | null {
  if (!take(reader, 'corner', 'corners', 'point', 'spine')) return null
  const chained = attempt(reader, chainNoun) ?? attempt(reader, numberedSpace)
  if (chained === null) attempt(reader, takeStitch)
  take(reader, ...spaceWords, ...stitchWords)
  return { kind: 'corner' }
}

const groupWords =
  /^(?:group|cluster|shell|fan|gp|grp|block|petal|scallop|leaf|leave|vandyke|tuft|spot|pair|set|v|box|tile|motif|square|mesh|repeat|star|puff|bobble|popcorn)(?:s|es)?$/

function groupName(word: string): string {
  const name = word.replace(/(?<=x|sh)es$|s$/, '')
  return name === 'v' ? 'V-st' : name
}

/** `3-dc group`, `5 dc shell` */
function sizedGroup(reader: Reader): Accepts | null {
  const number = numberAt(reader)
  const size = number === null ? null : sameFor(number.count)
  if (number === null || size === null) return null
  reader.at += 1
  take(reader, '-')
  if (takeStitch(reader) === null) return null
  take(reader, '-')
  const word = textAt(reader)
  if (!groupWords.test(word)) return null
  reader.at += 1
  return { kind: 'special', name: groupName(word), size }
}

/** Stitches in one place, by the name of the special stitch or by a noun of the trade. */
export function readGroup(reader: Reader): Accepts | null {
  const sized = attempt(reader, sizedGroup)
  if (sized !== null) return sized
  const special = attempt(reader, takeSpecial)
  if (special !== null) {
    take(reader, 'group', 'groups')
    return { kind: 'special', name: special.name }
  }
  const word = textAt(reader)
  if (!groupWords.test(word)) return null
  reader.at += 1
  const size = attempt(reader, ofSize)
  return size === null ? { kind: 'special', name: groupName(word) } : { kind: 'special', name: groupName(word), size }
}

/** `group of 3` */
function ofSize(reader: Reader): number | null {
  if (!take(reader, 'of')) return null
  const size = takeNumber(reader)?.[0] ?? null
  takeStitch(reader)
  return size
}

const marked =
  /^(?:the )?(?:marked (?:corner |center |centre )?(?:sts?|stitch|stitches|chs?|sps?|spaces?|sc|dc|hdc|htr|tr|corners?)|(?:sts?|stitch|sp|ch|sc|dc|hdc|htr|tr) (?:with|holding|that holds|that has|marked with|marked by) (?:the |a |your )?(?:stitch )?(?:markers?|m)|(?:stitch |st )?markers?|m|pm)(?= |$)/

function markedNoun(reader: Reader): Accepts | null {
  return takePattern(reader, marked) === null ? null : { kind: 'marked' }
}

/** Words that say which place, where the place is found by its order all the same. */
const adjectives = (
  'remaining rem center centre middle indicated designated specified given unworked unused underarm armhole sleeve held reserved skipped ' +
  'parked live foundation base raglan heel instep neck thumb gusset shoulder body cuff brim foot sole yoke collar hem waist'
).split(' ')

/** `sp between groups` */
function spaceNoun(reader: Reader): Accepts | null {
  const loop = /^loops?$/.test(textAt(reader))
  if (/^gaps?$/.test(textAt(reader))) {
    reader.at += 1
    return attempt(reader, readGapAfter) ?? { kind: 'gap', between: 'any' }
  }
  if (!take(reader, ...spaceWords)) return null
  const gap = attempt(reader, readGapAfter)
  if (gap !== null) return gap
  const chains = chainsAfter(reader)
  return loop && chains === null ? { kind: 'space', chains, loop } : { kind: 'space', chains }
}

/** `between groups`, `between next 2 3-dc groups`, `between dc`: after the noun for the space itself. */
export function readGapAfter(reader: Reader): Accepts | null {
  if (!take(reader, 'between', 'bet', 'betw', 'before', 'after')) return null
  while (take(reader, 'the', 'next', 'each', 'every', 'of', 'posts', 'two', 'all', 'any', 'these', 'last', 'first'));
  const group = attempt(reader, readGroup)
  if (group !== null) return { kind: 'gap', between: 'groups' }
  if (numberAt(reader) !== null) reader.at += 1
  if (attempt(reader, readGroup) !== null) return { kind: 'gap', between: 'groups' }
  if (takeStitch(reader) !== null) {
    take(reader, ...stitchWords)
    return { kind: 'gap', between: 'stitches' }
  }
  return take(reader, ...stitchWords) ? { kind: 'gap', between: 'stitches' } : null
}

/** One noun for a place; null, where none is ahead. */
export function readNoun(reader: Reader): Accepts | null {
  const named = attempt(reader, markedNoun)
  if (named !== null) return named
  const center = /^cent(?:er|re)$/.test(textAt(reader))
  while (take(reader, ...adjectives));
  const found = plainNoun(reader)
  // The space in the centre of a shawl is told from the others by its group.
  return center && found?.kind === 'space' ? { kind: 'corner' } : found
}

function plainNoun(reader: Reader): Accepts | null {
  if (stitchWords.includes(textAt(reader, 1))) take(reader, 'post')
  const group = attempt(reader, readGroup)
  if (group !== null) return group
  const stitch = attempt(reader, takeStitch)
  if (stitch !== null) {
    take(reader, ...stitchWords)
    return { kind: 'named', stitch }
  }
  if (take(reader, ...stitchWords)) return { kind: 'stitch', said: true }
  return (
    attempt(reader, amongNoun) ??
    attempt(reader, spaceNoun) ??
    attempt(reader, rowEndNoun) ??
    attempt(reader, corner) ??
    attempt(reader, chainNoun) ??
    attempt(reader, numberedSpace)
  )
}
