import type { Even } from '../content/even.ts'
import type { Extent } from '../content/extent.ts'
import type { Again, Reference } from '../content/reference.ts'
import type { RowsNamed } from '../content/rows-named.ts'
import type { ReadRow } from '../cut.ts'
import { longestRange } from '../label.ts'
import type { Step } from '../step.ts'
import type { Before, SizePlan, Trouble } from './before.ts'
import { noRows, timesTo } from './before.ts'
import { asOnStitches, isOnFoundation } from './from-foundation.ts'
import { labelled } from './labelled.ts'

type Rows = readonly (readonly Step[])[]

const longestCycle = 200

function troubled(trouble: Trouble): SizePlan {
  return { rows: [], trouble }
}

function isTrouble(found: number | Rows | Trouble | null): found is Trouble {
  return found !== null && typeof found === 'object' && 'kind' in found
}

export function cycled(cycle: Rows, count: number): SizePlan {
  if (count > longestRange) return troubled({ kind: 'too long' })
  if (count === cycle.length) return { rows: cycle, trouble: null }
  return { rows: Array.from({ length: count }, (_, index) => cycle[index % cycle.length] ?? []), trouble: null }
}

/** The numbers of the rows named; null for rows that are named some other way. */
function numbersOf(rows: RowsNamed, size: number, last: number): readonly number[] | null {
  if (rows.kind === 'numbers') return rows.numbers[size] ?? []
  if (rows.kind !== 'back') return null
  return Array.from({ length: Math.min(rows.back, longestCycle) }, (_, index) => last - rows.back + 1 + index)
}

/** The rows named, as they were worked for a size. */
function rowsNamed(rows: RowsNamed, size: number, before: Before): Rows | Trouble {
  if (rows.kind === 'pattern') return before.pattern(size) ?? { kind: 'unknown row', number: null }
  if (rows.kind === 'called') {
    const steps = before.stepsCalled(rows.called, size)
    return steps === null ? { kind: 'unknown name', name: rows.called } : [steps]
  }
  if (rows.kind === 'back') return before.lastRows(rows.back, size) ?? { kind: 'unknown row', number: null }
  const found: (readonly Step[])[] = []
  for (const number of rows.numbers[size] ?? []) {
    const steps = before.stepsOf(number, size)
    if (steps === null) return { kind: 'unknown row', number }
    found.push(isOnFoundation(steps) ? asOnStitches(steps) : steps)
  }
  return found
}

/** A row among those named that is worked into the foundation chain. */
function onFoundation({ again }: Reference, size: number, before: Before): Trouble | null {
  for (const { rows } of again) {
    const numbers = rows.kind === 'numbers' ? (rows.numbers[size] ?? []) : []
    const number = numbers.find((each) => isOnFoundation(before.stepsOf(each, size) ?? []))
    if (number !== undefined) return { kind: 'on foundation', number }
  }
  return null
}

/** How many times rows must be gone through until the last has so many stitches. */
function timesToStitches(rows: RowsNamed, target: number, size: number, before: Before): number | Trouble | null {
  const numbers = numbersOf(rows, size, before.last(size) ?? 0)
  const [first] = numbers ?? []
  const gained = first === undefined ? null : before.gained(first, numbers?.at(-1) ?? first, size)
  return gained === null ? null : timesTo(before.stitches(size), gained, target)
}

/** How many rows an extent comes to; null where that can't be known. */
function rowsOf(extent: Extent, rows: RowsNamed, cycle: number, size: number, before: Before): number | Trouble | null {
  switch (extent.kind) {
    case 'rows':
      return extent.count[size] ?? 0
    case 'times':
      return cycle * (extent.count[size] ?? 0)
    case 'through':
      return Math.max(0, (extent.row[size] ?? 0) - (before.last(size) ?? 0))
    case 'inAll':
      return Math.max(0, (extent.count[size] ?? 0) - before.rows(size))
    case 'open':
      return cycle
    case 'stitches': {
      const target = extent.count[size] ?? null
      const times = target === null ? 0 : timesToStitches(rows, target, size, before)
      return typeof times === 'number' ? times * cycle : times
    }
    case 'length': {
      const centimetres = extent.centimetres[size] ?? null
      if (centimetres === null) return 0
      const made = before.rowsIn(centimetres)
      if (made === null) return { kind: 'no row gauge' }
      if (!extent.wholePiece) return Math.round(made)
      // What is as long already must be measured from the heading: the hand of a mitten, the yoke.
      const further = Math.round(made) - before.rows(size)
      return Math.max(0, further > 0 ? further : Math.round(made) - before.rowsHere(size))
    }
  }
}

