import type { Word } from '../words.ts'
import type { Found } from './found.ts'
import { bracket, chained, isNumber } from './found.ts'

interface Named {
  readonly size: number
  readonly end: number
}

/** The size whose name stands at a place, the longest of them. */
function nameAt(words: readonly Word[], at: number, names: readonly (readonly string[])[]): Named | null {
  let found: Named | null = null
  names.forEach((name, size) => {
    const fits = name.length > 0 && name.every((word, ahead) => words[at + ahead]?.text === word)
    if (fits && at + name.length > (found?.end ?? 0)) found = { size, end: at + name.length }
  })
  return found
}

const signs = /^[:=–-]$/
const between = /^[,;/|]$/

function passBetween(words: readonly Word[], from: number): number {
  const at = between.test(words[from]?.text ?? '') ? from + 1 : from
  return words[at]?.text === 'and' ? at + 1 : at
}

/** `S: 66, M: 72, L: 78` */
function nameFirst(words: readonly Word[], first: number, names: readonly (readonly string[])[]): Found | null {
  const entries: Word[] = []
  const of: number[] = []
  let at = first
  while (entries.length < names.length) {
    const named = nameAt(words, at, names)
    if (named === null || of.includes(named.size)) return null
    at = signs.test(words[named.end]?.text ?? '') ? named.end + 1 : named.end
    if (!isNumber(words[at])) return null
    entries.push(...words.slice(at, at + 1))
    of.push(named.size)
    at += 1
    if (entries.length < names.length) at = passBetween(words, at)
  }
  return { first, end: at, entries, bracketed: false, of }
}

/** `66 for S, 72 for M, 78 for L`, `66 (S), 72 (M), 78 (L)` */
function numberFirst(words: readonly Word[], first: number, names: readonly (readonly string[])[]): Found | null {
  const entries: Word[] = []
  const of: number[] = []
  let at = first
  while (entries.length < names.length) {
    if (!isNumber(words[at])) return null
    const number = words.slice(at, at + 1)
    at += 1
    const opens = words[at]?.text === '('
    if (!(opens || words[at]?.text === 'for')) return null
    at += 1
    if (/^(?:sizes?|the)$/.test(words[at]?.text ?? '')) at += 1
    const named = nameAt(words, at, names)
    if (named === null || of.includes(named.size)) return null
    at = named.end
    if (opens && words[at]?.text !== ')') return null
    if (opens) at += 1
    entries.push(...number)
    of.push(named.size)
    if (entries.length < names.length) at = passBetween(words, at)
  }
  return { first, end: at, entries, bracketed: false, of }
}

const around = /^[()[\],/:;|–-]$/

/** `S (M) L – 66 (72) 78`: all names, and then as many numbers. */
function namesThenNumbers(words: readonly Word[], first: number, names: readonly (readonly string[])[]): Found | null {
  let at = first
  for (let size = 0; size < names.length; size += 1) {
    while (size > 0 && around.test(words[at]?.text ?? '')) at += 1
    const named = nameAt(words, at, names)
    if (named?.size !== size) return null
    at = named.end
  }
  while (/^[)\]]$/.test(words[at]?.text ?? '')) at += 1
  if (!signs.test(words[at]?.text ?? '')) return null
  const entries: Word[] = []
  for (at += 1; entries.length < names.length; at += 1) {
    const word = words[at]
    if (isNumber(word)) entries.push(word)
    else if (word === undefined || !around.test(word.text)) return null
  }
  const end = /^[)\]]$/.test(words[at]?.text ?? '') ? at + 1 : at
  return { first, end, entries, bracketed: false }
}

const spellings = new WeakMap<readonly string[], readonly (readonly string[])[]>()

/** The words of each name, found once for a pattern. */
function spelledOut(names: readonly string[]): readonly (readonly string[])[] {
  const spelled = spellings.get(names) ?? names.map((name) => name.split(' '))
  spellings.set(names, spelled)
  return spelled
}

/** A number for each size by its name. */
export function namedList(words: readonly Word[], first: number, names: readonly string[]): Found | null {
  if (names.length < 2) return null
  const spelled = spelledOut(names)
  if (isNumber(words[first])) {
    if (bracket(words, first + 1) !== null || chained(words, first, '/') !== null) return null
    return numberFirst(words, first, spelled)
  }
  return nameFirst(words, first, spelled) ?? namesThenNumbers(words, first, spelled)
}
