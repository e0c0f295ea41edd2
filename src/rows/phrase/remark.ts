import type { Phrase, Reader } from '../reader.ts'
import { attempt, peek, spanSince, takeSpecial, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { readCounting } from './counting.ts'

const starters = new Set(
  (
    'weave sew stuff place move mark pm sm change changing switch with using drop pick join carry carrying close pull ' +
    "block rs ws note insert do don’t don't right wrong facing be from slide remove tie secure leave as now keeping " +
    'fold folding flip bend push gather thread hold holding keep taking flatten pinch line match working rotate marker color colour continue do begin start stop slip complete leaving'
  ).split(' '),
)

/** Words that make or use something: a clause with one of them is no remark. */
const working = /^(?:ch|chs|chain|chains|sk|skip|miss|inc|dec|rep|repeat|tog|together|\*|\*\*)$/

/** Whether a word can make or use something. */
export function isWork(reader: Reader, ahead: number): boolean {
  const word = peek(reader, ahead)
  if (word === undefined || word.kind === 'broken' || word.kind === 'bySize' || word.kind === 'made') return true
  if (word.kind === 'mark') return working.test(word.text)
  if (word.kind !== 'word') return false
  const { dictionary } = reader.vocabulary
  return (
    working.test(word.text) || dictionary.stitches.has(word.text) || /tog$/.test(word.text) || isSpecial(reader, ahead)
  )
}

function isSpecial(reader: Reader, ahead: number): boolean {
  const { at } = reader
  reader.at += ahead
  const found = takeSpecial(reader) !== null
  reader.at = at
  return found
}

const endMarks = /^[,;.)\]}>:]$/

/**
 * A clause that makes nothing: colours, markers, tails, which side faces.
 *
 *     with B, …     place marker in last st     do not join     RS facing
 *     ^
 */
export const remarkPhrase: Phrase = {
  name: 'remark',
  opens: (reader) => starters.has(textAt(reader)) || /^count/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const counting = attempt(reader, readCounting)
    if (counting !== null) return [{ kind: 'remark', counting, at: spanSince(reader, from) }]
    let and = -1
    while (reader.at < reader.end && !endMarks.test(textAt(reader))) {
      if (textAt(reader) === 'and' && reader.at > from) and = reader.at
      // `RS facing and working in free loops`: up to the part that works.
      if (isWork(reader, 0) && and < 0) return null
      if (isWork(reader, 0)) {
        reader.at = and
        break
      }
      reader.at += 1
    }
    return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
  },
}

const made = /^(?:made|formed|complete|completed|created|started|begun|increased|decreased|joined)$/
const says =
  /^(?:\d(?:st|nd|rd|th) (?:ch|chain|st) of|the|skipped|beg|beginning|turning|cent(?:er|re) of|middle of|same|this|that|these|crossing|note|move|moving|see|behind|you|it|they|always|remember|do not|don't|make sure|being|taking|be|total|half|corner|now|from|as|on|at|until|each size|right|wrong|rs|ws|facing|or|if|when|leaving|placing|along|top|bottom|left|side|first (?:corner|side|half|sleeve|leg|petal|shell)|second|third|fourth)(?= |$)/

function bracketText(reader: Reader, end: number): string {
  return reader.words
    .slice(reader.at, end)
    .map((word) => word.text)
    .join(' ')
}

/** `(shell made)`, `(center of shell)`: what has been made, or a note, though it names stitches. */
export function isNote(reader: Reader, end: number): boolean {
  if (reader.words.slice(reader.at, end).some((word) => /^[,;*]$/.test(word.text))) return false
  return made.test(reader.words[end - 1]?.text ?? '') || says.test(bracketText(reader, end))
}

/** A bracket that is neither steps nor a count: `(corner made)`, `(RS)`. A number in it may be a step. */
export function isRemark(reader: Reader, end: number): boolean {
  for (let ahead = 0; reader.at + ahead < end; ahead += 1) {
    const word = peek(reader, ahead)
    if (word?.kind === 'number' || isWork(reader, ahead)) return false
  }
  return true
}

const placeWords = /^(?:sts?|stitch|stitches|each|every|next|sps?|spaces?|loops?|lps?|corner|across)$/

/** A later sentence without a stitch, a number or a place: a tip, not a step. */
export const tipPhrase: Phrase = {
  name: 'tip',
  opens: (reader) => {
    return peek(reader)?.kind === 'word' && reader.words[reader.at - 1]?.text === '.'
  },
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    let end = reader.at
    while (end < reader.end && reader.words[end]?.text !== '.') end += 1
    const names = reader.words.slice(from, end).some((word) => placeWords.test(word.text))
    if (names || !isRemark(reader, end)) return null
    reader.at = end
    return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
  },
}
