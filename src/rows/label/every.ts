import type { Cursor } from './cursor.ts'
import { numberAt, oneOf, styleOf, takeText, textAt } from './cursor.ts'
import type { Numbers } from './numbers.ts'

type Every = Numbers & { readonly kind: 'every' }

const kinds: Readonly<Record<string, Every['of']>> = {
  even: 'even',
  'even-numbered': 'even',
  odd: 'odd',
  'odd-numbered': 'odd',
  rs: 'RS',
  ws: 'WS',
  alternate: 'other',
  alt: 'other',
  other: 'other',
}

/** `even-numbered`, `WS`, `other`, `2nd`: which rows */
function kindOf(cursor: Cursor): Every['of'] | null {
  const word = textAt(cursor)
  if (word === 'even' || word === 'odd') {
    cursor.at += 1
    if (takeText(cursor, '-')) takeText(cursor, 'numbered')
    takeText(cursor, 'numbered')
    return word
  }
  if (numberAt(cursor, true)?.[0] === 2) {
    cursor.at += 1
    return 'other'
  }
  const found = kinds[word] ?? null
  if (found !== null) cursor.at += 1
  return found
}

function kindOfRows(cursor: Cursor): { of: Every['of']; style: 'flat' | 'round' } | null {
  const all = takeText(cursor, 'all', 'every', 'each')
  takeText(cursor, 'following', 'foll', 'the', 'remaining', 'subsequent')
  const of = kindOf(cursor)
  const style = styleOf(textAt(cursor))
  // `Even row`, alone and in the singular, is a sentence's beginning.
  if (of === null || style === null || !(all || oneOf(textAt(cursor)) !== textAt(cursor))) return null
  cursor.at += 1
  return { of, style }
}

/** `2nd`, `2nd row`, `Row 2`: the first of the rows */
function firstOf(cursor: Cursor): number | null {
  const named = styleOf(textAt(cursor)) !== null
  if (named) cursor.at += 1
  const count = numberAt(cursor, !named)?.[0] ?? null
  if (count === null) return null
  cursor.at += 1
  if (!named && styleOf(textAt(cursor)) !== null) cursor.at += 1
  return takeText(cursor, 'and', '+') ? count : null
}

/** `2nd and every even rnd`, `Row 2 and all WS rows`, `Odd rows`: rows laid between others. */
export function readEvery(cursor: Cursor): { readonly numbers: Every; readonly style: 'flat' | 'round' } | null {
  const from = cursor.at
  const first = firstOf(cursor)
  if (first === null) cursor.at = from
  const found = kindOfRows(cursor)
  return found === null ? null : { numbers: { kind: 'every', first, of: found.of }, style: found.style }
}
