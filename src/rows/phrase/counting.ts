import type { Reader } from '../reader.ts'
import { atClauseEnd, takeStitch, textAt } from '../reader.ts'
import type { Counting } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'

const countWords = new Set(['count', 'counts', 'counted', 'counting', '=', 'stands', 'stand', 'forms'])
const notWords = new Set(['not', "doesn't", "don't", 'doesn’t', 'don’t', 'never', 'no', 'without'])

interface Heard {
  counts: boolean
  not: boolean
  as: Stitch | null
}

/** Listens to the words up to `end` for a statement about counting. */
function listen(reader: Reader, end: number): Counting | null {
  const heard: Heard = { counts: false, not: false, as: null }
  while (reader.at < end) {
    const text = textAt(reader)
    if (countWords.has(text)) heard.counts = true
    if (notWords.has(text)) heard.not = true
    const stitch = heard.as === null && heard.counts ? takeStitch(reader) : null
    if (stitch !== null) heard.as = stitch
    else reader.at += 1
  }
  if (!heard.counts) return null
  return heard.not ? { counts: false } : { counts: true, as: heard.as }
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
  if (!/^(?:counts?|counted|counting|=|stands|does|do|not)$/.test(textAt(reader))) {
    reader.at = from
    return null
  }
  return listen(reader, clauseEnd(reader))
}
