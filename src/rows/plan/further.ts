import type { Further } from '../content/further.ts'
import { everySize } from '../count.ts'
import type { ReadRow } from '../cut.ts'
import { longestRange } from '../label.ts'
import type { Step } from '../step.ts'
import type { Before, SizePlan, Trouble } from './before.ts'
import { timesTo } from './before.ts'
import { labelled } from './labelled.ts'

/** How many rows: as the label has them, or as many as it takes to come to a number of stitches. */
function rowsOf(row: ReadRow, { extent }: Further, gained: number, size: number, before: Before): number | Trouble {
  const named = labelled(row, size)
  if (named !== null) return named
  if (extent?.kind === 'rows') return extent.count[size] ?? 0
  if (extent?.kind !== 'stitches') return 1
  const target = extent.count[size] ?? null
  return target === null ? 0 : timesTo(before.stitches(size), gained, target)
}

/** Rows that have as many stitches more, or fewer, as the row before them had. */
export function planFurther(row: ReadRow, content: Further, size: number, before: Before): SizePlan {
  const last = before.last(size)
  const gained = last === null ? null : before.gained(last, last, size)
  if (gained === null) return { rows: [], trouble: { kind: 'unknown row', number: null } }
  const rows = rowsOf(row, content, gained, size, before)
  if (typeof rows !== 'number') return { rows: [], trouble: rows }
  if (rows > longestRange) return { rows: [], trouble: { kind: 'too long' } }
  const { stitch, at, then } = content
  const change = gained < 0 ? -1 : 1
  const step: Step = {
    kind: 'evenly',
    change,
    count: everySize(Math.abs(gained), before.sizes),
    over: null,
    stitch,
    at,
  }
  return {
    rows: Array.from({ length: rows }, (_, index) => (index === rows - 1 ? [step, ...then] : [step])),
    trouble: null,
  }
}
