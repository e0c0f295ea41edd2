import type { Reader } from '../reader.ts'
import { attempt, numberAt, peek, take, takeSpecial, takeStitch, textAt } from '../reader.ts'
import { printStitch } from '../terms/dictionary.ts'
import { stitchKey } from '../terms/stitch.ts'
import { nextClause } from './given.ts'
import type { Counted } from './item.ts'

/** What a number is followed by. */
export interface Noun {
  readonly shown: string
  readonly of: Counted
}

export const total: Noun = { shown: 'total', of: { kind: 'total' } }

const stitchNouns = ['st', 'sts', 'stitch', 'stitches', 'stiches']
const spaceNouns =
  'sp sps space spaces loop loops lp lps arch arches ch-sp ch-sps chain-space chain-spaces ch-lp ch-lps ch-loop ch-loops ' +
  'chain-loop chain-loops bar bars'
const spaceWords = spaceNouns.split(' ')
const chainWords = ['ch', 'chs', 'chain', 'chains']
const groupNouns = /^(?:groups?|gps?|grps?|sets?|pairs?|clusters?|shells?|fans?|blocks?|bunch(?:es)?)$/

function spaceNoun(chains: number | null): Noun {
  return chains === null
    ? { shown: 'ch sp', of: { kind: 'key', key: 'space' } }
    : { shown: `ch-${chains} sp`, of: { kind: 'key', key: `space:${chains}` } }
}

function oneNumber(reader: Reader): number | null {
  const number = numberAt(reader)
  if (number === null) return null
  reader.at += 1
  return number.count[0] ?? null
}

/** `corner`, `corner sps`, `corners`: what stands there, or the corners themselves. */
function cornerNoun(reader: Reader): Noun | null {
  if (!take(reader, 'corner', 'corners')) return null
  const space = attempt(reader, chainSpace)
  if (space !== null) return space
  take(reader, ...spaceWords)
  return peek(reader)?.kind === 'word' && groupNouns.test(textAt(reader)) ? null : cornerItself
}

const cornerItself: Noun = { shown: 'corner', of: { kind: 'corner' } }

/** After the chains of a space: `sps`, `corner sps`, `corners`, or nothing at all. */
function passSpaceWord(reader: Reader): boolean {
  take(reader, '-')
  const corner = take(reader, 'corner', 'corners')
  return take(reader, ...spaceWords) || corner
}

/** `3ch-sps`, `3-ch loops`, `3 ch sps` */
function frontedSpace(reader: Reader): Noun | null {
  const chains = oneNumber(reader)
  if (chains === null) return null
  take(reader, '-')
  if (take(reader, ...spaceWords)) return spaceNoun(chains)
  if (!take(reader, ...chainWords)) return null
  passSpaceWord(reader)
  return spaceNoun(chains)
}

/** `ch-2 sps`, `ch 2`, `ch-sps`, `chs`, `1ch-sps`, `ch-4 corners` */
function chainSpace(reader: Reader): Noun | null {
  if (numberAt(reader) !== null) return attempt(reader, frontedSpace)
  if (!take(reader, ...chainWords)) return null
  take(reader, '-')
  const chains = oneNumber(reader)
  const spaces = passSpaceWord(reader)
  if (chains !== null || spaces) return spaceNoun(chains)
  return { shown: 'ch', of: { kind: 'key', key: 'chain' } }
}

function togetherNoun(reader: Reader): Noun | null {
  const match = /^(\p{L}+\d+tog)s?$/u.exec(textAt(reader))
  if (match === null) return null
  reader.at += 1
  const name = match[1] ?? ''
  return { shown: name, of: { kind: 'key', key: `together:${name}` } }
}

function named(name: string, size: number | null): Noun {
  return { shown: name, of: { kind: 'named', name, size } }
}

/** `3-dc groups`, `dc groups`, `groups of 3 dc`, `pairs of dc` */
function groupNoun(reader: Reader): Noun | null {
  const size = oneNumber(reader)
  if (size !== null) take(reader, '-')
  const stitch = attempt(reader, takeStitch) ?? (take(reader, ...stitchNouns) ? 'any' : null)
  if (stitch !== null) take(reader, '-')
  const word = textAt(reader)
  if (!groupNouns.test(word) || (size !== null && stitch === null)) return null
  // `5 shells` may name the pattern's own.
  if (stitch === null && reader.vocabulary.specials.get(word) !== undefined && textAt(reader, 1) !== 'of') return null
  reader.at += 1
  const shown = word
  if (size !== null || !take(reader, 'of')) return named(shown, size)
  const each = oneNumber(reader)
  const noun = attempt(reader, takeStitch) !== null || take(reader, ...stitchNouns)
  if (each === null && !noun) return null
  return named(shown, /^pairs?$/.test(word) ? 2 : each)
}

/** Words that make one of a special stitch's kinds of its name. */
export const variant =
  /^(?:beg|begin|beginning|start|starting|first|initial|opening|end|ending|last|closing|final|joining|half|small|large|mini|big|little|corner|edge|partial)$/

