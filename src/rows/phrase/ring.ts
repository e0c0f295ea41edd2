import type { Count } from '../count.ts'
import type { Phrase, Reader } from '../reader.ts'
import { atClauseEnd, attempt, numberAt, passClause, spanSince, takeNumber, takeStitch, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { plain } from '../terms/stitch.ts'
import { takePattern } from './pattern.ts'

const lead = '(?:(?:start|starting|begin|beginning|make|making|create|form|work|with|by|in|into|using|inside|to) )*'
const magic =
  '(?:(?:a |an |the |your )?(?:(?:magic|adjustable|sliding|double) (?:ring|circle|loop|mr|mc)|mr|mc|ml)|(?:a |an )?ring)'
const ring = new RegExp(`^${lead}${magic}(?= |$)`)
/** `Ch 4, join. In ring: …`, `in a magic ring, …`: all of the row goes into it. */
const into = new RegExp(
  `^(?:in|into|inside|working in|working into|work in|work into) (?:the )?${magic}(?: (?:work|make))?(?: [:,–-]| work)?(?= |$)`,
)
const forms = /^(?:to|into)(?: (?:form|make|create|close))? (?:a |the )?(?:ring|circle|loop)(?= |$)/

/** `MR 6`: so many single crochet. */
function stitchesAfter(reader: Reader): Count | null {
  const count = takeNumber(reader)
  if (count === null || !atClauseEnd(reader)) return null
  return count
}

function withStitches(reader: Reader, from: number): readonly Step[] {
  const step: Step = { kind: 'ring', at: spanSince(reader, from) }
  const count = numberAt(reader) === null ? null : attempt(reader, stitchesAfter)
  if (count === null) return [step]
  const part = { kind: 'stitch', stitch: plain('singleCrochet'), count } as const
  return [step, { kind: 'work', parts: [part], where: { kind: 'ring', magic: true }, at: spanSince(reader, from) }]
}

/** `in ring: ch 3, 11 dc`; not `in ring` after its stitches, nor before a single item of several. */
function allInRing(reader: Reader): readonly Step[] | null {
  const from = reader.at
  const match = takePattern(reader, into)
  const leads = match !== null && (/[:,–-]$/.test(match[0]) || /\bwork$/.test(match[0]))
  if (!leads || !/\b(?:ring|circle|loop|mr|mc|ml)\b/.test(match[0])) return null
  const opens = numberAt(reader) !== null || /^(?:ch|chain)$/.test(textAt(reader)) || startsItem(reader)
  return opens ? [{ kind: 'ring', all: true, at: spanSince(reader, from) }] : null
}

function startsItem(reader: Reader): boolean {
  const at = reader.at
  const found = takeStitch(reader) !== null || /^[([]$/.test(textAt(reader))
  reader.at = at
  return found
}

/**
 * A ring to begin in.
 *
 *     make a magic ring     start with an adjustable ring     MR 6     in a magic ring: ch 3, 11 dc
 *     ^
 */
export const ringPhrase: Phrase = {
  name: 'ring',
  opens: (reader) =>
    /^(?:a|an|magic|adjustable|sliding|mr|mc|ml|form|ring|to|into|start|starting|begin|beginning|with|create|in|inside|using|make|working)$/.test(
      textAt(reader),
    ),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const all = attempt(reader, allInRing)
    if (all !== null) return all
    if (takePattern(reader, forms) !== null) {
      passClause(reader)
      return [{ kind: 'ring', at: spanSince(reader, from) }]
    }
    const match = takePattern(reader, ring)
    // `with MC` is the main colour.
    return match === null || /with mc$/.test(match[0]) ? null : withStitches(reader, from)
  },
}
