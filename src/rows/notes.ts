import type { Counting } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'

const about = /\b(?:chains?|chs?|t-?chs?)\b/i
const allHeights = [2, 3, 4, 5, 6]

function chainsNamed(sentence: string): readonly number[] {
  const named = [...sentence.matchAll(/\bch(?:ain)?s?[- ]?(\d)\b|\b(\d)[- ]ch\b/gi)]
  const numbers = named.map((match) => Number(match[1] ?? match[2]))
  if (numbers.length > 0) return numbers
  return /\b(?:turning|beg|beginning|starting|opening)\b|\bt-?chs?\b/i.test(sentence) ? allHeights : []
}

function countingOf(sentence: string, dictionary: Dictionary): Counting {
  if (/\b(?:not|never)\b|n['’]t\b/i.test(sentence)) return { counts: false }
  const named =
    /\bas\s+(?:an?|one|1|the)?\s*(?:first\s+)?([a-z]+(?: [a-z]+){0,2})/i.exec(sentence)?.[1]?.toLowerCase() ?? ''
  const words = named.split(' ')
  for (let count = words.length; count > 0; count -= 1) {
    const as = dictionary.stitches.get(words.slice(0, count).join(' '))
    if (as !== undefined) return { counts: true, as }
  }
  return { counts: true, as: null }
}

/**
 * What a note says about opening chains, by their length.
 *
 *     Turning ch-3 counts as a dc throughout.
 */
export function openingNotes(text: string, dictionary: Dictionary): ReadonlyMap<number, Counting> {
  const found = new Map<number, Counting>()
  for (const sentence of text.split(/[.;!\n](?:\s|$)/)) {
    if (!about.test(sentence) || !/\bcounts?\b|\bcounted\b/i.test(sentence)) continue
    for (const chains of chainsNamed(sentence)) found.set(chains, countingOf(sentence, dictionary))
  }
  return found
}
