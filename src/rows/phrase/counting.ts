import type { Reader } from '../reader.ts'
import { atClauseEnd, numberAt, takeStitch, textAt } from '../reader.ts'
import type { Counting } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'

const countWords = new Set(['count', 'counts', 'counted', 'counting', '=', 'stands', 'stand', 'forms'])
const notWords = new Set(['not', "doesn't", "don't", 'doesn’t', 'don’t', 'never', 'no', 'without'])

interface Heard {
  counts: boolean
  not: boolean
  as: Stitch | null
  space: number | null
}

/** Listens to the words up to `end` for a statement about counting. */
function listen(reader: Reader, end: number): Counting | null {
  const heard: Heard = { counts: false, not: false, as: null, space: null }
  while (reader.at < end) {
    const text = textAt(reader)
    if (countWords.has(text)) heard.counts = true
    if (notWords.has(text)) heard.not = true
    const stitch = heard.as === null && heard.counts ? takeStitch(reader) : null
    if (heard.counts && heard.space === null) heard.space = spaceAhead(reader)
    if (stitch !== null) heard.as = stitch
    else reader.at += 1
  }
  if (!heard.counts) return null
  if (heard.not) return { counts: false }
  // `counts as ch-1 sp`: a space, and no stitch.
  return heard.as === null && heard.space !== null
    ? { counts: false, space: heard.space }
    : { counts: true, as: heard.as }
}

/** Chains of `ch-1 sp`, `ch 2`, `1-ch sp` ahead; null where the words speak of something else. */
function spaceAhead(reader: Reader): number | null {
  if (!/^(?:as|=|an?)$/.test(reader.words[reader.at - 1]?.text ?? '')) return null
  const chain = /^(?:ch|chain)$/
  const hyphen = textAt(reader, 1) === '-' ? 1 : 0
  const after = numberAt(reader, 1 + hyphen)
  if (chain.test(textAt(reader)) && after !== null) return after.count[0] ?? null
  if (/^(?:ch-sp|ch-space)$/.test(textAt(reader))) return 1
  const before = numberAt(reader)
  return before !== null && chain.test(textAt(reader, 1 + hyphen)) ? (before.count[0] ?? null) : null
}

function clauseEnd(reader: Reader): number {
  const from = reader.at
  while (!atClauseEnd(reader)) reader.at += 1
  const end = reader.at
  reader.at = from
  return end
}

/**
 * Whether an opening chain counts as a stitch.
 *
 *     ch 3 (counts as dc here and throughout), dc in next st
 *          ^
 */
export function readCounting(reader: Reader): Counting | null {
  const close = textAt(reader) === '(' || textAt(reader) === '[' ? reader.closing.get(reader.at) : undefined
  if (close !== undefined) {
    reader.at += 1
    const counting = listen(reader, close)
    reader.at = close + 1
    return counting
  }
  const from = reader.at
  if (textAt(reader) === ',') reader.at += 1
  if (/^(?:which|that|this)$/.test(textAt(reader)) && /^(?:counts?|stands|will|does)$/.test(textAt(reader, 1)))
    reader.at += 1
  if (!/^(?:counts?|counted|counting|=|stands|does|do|not)$/.test(textAt(reader))) {
    reader.at = from
    return null
  }
  return listen(reader, clauseEnd(reader))
}
