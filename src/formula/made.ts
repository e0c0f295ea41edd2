import { cover, type Span } from '../diagnostic/index.ts'
import type { Cursor } from './cursor.ts'
import { expected, peek, refuse, take, takeIf, takeRaw } from './cursor.ts'
import { isClosed, unquote } from './token.ts'
import type { Expression } from './tree.ts'

interface Part {
  readonly text: string
  readonly quoted: boolean
  readonly at: Span
}

/**
 * What a worked row makes. The kind of stitch is written as in a row, not as a formula.
 *
 *     made = "total" [ "(" [ [ PIECE "," ] ROW ] ")" ]             total   total("Sleeve", "Row 3")
 *          | "count" "(" KIND [ "," [ PIECE "," ] ROW ] ")"        count(ch-2 sp)   count(dc, "Rnd 4")
 *
 * A piece may also stand before the kind: `count("Sleeve", dc, "Row 3")`.
 */
export function parseMade(cursor: Cursor): Expression | null {
  const word = take(cursor)
  if (takeIf(cursor, '(') === null) return bareWord(cursor, word)
  const parts = peek(cursor).text === ')' ? [] : takeParts(cursor)
  const close = takeIf(cursor, ')')
  if (close === null) return refuse(cursor, 'bracket-open', peek(cursor).at, { bracket: ')' })
  const at = cover(word.at, close.at)
  return word.text === 'total' ? total(cursor, parts, at) : count(cursor, parts, at)
}

function bareWord(cursor: Cursor, word: { readonly text: string; readonly at: Span }): Expression | null {
  if (word.text === 'count') return expected(cursor, 'a kind of stitch in brackets, as in `count(dc)`')
  return { kind: 'made', what: 'total', piece: null, row: null, at: word.at }
}

function takeParts(cursor: Cursor): readonly Part[] {
  const parts: Part[] = []
  do {
    const { text, at } = takeRaw(cursor, [',', ')'])
    const quoted = /^["“„'‘]/.test(text) && isClosed(text)
    parts.push({ text: quoted ? unquote(text) : text, quoted, at })
  } while (takeIf(cursor, ',') !== null)
  return parts
}

function total(cursor: Cursor, parts: readonly Part[], at: Span): Expression | null {
  const odd = parts.find((part) => !part.quoted || part.text === '')
  if (odd !== undefined || parts.length > 2) return refuse(cursor, 'made-unreadable', odd?.at ?? at, { word: 'total' })
  return { kind: 'made', what: 'total', ...place(parts), at }
}

function count(cursor: Cursor, parts: readonly Part[], at: Span): Expression | null {
  const kind = parts.find((part) => !part.quoted) ?? parts[0]
  const rest = parts.filter((part) => part !== kind)
  const odd = rest.some((part) => !part.quoted || part.text === '')
  if (kind === undefined || kind.text === '' || odd || rest.length > 2) {
    return refuse(cursor, 'made-unreadable', at, { word: 'count' })
  }
  return { kind: 'made', what: kind.text.replace(/\s+/g, ' '), ...place(rest), at }
}

/** The row stands last; a piece before it. */
function place(parts: readonly Part[]): { readonly piece: string | null; readonly row: string | null } {
  const row = parts.at(-1)?.text ?? null
  return { piece: parts.length > 1 ? (parts[0]?.text ?? null) : null, row }
}
