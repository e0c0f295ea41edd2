import type { Cursor } from './cursor.ts'
import { capital, either, numberAt, oneOf, styleOf, takeText, textAt, wordsFrom } from './cursor.ts'
import { readEvery } from './every.ts'
import type { Numbers } from './numbers.ts'
import { readNumbers } from './numbers.ts'

/** What a label begins with: `Row 7`, `Edging rnd 1`, `Dec row`. */
export interface Head {
  /** Singular, without the number. */
  readonly name: string
  readonly glued: boolean
  readonly style: 'flat' | 'round' | null
  readonly numbers: Numbers
  /** Needs a colon to be a label. */
  readonly weak: boolean
  /** Any mark makes it one: `3 row.—` */
  readonly marked?: boolean
  /** What later rows may call it: `dec row`; null for a number only. */
  readonly called: string | null
  /** Without a number: a row only if it is called as rows are, or if its steps can be read. */
  readonly known: boolean
}

const foundationWords = /^(?:foundation|base|set-up|setup|starting|beginning|begin)$/
const foundationNouns = /^(?:row|rnd|round|chain|ch|ring)$/

/** Words that begin a sentence about a row, not its label. */
const notPrefix =
  /^(?:work|rep|repeat|as|same|in|on|of|after|until|to|for|at|from|before|like|every|and|end|with|note|each|this|that|these|those|per|all|any|both|both|when|if|the|your|a|an|is|are|see|count|total)$/

/** What rows without a number are called. */
const kindsOfRow =
  /^(?:dec|decrease|decreasing|inc|increase|increasing|rib|ribbed|ribbing|border|edging|edge|trim|buttonhole|set-up|setup|join|joining|eyelet|shaping|short|plain|picot|shell|turning|final|last|pattern|patt|body|yoke|sleeve|heel|toe|neck|neckline|underarm|armhole|dividing|division|separation|separating|fold|hem|cuff|brim|crown|strap|mesh|lace|stripe|ridge|bobble|puff|sc|dc|hdc|tr|htr|crab|ruffle|closing|beading|casing|thumb|gusset|stitch|finishing|raglan|collar)$/

const mostPrefix = 5

/** How later rows refer to a row by name: `Decrease Rnd` and `dec row` are the same. */
export function calledBy(name: string): string {
  return name
    .toLowerCase()
    .replace(/\bdecreas(?:e|ing)\b/, 'dec')
    .replace(/\bincreas(?:e|ing)\b/, 'inc')
    .replace(/\b(?:rnd|rd|round|rw)\b/, 'row')
    .replace(/\bbutton hole\b/, 'buttonhole')
    .trim()
}

/** Moves past `Edging`, `Left front`: the words before `row`; null where they are no name. */
function passPrefix(cursor: Cursor): number | null {
  let prefix = 0
  for (; prefix < mostPrefix && styleOf(textAt(cursor)) === null && textAt(cursor) !== 'r'; prefix += 1) {
    const word = cursor.words[cursor.at]
    const joins = word?.kind === 'mark' && word.text === ',' && prefix > 0
    if (!(joins || word?.kind === 'word' || word?.kind === 'number') || notPrefix.test(word.text)) return null
    cursor.at += 1
  }
  const first = cursor.words[cursor.at - prefix]
  // `1st row. 1 sc …`, `First row.`: the ordinal is the number.
  return prefix === 1 && (first?.kind === 'number' || first?.text === 'first') ? null : prefix
}