/** `8 more times` for a range of 9 rounds of one row, and `9 times` with the first among them. */
function meansAsMany({ extent }: Again, cycle: number, named: number): boolean {
  if (extent !== null && /^(?:length|stitches|open|inAll)$/.test(extent.kind)) return true
  return extent?.kind === 'times' && !extent.more && extent.count.some((count) => named === cycle * ((count ?? 0) - 1))
}

function oneAfterTheOther(parts: readonly { again: Again; cycle: Rows }[], size: number, before: Before): SizePlan {
  const rows: (readonly Step[])[] = []
  for (const { again, cycle } of parts) {
    const count = again.extent === null ? cycle.length : rowsOf(again.extent, again.rows, cycle.length, size, before)
    if (isTrouble(count)) return { rows: [...rows, ...cycle], trouble: count }
    const plan = cycled(cycle, count ?? cycle.length)
    if (plan.trouble !== null) return plan
    rows.push(...plan.rows)
  }
  return rows.length > longestRange ? troubled({ kind: 'too long' }) : { rows, trouble: null }
}

function withThen(plan: SizePlan, then: readonly Step[]): SizePlan {
  const last = plan.rows.at(-1)
  if (last === undefined || then.length === 0) return plan
  return { ...plan, rows: [...plan.rows.slice(0, -1), [...last, ...then]] }
}

/** A range is right about its rows; where it repeats another number of them that is told. */
function fitted(plan: SizePlan, parts: readonly { again: Again; cycle: Rows }[], named: number): SizePlan {
  const [first] = parts
  const taken = plan.rows.length
  if (first === undefined || named === taken) return plan
  const rows = parts.length === 1 ? cycled(first.cycle, named).rows : cycled(plan.rows, named).rows
  const alike = parts.length === 1 && meansAsMany(first.again, first.cycle.length, named)
  return { rows, trouble: alike ? null : { kind: 'rows differ', named, taken, by: 'repeats' } }
}

/** `every 4th row`: plain rows before the one that is repeated. */
function withPlain({ spaced }: Again, cycle: Rows, size: number): Rows {
  const plain = Math.max(0, (spaced?.every[size] ?? 1) - cycle.length)
  return [...Array.from({ length: plain }, () => spaced?.plain ?? []), ...cycle]
}

/** Whether rows that are said to make more or fewer stitches did so when they were worked. */
function doesAsSaid({ says, again }: Reference, size: number, before: Before): boolean {
  if (says === null) return true
  return again.some(({ rows }) => {
    const numbers = numbersOf(rows, size, before.last(size) ?? 0) ?? []
    const [first] = numbers
    const gained = first === undefined ? null : before.gained(first, numbers.at(-1) ?? first, size)
    return gained !== null && Math.sign(gained) === says
  })
}

/** Rows worked as earlier ones. */
export function planReference(row: ReadRow, content: Reference, size: number, before: Before): SizePlan {
  if (!doesAsSaid(content, size, before)) return troubled({ kind: 'not as said', change: content.says ?? 1 })
  const plan = rowsAgain(row, content, size, before)
  return plan.trouble === null ? { ...plan, trouble: onFoundation(content, size, before) } : plan
}

function rowsAgain(row: ReadRow, content: Reference, size: number, before: Before): SizePlan {
  const parts: { again: Again; cycle: Rows }[] = []
  for (const again of content.again) {
    const named = rowsNamed(again.rows, size, before)
    if (isTrouble(named)) return troubled(named)
    if (named.length > 0) parts.push({ again, cycle: withPlain(again, named, size) })
  }
  const cycle = parts.flatMap((part) => part.cycle)
  if (cycle.length === 0) return noRows
  const named = labelled(row, size)
  const open = content.again.every((again) => again.extent === null)
  if (open) {
    const count = named ?? (row.label?.numbers.kind === 'next' ? 1 : cycle.length)
    return withThen({ ...cycled(cycle, count), cycle }, content.then)
  }
  const taken = oneAfterTheOther(parts, size, before)
  const kept = taken.trouble !== null || named === null || named <= 1
  return withThen({ ...(kept ? taken : fitted(taken, parts, named)), cycle }, content.then)
}

/** Rows that change nothing, or go on as the ones before. */
export function planEven(row: ReadRow, content: Even, size: number, before: Before): SizePlan {
  const { extent } = content
  const cycle = (content.pattern ? before.pattern(size) : null) ?? [content.steps]
  const named = labelled(row, size)
  const taken =
    named !== null && !(named === 1 && extent !== null)
      ? named
      : extent === null
        ? 1
        : rowsOf(extent, { kind: 'pattern' }, 1, size, before)
  if (isTrouble(taken)) return { ...cycled(cycle, cycle.length), trouble: taken }
  return withThen(cycled(cycle, taken ?? 1), content.then)
}
