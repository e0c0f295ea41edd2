import type { Reader } from '../reader.ts'
import { attempt, spanSince } from '../reader.ts'
import type { Step } from '../step.ts'
import { takePattern } from './pattern.ts'

const nouns =
  '(legs?|arms?|eyes?|hal(?:f|ves)|pieces?|ears?|foot|feet|parts?|tubes?|wings?|fingers?|toes?|sleeves?|tentacles?|horns?|bodice|panels?)'
const ordinals = '(first|second|third|fourth|1st|2nd|3rd|4th|other|next|last|left|right|same)'
const way = '(?:(?:of|on|onto|around|along|across|in|into|from|to|over|through) )'
const before = new RegExp(
  `^(?:(?:working|work|continue|continuing|now|then|go|cont) )*${way}+(?:the )?${ordinals} ${nouns}(?= |$)`,
)
const numbered = new RegExp(
  `^(?:(?:working|work|continue|continuing|now|then|go|cont) )*${way}+(?:the )?${nouns} (?:no )?#(?= |$)`,
)

const places: Readonly<Record<string, number>> = {
  first: 1,
  '1st': 1,
  left: 1,
  second: 2,
  '2nd': 2,
  right: 2,
  third: 3,
  '3rd': 3,
  fourth: 4,
  '4th': 4,
}

/** `legs` → `leg`, `halves` → `half` */
function singular(noun: string): string {
  if (noun === 'feet') return 'foot'
  return noun.replace(/^halves$/, 'half').replace(/s$/, '')
}

/** The piece that a place is on: `of first leg`, `around leg 2`, `on the other half`. */
export function readPiece(reader: Reader): Step | null {
  const from = reader.at
  const named = takePattern(reader, before)
  if (named !== null) {
    const [, ordinal = '', noun = ''] = named
    const which = places[ordinal] ?? (ordinal === 'same' || ordinal === 'last' ? 'same' : 'other')
    return { kind: 'source', source: { kind: 'piece', which, noun: singular(noun) }, at: spanSince(reader, from) }
  }
  const match = attempt(reader, (inner) => takePattern(inner, numbered))
  const number = reader.words[reader.at - 1]
  if (match === null || number?.kind !== 'number') return null
  const which = number.count[0] ?? 1
  return {
    kind: 'source',
    source: { kind: 'piece', which, noun: singular(match[1] ?? '') },
    at: spanSince(reader, from),
  }
}

const chainSide =
  /^(?:(?:along|across|over) (?:the )?|(?:(?:in|into|on|along|to) )+(?:the )?(?:other|opposite|second|front|back) sides? (?:of|on) (?:the )?)(?:each of the |each )?(?:# )?(?:bridge |joining |connecting )?(?:chs?|chains?)(?: (?:sts?|between (?:the )?[a-z]+))?(?= |$)(?! (?:sp|sps|space|spaces|-|from))/

/** `along the ch`, `on other side of the 3 ch`: the chain between two pieces. */
export function readAlongChain(reader: Reader): boolean {
  return takePattern(reader, chainSide) !== null
}
