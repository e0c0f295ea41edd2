import type { Span } from '../../diagnostic/index.ts'
import { cover } from '../../diagnostic/index.ts'
import type { Word } from '../words.ts'

/** Abbreviations that are also written letter by letter, with dots or blanks between, and the closed ones. */
const letterByLetter: Readonly<Record<string, string>> = {
  'h d c': 'hdc',
  'half d c': 'hdc',
  'h tr c': 'htr',
  'd tr c': 'dtr',
  'd c': 'dc',
  'tr c': 'tr',
  'd tr': 'dtr',
  'l tr': 'dtr',
  'h tr': 'htr',
  'half tr': 'htr',
  's s': 'ss',
}
/** Single crochet is a slip stitch where double crochet is the lowest stitch. */
const ofTerms: Readonly<Record<'us' | 'uk', Readonly<Record<string, string>>>> = {
  us: { ...letterByLetter, 's c': 'sc', 'l c': 'dc' },
  uk: { ...letterByLetter, 's c': 'ss', 'l c': 'tr' },
}
const mostLetters = 3

/** Abbreviations after which a full stop may end the abbreviation only. */
const dotted = new Set(
  (
    'ch chs dc sc tr hdc htr dtr ss st sts sp sps lp lps rep beg inc dec foll tog cl cls p l d c tr trs dcs scs sl ' +
    'rem alt patt cont no ins'
  ).split(' '),
)

type Source = (span: Span) => string

function isDot(word: Word | undefined): word is Word {
  return word?.kind === 'mark' && word.text === '.'
}

/** Whether a sentence goes on after a full stop: in small letters, or with a mark that begins none. */
function goesOn(words: readonly Word[], dot: number, source: Source): boolean {
  const next = words[dot + 1]
  if (next === undefined) return false
  if (words[dot - 1]?.text === 'sl') return true
  if (next.kind === 'word') return /^\p{Ll}/u.test(source(next.at))
  if (next.text === '(' || next.text === '[') return words[dot - 2]?.kind === 'number'
  return next.kind === 'mark' && /^[,;:)\]*]$/.test(next.text)
}

interface Closed {
  readonly word: Word
  /** Index after the last word that has been taken. */
  readonly end: number
}

/** `D. C.`, `h d c`: the longest abbreviation that begins here. */
function closedAt(words: readonly Word[], from: number, spelled: Readonly<Record<string, string>>): Closed | null {
  const first = words[from]
  let letters = ''
  let at = from
  let longest: Closed | null = null
  for (let count = 0; count < mostLetters; count += 1) {
    const word = words[at]
    if (first === undefined || word?.kind !== 'word') break
    letters = letters === '' ? word.text : `${letters} ${word.text}`
    at += 1
    const text = count === 0 ? undefined : spelled[letters]
    const { glued } = first
    if (text !== undefined) longest = { word: { kind: 'word', text, glued, at: cover(first.at, word.at) }, end: at }
    if (isDot(words[at])) at += 1
  }
  return longest
}

/** `2d`, `3d`, `22d`: an ordinal as it was abbreviated. */
function oldOrdinal(words: readonly Word[], at: number): Word | null {
  const number = words[at]
  const letter = words[at + 1]
  if (number?.kind !== 'number' || number.ordinal || !/[23]$/.test(number.text)) return null
  if (letter?.text !== 'd' || !letter.glued || isDot(words[at + 2]) || words[at + 2]?.text === 'c') return null
  return { ...number, ordinal: true, text: `${number.text}d`, at: cover(number.at, letter.at) }
}

/**
 * Closes abbreviations that are written with dots or blanks, and takes out the dots that end no sentence.
 *
 *     1 d. c. in each s c   →   1 dc in each sc
 *
 * @param source the draft's text in a span: a capital tells that a sentence begins
 */
export function withoutDots(words: readonly Word[], terms: 'us' | 'uk', source: Source): readonly Word[] {
  const out: Word[] = []
  for (let at = 0; at < words.length; ) {
    const word = words[at]
    if (word === undefined) break
    const ordinal = oldOrdinal(words, at)
    const closed = ordinal === null ? closedAt(words, at, ofTerms[terms]) : null
    out.push(ordinal ?? closed?.word ?? word)
    at = closed?.end ?? at + (ordinal === null ? 1 : 2)
    const abbreviates = closed !== null || dotted.has(word.text)
    if (abbreviates && isDot(words[at]) && goesOn(words, at, source)) at += 1
  }
  return out
}
