import type { Reader } from '../reader.ts'
import { peek } from '../reader.ts'

const longest = 24

/** The words ahead of a place as one text, and where in it each of them ends. */
interface Ahead {
  readonly at: number
  readonly end: number
  readonly text: string
  readonly ends: readonly number[]
}

/** Many forms look at the same place, one after the other. */
const lastSeen = new WeakMap<Reader, Ahead>()

function textAhead(reader: Reader): Ahead {
  const known = lastSeen.get(reader)
  if (known?.at === reader.at && known.end === reader.end) return known
  const ends: number[] = []
  let text = ''
  for (let ahead = 0; ahead < longest; ahead += 1) {
    const word = peek(reader, ahead)
    if (word === undefined) break
    text += `${ahead === 0 ? '' : ' '}${word.kind === 'number' && !word.ordinal ? '#' : word.text}`
    ends.push(text.length)
  }
  const found = { at: reader.at, end: reader.end, text, ends }
  lastSeen.set(reader, found)
  return found
}

/**
 * Takes the words ahead that a pattern matches from the first of them on; `#` stands for a number.
 * For turns of phrase with many optional words, where one `take` after the other would hide the form.
 */
export function takePattern(reader: Reader, pattern: RegExp): RegExpExecArray | null {
  const { text, ends } = textAhead(reader)
  const match = pattern.exec(text)
  if (match === null || match.index > 0) return null
  const taken = ends.indexOf(match[0].length)
  if (taken < 0) return null
  reader.at += taken + 1
  return match
}
