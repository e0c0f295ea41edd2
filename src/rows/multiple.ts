import { cover } from '../diagnostic/index.ts'
import { isPlaceless } from './phrase/parts.ts'
import { readTimes } from './phrase/times.ts'
import type { Reader } from './reader.ts'
import { attempt, numberAt, peek, take, takeNumber, textAt } from './reader.ts'
import type { Step, StepOf, Times } from './step.ts'

/** How often an item is repeated, and whether the words rather mean the list that it ends. */
export interface Multiple {
  readonly times: Times
  readonly ofList: boolean
}

function inAll(times: Times): Times {
  return times.kind === 'said' ? { kind: 'exactly', count: times.count } : times
}

/** `6x`, `x6`, `6 times` */
function counted(reader: Reader): Times | null {
  const first = attempt(reader, (inner) => {
    const count = takeNumber(inner)
    return count !== null && take(inner, 'x') ? count : null
  })
  if (first !== null) return { kind: 'exactly', count: first }
  const found = readTimes(reader, false)
  return found === null || found.kind === 'until' ? null : inAll(found)
}

/** `sc, inc (x6)`, `1 sc, 1 inc (6x)` */
function inBrackets(reader: Reader): Times | null {
  const close = /^[([]$/.test(textAt(reader)) ? reader.closing.get(reader.at) : undefined
  if (close === undefined || close >= reader.end) return null
  reader.at += 1
  const times = counted(reader)
  if (times === null || reader.at !== close) return null
  reader.at += 1
  return times
}

/** `inc*6`, where no star is open */
function starred(reader: Reader): Times | null {
  const number = numberAt(reader, 1)
  if (textAt(reader) !== '*' || number === null || !(peek(reader)?.glued && number.glued)) return null
  reader.at += 2
  return { kind: 'exactly', count: number.count }
}

function isChainAhead(reader: Reader): boolean {
  return /^chs?$|^chains?$/.test(textAt(reader, 2))
}

/** `inc x 6`, `sc2tog twice`, `sc, inc (x6)`: how often, after an item. */
export function readMultiple(reader: Reader, marked: boolean): Multiple | null {
  const bracketed = attempt(reader, inBrackets)
  if (bracketed !== null) return { times: bracketed, ofList: true }
  const star = marked ? null : attempt(reader, starred)
  if (star !== null) return { times: star, ofList: false }
  // `in the ring 8 times 2 ch, 1 dc`: the number goes before what is repeated.
  if (
    numberAt(reader) !== null &&
    textAt(reader, 1) === 'times' &&
    (numberAt(reader, 2) !== null || isChainAhead(reader))
  )
    return null
  if (numberAt(reader) === null && !/^(?:x|twice|once|thrice|for)$/.test(textAt(reader))) return null
  const times = attempt(reader, counted)
  return times === null ? null : { times, ofList: false }
}

function repeatOf(body: readonly Step[], times: Times): StepOf<'repeat'> {
  const first = body[0]?.at ?? { start: 0, end: 0 }
  return {
    kind: 'repeat',
    ofItem: true,
    body,
    stop: null,
    ending: null,
    times,
    at: cover(first, body.at(-1)?.at ?? first),
  }
}

function isInList(step: Step | undefined): boolean {
  return (step?.kind === 'work' || step?.kind === 'together') && isPlaceless(step.where)
}

/**
 * An item so many times; with the number in brackets, `sc, inc (x6)`, the list that it ends, as a rule.
 *
 * @param steps the steps before; those of the list are taken from them
 */
export function multiply(
  steps: Step[],
  added: readonly Step[],
  from: number,
  { times, ofList }: Multiple,
): readonly Step[] {
  const repeated = repeatOf(added, times)
  let start = steps.length
  while (start > from && isInList(steps[start - 1])) start -= 1
  const list = steps.slice(start)
  if (!ofList || list.length === 0 || !added.every(isInList)) return [repeated]
  steps.splice(start)
  const { ofItem: _, ...whole } = repeatOf([...list, ...added], times)
  const options = [[whole], [...list, repeated]]
  return [{ kind: 'either', options, about: 'list times', at: whole.at }]
}
