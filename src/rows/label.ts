import type { Span } from '../diagnostic/index.ts'
import { cover } from '../diagnostic/index.ts'
import type { Count } from './count.ts'
import type { NumberWord, Word } from './words.ts'

/** Which rows a label stands for. */
export type Numbers =
  /** One entry a row; null for a size that has no such row. */
  | { readonly kind: 'list'; readonly items: readonly Count[] }
  /** `Next row`, `Next 5 rows` */
  | { readonly kind: 'next'; readonly count: Count | null }
  /** `8–2`: it ends before it begins, for every size. */
  | { readonly kind: 'backwards'; readonly from: Count }
  | { readonly kind: 'none' }

export interface Label {
  /** Index of the first word after it. */
  readonly end: number
  readonly at: Span
  /** What stands before the number, singular: `Rnd`, `Edging rnd`, `Foundation`. */
  readonly name: string
  /** Number stands right after the name, as in `R7`. */
  readonly glued: boolean
  readonly style: 'flat' | 'round' | null
  readonly numbers: Numbers
  readonly side: 'RS' | 'WS' | null
  /** A colon or its like says that steps follow; without one, prose may begin this way. */
  readonly sure: boolean
}

/** A range longer than this is a slip of the pen. */
export const longestRange = 2_000

const rowWords: Readonly<Record<string, 'flat' | 'round'>> = {
  row: 'flat',
  rows: 'flat',
  rnd: 'round',
  rnds: 'round',
  round: 'round',
  rounds: 'round',
}
const singular: Readonly<Record<string, string>> = { rows: 'row', rnds: 'rnd', rounds: 'round' }
const foundationWords = /^(?:foundation|base|set-up|setup|starting|beginning|begin)$/
const foundationNouns = /^(?:row|rnd|round|chain|ch)$/
/** Words that begin a sentence about a row, not its label. */
const notPrefix =
  /^(?:work|rep|repeat|as|same|in|on|of|after|until|to|for|at|from|before|like|every|and|end|with|note)$/

interface Cursor {
  readonly words: readonly Word[]
  readonly source: (span: Span) => string
  at: number
}

const text = (cursor: Cursor, ahead = 0): string => cursor.words[cursor.at + ahead]?.text ?? ''

function number(cursor: Cursor, ordinal: boolean): NumberWord | null {
  const word = cursor.words[cursor.at]
  if (word?.kind !== 'number' || word.ordinal !== ordinal) return null
  return word
}

function takeText(cursor: Cursor, ...texts: readonly string[]): boolean {
  if (!texts.includes(text(cursor))) return false
  cursor.at += 1
  return true
}

/** Every number from one to the other, size by size; a size whose range is shorter has null at the end. */
function range(from: Count, to: Count): readonly Count[] {
  const lengths = from.map((start, size) => {
    const end = to[size] ?? null
    return start === null || end === null ? 0 : Math.max(0, end - start + 1)
  })
  const longest = Math.min(Math.max(0, ...lengths), longestRange + 1)
  return Array.from({ length: longest }, (_, index) =>
    from.map((start, size) => (start !== null && index < (lengths[size] ?? 0) ? start + index : null)),
  )
}

/** `7` `5–18` `8 and 9` `2, 4 and 6`; ordinals likewise. */
function numbers(cursor: Cursor, ordinal: boolean): Numbers | null {
  const first = number(cursor, ordinal)
  if (first === null) return null
  const items = listed(cursor, ordinal, first)
  return items.length === 0 ? { kind: 'backwards', from: first.count } : { kind: 'list', items }
}

function listed(cursor: Cursor, ordinal: boolean, first: NumberWord): readonly Count[] {
  cursor.at += 1
  const items: Count[] = [first.count]
  for (;;) {
    const before = cursor.at
    const ranges = takeText(cursor, '-', '–', 'to', 'through', 'thru')
    const joins = !ranges && takeText(cursor, 'and', ',', '+')
    if (joins) takeText(cursor, 'and')
    const next = ranges || joins ? (number(cursor, ordinal) ?? (ordinal ? null : number(cursor, true))) : null
    if (next === null) {
      cursor.at = before
      return items
    }
    cursor.at += 1
    if (ranges) items.push(...range(items.pop() ?? first.count, next.count))
    else items.push(next.count)
  }
}

function capital(word: string): string {
  return word.slice(0, 1).toUpperCase() + word.slice(1)
}

interface Head {
  readonly name: string
  readonly glued: boolean
  readonly style: 'flat' | 'round' | null
  readonly numbers: Numbers
  /** Needs a colon to be a label. */
  readonly weak: boolean
}

/** `Row 7`, `Edging rnd 1`, `R7` */
function named(cursor: Cursor): Head | null {
  const start = cursor.at
  let prefix = 0
  while (prefix < 5 && rowWords[text(cursor)] === undefined && text(cursor) !== 'r') {
    const word = cursor.words[cursor.at]
    const joins = word?.kind === 'mark' && word.text === ',' && prefix > 0
    if (!(joins || word?.kind === 'word' || word?.kind === 'number') || notPrefix.test(word.text)) return null
    cursor.at += 1
    prefix += 1
  }
  const word = text(cursor)
  const style = rowWords[word] ?? null
  if (style === null && word !== 'r') return null
  const before = prefix === 0 ? '' : wordsBefore(cursor, start)
  cursor.at += 1
  takeText(cursor, '.', '#')
  const items = numbers(cursor, false)
  if (items === null) return null
  const own = singular[word] ?? word
  const name = before === '' ? capital(own) : `${before} ${own}`
  return { name, glued: word === 'r', style, numbers: items, weak: prefix > 0 }
}

