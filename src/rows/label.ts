import type { Span } from '../diagnostic/index.ts'
import { cover } from '../diagnostic/index.ts'
import type { Count } from './count.ts'
import type { Cursor } from './label/cursor.ts'
import { takeText, textAt } from './label/cursor.ts'
import { readHead } from './label/head.ts'
import type { Numbers } from './label/numbers.ts'
import type { Side } from './label/trail.ts'
import { readSide, readTrail } from './label/trail.ts'
import type { Word } from './words.ts'

export { longestRange } from './label/numbers.ts'

export interface Label {
  /** Index of the first word after it. */
  readonly end: number
  readonly at: Span
  readonly words: readonly Word[]
  /** What stands before the number, singular: `Rnd`, `Edging rnd`, `Foundation`. */
  readonly name: string
  /** Number stands right after the name, as in `R7`. */
  readonly glued: boolean
  readonly style: 'flat' | 'round' | null
  readonly numbers: Numbers
  readonly side: Side | null
  /** What later rows may call it: `dec row`. */
  readonly called: string | null
  /** It says of what it is a row, `1st row of yoke`: its numbers are not those of the rows before. */
  readonly ofPart: boolean
  /** A colon or its like says that steps follow; without one, prose may begin this way. */
  readonly sure: boolean
}

const emphasis = /^\*{1,3}$/
const closers: Readonly<Record<string, string>> = { '(': ')', '[': ']' }
const separators = ['.', ')', '-', '–', '=', '=>', '|', '~', ';']

/** The marks after a label: one, or a full stop with a dash. True for a colon, null where there is none. */
function passSeparators(cursor: Cursor): boolean | null {
  if (takeText(cursor, ':')) return true
  if (takeText(cursor, ',')) return null
  if (!takeText(cursor, ...separators)) return null
  if (takeText(cursor, ':')) return true
  while (takeText(cursor, '-', '–', '=>'));
  return false
}

/**
 * Reads the label of a row.
 *
 *     **Rnds 5–18 (RS):** Sc in each st around.
 *       ^^^^^^^^^^^^^^^
 *
 * @param source the draft's text in a span
 * @returns null when the words begin some other way
 */
export function readLabel(words: readonly Word[], source: (span: Span) => string, sizes: number): Label | null {
  const cursor: Cursor = { words, source, sizes, at: 0 }
  const bold = emphasis.test(textAt(cursor))
  if (bold) cursor.at += 1
  const first = cursor.at
  const before = readSide(cursor)
  const bracket = closers[textAt(cursor)]
  if (bracket !== undefined) cursor.at += 1
  const head = readHead(cursor)
  // `(R1) 6 sc in ring`
  const bracketed = bracket !== undefined && takeText(cursor, bracket)
  if (head === null || (bracket !== undefined && !(bracketed && head.name !== '' && !head.weak))) return null
  const trail = readTrail(cursor)
  const boldEnds = bold && emphasis.test(textAt(cursor))
  if (boldEnds) cursor.at += 1
  const further = boldEnds ? readTrail(cursor) : trail
  const separated = passSeparators(cursor)
  const closed = bold && !boldEnds && emphasis.test(textAt(cursor))
  if (closed) cursor.at += 1
  const ended = cursor.at >= words.length
  const weak = head.weak && !(head.marked === true && separated !== null && cursor.at < words.length)
  if ((weak || trail.needsColon || further.needsColon) && !(separated === true || boldEnds || closed)) return null
  const start = words[first]?.at
  const last = words[cursor.at - 1 - (closed ? 1 : 0)]?.at
  if (start === undefined || last === undefined) return null
  const inside = separated === true ? readSide(cursor) : null
  const { name, glued, style } = head
  return {
    end: cursor.at,
    at: cover(start, last),
    words: words.slice(first, cursor.at),
    name,
    glued,
    style,
    numbers: head.numbers,
    side: before ?? trail.side ?? further.side ?? inside,
    ofPart: trail.ofPart || further.ofPart,
    called: trail.called ?? further.called ?? head.called,
    // `1. Sew the shoulders`: a bare number begins many a list that holds no rows.
    sure: name !== '' && head.known && (separated !== null || bracketed || boldEnds || closed || ended),
  }
}

/** `Rnd 7`; null for a row without a name. */
export function labelText(label: Label, numbered: Count | null): string | null {
  const value = numbered === null ? null : shownNumber(numbered)
  if (value === null) return label.name === '' ? null : label.name
  if (label.name === '') return value
  return label.glued ? `${label.name}${value}` : `${label.name} ${value}`
}

function shownNumber(count: Count): string | null {
  const there = count.filter((value) => value !== null)
  const [first] = there
  if (first === undefined) return null
  return there.every((value) => value === first) ? String(first) : `${first} (${there.slice(1).join(', ')})`
}
