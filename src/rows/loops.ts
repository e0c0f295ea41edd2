import type { Word } from './words.ts'

const openers = new Set(['blo', 'flo', 'tbl', 'the', 'back', 'front', 'both', 'bk', 'ft'])
const prepositions = /^(?:in|into|through|working|work|using)$/
const followers = /^(?:each|next|same|first|last|every|the|sts?|rem|following|\d)$/

/** Words of `back loop only` from `at` on: how many, 0 for none. */
function loopWords(words: readonly Word[], at: number): number {
  if (!openers.has(words[at]?.text ?? '')) return 0
  const text = (ahead: number): string => words[at + ahead]?.text ?? ''
  if (/^(?:blo|flo|tbl)$/.test(text(0))) return 1
  const the = text(0) === 'the' ? 1 : 0
  if (!/^(?:back|front|both|bk|ft)$/.test(text(the)) || !/^(?:loops?|lps?)$/.test(text(the + 1))) return 0
  return the + 2 + (text(the + 2) === 'only' ? 1 : 0)
}

/**
 * Takes out which loop is worked: it changes the look, not the count.
 *
 *     sc in back loop of next st   →   sc in next st
 *     sc in BLO across             →   sc across
 */
export function withoutLoops(words: readonly Word[]): readonly Word[] {
  if (!words.some((_, at) => loopWords(words, at) > 0)) return words
  const out: Word[] = []
  for (let at = 0; at < words.length; ) {
    const length = loopWords(words, at)
    const word = words[at]
    if (length === 0 && word !== undefined) {
      out.push(word)
      at += 1
      continue
    }
    const of = words[at + length]?.text === 'of'
    const keeps = of || followers.test(words[at + length]?.text ?? '')
    while (!keeps && prepositions.test(out.at(-1)?.text ?? '')) out.pop()
    at += length + (of ? 1 : 0)
  }
  return out
}
