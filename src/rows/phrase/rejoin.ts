import type { Reader } from '../reader.ts'
import { spanSince } from '../reader.ts'
import type { Step, StepOf } from '../step.ts'

/**
 * A step whose place names a row with stitches left unworked: the row goes back there first.
 *
 *     sk next 12 sts of Row 40, join yarn in next st
 *                    ^^^^^^^^^
 */
export function goingBack(step: StepOf<'skip'> | StepOf<'slip'>): readonly Step[] {
  const { where, at } = step
  if (!('depth' in where) || where.depth?.kind !== 'row') return [step]
  const { depth, ...place } = where
  return [
    { kind: 'source', source: { kind: 'unworked', row: depth.number }, at },
    { ...step, where: place },
  ]
}

/** `next unworked st`, `first skipped st`: passed, and the row it speaks of is the last one with stitches left. */
export function readUnworked(reader: Reader): Step | null {
  const from = reader.at
  const words = reader.words.slice(from, reader.end)
  const end = words.findIndex((word) => /^[,;.]$/.test(word.text))
  const clause = end < 0 ? words : words.slice(0, end)
  const at = clause.findIndex((word) => /^(?:unworked|unused)$/.test(word.text))
  return at < 0 ? null : { kind: 'source', source: { kind: 'unworked', row: null }, at: spanSince(reader, from) }
}
