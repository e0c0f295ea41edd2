import type { Phrase } from '../reader.ts'
import { attempt, spanSince, take, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { readWhere } from './where.ts'

/**
 * Where a row begins on its chain, said before its stitches.
 *
 *     starting in 2nd ch from hook, sc across     beginning in 3rd ch from hook 7 hdc     from 2nd ch: 4 sc
 *     ^
 */
export const startingPhrase: Phrase = {
  name: 'starting',
  opens: (reader) => /^(?:starting|start|beginning|begin|from)$/.test(textAt(reader)),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    take(reader, 'starting', 'start', 'beginning', 'begin')
    take(reader, 'from', 'with', 'at')
    const where = attempt(reader, readWhere)
    return where?.kind === 'fromHook' ? [{ kind: 'skip', where, at: spanSince(reader, from) }] : null
  },
}
