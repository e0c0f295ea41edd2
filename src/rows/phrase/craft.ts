import type { Phrase, Reader } from '../reader.ts'
import { peek, spanSince, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { takePattern } from './pattern.ts'

const begins =
  /^(?:place|placing|insert|inserting|attach|attaching|add|adding|sew|sewing|stuff|stuffing|embroider|embroidering|secure|securing|put|putting|position|fill|filling|glue|sewn?)$/
const things =
  /^(?:eyes?|safety|nose|mouth|stuffing|fibrefill|fiberfill|buttons?|wire|tail|ends?|felt|beads?|whiskers?|bow|ribbon|zipper|tails|firmly|lightly)$/
const apart =
  /^(?:with )?(?:about |approx(?:imately)? |around )?# (?:sts?|stitches|rows?|rnds?|rounds?|cm|mm|in|inches) (?:apart|between (?:them|the eyes)|in between)(?= |$)/

function clauseEnd(reader: Reader): number {
  let end = reader.at
  while (end < reader.end && !/^[,;.)\]]$/.test(reader.words[end]?.text ?? '')) end += 1
  return end
}

/**
 * What is done with a toy between its rounds, in whatever numbers.
 *
 *     sc around, placing safety eyes between Rnds 7 and 8, 5 sts apart
 *                ^                                         ^
 */
export const craftPhrase: Phrase = {
  name: 'craft',
  opens: (reader) =>
    begins.test(textAt(reader)) || peek(reader)?.kind === 'number' || /^(?:with|about|approx)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    if (takePattern(reader, apart) !== null) return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
    if (!begins.test(textAt(reader))) return null
    const end = clauseEnd(reader)
    if (!reader.words.slice(from, end).some((word) => things.test(word.text))) return null
    reader.at = end
    return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
  },
}

const endsAt = /^(?:in|at|on)(?= (?:the )?(?:top|last|first|tch|turning|beg|2nd|3rd|4th))/

/** `…, ending in top of tch`: where the last stitch that the words before make goes. */
export const endsAtPhrase: Phrase = {
  name: 'ends at',
  opens: (reader) =>
    /^(?:in|at|on)$/.test(textAt(reader)) && /^(?:ending|end|ends)$/.test(reader.words[reader.at - 1]?.text ?? ''),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    if (takePattern(reader, endsAt) === null) return null
    reader.at = clauseEnd(reader)
    return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
  },
}
