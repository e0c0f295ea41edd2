import type { Span } from '../diagnostic/index.ts'
import { numberPattern } from '../measure/index.ts'

export type TokenKind = 'number' | 'name' | 'text' | 'sign' | 'space' | 'newline' | 'comment' | 'unknown'

/** A piece of a formula. The texts of all tokens, joined, are the input. */
export interface Token {
  readonly kind: TokenKind
  readonly text: string
  readonly at: Span
}

/** Where a character of the text stands in the draft: an offset added to all, or a mapping of its own. */
export type Origin = number | ((offset: number) => number)

/** Double and single quotes, straight or typographic; a text ends with a quote of the family that opened it. */
const quoted = /["“”„][^"“”„\n]*["“”„]?|['‘’‚][^'‘’‚\n]*['‘’‚]?/

const patterns: readonly (readonly [TokenKind, RegExp])[] = [
  ['newline', /\r?\n/],
  ['space', /[^\S\r\n]+|\r/],
  ['comment', /#[^\r\n]*/],
  ['text', quoted],
  ['number', numberPattern],
  ['name', /[\p{L}_][\p{L}\p{M}\p{N}_]*/u],
  ['sign', /!=|<=|>=|[-+*/=<>()[\]{},:~%×·÷−–≤≥≠]/],
]

const sticky = patterns.map(([kind, pattern]) => [kind, new RegExp(pattern.source, 'uy')] as const)

/** Cuts a text into tokens. Never fails: what belongs to no kind is a token of kind `unknown`. */
export function tokenize(text: string, origin: Origin = 0): readonly Token[] {
  const place = typeof origin === 'number' ? (offset: number) => offset + origin : origin
  const tokens: Token[] = []
  for (let offset = 0; offset < text.length; ) {
    const [kind, length] = tokenAt(text, offset)
    const end = offset + length
    tokens.push({ kind, text: text.slice(offset, end), at: { start: place(offset), end: place(end - 1) + 1 } })
    offset = end
  }
  return tokens
}

function tokenAt(text: string, offset: number): readonly [TokenKind, number] {
  for (const [kind, pattern] of sticky) {
    pattern.lastIndex = offset
    const found = pattern.exec(text)?.[0] ?? ''
    if (found !== '') return [kind, found.length]
  }
  return ['unknown', String.fromCodePoint(text.codePointAt(offset) ?? 0).length]
}

/** Whether a text token has its closing quote. */
export function isClosed(text: string): boolean {
  return text.length > 1 && /["“”„'‘’‚]$/.test(text)
}

/** What stands between the quotes. */
export function unquote(text: string): string {
  return text.slice(1, isClosed(text) ? -1 : undefined)
}

const spellings: ReadonlyMap<string, string> = new Map([
  ['×', '*'],
  ['·', '*'],
  ['÷', '/'],
  ['−', '-'],
  ['–', '-'],
  ['≤', '<='],
  ['≥', '>='],
  ['≠', '!='],
])

/** A sign in its plain spelling: `×` is `*`. */
export function plainSign(text: string): string {
  return spellings.get(text) ?? text
}
