import { cover, type Diagnostic, type Outcome, type Span } from '../diagnostic/index.ts'
import type { Format } from '../measure/index.ts'
import { isUnit, readNumber } from '../measure/index.ts'
import type { Cursor } from './cursor.ts'
import { expected, isAtEnd, openCursor, peek, refuse, take, takeIf } from './cursor.ts'
import { isWord } from './keywords.ts'
import { parseExpression } from './parse.ts'
import type { Origin, Token } from './token.ts'
import { tokenize } from './token.ts'
import type { Expression, Formula, Statement } from './tree.ts'

/**
 * Reads the text of a grading block, one statement a line:
 *
 *     statement = NAME "=" either | NAME "~" either | "need" either
 *
 * `origin` is the draft offset of the text's first character, or a function from offsets in the text to
 * offsets in the draft. A line that cannot be read gives one finding; reading goes on with the next.
 */
export function readGrading(text: string, origin: Origin): Outcome<readonly Statement[]> {
  const statements: Statement[] = []
  const diagnostics: Diagnostic[] = []
  for (const line of linesOf(tokenize(text, origin))) {
    const cursor = openCursor(line, spanOf(line))
    const statement = isAtEnd(cursor) ? null : readStatement(cursor)
    if (statement !== null) statements.push(statement)
    if (cursor.finding !== null) diagnostics.push(cursor.finding)
  }
  return { value: statements, diagnostics }
}

function linesOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const lines: Token[][] = [[]]
  for (const token of tokens) {
    if (token.kind === 'newline') lines.push([])
    else lines.at(-1)?.push(token)
  }
  return lines
}

function spanOf(tokens: readonly Token[]): Span {
  const words = tokens.filter((token) => token.kind !== 'space' && token.kind !== 'comment')
  const first = words[0] ?? tokens[0]
  const last = words.at(-1) ?? first
  return first === undefined || last === undefined ? { start: 0, end: 0 } : cover(first.at, last.at)
}

function readStatement(cursor: Cursor): Statement | null {
  const first = peek(cursor)
  if (first.text === 'need' && peek(cursor, 1).text !== '=') return readNeed(cursor)
  const sign = peek(cursor, 1).text
  if (first.kind !== 'name' || (sign !== '=' && sign !== '~')) {
    return refuse(cursor, 'statement-unreadable', { start: first.at.start, end: cursor.end.end }, {})
  }
  return readDefinition(cursor, sign)
}

function readNeed(cursor: Cursor): Statement | null {
  const word = take(cursor)
  const condition = wholeOf(cursor)
  return condition && { kind: 'need', condition, at: cover(word.at, condition.at) }
}

/** A name whose formula cannot be read stays known, so that its use elsewhere is not reported as well. */
function readDefinition(cursor: Cursor, sign: '=' | '~'): Statement | null {
  const { text, at: nameAt } = take(cursor)
  const name = text.normalize('NFC')
  take(cursor)
  if (isWord('functions', name) || isWord('reserved', name)) return refuse(cursor, 'name-taken', nameAt, { name })
  if (sign === '~' && isAtEnd(cursor)) refuse(cursor, 'linked-target-missing', nameAt, { name })
  const formula = wholeOf(cursor)
  const at = { start: nameAt.start, end: cursor.end.end }
  return sign === '='
    ? { kind: 'define', name, nameAt, formula, at }
    : { kind: 'link', name, nameAt, target: formula, at }
}

/** A formula that must reach to the end of its line. */
function wholeOf(cursor: Cursor): Expression | null {
  if (cursor.finding !== null) return null
  const formula = parseExpression(cursor)
  if (formula === null || isAtEnd(cursor)) return formula
  const word = peek(cursor, 1)
  if (!isFormatAhead(cursor)) return leftOver(cursor)
  return refuse(cursor, 'format-misplaced', cover(peek(cursor).at, word.at), { word: word.text })
}

function isFormatAhead(cursor: Cursor): boolean {
  const word = peek(cursor, 1).text
  return peek(cursor).text === 'as' && (isWord('format', word) || isUnit(word))
}

function leftOver(cursor: Cursor): null {
  const before = peek(cursor, -1)
  const token = peek(cursor)
  const operands = ['number', 'name', 'text']
  const multiply = operands.includes(token.kind) && (operands.includes(before.kind) || before.text === ')')
  if (multiply && token.text !== 'as') {
    return refuse(cursor, 'operator-missing', token.at, { before: before.text, after: token.text })
  }
  return expected(
    cursor,
    token.text === 'as'
      ? 'the end of the formula or a rounding such as `as whole`'
      : 'an operator or the end of the formula',
  )
}

/**
 * Reads what stands between `{{` and `}}`, or a formula of the front matter:
 *
 *     placeholder = either [ "as" format ]
 *     format      = "words" | "ordinal" | "skeins" | UNIT [ "to" number ]
 *
 * Null when it cannot be read, which is reported.
 */
export function readFormula(text: string, origin: Origin): Outcome<Formula | null> {
  const tokens = tokenize(text, origin)
  const start = typeof origin === 'number' ? origin : origin(0)
  const at = tokens.length === 0 ? { start, end: start } : spanOf(tokens.filter((token) => token.kind !== 'newline'))
  const cursor = openCursor(tokens, at)
  const value = cursor.finding === null ? placeholder(cursor, at) : null
  return { value, diagnostics: cursor.finding === null ? [] : [cursor.finding] }
}

function placeholder(cursor: Cursor, at: Span): Formula | null {
  if (isAtEnd(cursor)) return refuse(cursor, 'formula-empty', at, {})
  const expression = parseExpression(cursor)
  if (expression === null) return null
  const format = formatAt(cursor)
  if (cursor.finding !== null) return null
  return isAtEnd(cursor) ? { expression, format, at } : leftOver(cursor)
}

function formatAt(cursor: Cursor): Format | null {
  if (!isFormatAhead(cursor)) return null
  take(cursor)
  const word = take(cursor).text
  if (word === 'words' || word === 'ordinal' || word === 'skeins') return { kind: word }
  if (!isUnit(word)) return null
  return { kind: 'unit', unit: word, step: takeIf(cursor, 'to') === null ? null : fineness(cursor) }
}

function fineness(cursor: Cursor) {
  const from = take(cursor)
  const below = peek(cursor).text === '/' ? [take(cursor), take(cursor)] : []
  const text = [from, ...below].map((token) => token.text).join('')
  const step = readNumber(text)
  if (step === null || step.n === 0n) return refuse(cursor, 'fineness-unreadable', from.at, { text })
  return step
}