/** `puffs`, `beg puffs`: a special stitch, or a kind of it that only the row knows. */
function specialNoun(reader: Reader): Noun | null {
  const special = takeSpecial(reader)
  if (special !== null) {
    return { shown: special.name, of: { kind: 'special', name: special.name, defined: special.at !== null } }
  }
  const kind = textAt(reader)
  if (!variant.test(kind)) return null
  reader.at += 1
  take(reader, '-')
  const base = takeSpecial(reader)
  if (base === null) return null
  const name = `${kind} ${base.name}`
  return { shown: name, of: { kind: 'special', name, defined: false } }
}

function plainNoun(reader: Reader): Noun | null {
  if (take(reader, 'total')) {
    take(reader, ...stitchNouns)
    return total
  }
  // `3-dc clusters` may be a stitch of its own.
  const numbered = numberAt(reader) === null ? null : attempt(reader, specialNoun)
  const group = numbered ?? attempt(reader, groupNoun)
  if (group !== null) return group
  if (take(reader, ...stitchNouns)) return total
  const special = attempt(reader, specialNoun)
  if (special !== null) return special
  const stitch = attempt(reader, takeStitch)
  if (stitch !== null) {
    take(reader, ...stitchNouns)
    return { shown: printStitch(reader.vocabulary.dictionary, stitch), of: { kind: 'key', key: stitchKey(stitch) } }
  }
  const chain = attempt(reader, togetherNoun) ?? attempt(reader, cornerNoun) ?? attempt(reader, chainSpace)
  if (chain !== null) return chain
  return take(reader, ...spaceWords) ? spaceNoun(null) : null
}

/** Words that are no nouns of a count. */
const notNoun =
  /^(?:times|time|x|rows?|rnds?|rounds?|cm|mm|in|inch|inches|g|more|inc|dec|incs|decs|increases?|decreases?|and|or|to|from|into|of|the|a|for|per|each|at|on|with|incl|including|counting|not|excluding|plus|beg|rep|repeat|sk|skip|miss|turn|join|hook|hooks?|sizes?|made|total|all|rem|remain|remains|remaining|left|now|around|across|altogether|completed|worked|needle|dec'd|inc'd|dec’d|inc’d|decreased|increased|next|first|last|same|stitch|strands?)$/

function isNounWord(reader: Reader): boolean {
  const text = textAt(reader)
  return peek(reader)?.kind === 'word' && !notNoun.test(text) && !nextClause.test(text)
}

/** `blocks`, `crossed dc`, `half fans`: words that this pattern gives no meaning. */
function unknownNoun(reader: Reader): Noun | null {
  const words: string[] = []
  while (words.length < 3 && isNounWord(reader)) {
    const known = words.length > 0 ? attempt(reader, plainNoun) : null
    if (known !== null) return named([...words, known.shown === 'total' ? 'st' : known.shown].join(' '), null)
    words.push(textAt(reader))
    reader.at += 1
    // `long-st`, `x-st`: a blank or a hyphen before its last word.
    if (take(reader, '-') && peek(reader)?.kind !== 'word') reader.at -= 1
  }
  return words.length === 0 ? null : named(words.join(' '), null)
}

const sideWord = /^(?:sides?|edges?)$/

/** `each side`, `on each side`, `between corners`, `per side` */
export function passSide(reader: Reader): boolean {
  const from = reader.at
  while (take(reader, 'on', 'along', 'at', 'for', 'in', 'of', 'down'));
  if (take(reader, 'each', 'per', 'every') && sideWord.test(textAt(reader))) {
    reader.at += 1
    // `of the ch-3 sp`, `between corners`
    if (take(reader, 'of', 'between')) passSentence(reader)
    return true
  }
  const between = take(reader, 'between', 'bet')
  if (between) take(reader, 'each', 'the')
  if (between && attempt(reader, anyCorner)) return true
  reader.at = from
  return false
}

function passSentence(reader: Reader): void {
  while (reader.at < reader.end && !/^[,;.]$/.test(textAt(reader))) reader.at += 1
}

/** `corners`, `corner sps`, `ch-2 corner sps` */
function anyCorner(reader: Reader): true | null {
  const noun = attempt(reader, cornerNoun) ?? attempt(reader, chainSpace)
  return noun === null ? null : true
}

function perSide(noun: Noun): Noun {
  const { of } = noun
  if (of.kind === 'total') return { shown: 'sts each side', of: { kind: 'side', key: null } }
  if (of.kind === 'key') return { shown: `${noun.shown} each side`, of: { kind: 'side', key: of.key } }
  return named(`${noun.shown} each side`, null)
}

/** The noun after a number; the plain total where there is none. */
export function readNoun(reader: Reader, before: 'per side' | null): Noun {
  const noun = attempt(reader, plainNoun) ?? attempt(reader, unknownNoun) ?? total
  take(reader, 'made', 'sts', 'worked')
  return before !== null || passSide(reader) ? perSide(noun) : noun
}
