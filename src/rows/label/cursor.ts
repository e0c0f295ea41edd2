import type { Span } from '../../diagnostic/index.ts'
import { cover } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import type { Word } from '../words.ts'

/** A place in the words that a label may be read from. */
export interface Cursor {
  readonly words: readonly Word[]
  /** The draft's text in a span. */
  readonly source: (span: Span) => string
  readonly sizes: number
  at: number
}

export function textAt(cursor: Cursor, ahead = 0): string {
  return cursor.words[cursor.at + ahead]?.text ?? ''
}

export function takeText(cursor: Cursor, ...texts: readonly string[]): boolean {
  if (!texts.includes(textAt(cursor))) return false
  cursor.at += 1
  return true
}

/** `7`, or with `ordinal` `7th`; `first` and `one`, which are no numbers elsewhere, too. */
export function numberAt(cursor: Cursor, ordinal: boolean): Count | null {
  const word = cursor.words[cursor.at]
  if (word?.kind === 'number' && word.ordinal === ordinal) return word.count
  return textAt(cursor) === (ordinal ? 'first' : 'one') ? everySize(1, cursor.sizes) : null
}

/** What the draft says from one word to another. */
export function wordsFrom(cursor: Cursor, from: number, end: number): string {
  const first = cursor.words[from]
  const last = cursor.words[end - 1]
  return first === undefined || last === undefined || end <= from ? '' : cursor.source(cover(first.at, last.at)).trim()
}

/** The first of several forms that reads; the cursor is put back where none does. */
export function either<T>(cursor: Cursor, ...reads: readonly ((cursor: Cursor) => T | null)[]): T | null {
  const from = cursor.at
  for (const read of reads) {
    cursor.at = from
    const found = read(cursor)
    if (found !== null) return found
  }
  cursor.at = from
  return null
}

const styles: Readonly<Record<string, 'flat' | 'round'>> = {
  row: 'flat',
  rows: 'flat',
  rw: 'flat',
  rnd: 'round',
  rnds: 'round',
  rd: 'round',
  rds: 'round',
  round: 'round',
  rounds: 'round',
}

const singular: Readonly<Record<string, string>> = { rows: 'row', rnds: 'rnd', rds: 'rd', rounds: 'round' }

/** `row`, `rnds`: whether rows or rounds are meant; null for any other word. */
export function styleOf(word: string): 'flat' | 'round' | null {
  return styles[word] ?? null
}

/** `rnds` names each of its rows `rnd`. */
export function oneOf(word: string): string {
  return singular[word] ?? word
}

export function capital(word: string): string {
  return word.slice(0, 1).toUpperCase() + word.slice(1)
}
