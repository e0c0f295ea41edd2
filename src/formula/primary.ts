import type Fraction from 'fraction.js'
import { cover, type Span } from '../diagnostic/index.ts'
import { isUnit, readNumber, type Unit, unitOfSpelling } from '../measure/index.ts'
import type { Cursor } from './cursor.ts'
import { deeper, expected, peek, refuse, take, takeIf, takeRaw } from './cursor.ts'
import { isWord } from './keywords.ts'
import { parseMade } from './made.ts'
import type { Token } from './token.ts'
import { isClosed, unquote } from './token.ts'
import type { BySizeNode, Expression } from './tree.ts'

/**
 *     primary = number [ unit ] | TEXT | "none" | NAME | NAME "(" [ either { "," either } ] ")"
 *             | "total" … | "count" "(" … ")"                     see made.ts
 *             | ( "(" either ")" | list | bySize ) [ unit ]
 *     number  = NUMBER | WHOLE WHOLE "/" WHOLE | WHOLE "/" WHOLE unit
 *     list    = "[" either { "," either } "]"
 *     bySize  = "{" SIZE ":" either { "," SIZE ":" either } "}"
 *
 * `1/2 in` is half an inch; without a unit `1/2` is a division, which comes to the same.
 */
export function parsePrimary(cursor: Cursor, formula: () => Expression | null): Expression | null {
  const token = peek(cursor)
  if (token.kind === 'number') return number(cursor)
  if (token.kind === 'text') return text(cursor)
  if (token.kind === 'name') return named(cursor, formula)
  if (token.text === '(') return bracket(cursor, formula)
  if (token.text === '[') return list(cursor, formula)
  if (token.text === '{') return bySize(cursor, formula)
  return expected(cursor, 'a number, a name or a bracket')
}

function number(cursor: Cursor): Expression | null {
  const first = take(cursor)
  const pieces = [first, ...fractionPart(cursor, first)]
  const value = readNumber(pieces.map((piece) => piece.text).join(' '))
  const at = cover(first.at, pieces.at(-1)?.at ?? first.at)
  if (value === null) return refuse(cursor, 'number-unreadable', at, { number: joined(pieces) })
  return withOwnUnit(cursor, value, at)
}

function joined(pieces: readonly Token[]): string {
  return pieces.map((piece) => piece.text).join('')
}

/**
 * The tokens that belong to a number as its fraction: `1/2` after `20`, or `/2` before a unit. A stroke with
 * blanks around it divides: `60 / 5 cm` is a count divided by a length.
 */
function fractionPart(cursor: Cursor, first: Token): readonly Token[] {
  if (!isWholeNumber(first)) return []
  const ahead = [peek(cursor), peek(cursor, 1), peek(cursor, 2)] as const
  const mixed = isWholeNumber(ahead[0]) && ahead[1].text === '/' && isWholeNumber(ahead[2])
  if (mixed) return [take(cursor), take(cursor), take(cursor)]
  const closed = ahead[0].at.start === first.at.end && ahead[1].at.start === ahead[0].at.end
  const plain = closed && ahead[0].text === '/' && isWholeNumber(ahead[1]) && isUnit(ahead[2].text)
  return plain ? [take(cursor), take(cursor)] : []
}

function isWholeNumber(token: Token): boolean {
  return token.kind === 'number' && /^\d+$/.test(token.text)
}

function withOwnUnit(cursor: Cursor, value: Fraction, at: Span): Expression | null {
  const unit = unitAt(cursor)
  if (unit === 'unknown') return null
  return { kind: 'number', value, unit: unit?.unit ?? null, at: unit === null ? at : cover(at, unit.at) }
}

/** The unit that follows a number or a list; null when none does; `unknown` when it is not one, which is reported. */
function unitAt(cursor: Cursor): { readonly unit: Unit; readonly at: Span } | null | 'unknown' {
  const token = peek(cursor)
  if (isUnit(token.text)) return { unit: token.text, at: take(cursor).at }
  if (token.kind !== 'name' || isWord('after', token.text)) return null
  const before = peek(cursor, -1).text
  refuse(cursor, 'unknown-unit', token.at, { unit: token.text, before, nearest: unitOfSpelling(token.text) })
  return 'unknown'
}

