import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { atClauseEnd, attempt, numberAt, one, take, takeNumber, takeStitch, textAt } from '../reader.ts'
import type { Accepts, Target, Where } from '../step.ts'
import { readGapAfter, readGroup, spaceWords, stitchWords } from './nouns.ts'
import { readUntil } from './until.ts'

type Which = 'next' | 'first' | 'last' | 'each'

function whichOne(reader: Reader): Which {
  take(reader, 'the')
  if (take(reader, 'each', 'every', 'all')) {
    take(reader, 'of')
    take(reader, 'the')
    return 'each'
  }
  if (take(reader, 'first')) return 'first'
  if (take(reader, 'last')) return 'last'
  take(reader, 'next', 'following')
  return 'next'
}

/** `between the 2 dc of next V-st`: the middle of a group */
function middle(reader: Reader): Accepts | null {
  if (!take(reader, 'between', 'bet', 'betw')) return null
  while (take(reader, 'the', 'two', 'posts', 'of'));
  const size = takeNumber(reader)?.[0] ?? null
  if (takeStitch(reader) === null && !take(reader, ...stitchWords)) return null
  if (!take(reader, 'of', 'in')) return null
  const each = take(reader, 'each', 'every')
  take(reader, 'the', 'next', 'same')
  const group = readGroup(reader)
  if (group?.kind !== 'special' || each) return null
  return { ...group, ...(size === null ? {} : { size }), member: 'middle' }
}

/** `between last dc and tch`: two neighbours named one by one */
function neighbours(reader: Reader): Accepts | null {
  if (!take(reader, 'between', 'bet', 'betw')) return null
  while (!atClauseEnd(reader)) reader.at += 1
  return { kind: 'gap', between: 'stitches' }
}

/** `between each st`, `between stitches across`, `between every 2 treble`: all gaps, where no noun for them says how many */
function saysAll(reader: Reader): boolean {
  const words = [1, 2, 3].map((ahead) => textAt(reader, ahead))
  return (
    words[0] === 'each' || words[0] === 'every' || words.some((word) => /^(?:sts|stitches|groups|shells)$/.test(word))
  )
}

function placed(reader: Reader, which: Which, count: Count, of: Target): Where {
  if (which !== 'each') return { kind: which, count, of }
  return { kind: 'each', of, until: attempt(reader, readUntil) ?? { kind: 'end' } }
}

/**
 * The space between two neighbours.
 *
 *     dc between next 2 sts     2 dc in each sp between groups     V-st between the 2 dc of next V-st
 *        ^
 */
export function readGap(reader: Reader): Where | null {
  const from = reader.at
  const which = whichOne(reader)
  const count = numberAt(reader) === null ? null : takeNumber(reader)
  const space = take(reader, ...spaceWords, 'gap', 'gaps')
  if (!space && reader.at > from) reader.at = from
  if (!/^(?:between|bet|betw)$/.test(textAt(reader))) return null
  const within = attempt(reader, middle)
  if (within !== null) return placed(reader, which, count ?? one(reader), [within])
  const all = !space && saysAll(reader)
  const open = attempt(reader, readGapAfter) ?? (space ? null : attempt(reader, neighbours))
  if (open === null) return null
  const until = all && !/^\d|^next$/.test(textAt(reader)) ? attempt(reader, readUntil) : null
  if (all && (until !== null || isEvery(reader, from)))
    return { kind: 'each', of: [open], until: until ?? { kind: 'end' } }
  return placed(reader, which, count ?? one(reader), [open])
}

/** Whether `each` or `every` is among the words taken. */
function isEvery(reader: Reader, from: number): boolean {
  return reader.words.slice(from, reader.at).some((word) => word.text === 'each' || word.text === 'every')
}
