import type { Reader } from '../reader.ts'
import { attempt, spanSince, take, takeAll, takeStitch, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import type { Extent } from './extent.ts'
import { passEnding, readExtent, readRows } from './extent.ts'
import { plainRow, readOpening } from './schedule.ts'
import { readTail } from './tail.ts'

/** `Work even`: one stitch in each, or with `pattern` as the rows before. */
export interface Even {
  readonly steps: readonly Step[]
  readonly extent: Extent | null
  readonly pattern: boolean
  readonly then: readonly Step[]
}

interface Heard {
  said: boolean
  pattern: boolean
  named: boolean
  extent: Extent | null
}

/** `even`, `straight`, `without shaping`, `plain` */
function marker(reader: Reader): boolean {
  if (take(reader, 'even', 'straight', 'plain', 'evenly', 'unshaped')) return true
  if (!take(reader, 'without')) return false
  take(reader, 'any', 'further', 'more')
  take(reader, 'further', 'more')
  if (!take(reader, 'shaping', 'shapings', 'increase', 'increasing', 'decrease', 'decreasing', 'inc', 'dec'))
    return false
  if (take(reader, 'or', 'and')) take(reader, 'decreasing', 'increasing', 'dec', 'inc', 'decrease', 'increase')
  return true
}

function pattern(reader: Reader): boolean {
  return (
    takeAll(reader, 'as', 'established') ||
    takeAll(reader, 'as', 'set') ||
    takeAll(reader, 'in', 'est', 'pattern') ||
    takeAll(reader, 'in', 'est', 'patt') ||
    takeAll(reader, 'in', 'established', 'pattern') ||
    (take(reader, 'in') && take(reader, 'pattern', 'pat', 'patt', 'patts'))
  )
}

function stitch(reader: Reader): boolean {
  take(reader, 'in', 'of', 'all')
  const found = takeStitch(reader)
  if (found === null || found.base === 'slipStitch') return false
  reader.stitch = found
  return true
}

function hear(reader: Reader, heard: Heard): boolean {
  if (attempt(reader, (inner) => marker(inner) || null)) {
    heard.said = true
    return true
  }
  if (attempt(reader, (inner) => pattern(inner) || null)) {
    heard.pattern = true
    return true
  }
  if (attempt(reader, (inner) => stitch(inner) || null)) {
    heard.named = true
    return true
  }
  if (heard.extent !== null) return false
  const rows = attempt(reader, readRows)
  heard.extent = rows === null ? attempt(reader, readExtent) : { kind: 'rows', count: rows }
  return heard.extent !== null
}

const fillers = 'on all these each every st sts stitch stitches across around in the round ,'.split(' ')

/**
 * Rows that change nothing.
 *
 *     Work even in sc for 10 rows.     6 rows of dc     Work 3 rows without shaping
 *     ^
 */
export function readEven(reader: Reader): Even | null {
  const from = reader.at
  const before = readOpening(reader)
  const works = take(reader, 'work', 'working', 'cont', 'continue', 'continuing', 'keep', 'now')
  take(reader, 'to')
  if (works) take(reader, 'work', 'working', 'crochet')
  const heard: Heard = { said: false, pattern: false, named: false, extent: null }
  const tall = reader.stitch
  for (let at = reader.at; reader.at < reader.end; at = reader.at) {
    if (hear(reader, heard)) continue
    if (!take(reader, ...fillers) || reader.at === at) break
  }
  const rows = heard.extent !== null && heard.extent.kind !== 'times'
  if (!(heard.said || (rows && (heard.named || heard.pattern))) || endsOpen(reader)) {
    reader.stitch = tall
    return null
  }
  const at = spanSince(reader, from)
  passEnding(reader)
  const then = readTail(reader)
  if (then === null) return null
  return {
    steps: [...before, ...plainRow(reader, reader.stitch, at)],
    extent: heard.extent,
    pattern: heard.pattern && !heard.named,
    then,
  }
}

/** `even over 93`: a step of a row. */
function endsOpen(reader: Reader): boolean {
  return /^(?:over|to|into)$/.test(textAt(reader))
}
