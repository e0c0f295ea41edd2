import { type ActionTerm, actionTerms } from '../../standards/action-terms.ts'
import { type CommonTerm, commonTerms } from './common.ts'
import { type Dictionary, dictionaryFor, nameStitch, printStitch } from './dictionary.ts'
import type { Stitch } from './stitch.ts'

/** What a word or name of one country's terms is in the other's. */
export interface Spoken {
  /** In the other country's terms, in small letters as they are printed in the middle of a sentence. */
  readonly other: string
  /** Null for words in full. */
  readonly short: Short | null
  /** How sure a writer can mean it: `published` names anywhere, `step` only as a step, `word` only beside what makes it a stitch. */
  readonly sure: 'published' | 'step' | 'word'
}

/** What an abbreviation is read out as, the very form that is written: `sts` as `stitches`. */
export interface Short {
  /** As the list of abbreviations has it: `st(s)`. */
  readonly entry: string
  readonly full: string
  /** In the other country's terms. */
  readonly otherFull: string
}

/** All names of one country's terms, by spelling in lower case, words parted by one blank. */
export type Speech = ReadonlyMap<string, Spoken>

/** Short names and whole ones; `double` by itself may mean other things. */
const plainWords = /^(?:singles?|doubles?|longs?|sl|lc|tc)$/
const inFull = /crochet|treble|double|single|stitch|triple|quadruple|long|half/

function ofStitch(spelling: string, stitch: Stitch, own: Dictionary, other: Dictionary): Spoken {
  const plural =
    /s$/.test(spelling) && (own.stitches.has(spelling.slice(0, -1)) || own.stitches.has(spelling.slice(0, -2)))
  const inNumber = (name: string): string => (plural ? pluralOf(name) : name)
  const sure = plainWords.test(spelling) ? 'word' : 'published'
  const otherFull = inNumber(nameStitch(other, stitch))
  if (inFull.test(spelling)) return { other: otherFull, short: null, sure }
  const short = { entry: printStitch(own, stitch), full: inNumber(nameStitch(own, stitch)), otherFull }
  return { other: inNumber(printStitch(other, stitch)), short, sure }
}

function pluralOf(name: string): string {
  if (name.endsWith('stitch')) return `${name}es`
  return name.endsWith('s') ? name : `${name}s`
}

function ofBoth({ abbreviation, meaning, written }: CommonTerm): [string, Spoken][] {
  const [single = ''] = written
  return written.map((spelling) => {
    const plural = spelling === `${single}s`
    const full = plural && !meaning.includes('(') ? pluralOf(meaning) : meaning.replace(/\((.*?)\)/, plural ? '$1' : '')
    return [spelling, { other: spelling, short: { entry: abbreviation, full, otherFull: full }, sure: 'step' }]
  })
}

function ofAction(term: ActionTerm, own: 'us' | 'uk'): [string, Spoken][] {
  const [us, uk] = [
    { full: term.us, short: term.usShort },
    { full: term.uk, short: term.ukShort },
  ]
  const [from, to] = own === 'us' ? [us, uk] : [uk, us]
  const sure = term.inRows ? 'step' : 'published'
  const full: [string, Spoken] = [from.full, { other: to.full, short: null, sure }]
  if (from.short === undefined) return [full]
  const short = { entry: from.short, full: from.full, otherFull: to.full }
  return [full, [from.short, { other: to.short ?? to.full, short, sure }]]
}

function speechOf(own: Dictionary, other: Dictionary): Speech {
  return new Map([
    ...commonTerms.flatMap(ofBoth),
    ...[...own.stitches].map(([spelling, stitch]) => [spelling, ofStitch(spelling, stitch, own, other)] as const),
    ...actionTerms.flatMap((term) => ofAction(term, own.terms)),
  ])
}

const us = dictionaryFor('us')
const uk = dictionaryFor('uk')
const speeches: Readonly<Record<'us' | 'uk', Speech>> = { us: speechOf(us, uk), uk: speechOf(uk, us) }

/** What each name of a country's terms is in the other's. */
export function speechFor(terms: 'us' | 'uk'): Speech {
  return speeches[terms]
}
