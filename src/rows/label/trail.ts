import type { Cursor } from './cursor.ts'
import { oneOf, styleOf, takeText, textAt, wordsFrom } from './cursor.ts'
import { calledBy } from './head.ts'

export type Side = 'RS' | 'WS'

/** What a label says after its number: `(RS)`, `(dec row)`, `, with A`. */
export interface Trail {
  readonly side: Side | null
  readonly called: string | null
  /** `of yoke` */
  readonly ofPart: boolean
  /** Something that only a colon can end stands in it. */
  readonly needsColon: boolean
}

const mostWords = 10

/** Words that belong to steps, not to what is said of a row. */
const working =
  /^(?:sc|scs|hdc|dc|dcs|tr|trs|htr|dtr|ss|st|sts|stitch|stitches|ch|chs|chain|chains|sk|skip|miss|rep|repeat|turn|join|next|x|ring|circle|loop|magic|mr|\*|\*\*|double|treble|trebles|doubles)$/

/** `RS`, `right side`, `WS facing` */
export function takeSide(cursor: Cursor): Side | null {
  const from = cursor.at
  const word = textAt(cursor)
  if (takeText(cursor, 'rs', 'ws')) {
    takeText(cursor, 'facing')
    return word === 'rs' ? 'RS' : 'WS'
  }
  if (takeText(cursor, 'right', 'wrong')) {
    const side = takeText(cursor, 'side')
    takeText(cursor, 'facing')
    if (side) return word === 'right' ? 'RS' : 'WS'
  }
  cursor.at = from
  return null
}

/** Where a bracket that opens here closes; -1 where it is too long or does not. */
function closingOf(cursor: Cursor): number {
  const closer = textAt(cursor) === '(' ? ')' : textAt(cursor) === '[' ? ']' : null
  if (closer === null) return -1
  for (let ahead = 1; ahead <= mostWords; ahead += 1) if (textAt(cursor, ahead) === closer) return cursor.at + ahead
  return -1
}

/** A side alone in its bracket or between its marks: `(RS)`, `[WS]`, `*RS*`, `, RS`, `- WS`. */
export function readSide(cursor: Cursor): Side | null {
  const from = cursor.at
  const open = textAt(cursor)
  const marked = takeText(cursor, '(', '[', '*', '_')
  if (!marked) takeText(cursor, ',', '-', '–')
  const side = takeSide(cursor)
  const closes = open === '(' ? ')' : open === '[' ? ']' : open
  if (side !== null && (!marked || takeText(cursor, closes))) return side
  cursor.at = from
  return null
}

/** The name of a row in some words: `dec row`, `increase`. */
function nameIn(cursor: Cursor, from: number, end: number): string | null {
  for (let at = from; at < end; at += 1) {
    const word = cursor.words[at]?.text ?? ''
    if (/^(?:dec|inc|decrease|increase|decreasing|increasing|buttonhole)$/.test(word)) return calledBy(`${word} row`)
    const next = cursor.words[at + 1]?.text ?? ''
    if (at + 1 < end && styleOf(next) !== null && oneOf(next) === next && cursor.words[at]?.kind === 'word') {
      return calledBy(wordsFrom(cursor, from, at + 2))
    }
  }
  return null
}

function sideIn(cursor: Cursor, from: number, end: number): Side | null {
  const inner: Cursor = { ...cursor, at: from }
  for (; inner.at < end; inner.at += 1) {
    const side = takeSide(inner)
    if (side !== null) return side
  }
  return null
}

/** `(WS, dec row)`, `(6 rows)` */
function bracket(cursor: Cursor): Trail | null {
  const close = closingOf(cursor)
  if (close < 0) return null
  const [from, end] = [cursor.at + 1, close]
  const side = sideIn(cursor, from, end)
  const called = nameIn(cursor, from, end)
  const steps = cursor.words.slice(from, end).some((word) => working.test(word.text))
  cursor.at = close + 1
  return { side, called, ofPart: false, needsColon: steps || (side === null && called === null) }
}

/** `, black`, ` - Decrease Row`, ` of yoke`, ` with A`: as far as the colon. */
function remark(cursor: Cursor): Trail | null {
  if (!/^(?:[,–-]|and|of|for|with|in|using|incl|inclusive|as|starting|worked|onwards|on)$/.test(textAt(cursor)))
    return null
  const from = cursor.at
  const ofPart = textAt(cursor) === 'of'
  for (let ahead = 1; ahead <= mostWords; ahead += 1) {
    const word = cursor.words[cursor.at + ahead]
    if (word === undefined || working.test(word.text) || word.text === '.' || word.kind === 'broken') return null
    if (word.text !== ':') continue
    cursor.at += ahead
    const side = sideIn(cursor, from, cursor.at)
    return { side, called: nameIn(cursor, from + 1, cursor.at), ofPart, needsColon: true }
  }
  return null
}

/** Passes what stands between the number of a label and the mark that ends it. */
export function readTrail(cursor: Cursor): Trail {
  let [side, called, ofPart, needsColon]: [Side | null, string | null, boolean, boolean] = [null, null, false, false]
  for (let rounds = 0; rounds < 4; rounds += 1) {
    const before = cursor.at
    const plain = readSide(cursor)
    const found =
      plain === null
        ? (bracket(cursor) ?? remark(cursor))
        : { side: plain, called: null, ofPart: false, needsColon: false }
    if (found === null) break
    // A bracket that no mark follows belongs to the steps: `Row 7 (sc, inc) x 6`.
    if (plain === null && !endsHere(cursor)) {
      cursor.at = before
      break
    }
    side ??= found.side
    called ??= found.called
    ofPart ||= found.ofPart
    needsColon ||= found.needsColon
  }
  return { side, called, ofPart, needsColon }
}

function endsHere(cursor: Cursor): boolean {
  return /^(?:|[:.=([*,–-]|\*\*|=>|rs|ws)$/.test(textAt(cursor))
}
