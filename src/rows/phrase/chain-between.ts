import type { Phrase, Reader } from '../reader.ts'
import { atClauseEnd, numberAt, one, passClause, spanSince, take, takeNumber, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import { readPlaces } from './stitch.ts'

const chainWords = ['ch', 'chs', 'chain', 'chains']
const leads = ['with', 'and', 'having', 'leaving', 'making', 'working']
const each = /^(?:each|every|them|these|the)$/

function leadsTo(reader: Reader): number {
  return leads.includes(textAt(reader)) ? 1 : 0
}

/**
 * Chains between the stitches or groups that the words before have named.
 *
 *     1 dc in each loop, with 4 ch between     5 tr with 1 ch between each in next st     2 tr in each, 1 ch after each
 *                        ^
 */
export const chainBetweenPhrase: Phrase = {
  name: 'chain between',
  opens: (reader) => {
    const at = leadsTo(reader)
    const noun = chainWords.includes(textAt(reader, at + 1)) ? at + 2 : at + 3
    if (numberAt(reader, at) === null && !/^(?:a|one)$/.test(textAt(reader, at))) return false
    const after = /^(?:after|before)$/.test(textAt(reader, noun)) && /^(?:each|every)$/.test(textAt(reader, noun + 1))
    return after || textAt(reader, noun) === 'between'
  },
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    take(reader, ...leads)
    const count = takeNumber(reader) ?? (take(reader, 'a', 'one') ? one(reader) : null)
    if (count === null || !take(reader, ...chainWords)) return null
    take(reader, 'stitches', 'sts', 'st')
    if (!take(reader, 'between', 'after', 'before')) return null
    if (each.test(textAt(reader))) passClause(reader, 'in', 'into', 'on')
    else if (!(atClauseEnd(reader) || /^(?:in|into)$/.test(textAt(reader)))) return null
    const at = spanSince(reader, from)
    const [into] = readPlaces(reader)
    return [{ kind: 'chain', count, counting: null, between: into ?? 'places', at }]
  },
}
