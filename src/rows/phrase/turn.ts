import type { Count } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import { attempt, passClause, spanSince, take, takeAll, takeNumber, textAt } from '../reader.ts'
import type { Step, Where } from '../step.ts'
import { takePattern } from './pattern.ts'
import { readTarget } from './target.ts'

function unworked(reader: Reader): boolean {
  const from = reader.at
  while (reader.at < reader.end && reader.at - from < 12) {
    const text = textAt(reader)
    if (text === 'unworked' || text === 'unused' || text === 'unwkd') return true
    if (text === ',' || text === '.' || text === ';') return false
    reader.at += 1
  }
  return false
}

/** `turn and complete this side first`: the rest waits. */
const thisSide =
  /^(?:[.,;] )?(?:and )?(?:complete|finish|work|continue|cont|working)(?: only)?(?: on)?(?: only)? (?:this|these|first|one|each)(?: (?:side|sts?|stitches|shoulder|half|section|separately|first|only|for|the|left|right|front|back|neck|edge))*(?= |$)/

/**
 * The end of a row: `turn`, `do not turn`, `ch 1 and turn`.
 *
 *     leave rem 5 sts unworked, turn
 *                               ^
 */
export const turnPhrase: Phrase = {
  name: 'turn',
  opens: (reader) => /^(?:turn|turning|do|don't|don’t|without)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const negative = takeAll(reader, 'do', 'not') || take(reader, "don't", 'don’t', 'without')
    if (!take(reader, 'turn', 'turning')) return null
    take(reader, 'your')
    take(reader, 'work', 'piece')
    const turn: Step = { kind: 'turn', turns: !negative, at: spanSince(reader, from) }
    return takePattern(reader, thisSide) === null ? [turn] : [{ kind: 'leave', at: turn.at }, turn]
  },
}

/** `leave last 5 sts`, `leave rem sts for instep` */
const rest =
  /^(?:leave|leaving|do not work|don['’]t work) (?:in |into |on )?(?:the )?(?:last|rem|remaining|rest|other|others|final)(?= |$)/

/** `leave next 8 sts unworked for sleeve`, `place next 8 sts on hold`: the row goes on behind them. */
function leftBehind(reader: Reader): Where | null {
  take(reader, 'leave', 'leaving', 'place', 'placing', 'put', 'putting')
  take(reader, 'the')
  if (!take(reader, 'next', 'following')) return null
  const count = takeNumber(reader)
  const of = readTarget(reader, false)
  if (count === null || of === null || takePattern(reader, held) === null) return null
  passClause(reader)
  return { kind: 'next', count, of }
}

const held = /^(?:unworked|unused|on hold|on a (?:holder|marker)|free|unwkd|for)(?= |$)/

const stitchNoun = /^(?:sts?|stitch|stitches|sc|hdc|dc|tr|htr)$/

/** `leave last 7 sts unworked`: the number that is left. */
function stitchesNamed(reader: Reader, from: number): Count | null {
  for (let at = from; at + 1 < reader.at; at += 1) {
    const word = reader.words[at]
    const isNumber = word?.kind === 'number' && !word.ordinal
    if (isNumber && stitchNoun.test(reader.words[at + 1]?.text ?? '')) return word.count
  }
  return null
}

/** Stitches left on purpose: `leave rem sts unworked`, `leaving last 4 sts unworked`. */
export const leavePhrase: Phrase = {
  name: 'leave',
  opens: (reader) =>
    /^(?:leave|leaving|rem|remaining|place|placing|put|putting|next|do|don't|don’t)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const on = attempt(reader, leftBehind)
    if (on !== null) return [{ kind: 'skip', where: on, at: spanSince(reader, from) }]
    if (!attempt(reader, (inner) => (unworked(inner) ? true : null)) && takePattern(reader, rest) === null) return null
    passClause(reader)
    const count = stitchesNamed(reader, from)
    const at = spanSince(reader, from)
    return [count === null ? { kind: 'leave', at } : { kind: 'leave', count, at }]
  },
}

/** `fasten off`, `cut yarn and fasten off` */
export const fastenOffPhrase: Phrase = {
  name: 'fasten off',
  opens: (reader) => /^(?:fasten|fo|finish|break|cut)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const finishes = take(reader, 'fo') || (take(reader, 'fasten', 'finish', 'break', 'cut') && reader.at > from)
    if (!finishes) return null
    passClause(reader)
    return [{ kind: 'fastenOff', at: spanSince(reader, from) }]
  },
}