/** `Row 7`, `Edging rnd 1`, `R7`, `Dec row` */
function named(cursor: Cursor): Head | null {
  const start = cursor.at
  const prefix = passPrefix(cursor)
  const word = textAt(cursor)
  const style = styleOf(word)
  if (prefix === null || (style === null && word !== 'r')) return null
  const before = prefix === 0 ? '' : wordsFrom(cursor, start, cursor.at)
  cursor.at += 1
  const end = cursor.at
  takeText(cursor, '.', '#', 'no', 'number')
  takeText(cursor, '.')
  const items = readNumbers(cursor, false)
  if (items === null) cursor.at = end
  if (items === null && prefix === 0) return null
  const own = oneOf(word)
  const name = before === '' ? capital(own) : `${before} ${own}`
  const called = prefix === 0 ? null : calledBy(name)
  const known = items !== null || kindsOfRow.test(textBefore(cursor, start))
  const numbers = items ?? ({ kind: 'next', count: null } as const)
  return { name, glued: word === 'r', style, numbers, weak: prefix > 0, called, known }
}

function textBefore(cursor: Cursor, start: number): string {
  return cursor.words[start]?.text ?? ''
}

/** `1st row`, `4th and 5th rows`, `9-16 row`, `3 row.—`, `First round` */
function numberFirst(cursor: Cursor): Head | null {
  const ordinal = numberAt(cursor, true) !== null
  const found = readNumbers(cursor, ordinal)
  const style = styleOf(textAt(cursor))
  if (found === null || style === null) return null
  const name = capital(oneOf(textAt(cursor)))
  // `2 rows.` may be how many; `2 row.` is which.
  const several = found.kind === 'list' && found.items.length > 1
  const marked = !ordinal && (several || oneOf(textAt(cursor)) === textAt(cursor))
  cursor.at += 1
  return { name, glued: false, style, numbers: found, weak: !ordinal, marked, called: null, known: true }
}

/** `Next row`, `Next 5 (6, 7) rows`, `Next RS row` */
function next(cursor: Cursor): Head | null {
  takeText(cursor, 'the')
  if (!takeText(cursor, 'next', 'following', 'foll')) return null
  const count = numberAt(cursor, false)
  if (count !== null) cursor.at += 1
  takeText(cursor, 'rs', 'ws')
  const style = styleOf(textAt(cursor))
  if (style === null) return null
  const name = `Next ${oneOf(textAt(cursor))}`
  cursor.at += 1
  return { name, glued: false, style, numbers: { kind: 'next', count }, weak: true, called: null, known: true }
}

/** `Foundation`, `Foundation row`, `Base chain` */
function foundation(cursor: Cursor): Head | null {
  const start = cursor.at
  takeText(cursor, 'to')
  if (takeText(cursor, 'set')) takeText(cursor, '-')
  else if (!foundationWords.test(textAt(cursor))) return null
  cursor.at += 1
  const style = styleOf(textAt(cursor))
  if (foundationNouns.test(textAt(cursor))) cursor.at += 1
  const name = wordsFrom(cursor, start, cursor.at)
  // `Foundation row 1` has a name and a number.
  if (style !== null && numberAt(cursor, false) !== null) return null
  const called = style === null ? null : calledBy(name)
  return { name, glued: false, style, numbers: { kind: 'none' }, weak: true, called, known: true }
}

/** `7.` `7)` `7:` `7th –` where only the heading says whether rows or rounds are meant */
function bare(cursor: Cursor): Head | null {
  const ordinal = numberAt(cursor, true) !== null
  const before = cursor.words[cursor.at - 1]?.text ?? ''
  const items = readNumbers(cursor, ordinal)
  const dash = textAt(cursor) === '-' && cursor.words[cursor.at]?.glued !== true
  // `**7** sc around`
  const bold = /^\*{1,3}$/.test(before) && textAt(cursor) === before
  if (items === null || !(dash || bold || /^(?:[.:)]|–|=>)$/.test(textAt(cursor)))) return null
  return { name: '', glued: false, style: null, numbers: items, weak: false, called: null, known: true }
}

function every(cursor: Cursor): Head | null {
  const start = cursor.at
  const found = readEvery(cursor)
  if (found === null) return null
  const name = wordsFrom(cursor, start, cursor.at)
  return { name, glued: false, style: found.style, numbers: found.numbers, weak: true, called: null, known: true }
}

export function readHead(cursor: Cursor): Head | null {
  return either(cursor, every, foundation, next, named, numberFirst, bare)
}
