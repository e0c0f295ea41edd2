import { actionTerms } from '../../standards/action-terms.ts'
import { commonTerms } from './common.ts'
import { type Dictionary, dictionaryFor, nameStitch, printStitch } from './dictionary.ts'
import type { Stitch } from './stitch.ts'

/** What a word or name of one country's terms is in the other's. */
export interface Spoken {
  /** In the other country's terms, in small letters as they are printed in the middle of a sentence. */
  readonly other: string
  /** The abbreviation that it stands under in the list of them; null for words in full. */
  readonly entry: string | null
  /** How sure a writer can mean it: `published` names anywhere, `step` only as a step, `word` only beside what makes it a stitch. */
  readonly sure: 'published' | 'step' | 'word'
}

/** All names of one country's terms, by spelling in lower case, words parted by one blank. */
export type Speech = ReadonlyMap<string, Spoken>

/** Short names and whole ones; `double` by itself may mean other things. */
const plainWords = /^(?:singles?|doubles?|longs?|sl|lc|tc)$/
const inFull = /crochet|treble|double|single|stitch|triple|quadruple|long|half/

function ofStitch(spelling: string, stitch: Stitch, own: Dictionary, other: Dictionary): Spoken {
  const full = inFull.test(spelling)
  const plural =
    /s$/.test(spelling) && (own.stitches.has(spelling.slice(0, -1)) || own.stitches.has(spelling.slice(0, -2)))
  const name = full ? nameStitch(other, stitch) : printStitch(other, stitch)
  return {
    other: plural ? pluralOf(name) : name,
    entry: full ? null : printStitch(own, stitch),
    sure: plainWords.test(spelling) ? 'word' : 'published',
  }
}

function pluralOf(name: string): string {
  if (name.endsWith('stitch')) return `${name}es`
  return name.endsWith('s') ? name : `${name}s`
}

function speechOf(own: Dictionary, other: Dictionary): Speech {
  const speech = new Map<string, Spoken>()
  for (const { abbreviation, written } of commonTerms)
    for (const spelling of written) speech.set(spelling, { other: spelling, entry: abbreviation, sure: 'step' })
  for (const [spelling, stitch] of own.stitches) speech.set(spelling, ofStitch(spelling, stitch, own, other))
  for (const term of actionTerms) {
    const [full, short] = own.terms === 'us' ? [term.us, term.usShort] : [term.uk, term.ukShort]
    const [otherFull, otherShort] = own.terms === 'us' ? [term.uk, term.ukShort] : [term.us, term.usShort]
    const sure = term.inRows ? 'step' : 'published'
    speech.set(full, { other: otherFull, entry: null, sure })
    if (short !== undefined) speech.set(short, { other: otherShort ?? otherFull, entry: short, sure })
  }
  return speech
}

const us = dictionaryFor('us')
const uk = dictionaryFor('uk')
const speeches: Readonly<Record<'us' | 'uk', Speech>> = { us: speechOf(us, uk), uk: speechOf(uk, us) }

/** What each name of a country's terms is in the other's. */
export function speechFor(terms: 'us' | 'uk'): Speech {
  return speeches[terms]
}
