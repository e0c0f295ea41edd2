import type { Content } from './content.ts'
import type { Count } from './count.ts'
import { sizesWhere } from './count.ts'
import type { ReadRow } from './cut.ts'
import { cycled, planEven, planReference } from './plan/again.ts'
import type { Before, SizePlan, Trouble } from './plan/before.ts'
import { noRows } from './plan/before.ts'
import { planFurther } from './plan/further.ts'
import { labelled } from './plan/labelled.ts'
import { planSchedule } from './plan/shaping.ts'
import type { Step } from './step.ts'

/** One row of the ledger to be: its number and steps for each size. */
export interface Entry {
  /** Null for a size that does not work it, or a row that has no number. */
  readonly number: Count | null
  readonly steps: readonly (readonly Step[] | null)[]
}

/** The number that each size begins a row with, which its entries may have one after the other. */
export function firstNumbers(entries: readonly Entry[]): Count | null {
  const numbers = (entries[0]?.steps ?? []).map(
    (_, size) => entries.find((entry) => (entry.number?.[size] ?? null) !== null)?.number?.[size] ?? null,
  )
  return numbers.every((number) => number === null) ? null : numbers
}

export interface Plan {
  readonly entries: readonly Entry[]
  readonly trouble: Trouble | null
  /** The sizes that it concerns. */
  readonly troubled: readonly number[]
  /** For each size the rows that it goes through again and again; null where it goes through none. */
  readonly cycles: readonly (SizePlan['cycle'] | null)[]
}

function planSize(row: ReadRow, content: Content, size: number, before: Before): SizePlan {
  switch (content.kind) {
    case 'steps':
      return cycled([content.steps], labelled(row, size) ?? 1)
    case 'reference':
      return planReference(row, content, size, before)
    case 'even':
      return planEven(row, content, size, before)
    case 'schedule':
      return planSchedule(row, content, size, before)
    case 'further':
      return planFurther(row, content, size, before)
    case 'bySize': {
      const own = content.options[size] ?? null
      return own === null ? noRows : planSize(row, own, size, before)
    }
  }
}

/** Numbers of an entry: the label's own where it has them, else counted on from the row before. */
function numberOf(row: ReadRow, plans: readonly SizePlan[], index: number, before: Before): Count | null {
  const numbers = row.label?.numbers
  if (numbers?.kind === 'list') {
    const item = numbers.items[index]
    if (item !== undefined) return item
  }
  if (numbers?.kind === 'none' || numbers?.kind === 'every') return null
  const counted = plans.map((plan, size) => {
    const last = before.last(size)
    if (index >= plan.rows.length || last === null) return null
    const first = numbers?.kind === 'list' ? (numbers.items[0]?.[size] ?? null) : last + 1
    return first === null ? null : first + index
  })
  return counted.every((number) => number === null) ? null : counted
}

/** Rows whose numbers differ by size are entered by number: each entry is one row of the piece. */
function byNumber(entries: readonly Entry[], sizes: number): readonly Entry[] {
  const numbers = new Set<number>()
  for (const entry of entries) for (const number of entry.number ?? []) if (number !== null) numbers.add(number)
  return [...numbers]
    .sort((first, second) => first - second)
    .map((number) => {
      const own = Array.from({ length: sizes }, (_, size) => entries.find((entry) => entry.number?.[size] === number))
      return {
        number: own.map((entry) => (entry === undefined ? null : number)),
        steps: own.map((entry, size) => entry?.steps[size] ?? null),
      }
    })
}

function differsBySize(entry: Entry): boolean {
  const numbers = (entry.number ?? []).filter((number) => number !== null)
  return numbers.some((number) => number !== numbers[0])
}

/**
 * The ledger entries that a written row stands for: one for a plain row, more for a range, a
 * repetition or a shaping schedule. A size that works fewer of them has null steps in the later ones.
 */
export function planRow(row: ReadRow, content: Content, before: Before): Plan {
  const plans = Array.from({ length: before.sizes }, (_, size): SizePlan => {
    const works = row.only === null || row.only.includes(size)
    return works ? planSize(row, content, size, before) : noRows
  })
  const trouble = plans.find((plan) => plan.trouble !== null)?.trouble ?? null
  const troubled = sizesWhere(before.sizes, (size) => plans[size]?.trouble?.kind === trouble?.kind && trouble !== null)
  // A row of which every size works none still stands in the ledger once.
  const longest = Math.max(1, ...plans.map((plan) => plan.rows.length))
  const entries = Array.from({ length: longest }, (_, index) => ({
    number: numberOf(row, plans, index, before),
    steps: plans.map((plan) => plan.rows[index] ?? null),
  }))
  const split = row.label?.numbers.kind === 'list' && entries.some(differsBySize)
  const cycles = plans.map((plan) => plan.cycle ?? null)
  return { entries: split ? byNumber(entries, before.sizes) : entries, trouble, troubled, cycles }
}
