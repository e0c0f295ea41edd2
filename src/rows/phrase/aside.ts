import type { Phrase, Reader } from '../reader.ts'
import { attempt, peek, spanSince, take, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { takePattern } from './pattern.ts'
import { isWork } from './remark.ts'

const mostWords = 9
const clauseEnd = /^[,;.:)\]}>–]$/

/** What a phrase may be for, or lead to, without making anything. */
const lead =
  /^(?:for|to form|to make|to create|to complete|to finish|to close|to begin|to start|to shape|to secure|to mark|as (?:shown|established|before|set|usual|always|in|if|for|instructed|described|above|required|needed)|instead|again|only|throughout|loosely|tightly|carefully|firmly|this time|all worked in(?:to)? (?:the )?(?:ring|same sp|same st|same place)|worked in(?:to)? the ring)(?= |$)/

/** Words after `for` that say how far or how often, not what for. */
const extent = /^(?:the next|next|each|every|last|a total|all)$/

/**
 * Words at the end of an item that say what it is for: `for sleeve`, `to form last loop`, `as established`.
 * The reader moves past them; nothing is taken where a stitch, a number or a place is among them.
 */
export function passAside(reader: Reader): void {
  attempt(reader, (inner) => {
    if (takePattern(inner, lead) === null) return null
    if (extent.test(textAt(inner))) return null
    for (let passed = 0; passed < mostWords; passed += 1) {
      const word = peek(inner)
      if (word === undefined || clauseEnd.test(word.text)) return true
      if (word.kind !== 'word' || isWork(inner, 0)) return null
      inner.at += 1
    }
    return null
  })
}

const cross =
  /^(?:and )?(?:working |work |going |crossing |inserting (?:the )?hook )?(?:in front of|in back of|behind|over|around|across)(?: (?:the|last|first|next|previous|#|two|all|these|both))* (?:\w+ ){1,3}?(?:just (?:made|worked|crossed)|made|worked|already worked)(?= |$)/
const petals =
  /^(?:working |work )?(?:behind|in front of|keeping) (?:the |all )?(?:petals?|flower|round below|work)(?: (?:forward|to the front|out of the way))?(?= [,;.:]|$)/
const manner =
  /^in (?:a |the )?(?:continuous |joined |back and forth )?(?:spiral|spirals|rounds|rows|round)(?= [,;.]|$)/
const aside =
  /^(?:working |work |going |crossing )(?:in front|in back|behind|backwards?)(?: of (?:the )?(?:last |previous )?(?:work|st|sts|dc|tr|sc|hdc|treble|trebles))?(?= [,;.]|$)/

/** `the first dc being a ch 3`, `the last dc being in the top of the 3 ch`: which of those just named are meant */
const being =
  /^(?:with )?the (?:first|last)(?: (?:sc|dc|hdc|htr|tr|dtr|stitch|st|one))? being (?:(?:a |the )?(?:# (?:ch|chain)|(?:ch|chain) #)|(?:in|into|on|worked)(?: [^ ,;.:()*]+)+)(?= [,;.:)]|$)/

/**
 * How stitches cross: `working in front of dc just made`.
 */
export const crossingPhrase: Phrase = {
  name: 'crossing',
  opens: (reader) => /^(?:and|working|work|going|crossing|inserting|in|behind|over|with|the)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    if ([cross, aside, manner, petals, being].every((pattern) => takePattern(reader, pattern) === null)) return null
    return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
  },
}

/**
 * Stitches that are worked along with those of the words before, in places of their own.
 *
 *     sc in each st around, working 3 sc in each corner     …, with 2 dc in each ch-2 sp
 *                           ^
 */
export const alongPhrase: Phrase = {
  name: 'along with',
  opens: (reader) => /^(?:working|with|placing|making|having|doing|and|but)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    take(reader, 'and', 'but')
    if (!take(reader, 'working', 'with', 'placing', 'making', 'having', 'doing', 'work')) return null
    let end = reader.at
    while (end < reader.end && !(/^[,;.]$/.test(reader.words[end]?.text ?? '') && !isInBracket(reader, end))) end += 1
    const steps = reader.sequence(reader, end)
    const [step, ...others] = steps ?? []
    if (step?.kind !== 'work' || others.length > 0) return null
    reader.at = end
    return [step]
  },
}

/** Whether a word stands between a bracket that has opened since and its close. */
function isInBracket(reader: Reader, at: number): boolean {
  for (const [open, close] of reader.closing) if (open >= reader.at && open < at && close > at) return true
  return false
}
