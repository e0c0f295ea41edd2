import type { NumberWord, Word } from '../words.ts'

/** A list of sizes among words. */
export interface Found {
  /** Index after the last word of the list. */
  readonly end: number
  readonly entries: readonly Word[]
  readonly first: number
  readonly bracketed: boolean
  /** The size that each entry is for, where they stand in another order. */
  readonly of?: readonly number[]
}

const closers: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' }
const separators = new Set([',', ':', '/', '-', '–', ';'])

export const isNumber = (word: Word | undefined): word is NumberWord =>
  word?.kind === 'number' && word.typed && !word.ordinal && !word.bracketed

export const isNothing = (word: Word | undefined): boolean => word !== undefined && /^(?:[-–]|none)$/.test(word.text)

export const isChain = (word: Word | undefined): boolean => /^(?:chs?|chains?)$/.test(word?.text ?? '')

/** `(72, 84)` `[72:84]` `(72-84)`: a bracket that holds only numbers; dashes hold a place. */
export function bracket(words: readonly Word[], open: number): { end: number; entries: Word[] } | null {
  const closer = closers[words[open]?.text ?? '']
  if (closer === undefined) return null
  const entries: Word[] = []
  for (let at = open + 1; ; at += 2) {
    const word = words[at]
    if (word === undefined || !(isNumber(word) || isNothing(word))) return null
    entries.push(word)
    const next = words[at + 1]
    if (next?.text === closer) return { end: at + 2, entries }
    if (next === undefined || !separators.has(next.text)) return null
  }
}

/** `66/72/78` `66-72-78` and, inside brackets or after a dash, `66, 72, 78 sts`. */
export function chained(words: readonly Word[], first: number, separator: string): Found | null {
  const entries: Word[] = []
  let at = first
  while (isNumber(words[at])) {
    entries.push(...words.slice(at, at + 1))
    if (words[at + 1]?.text !== separator || !isNumber(words[at + 2])) break
    at += 2
  }
  return entries.length > 1 ? { first, end: at + 1, entries, bracketed: false } : null
}
