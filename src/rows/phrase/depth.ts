import type { Count } from '../count.ts'
import type { Reader } from '../reader.ts'
import { attempt, one, takeNumber, takeOrdinal } from '../reader.ts'
import type { Depth, Step, Where } from '../step.ts'
import { takePattern } from './pattern.ts'

const rowWord = '(?:rows?|rnds?|rounds?)'
const below = new RegExp(`^(?:(?:in|of|from) )?(?:the )?(?:${rowWord} (?:directly )?below|below)`)
const rowsBelow = new RegExp(`^${rowWord} (?:directly )?(?:below|down)`)
const ofFirstRow = new RegExp(`^(?:of|in|from|on) (?:the )?first ${rowWord}(?= |$)`)
const ofRow = new RegExp(`^(?:of|in|from|on) (?:the )?${rowWord}`)

/** `dc 2 rows below next st`: the stitch that it stands over */
const column = /^(?:the )?(?:next|same|corresponding) (?:sts?|stitch|[dhs]cs?|hdcs?|trs?)(?= |$)/

function counted(reader: Reader): Count | null {
  takePattern(reader, /^(?:in|of|from)(?: the)?/)
  const count = takeNumber(reader)
  return count !== null && takePattern(reader, rowsBelow) !== null ? count : null
}

function numbered(reader: Reader): Count | null {
  if (takePattern(reader, ofFirstRow) !== null) return one(reader)
  return takePattern(reader, ofRow) === null ? null : (takeNumber(reader) ?? takeOrdinal(reader))
}

/**
 * Which row a place is in, where it is not the row below.
 *
 *     fpdc around next dc 2 rows below     sc in next st in row below     dc in next sc of Row 3
 *                         ^^^^^^^^^^^^                    ^^^^^^^^^^^^                    ^^^^^^^^
 */
export function readDepth(reader: Reader): Depth | null {
  const rows = attempt(reader, counted) ?? (takePattern(reader, below) === null ? null : one(reader))
  if (rows !== null) return { kind: 'rows', number: rows }
  const number = attempt(reader, numbered)
  return number === null ? null : { kind: 'row', number }
}

/** A place with the row that it is in, where the words say it. */
export function withDepth(reader: Reader, where: Where): Where {
  if (where.kind !== 'next' && where.kind !== 'each' && where.kind !== 'first') return where
  const depth = readDepth(reader)
  if (depth === null) return where
  takePattern(reader, column)
  return where.kind === 'first' ? { ...where, kind: 'next', depth } : { ...where, depth }
}

function isOneSkipped(step: Step | undefined): boolean {
  return step?.kind === 'skip' && step.where.kind === 'next' && step.where.count.every((count) => count === 1)
}

/** `fpdc around dc 2 rows below, sk st behind`: the stitch in front of it is used by the skip, not twice. */
export function besideSkipped(steps: readonly Step[]): Step | null {
  const [deep, skip] = steps.slice(-2)
  if (deep?.kind !== 'work' || deep.where.kind !== 'next' || deep.where.depth === undefined) return null
  return isOneSkipped(skip) ? { ...deep, where: { kind: 'aside' } } : null
}
