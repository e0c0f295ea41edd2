import type { Phrase, Reader } from '../reader.ts'
import { spanSince } from '../reader.ts'
import type { MarkerPlace, Step } from '../step.ts'
import { takePattern } from './pattern.ts'

const marker = '(?:(?:a |an |the |your |stitch |locking |another |new )*(?:markers?|m|pm))'
const hangs = '(?:place|put|insert|hang|attach|add|placing|putting|hanging|work)'
const noun = '(?:[\\w#-]+ ){0,8}[\\w#-]+'
const where = `(?: (?:in|into|on|onto|around|through|at) (?<place>${noun}))?`
const placed = new RegExp(`^(?:pm|${hangs} ${marker})${where}(?= [,;.)\\]]|$)`)
const mark = new RegExp(
  `^(?:mark|marking) (?<place>(?:the |this |that |each |first |last |next |center |centre |middle |corner |# )+${noun})(?= [,;.)\\]]|$)`,
)
const slipped = new RegExp(`^(?:sm|(?:sl|slip|slipping|pass|passing) ${marker})(?= |$)`)
const moved = new RegExp(`^(?:move|moving|replace|replacing|bring|transfer) ${marker}(?: ${noun})?(?= [,;.)\\]]|$)`)

/** Which place the words mean, as far as they can be told apart. */
function placeOf(words: string): MarkerPlace {
  if (/\b(?:sps?|spaces?|loops?|ch)\b/.test(words)) return 'space'
  if (/\b(?:cent(?:er|re)|middle|corner|2nd|second)\b/.test(words)) return 'middle'
  if (/\bfirst\b/.test(words)) return 'first'
  if (/\bnext\b/.test(words)) return 'here'
  return 'last'
}

/**
 * Markers that are hung or passed, so that later words can name them.
 *
 *     3 sc in next st, pm in center st     sc to marker, sl m, sc to end     move marker up
 *                      ^                                  ^                  ^
 */
export const markerPhrase: Phrase = {
  name: 'marker',
  opens: (reader: Reader) =>
    /^(?:pm|place|put|insert|hang|attach|add|placing|putting|hanging|work|mark|marking|sm|sl|slip|slipping|pass|passing|move|moving|replace|replacing|bring|transfer)$/.test(
      reader.words[reader.at]?.text ?? '',
    ),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const at = (): Step['at'] => spanSince(reader, from)
    // Where a marker moves to follows from what is worked into its stitch.
    if (takePattern(reader, moved) !== null) return [{ kind: 'remark', counting: null, at: at() }]
    if (takePattern(reader, slipped) !== null) return [{ kind: 'marker', place: 'passed', at: at() }]
    const hung = takePattern(reader, placed) ?? takePattern(reader, mark)
    if (hung === null) return null
    const place = hung.groups?.place
    return [{ kind: 'marker', place: place === undefined ? 'here' : placeOf(place), at: at() }]
  },
}
