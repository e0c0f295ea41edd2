import type { Phrase } from '../reader.ts'
import { passClause, spanSince, take, textAt } from '../reader.ts'
import type { Step } from '../step.ts'

/**
 * A ring to begin in.
 *
 *     make a magic ring     magic circle     form a ring     MR
 *          ^
 */
export const ringPhrase: Phrase = {
  name: 'ring',
  opens: (reader) => /^(?:a|magic|adjustable|mr|mc|form|ring|to|into)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const forms = take(reader, 'to', 'into')
    if (take(reader, 'form', 'a') || forms) take(reader, 'form', 'a')
    take(reader, 'a')
    const magic = take(reader, 'magic', 'adjustable')
    if (!(magic || forms || textAt(reader) === 'mr' || textAt(reader) === 'ring')) return null
    if (!take(reader, 'ring', 'circle', 'loop', 'mr', 'mc')) return null
    if (forms) passClause(reader)
    return [{ kind: 'ring', at: spanSince(reader, from) }]
  },
}
