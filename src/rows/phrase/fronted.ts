import { cover } from '../../diagnostic/index.ts'
import type { Phrase, Reader } from '../reader.ts'
import { attempt, one, spanSince, take, textAt } from '../reader.ts'
import type { Step, Where } from '../step.ts'
import { partsOf } from './parts.ts'
import { readWhere } from './where.ts'

/** Items tried as one list; a longer one is no list of one place. */
const mostItems = 12

function inBrackets(reader: Reader): readonly Step[] | null {
  const close = /^[([{]$/.test(textAt(reader)) ? reader.closing.get(reader.at) : undefined
  if (close === undefined) return null
  reader.at += 1
  const steps = reader.sequence(reader, close)
  if (steps !== null) reader.at = close + 1
  return steps
}

/** Where items of the list may end, the last first. */
function itemEnds(reader: Reader): readonly number[] {
  const ends: number[] = []
  for (let at = reader.at; at <= reader.end; at += 1) {
    const text = at < reader.end ? (reader.words[at]?.text ?? '') : '.'
    const close = reader.closing.get(at)
    if (close !== undefined && close < reader.end) at = close
    else if (text === ',' || text === 'and') ends.push(at)
    else if (/^(?:[;.*)\]]|rep|repeat)$/.test(text)) {
      ends.push(at)
      break
    }
  }
  return ends.slice(0, mostItems).reverse()
}

interface List {
  readonly steps: readonly Step[]
  /** Said in so many words: `sc, 3 dc and sc`. */
  readonly joined: boolean
}

/** The longest list ahead that can go into one place. */
function listAhead(reader: Reader): List | null {
  const from = reader.at
  for (const end of itemEnds(reader)) {
    reader.at = from
    const steps = end === from ? null : reader.sequence(reader, end)
    if (steps !== null && steps.length > 0 && partsOf(steps) !== null) {
      reader.at = end
      const joined = reader.words.slice(from, end).some((word) => word.text === 'and')
      return { steps, joined }
    }
  }
  reader.at = from
  return null
}

function isStitch(where: Where): boolean {
  if (!('of' in where)) return where.kind === 'same'
  return where.of.every((accept) => accept.kind === 'stitch' || accept.kind === 'named')
}

/** Chains after the last stitch lead on to the next place; in each of several places they are made each time. */
function leadsOn(where: Where, steps: readonly Step[]): number {
  if (where.kind === 'each') return steps.length
  return steps.findLastIndex((step) => step.kind !== 'chain') + 1
}

function placed(where: Where, steps: readonly Step[]): Step | null {
  const parts = partsOf(steps)
  const [first] = steps
  const last = steps.at(-1)
  if (parts === null || parts.length === 0 || first === undefined || last === undefined) return null
  return { kind: 'work', parts, where, at: cover(first.at, last.at) }
}

/** The whole list in the place, or its first item only. */
function inPlace(where: Where, { steps, joined }: List): readonly Step[] | null {
  const end = leadsOn(where, steps)
  const whole = placed(where, steps.slice(0, end))
  const single = placed(where, steps.slice(0, 1))
  if (whole === null) return null
  const rest = steps.slice(end)
  if (end < 2 || joined || single === null || where.kind === 'ring') return [whole, ...rest]
  const spaced = steps.slice(0, end).some((step) => step.kind === 'chain')
  const all = [whole, ...rest]
  const apart = [single, ...steps.slice(1)]
  const options = isStitch(where) && !spaced ? [apart, all] : [all, apart]
  return [{ kind: 'either', options, about: 'list', at: whole.at }]
}

/** `Corner (3 dc, ch 2, 3 dc)` */
function nextCorner(reader: Reader): Where {
  return { kind: 'next', count: one(reader), of: [{ kind: 'corner' }], bare: true }
}

/**
 * The place before the stitches.
 *
 *     in next sp (3 dc, ch 2, 3 dc)     in each sp work 3 dc     under each loop 1 dc, 3 tr, 1 dc
 *     ^
 */
export const frontedPhrase: Phrase = {
  name: 'place first',
  opens: (reader) =>
    /^(?:in|into|on|under|over|between)$/.test(textAt(reader)) ||
    (/^corners?$/.test(textAt(reader)) && /^[([:]$/.test(textAt(reader, 1))),
  read: (reader): readonly Step[] | null => {
    const from = reader.at
    const where = attempt(reader, take(reader, 'corner', 'corners') ? nextCorner : readWhere)
    if (where === null) return null
    take(reader, ',', ':')
    take(reader, 'work', 'make')
    const steps = attempt(reader, inBrackets)
    if (steps !== null) {
      const only = placed(where, steps)
      return only === null ? null : [{ ...only, at: spanSince(reader, from) }]
    }
    const list = attempt(reader, listAhead)
    return list === null ? null : inPlace(where, list)
  },
}