function wordsBefore(cursor: Cursor, start: number): string {
  const first = cursor.words[start]
  const last = cursor.words[cursor.at - 1]
  return first === undefined || last === undefined ? '' : cursor.source(cover(first.at, last.at)).trim()
}

/** `1st row`, `4th and 5th rows`, `9-16 row` */
function numberFirst(cursor: Cursor): Head | null {
  const ordinal = number(cursor, true) !== null
  const found = numbers(cursor, ordinal)
  const style = rowWords[text(cursor)]
  if (found === null || style === undefined) return null
  const word = singular[text(cursor)] ?? text(cursor)
  cursor.at += 1
  return { name: capital(word), glued: false, style, numbers: found, weak: !ordinal }
}

/** `Next row`, `Next 5 (6, 7) rows` */
function next(cursor: Cursor): Head | null {
  if (!takeText(cursor, 'next', 'following')) return null
  const count = number(cursor, false)
  if (count !== null) cursor.at += 1
  const style = rowWords[text(cursor)]
  if (style === undefined) return null
  const word = singular[text(cursor)] ?? text(cursor)
  cursor.at += 1
  const name = `Next ${word}`
  return { name, glued: false, style, numbers: { kind: 'next', count: count?.count ?? null }, weak: true }
}

/** `Foundation`, `Foundation row`, `Base chain`, `All sizes` */
function foundation(cursor: Cursor): Head | null {
  const start = cursor.at
  if (takeText(cursor, 'all') && takeText(cursor, 'sizes')) {
    return { name: 'All sizes', glued: false, style: null, numbers: { kind: 'none' }, weak: true }
  }
  cursor.at = start
  takeText(cursor, 'to')
  if (!foundationWords.test(text(cursor))) return null
  cursor.at += 1
  const style = rowWords[text(cursor)] ?? null
  if (foundationNouns.test(text(cursor))) cursor.at += 1
  return { name: wordsBefore(cursor, start), glued: false, style, numbers: { kind: 'none' }, weak: true }
}

/** `7.` `7)` `7:` where only the heading says whether rows or rounds are meant */
function bare(cursor: Cursor): Head | null {
  const items = numbers(cursor, false)
  if (items === null || !/^(?:[.:)]|–)$/.test(text(cursor))) return null
  return { name: '', glued: false, style: null, numbers: items, weak: false }
}

function either<T>(cursor: Cursor, ...reads: readonly ((cursor: Cursor) => T | null)[]): T | null {
  const from = cursor.at
  for (const read of reads) {
    cursor.at = from
    const found = read(cursor)
    if (found !== null) return found
  }
  cursor.at = from
  return null
}

function side(cursor: Cursor): 'RS' | 'WS' | null {
  const bracketed = text(cursor) === '(' || text(cursor) === '['
  const word = text(cursor, bracketed ? 1 : 0)
  if (word !== 'rs' && word !== 'ws') return null
  cursor.at += bracketed ? 3 : 1
  return word === 'rs' ? 'RS' : 'WS'
}

/** `(6 rows)` and other remarks in brackets before the colon */
function passRemark(cursor: Cursor): void {
  if (text(cursor) !== '(') return
  let end = cursor.at
  while (end < cursor.words.length && end - cursor.at < 8 && cursor.words[end]?.text !== ')') end += 1
  const after = cursor.words[end + 1]?.text
  if (cursor.words[end]?.text === ')' && after === ':') cursor.at = end + 1
}

const emphasis = /^\*{1,3}$/

/**
 * Reads the label of a row.
 *
 *     **Rnds 5–18 (RS):** Sc in each st around.
 *       ^^^^^^^^^^^^^^^
 *
 * @param source the draft's text in a span
 * @returns null when the words begin some other way
 */
export function readLabel(words: readonly Word[], source: (span: Span) => string): Label | null {
  const cursor: Cursor = { words, source, at: 0 }
  const bold = emphasis.test(text(cursor))
  if (bold) cursor.at += 1
  const first = cursor.at
  const before = side(cursor)
  const head = either(cursor, named, numberFirst, next, foundation, bare)
  if (head === null) return null
  const after = side(cursor)
  passRemark(cursor)
  const boldEnds = bold && emphasis.test(text(cursor))
  if (boldEnds) cursor.at += 1
  const colon = takeText(cursor, ':')
  const separated = colon || takeText(cursor, '.', ')', '-', '–', '=')
  // `1st row.—`
  if (separated) takeText(cursor, '–')
  const closed = bold && !boldEnds && emphasis.test(text(cursor))
  if (closed) cursor.at += 1
  const ended = cursor.at >= words.length
  if (head.weak && !(colon || boldEnds || closed)) return null
  const start = words[first]?.at
  const last = words[cursor.at - 1 - (closed ? 1 : 0)]?.at
  if (start === undefined || last === undefined) return null
  const { name, glued, style } = head
  // `1. Sew the shoulders`: a bare number begins many a list that holds no rows.
  const sure = head.name !== '' && (separated || boldEnds || closed || ended)
  return {
    end: cursor.at,
    at: cover(start, last),
    name,
    glued,
    style,
    numbers: head.numbers,
    side: before ?? after,
    sure,
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
  return there.every((value) => value === first) ? String(first) : there.join('/')
}
