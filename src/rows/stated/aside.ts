import type { Reader } from '../reader.ts'
import { numberAt, peek, take, takeNumber, textAt } from '../reader.ts'
import type { CountingRule } from './item.ts'

const opens =
  /^(?:including|includes|include|incl|counting|counts?|not|excluding|excl|without|does|ch|beg|turning|where|when|as|if)$/

function words(reader: Reader): string {
  let text = ''
  for (let at = reader.at; at < reader.end; at += 1) {
    const word = reader.words[at]
    if (word?.kind === 'broken') return ''
    text += ` ${word?.text ?? ''}`
  }
  return text
}

/** What a remark on counting says: spaces or chains as stitches, the opening chain or slip stitches among them or not. */
function ruleIn(text: string): readonly CountingRule[] {
  const not = /\b(?:not|excluding|excl|without)\b|n['’]t\b/.test(text)
  const opening = /\b(?:turning|t-?ch|tch|beg|beginning|starting|first)\b/.test(text)
  if (/\b(?:sl|ss|slip)\b/.test(text)) return [not ? 'stitches' : 'slips']
  if (/\b(?:sps?|spaces?|loops?|lps?|ch-sps?)\b/.test(text) && !opening)
    return not ? ['stitches'] : ['spaces', 'chains']
  if (/\b(?:chs|chains|(?:each|every|all) (?:ch|chain))\b/.test(text) && !opening)
    return not ? ['stitches'] : ['chains', 'spaces']
  if (/\b(?:ch|chain|tch|t-ch)\b/.test(text)) return [not ? 'no opening' : 'stitches']
  return []
}

/**
 * A remark after the counts, on how they count.
 *
 *     18 sts, counting each ch-1 sp as a st     18 sts (not including turning ch)
 *           ^                                          ^
 *
 * The reader moves past it and all that follows; null where there is none.
 */
export function saidRule(reader: Reader): readonly CountingRule[] | null {
  const from = reader.at
  const bracket = take(reader, ',', '(', '–', '-', ';')
  const text = textAt(reader)
  const chain = /^(?:ch|beg|turning)$/.test(text) && !/\bcounts?\b|\bincl/.test(words(reader))
  // `inc` is an increase, but `inc tch` the turning chain among the stitches.
  const including = text === 'inc' && /^(?:ch|beg|turning|starting|tch|t-ch)$/.test(textAt(reader, 1))
  if (!(opens.test(text) || including) || chain) {
    // A remark in brackets that says nothing on counting is passed.
    if (
      bracket &&
      reader.words[from]?.text === '(' &&
      reader.closing.get(from) === reader.end - 1 &&
      !hasNumber(reader)
    ) {
      reader.at = reader.end
      return null
    }
    reader.at = from
    return null
  }
  const rule = ruleIn(words(reader))
  reader.at = reader.end
  return rule.length === 0 ? null : rule
}

function hasNumber(reader: Reader): boolean {
  for (let at = reader.at; at < reader.end; at += 1) if (reader.words[at]?.kind === 'number') return true
  return false
}

/** `12 dc + ch 3`, `beg ch and 12 dc`: the opening chain is named apart, so the others are without it. */
export function chainApart(reader: Reader): CountingRule | null {
  const from = reader.at
  if (numberAt(reader)?.count.every((count) => count === 1) && !take(reader, 'the', 'a', 'one')) reader.at += 1
  const numbered = reader.at > from
  const opening = take(reader, 'beg', 'beginning', 'turning', 'starting', 'initial')
  const chain = take(reader, 'ch', 'chain', 'tch', 't-ch')
  if (chain && (opening || (!numbered && isNumbered(reader)))) {
    take(reader, '-')
    const chains = takeNumber(reader)?.[0] ?? null
    if (!/^(?:sps?|spaces?|loops?|lps?)$/.test(textAt(reader)))
      return opening || chains === null ? 'no opening' : `apart ${chains}`
  }
  reader.at = from
  return null
}

/** `ch 3`, `ch-3` */
function isNumbered(reader: Reader): boolean {
  const word = peek(reader, textAt(reader) === '-' ? 1 : 0)
  return word?.kind === 'number' && !word.ordinal
}
