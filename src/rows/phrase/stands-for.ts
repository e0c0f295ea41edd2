import type { Reader } from '../reader.ts'
import { attempt, numberAt, take, takeNumber, takeStitch, textAt } from '../reader.ts'
import type { Counting } from '../step.ts'

const lead = (
  'this these that which it to take takes taking will makes make making forms form forming stands stand standing serves serve serving ' +
  'equals equal represents represent representing = or for instead in place of counts count counting as being is are ' +
  'the a an one first'
).split(' ')
const chains = ['ch', 'chs', 'chain', 'chains']

/** Words that must stand there: a stitch alone after a chain is the next step. */
const says =
  /^(?:this|these|that|which|to|makes?|making|forms?|stands?|serves?|equals?|equal|or|for|instead|in|being|is)$/

function leads(reader: Reader): boolean {
  const said = says.test(textAt(reader))
  while (take(reader, ...lead) || passFirst(reader));
  return said
}

/** `1`, `1st` */
function passFirst(reader: Reader): boolean {
  const word = reader.words[reader.at]
  if (word?.kind !== 'number' || !word.count.every((value) => value === 1)) return false
  reader.at += 1
  return true
}

/** `and 1 ch`: what is left of the chain after the stitch that it stands for. */
function passChains(reader: Reader): boolean {
  while (take(reader, 'and', 'plus', '+', ',', 'a', 'one', 'the', 'of', 'space'));
  if (numberAt(reader) !== null) takeNumber(reader)
  const found = take(reader, ...chains)
  take(reader, '-')
  if (numberAt(reader) !== null) takeNumber(reader)
  take(reader, 'space', 'sp')
  return found
}

function stitchNamed(reader: Reader): Counting | null {
  const as = takeStitch(reader)
  if (as === null || as.base === 'slipStitch') return null
  attempt(reader, (inner) => (passChains(inner) ? true : null))
  return { counts: true, as }
}

function inBrackets(reader: Reader): Counting | null {
  const close = /^[([]$/.test(textAt(reader)) ? reader.closing.get(reader.at) : undefined
  if (close === undefined || close >= reader.end) return null
  reader.at += 1
  leads(reader)
  const counting = stitchNamed(reader)
  if (counting === null || reader.at !== close) return null
  reader.at = close + 1
  // `ch 1 (1 dc, 1 ch) 6 times` and `(1 dc, 1 ch) in next st` are steps.
  return numberAt(reader) !== null || /^(?:in|into|x|twice|to|on|under)$/.test(textAt(reader)) ? null : counting
}

/**
 * What an opening chain stands for.
 *
 *     ch 4 (1 dc and 1 ch), …     3 ch for the first tr, …     3 ch (to stand for 1st tr), …
 *          ^                           ^                            ^
 */
export function readStandsFor(reader: Reader): Counting | null {
  const bracketed = attempt(reader, inBrackets)
  if (bracketed !== null) return bracketed
  return leads(reader) ? stitchNamed(reader) : null
}
