import type { Leg, Schedule } from '../content/schedule.ts'
import type { ReadRow } from '../cut.ts'
import { longestRange } from '../label.ts'
import type { Step } from '../step.ts'
import type { Before, SizePlan, Trouble } from './before.ts'
import { timesTo } from './before.ts'
import { labelled } from './labelled.ts'

type Rows = readonly (readonly Step[])[]

/** How often a leg's row is shaped: as it says, until it has come to a number, or as long as the range goes on. */
function timesOf(leg: Leg, size: number, stitches: number, room: number): number | Trouble {
  if (leg.times !== null) return leg.times[size] ?? 0
  const target = leg.until?.[size] ?? null
  if (leg.until !== null) return target === null ? 0 : timesTo(stitches, leg.by[size] ?? 0, target)
  return Math.max(1, Math.floor(room / Math.max(1, leg.every[size] ?? 1)))
}

/** Every shaped row is the last of its group: `every 4th row` is three plain rows and a shaped one. */
function rowsOf(legs: readonly Leg[], even: readonly Step[], size: number, named: number, before: Before): SizePlan {
  const rows: (readonly Step[])[] = []
  let stitches = before.stitches(size)
  for (const leg of legs) {
    const every = leg.every[size] ?? 0
    const times = timesOf(leg, size, stitches, named - rows.length)
    if (typeof times !== 'number') return { rows, trouble: times }
    if (every * times > longestRange) return { rows: [], trouble: { kind: 'too long' } }
    for (let group = 0; group < times; group += 1) {
      for (let plain = 1; plain < every; plain += 1) rows.push(even)
      rows.push(leg.last)
    }
    stitches += times * (leg.by[size] ?? 0)
  }
  return { rows, trouble: null }
}

/** Two shapings of one row: the second in the row as the first leaves it. */
function both(first: readonly Step[], second: readonly Step[], even: readonly Step[]): readonly Step[] {
  if (first === even) return second
  const added = second.filter((step) => step.kind === 'evenly')
  return first.flatMap((step): readonly Step[] => (step.kind === 'evenly' ? [step, ...added] : [step]))
}

function laidOver(rows: Rows, others: Rows, even: readonly Step[]): Rows {
  const length = Math.max(rows.length, others.length)
  return Array.from({ length }, (_, index) => both(rows[index] ?? even, others[index] ?? even, even))
}

/**
 * A range may begin with the first shaped row, without the plain ones before it, or go on with plain rows after the
 * last; a single number only says where the shaping starts.
 */
function fitted(rows: Rows, even: readonly Step[], named: number): SizePlan {
  const taken = rows.length
  if (named <= 1 || taken === named) return { rows, trouble: null }
  const further = Array.from({ length: Math.max(0, named - taken) }, () => even)
  const spare = taken - named
  if (spare > 0 && rows.slice(0, spare).every((steps) => steps === even)) {
    return { rows: rows.slice(spare), trouble: null }
  }
  return { rows: [...rows, ...further], trouble: { kind: 'rows differ', named, taken, by: 'shaping' } }
}

/** Rows that are plain but for those that are shaped. */
export function planSchedule(row: ReadRow, content: Schedule, size: number, before: Before): SizePlan {
  const named = labelled(row, size) ?? 1
  const plan = rowsOf(content.legs, content.even, size, named, before)
  if (plan.trouble !== null) return plan
  let { rows } = plan
  for (const legs of content.besides) {
    const other = rowsOf(legs, content.even, size, named, before)
    if (other.trouble !== null) return other
    rows = laidOver(rows, other.rows, content.even)
  }
  const whole = fitted(rows, content.even, named)
  const last = whole.rows.at(-1)
  if (last === undefined || content.then.length === 0) return whole
  return { ...whole, rows: [...whole.rows.slice(0, -1), [...last, ...content.then]] }
}
