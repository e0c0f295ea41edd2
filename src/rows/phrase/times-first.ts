import type { Phrase, Reader } from '../reader.ts'
import { numberAt, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'

/** Up to the end of the clause in which the list stands, by its semicolon or full stop. */
function listEnd(reader: Reader): number {
  let end = reader.at
  while (end < reader.end && !/^[;.*]$/.test(reader.words[end]?.text ?? '')) end = (reader.closing.get(end) ?? end) + 1
  return Math.min(end, reader.end)
}

/** `6x (1 sc, inc)`, `9x dec`: the bracket or the item that follows. */
function itemEnd(reader: Reader): number {
  const close = reader.closing.get(reader.at)
  if (close !== undefined) return Math.min(close + 1, reader.end)
  let end = reader.at
  while (end < reader.end && !/^[,;.*]$/.test(reader.words[end]?.text ?? '')) end += 1
  return end
}

/**
 * How often, before what is repeated.
 *
 *     8 times 2 ch, 1 dc     6x (1 sc, inc)
 *     ^                      ^
 */
export const timesFirstPhrase: Phrase = {
  name: 'times first',
  opens: (reader) => numberAt(reader) !== null && /^(?:times|x)$/.test(textAt(reader, 1)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const count = takeNumber(reader)
    if (count === null) return null
    const every = take(reader, 'x')
    if (!(every || take(reader, 'times'))) return null
    take(reader, ',', ':')
    const end = every ? itemEnd(reader) : listEnd(reader)
    const body = reader.sequence(reader, end)
    if (body === null || body.length === 0) return null
    reader.at = end
    const times = { kind: 'exactly', count } as const
    return [{ kind: 'repeat', body, stop: null, ending: null, times, at: spanSince(reader, from) }]
  },
}
