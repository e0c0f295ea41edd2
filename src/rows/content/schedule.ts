import type { Span } from '../../diagnostic/index.ts'
import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import { chainPhrase } from '../phrase/chain.ts'
import { joinPhrase } from '../phrase/slip.ts'
import { turnPhrase } from '../phrase/turn.ts'
import type { Reader } from '../reader.ts'
import { attempt, peek, spanSince, take, takeAll, takeStitch, textAt } from '../reader.ts'
import type { Step } from '../step.ts'
import type { Stitch } from '../terms/stitch.ts'
import type { Part } from './shaping-parts.ts'
import { readOnce, readPart, several } from './shaping-parts.ts'
import { readTail } from './tail.ts'
import type { Timing } from './timing.ts'

/** So many times: plain rows, and then one that is worked as `last` says. */
export interface Leg extends Timing {
  readonly last: readonly Step[]
  /** How many stitches more each of its shaped rows has; negative for fewer. */
  readonly by: Count
}

/** Rows that are plain but for the last of each leg's group. */
export interface Schedule {
  readonly even: readonly Step[]
  readonly legs: readonly Leg[]
  /** What is done in the same rows besides. */
  readonly besides: readonly (readonly Leg[])[]
  readonly then: readonly Step[]
}

/** One stitch in each stitch. */
export function plainRow(reader: Reader, stitch: Stitch, at: Span): readonly Step[] {
  const count = everySize(1, reader.vocabulary.sizes)
  const where = { kind: 'each', of: [{ kind: 'stitch', said: true }], until: { kind: 'end' } } as const
  return [{ kind: 'work', parts: [{ kind: 'stitch', stitch, count }], where, at }]
}

/** `at the same time,` */
function passMeanwhile(reader: Reader): true | null {
  take(reader, ',', ';', '.')
  take(reader, 'and', 'while')
  const said = takeAll(reader, 'at', 'the', 'same', 'time') || takeAll(reader, 'at', 'same', 'time')
  if (!(said || take(reader, 'meanwhile', 'also'))) return null
  take(reader, ',', ':')
  return true
}

function besides(reader: Reader): readonly (readonly Part[])[] {
  return several(reader, (inner) => {
    if (passMeanwhile(inner) === null) return null
    const parts = several(inner, readPart).flat()
    return parts.length === 0 ? null : parts
  })
}

/** `Working in dc,` and `Dc across,` say what the plain stitches are. */
function passStitch(reader: Reader): true | null {
  const works = take(reader, 'work', 'working', 'worked', 'cont', 'continue', 'continuing', 'keeping')
  const within = take(reader, 'in')
  if (works && takePattern(reader)) return endsClause(reader)
  const stitch = takeStitch(reader)
  if (stitch === null || stitch.base === 'slipStitch') return null
  if (take(reader, 'in')) {
    if (!(take(reader, 'each', 'every') && take(reader, 'st', 'stitch'))) return null
    take(reader, 'across', 'around')
  } else if (!(take(reader, 'across', 'around') || works || within)) return null
  reader.stitch = stitch
  return endsClause(reader)
}

function takePattern(reader: Reader): boolean {
  return take(reader, 'pattern', 'patt', 'pat', 'even', 'straight')
}

function endsClause(reader: Reader): true | null {
  take(reader, 'correct', 'and', 'but')
  return /^[,;.]$/.test(textAt(reader)) || /^(?:dec|inc)/.test(textAt(reader)) ? true : null
}

/** `ch 1, turn,` before what a row is: it belongs to each of its rows. */
export function readOpening(reader: Reader): readonly Step[] {
  const steps: Step[] = []
  for (const phrase of [turnPhrase, chainPhrase, turnPhrase]) {
    steps.push(...((phrase.opens(reader) ? attempt(reader, phrase.read) : null) ?? []))
    while (take(reader, ',', '.', ';'));
  }
  return steps
}

/** `ch 1,` before the shaping, and what its plain stitches are. */
function opening(reader: Reader): { readonly steps: readonly Step[]; readonly works: boolean } {
  const steps = readOpening(reader)
  const works = attempt(reader, passStitch) !== null
  attempt(reader, (inner) => (take(inner, 'continue', 'cont', 'begin', 'start') && take(inner, 'to') ? true : null))
  while (take(reader, ',', '.', ';'));
  return { steps, works }
}

function closing(reader: Reader): readonly Step[] {
  const steps: Step[] = []
  for (const phrase of [joinPhrase, turnPhrase]) {
    while (take(reader, ',', '.', ';'));
    take(reader, 'and')
    steps.push(...((phrase.opens(reader) ? attempt(reader, phrase.read) : null) ?? []))
  }
  return steps
}

/**
 * Shaping laid over rows that are otherwise plain: several rows in one sentence.
 *
 *     Dec 1 st at each end of every 4th row 6 times, then of every 6th row 3 times, then work 2 rows even.
 *     ^
 */
export function readSchedule(reader: Reader): Schedule | null {
  const from = reader.at
  const before = opening(reader)
  const read = several(reader, readPart).flat()
  const parts = read.length === 0 && before.works ? (attempt(reader, readOnce) ?? []) : read
  const others = besides(reader)
  const after = closing(reader)
  const then = readTail(reader)
  if (parts.length === 0 || then === null || peek(reader) !== undefined) return null
  if (isSingle(parts, before.steps.length + after.length === 0) && others.length === 0) return null
  const { stitch } = reader
  const row = (steps: readonly Step[]): readonly Step[] => [...before.steps, ...steps, ...after]
  const even = row(plainRow(reader, stitch, spanSince(reader, from)))
  const leg = (each: Part): Leg => legOf(each, even, row, stitch)
  return { even, legs: parts.map(leg), besides: others.map((other) => other.map(leg)), then }
}

/** One row by itself is no schedule, and `work 4 rows even` has a form of its own. */
function isSingle([first, ...others]: readonly Part[], bare: boolean): boolean {
  if (first === undefined || others.length > 0) return false
  return first.change === null ? bare : first.change.over !== null
}

function legOf(
  { every, times, until, change, at }: Part,
  even: readonly Step[],
  row: (steps: readonly Step[]) => readonly Step[],
  stitch: Stitch,
): Leg {
  if (change === null) return { every, times, until, last: even, by: every.map(() => 0) }
  const step: Step = { kind: 'evenly', change: change.change, count: change.count, over: change.over, stitch, at }
  const by = change.count.map((count) => (count === null ? null : change.change * count))
  return { every, times, until, last: row([step]), by }
}
