import type { Fabric, Worked } from './attempt.ts'
import type { ReadRow } from './cut.ts'
import type { Step } from './step.ts'

export type Side = 'RS' | 'WS'

/** The side that faces when this one does not. */
export function other(side: Side): Side {
  return side === 'RS' ? 'WS' : 'RS'
}

/** Words after which the draft itself says, or may change, which side faces. */
const facing = /^(?:yarn|rejoin|attach|facing|faces)$/

function saysOtherwise({ words }: ReadRow, { ends }: SaidSides): boolean {
  if (ends !== null) return words.some((word) => facing.test(word.text))
  return words.some((word) => facing.test(word.text) || word.text === 'ws' || word.text === 'rs')
}

/** Sides that a row speaks of in its words. */
export interface SaidSides {
  /** `ending with a WS row`: the side of its last row. */
  readonly ends: Side | null
  /** Whether it says so of a number of rows that its label gives; else there are as many as it takes. */
  readonly counted: boolean
  /** `With RS facing, sc across`, with the yarn still at hand: the side of its first row. */
  readonly faces: Side | null
}

const side = '(rs|ws|right side|wrong side|right - side|wrong - side)'
const ending = new RegExp(
  `\\b(?:end|ends|ending|ended|finish|finishing) (?:with|on|after) (?:a |the )?${side} (?:row|rnd|round)\\b`,
)
const faced = new RegExp(`^(?:with )?(?:the )?${side} (?:of work |of piece )?facing\\b`)
const yarnWord = /^(?:yarn|rejoin|attach|join|sl)$/

function sideNamed(words: string | undefined): Side | null {
  return words === undefined ? null : /^r/.test(words) ? 'RS' : 'WS'
}

/** Reads the sides that a row speaks of; most rows speak of none. */
export function saidSides({ words, label }: ReadRow): SaidSides {
  const told = words.some(({ text }) => text === 'rs' || text === 'ws' || text === 'side')
  if (!told) return { ends: null, counted: false, faces: null }
  const text = words.map((word) => word.text).join(' ')
  const { numbers } = label ?? {}
  const yarn = words.some((word) => yarnWord.test(word.text))
  return {
    ends: sideNamed(ending.exec(text)?.[1]),
    counted: numbers?.kind === 'list' && numbers.items.length > 1,
    faces: yarn ? null : sideNamed(faced.exec(text)?.[1]),
  }
}

const beforeWork = new Set<Step['kind']>(['chain', 'remark', 'turn', 'slip', 'join'])

/** `Turn, ch 1, sc in each st around`: a round that is turned before it is worked. */
function turnsFirst(steps: readonly Step[], fabric: Fabric): boolean {
  if (fabric.row?.circular !== true || fabric.turns) return false
  const turn = steps.findIndex((step) => step.kind === 'turn' && step.turns)
  return turn >= 0 && steps.slice(0, turn).every((step) => beforeWork.has(step.kind))
}

/** The side that a row is worked on for one size, by the rows since the last label that says it; null when none does. */
export function sideOf(
  row: ReadRow,
  said: SaidSides,
  steps: readonly Step[],
  fabric: Fabric,
  next: Side | null,
): Side | null {
  if (next === null || saysOtherwise(row, said)) return null
  return turnsFirst(steps, fabric) ? other(next) : next
}

/** The side that faces in the row after one that was worked on `side`; null when that is open. */
export function sideAfter(steps: readonly Step[], worked: Worked, side: Side | null): Side | null {
  if (side === null || steps.some((step) => step.kind === 'fastenOff' || step.kind === 'source')) return null
  return worked.fabric.turns ? other(side) : side
}
