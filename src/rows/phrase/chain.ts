import type { Phrase, Reader } from '../reader.ts'
import { attempt, numberAt, one, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { readCounting } from './counting.ts'
import { readStandsFor } from './stands-for.ts'

const chainWords = ['ch', 'chs', 'chain', 'chains']
const spaceWord = /^(?:sp|sps|space|spaces|lp|lps|loop|loops|arch|arches|from|st|sts)$/

function count(reader: Reader) {
  const before = takeNumber(reader) ?? (take(reader, 'one') ? one(reader) : null)
  if (before !== null && take(reader, '-')) return null
  if (!take(reader, ...chainWords)) return null
  if (before !== null) return before
  take(reader, '-')
  return takeNumber(reader) ?? one(reader)
}

/**
 * Chain stitches: `ch 3`, `ch3`, `3 ch`, `chain 60 (72, 84)`.
 *
 *     ch 3 (counts as dc), dc in next st
 *     ^
 */
export const chainPhrase: Phrase = {
  name: 'chain',
  opens: (reader) => {
    const numbered = numberAt(reader) !== null || textAt(reader) === 'one'
    return chainWords.includes(textAt(reader, numbered ? 1 : 0))
  },
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const numberFirst = numberAt(reader) !== null || textAt(reader) === 'one'
    const made = count(reader)
    // With a space after it, it is a place that was made before: `ch-2 sp`.
    if (made === null || spaceWord.test(textAt(reader))) return null
    take(reader, 'more', 'loosely')
    const at = spanSince(reader, from)
    const step: Step = {
      kind: 'chain',
      count: made,
      counting: attempt(reader, readCounting) ?? attempt(reader, readStandsFor),
      at,
    }
    return [numberFirst ? { ...step, numberFirst } : step]
  },
}