function text(cursor: Cursor): Expression | null {
  const token = take(cursor)
  if (!isClosed(token.text))
    return refuse(cursor, 'text-open', token.at, { afterNumber: peek(cursor, -2).kind === 'number' })
  return { kind: 'text', text: unquote(token.text), at: token.at }
}

function named(cursor: Cursor, formula: () => Expression | null): Expression | null {
  const token = peek(cursor)
  if (token.text === 'total' || token.text === 'count') return parseMade(cursor)
  if (token.text === 'none') return { kind: 'none', at: take(cursor).at }
  if (isWord('reserved', token.text)) return expected(cursor, 'a number, a name or a bracket')
  take(cursor)
  const name = token.text.normalize('NFC')
  if (peek(cursor).text !== '(') return { kind: 'name', name, at: token.at }
  take(cursor)
  const found = peek(cursor).text === ')' ? [] : deeper(cursor, () => items(cursor, formula))
  if (found === null) return null
  const close = closing(cursor, ')')
  return close && { kind: 'call', name, nameAt: token.at, arguments: found, at: cover(token.at, close.at) }
}

function items(cursor: Cursor, formula: () => Expression | null): readonly Expression[] | null {
  const found: Expression[] = []
  do {
    const item = formula()
    if (item === null) return null
    found.push(item)
  } while (takeIf(cursor, ',') !== null)
  return found
}

function closing(cursor: Cursor, bracket: ')' | ']' | '}'): Token | null {
  const token = takeIf(cursor, bracket)
  if (token !== null) return token
  if (peek(cursor).kind === 'newline') return refuse(cursor, 'bracket-open', peek(cursor).at, { bracket })
  return expected(cursor, bracket === ')' ? 'an operator, a comma or `)`' : `a comma or \`${bracket}\``)
}

function bracket(cursor: Cursor, formula: () => Expression | null): Expression | null {
  const open = take(cursor)
  const inner = deeper(cursor, formula)
  const close = inner && closing(cursor, ')')
  if (inner === null || close === null) return null
  return unitOn(cursor, inner, cover(open.at, close.at))
}

function list(cursor: Cursor, formula: () => Expression | null): Expression | null {
  const open = take(cursor)
  const found = deeper(cursor, () => items(cursor, formula))
  const close = found && closing(cursor, ']')
  if (found === null || close === null) return null
  const at = cover(open.at, close.at)
  return unitOn(cursor, { kind: 'list', items: found, at }, at)
}

/** The bracket's content, its brackets within its place, with the unit that follows, if one does. */
function unitOn(cursor: Cursor, operand: Expression, at: Span): Expression | null {
  const unit = unitAt(cursor)
  if (unit === 'unknown') return null
  return unit === null ? { ...operand, at } : { kind: 'withUnit', operand, unit: unit.unit, at: cover(at, unit.at) }
}

function bySize(cursor: Cursor, formula: () => Expression | null): Expression | null {
  const open = take(cursor)
  const found = deeper(cursor, () => entries(cursor, formula))
  const close = found && closing(cursor, '}')
  if (found === null || close === null) return null
  const at = cover(open.at, close.at)
  return unitOn(cursor, { kind: 'bySize', entries: found, at }, at)
}

function entries(cursor: Cursor, formula: () => Expression | null): BySizeNode['entries'] | null {
  const found: BySizeNode['entries'][number][] = []
  do {
    const size = takeRaw(cursor, [':', ',', '}'])
    if (takeIf(cursor, ':') === null) return expected(cursor, 'the name of a size, then `:` and its value')
    const value = formula()
    if (value === null) return null
    found.push({ size: bare(size.text), at: size.at, value })
  } while (takeIf(cursor, ',') !== null)
  return found
}

/** A size's name without the quotes that it may be given in. */
function bare(name: string): string {
  return /^["“„'‘]/.test(name) && isClosed(name) ? unquote(name) : name
}
