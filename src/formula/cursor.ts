import type { Code, Diagnostic, Parameters, Span } from '../diagnostic/index.ts'
import { diagnose } from '../diagnostic/index.ts'
import type { Token } from './token.ts'

/** Deeper brackets than any measure needs; the limit keeps a slip from using up the machine. */
const deepest = 60

/** More words and signs than any formula needs. */
const longest = 1000

/** A place in the tokens of one formula. Moves forward only; at most one finding is kept, the first. */
export interface Cursor {
  /** Every token, blanks included: what is quoted as it stands is cut from these. */
  readonly all: readonly Token[]
  /** Positions in `all` of the tokens that count. */
  readonly words: readonly number[]
  /** Where the formula ends. */
  readonly end: Span
  next: number
  depth: number
  finding: Diagnostic | null
}

const ending: Omit<Token, 'at'> = { kind: 'newline', text: '' }

/** Opens the tokens of one formula, which stand at `at`. */
export function openCursor(all: readonly Token[], at: Span): Cursor {
  const words = all.flatMap((token, index) => (isBlank(token) ? [] : [index]))
  const end = { start: at.end, end: at.end }
  const cursor: Cursor = { all, words, end, next: 0, depth: 0, finding: null }
  if (words.length > longest) refuse(cursor, 'formula-too-long', at, {})
  return cursor
}

function isBlank(token: Token): boolean {
  return token.kind === 'space' || token.kind === 'comment' || token.kind === 'newline'
}

/** The token `ahead` places on, without taking it; past the end, an empty one of kind `newline`. */
export function peek(cursor: Cursor, ahead = 0): Token {
  const index = cursor.words[cursor.next + ahead]
  const token = index === undefined ? undefined : cursor.all[index]
  return token ?? { ...ending, at: cursor.end }
}

export function take(cursor: Cursor): Token {
  const token = peek(cursor)
  cursor.next = Math.min(cursor.next + 1, cursor.words.length)
  return token
}

/** Takes the next token if it reads `text`. */
export function takeIf(cursor: Cursor, text: string): Token | null {
  return peek(cursor).text === text ? take(cursor) : null
}

export function isAtEnd(cursor: Cursor): boolean {
  return cursor.next >= cursor.words.length
}

/** The draft's own words from the next token up to one of `stops` outside brackets, taken and trimmed. */
export function takeRaw(cursor: Cursor, stops: readonly string[]): { readonly text: string; readonly at: Span } {
  const from = cursor.next
  const start = peek(cursor).at
  for (let depth = 0; !isAtEnd(cursor); take(cursor)) {
    const { text } = peek(cursor)
    if (depth === 0 && stops.includes(text)) break
    if (text === '(') depth += 1
    if (text === ')') depth -= 1
  }
  const tokens = cursor.all.slice(cursor.words[from], cursor.words[cursor.next])
  const text = tokens.map((token) => token.text).join('')
  return { text: text.trim(), at: { start: start.start, end: start.start + text.trimEnd().length } }
}

/** Keeps a finding, unless there is one already: after the first, the rest of the line is guesswork. */
export function refuse<C extends Code>(cursor: Cursor, code: C, at: Span, details: Parameters<C>): null {
  cursor.finding ??= diagnose(code, at, details)
  return null
}

/** Reports that something else was expected here. */
export function expected(cursor: Cursor, what: string): null {
  const token = peek(cursor)
  return refuse(cursor, 'formula-unreadable', token.at, { found: token.text, expected: what })
}

/** Reads one level deeper; a finding, not an overflow, where brackets nest without end. */
export function deeper<T>(cursor: Cursor, read: () => T | null): T | null {
  if (cursor.depth >= deepest) return refuse(cursor, 'formula-too-deep', peek(cursor).at, { deepest })
  cursor.depth += 1
  const result = read()
  cursor.depth -= 1
  return result
}
