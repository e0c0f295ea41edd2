import type { Fabric, Worked } from './attempt.ts'
import type { ReadRow } from './cut.ts'
import type { Step } from './step.ts'

export type Side = 'RS' | 'WS'

function other(side: Side): Side {
  return side === 'RS' ? 'WS' : 'RS'
}

/** Words after which the draft itself says, or may change, which side faces. */
const facing = /^(?:yarn|rejoin|attach|facing|faces)$/

function saysOtherwise(row: ReadRow): boolean {
  // `ending with a WS row`: so many rows that it comes out so.
  return row.words.some((word) => facing.test(word.text) || word.text === 'ws' || word.text === 'rs')
}

const beforeWork = new Set<Step['kind']>(['chain', 'remark', 'turn', 'slip', 'join'])

/** `Turn, ch 1, sc in each st around`: a round that is turned before it is worked. */
function turnsFirst(steps: readonly Step[], fabric: Fabric): boolean {
  if (fabric.row?.circular !== true || fabric.turns) return false
  const turn = steps.findIndex((step) => step.kind === 'turn' && step.turns)
  return turn >= 0 && steps.slice(0, turn).every((step) => beforeWork.has(step.kind))
}

/** The side that a row is worked on for one size, by the rows since the last label that says it; null when none does. */
export function sideOf(row: ReadRow, steps: readonly Step[], fabric: Fabric, next: Side | null): Side | null {
  if (next === null || saysOtherwise(row)) return null
  return turnsFirst(steps, fabric) ? other(next) : next
}

/** The side that faces in the row after one that was worked on `side`; null when that is open. */
export function sideAfter(steps: readonly Step[], worked: Worked, side: Side | null): Side | null {
  if (side === null || steps.some((step) => step.kind === 'fastenOff' || step.kind === 'source')) return null
  return worked.fabric.turns ? other(side) : side
}
