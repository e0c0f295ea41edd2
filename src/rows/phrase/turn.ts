import type { Phrase, Reader } from '../reader.ts'
import { attempt, passClause, spanSince, take, takeAll, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { takePattern } from './pattern.ts'

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
  /^(?:[,;] )?(?:and )?(?:complete|finish|work|continue|cont|working)(?: only)?(?: on)?(?: only)? (?:this|these|first|one|each)(?: (?:side|sts?|stitches|shoulder|half|section|separately|first|only|for|the|left|right|front|back|neck|edge))*(?= |$)/

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
const rest = /^(?:leave|leaving) (?:the )?(?:last|rem|remaining|rest|other|others|final)(?= |$)/

/** Stitches left on purpose: `leave rem sts unworked`, `leaving last 4 sts unworked`. */
export const leavePhrase: Phrase = {
  name: 'leave',
  opens: (reader) => /^(?:leave|leaving|rem|remaining)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    if (!attempt(reader, (inner) => (unworked(inner) ? true : null)) && takePattern(reader, rest) === null) return null
    passClause(reader)
    return [{ kind: 'leave', at: spanSince(reader, from) }]
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
