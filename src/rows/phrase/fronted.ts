import type { Phrase, Reader } from '../reader.ts'
import { attempt, take, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { partsOf } from './parts.ts'
import { readWhere } from './where.ts'

function oneItem(reader: Reader): readonly Step[] | null {
  const open = textAt(reader)
  const close = /^[([{]$/.test(open) ? reader.closing.get(reader.at) : undefined
  if (close !== undefined) {
    reader.at += 1
    const steps = reader.sequence(reader, close)
    if (steps !== null) reader.at = close + 1
    return steps
  }
  const from = reader.at
  let end = from
  while (end < reader.end && !/^[,;.*]$/.test(reader.words[end]?.text ?? '')) end += 1
  const steps = reader.sequence(reader, end)
  reader.at = steps === null ? from : end
  return steps
}

/**
 * The place before the stitches.
 *
 *     in next sp (3 dc, ch 2, 3 dc)     in each sp work 3 dc
 *     ^
 */
export const frontedPhrase: Phrase = {
  name: 'place first',
  opens: (reader) => textAt(reader) === 'in' || textAt(reader) === 'into',
  read: (reader): readonly Step[] | null => {
    const where = attempt(reader, readWhere)
    if (where === null) return null
    take(reader, ',', ':')
    take(reader, 'work', 'make')
    const steps = oneItem(reader)
    const parts = steps === null ? null : partsOf(steps)
    const [first] = steps ?? []
    if (parts === null || parts.length === 0 || first === undefined) return null
    return [{ kind: 'work', parts, where, at: first.at }]
  },
}
