import type { Phrase, Reader } from '../reader.ts'
import { atClauseEnd, attempt, peek, spanSince, take, takeNumber, takeSpecial, takeStitch, textAt } from '../reader.ts'
import type { Step } from '../step.ts'

const leads = ['working', 'placing', 'making', 'putting', 'work', 'place', 'put', 'make']
const prepositions = /^(?:in|into|on|over|to|around|through|under)$/

/** `last 2 dc`, `the last shell`, `last st`: what goes into the place that is named after it. */
function lastOnes(reader: Reader): boolean {
  take(reader, 'the', 'its')
  if (!take(reader, 'last', 'final')) return false
  takeNumber(reader)
  const named = attempt(reader, takeSpecial) !== null || attempt(reader, takeStitch) !== null
  if (!(named || take(reader, 'st', 'sts', 'stitch', 'stitches', 'one', 'group'))) return false
  return prepositions.test(textAt(reader))
}

function pass(reader: Reader): void {
  while (!atClauseEnd(reader)) reader.at += 1
}

/** As a stitch of its own: `last dc in top of tch` after a repeat that leaves the turning chain. */
function asStep(reader: Reader): readonly Step[] | null {
  take(reader, ...leads)
  take(reader, 'the', 'its')
  if (!take(reader, 'last', 'final')) return null
  let end = reader.at
  while (end < reader.end && !/^[,;.]$/.test(reader.words[end]?.text ?? '')) end += 1
  const steps = reader.sequence(reader, end)
  reader.at = end
  return steps !== null && steps.length > 0 ? steps : null
}

function sameWords(reader: Reader): readonly Step[] | null {
  const from = reader.at
  const said = take(reader, ...leads)
  if (!lastOnes(reader)) return null
  pass(reader)
  const end = reader.at
  const at = spanSince(reader, from)
  reader.at = from
  const step = attempt(reader, asStep)
  reader.at = end
  const remark: Step = { kind: 'remark', counting: null, at }
  if (step === null) return said ? [remark] : null
  return [{ kind: 'either', options: [[remark], step], about: 'tail', at }]
}

/** `working in dc`: the stitch of what follows. */
function inStitch(reader: Reader): readonly Step[] | null {
  const from = reader.at
  if (!take(reader, 'working', 'work', 'continuing') || !take(reader, 'in')) return null
  const stitch = takeStitch(reader)
  if (stitch === null || !(atClauseEnd(reader) || take(reader, 'throughout'))) return null
  reader.stitch = stitch
  return [{ kind: 'remark', counting: null, at: spanSince(reader, from) }]
}

/**
 * Where the last stitches of a repeat go: it makes nothing more than the repeat does.
 *
 *     …; rep from * across, working last 2 dc in top of tch     …, last dc in 3rd ch of ch-4
 *                           ^
 */
export const tailPhrase: Phrase = {
  name: 'tail',
  opens: (reader) =>
    peek(reader)?.kind === 'word' &&
    /^(?:working|placing|making|putting|work|place|put|make|continuing|last|final|the|its)$/.test(textAt(reader)),
  read: (reader) => attempt(reader, sameWords) ?? attempt(reader, inStitch),
}
