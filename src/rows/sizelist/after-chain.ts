import type { Word } from '../words.ts'
import type { Found } from './found.ts'
import { isChain, isNumber } from './found.ts'

const separators = /^[,:|/]$/

/** Each number in a bracket of its own: `(66) (72) (78)` */
function apart(words: readonly Word[], first: number, sizes: number): Found | null {
  const entries: Word[] = []
  let at = first
  while (entries.length < sizes && words[at]?.text === '(' && isNumber(words[at + 1]) && words[at + 2]?.text === ')') {
    entries.push(...words.slice(at + 1, at + 2))
    at += 3
  }
  return entries.length === sizes ? { first, end: at, entries, bracketed: false } : null
}

/** `66, 72 and 78`, `66 | 72 | 78`, and in brackets `66, 72, 78 sts` */
function listed(words: readonly Word[], first: number, sizes: number): Found | null {
  const opens = words[first]?.text === '('
  const entries: Word[] = []
  let at = opens ? first + 1 : first
  for (;;) {
    if (!isNumber(words[at])) return null
    entries.push(...words.slice(at, at + 1))
    at += 1
    if (entries.length === sizes) break
    const mark = separators.test(words[at]?.text ?? '')
    if (mark) at += 1
    if (words[at]?.text === 'and') at += 1
    else if (!mark) return null
  }
  if (opens && /^(?:sts?|stitches|chs?|chains?)$/.test(words[at]?.text ?? '')) at += 1
  if (opens) return words[at]?.text === ')' ? { first, end: at + 1, entries, bracketed: false } : null
  return endsList(words, at) ? { first, end: at, entries, bracketed: false } : null
}

/** Of `ch 3, 2 dc in same st` the second number has a stitch of its own. */
function endsList(words: readonly Word[], at: number): boolean {
  const next = words[at]
  return next === undefined || /^(?:[.,;)]|and|join|sts?|stitches|chs?|chains?|loosely|turn|in|with)$/.test(next.text)
}

/** Chains for each size in a row, without the brackets around the further ones. */
export function afterChain(words: readonly Word[], first: number, sizes: number): Found | null {
  if (sizes < 2 || !isChain(words[first - 1])) return null
  const start = words[first]
  if (!(isNumber(start) || start?.text === '(')) return null
  return apart(words, first, sizes) ?? listed(words, first, sizes)
}
