import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, spanSince, take, takeNumber } from '../reader.ts'
import type { Step } from '../step.ts'

function ofRow(reader: Reader): Count | null {
  if (!take(reader, 'of', 'on', 'from')) return null
  take(reader, 'the')
  if (!take(reader, 'row', 'rnd', 'round')) return null
  return takeNumber(reader)
}

/**
 * The row whose stitches are meant, where it is not the row below.
 *
 *     sk next 12 sts of Row 40, join yarn in next st
 *                    ^
 */
export function readOfRow(reader: Reader): Step | null {
  const from = reader.at
  const row = attempt(reader, ofRow)
  return row === null ? null : { kind: 'rejoin', row, at: spanSince(reader, from) }
}

/** `next unworked st`, `first skipped st`: passed, and the row it speaks of is the last one with stitches left. */
export function readUnworked(reader: Reader): Step | null {
  const from = reader.at
  const words = reader.words.slice(from, reader.end)
  const end = words.findIndex((word) => /^[,;.]$/.test(word.text))
  const clause = end < 0 ? words : words.slice(0, end)
  const at = clause.findIndex((word) => /^(?:unworked|unused)$/.test(word.text))
  return at < 0 ? null : { kind: 'rejoin', row: null, at: spanSince(reader, from) }
}
