import type { Content, Extent } from './content.ts'
import type { Count } from './count.ts'
import { sizesWhere } from './count.ts'
import type { ReadRow } from './cut.ts'
import { longestRange } from './label.ts'
import type { Step } from './step.ts'

/** One row of the ledger to be: its number and steps for each size. */
export interface Entry {
  /** Null for a size that does not work it, or a row that has no number. */
  readonly number: Count | null
  readonly steps: readonly (readonly Step[] | null)[]
}

/** What a plan looks up about the rows before. */
export interface Before {
  readonly sizes: number
  /** Steps of the row with this number, as it was worked for a size. */
  readonly stepsOf: (number: number, size: number) => readonly Step[] | null
  /** Number of the last row, null when it has none. */
  readonly last: (size: number) => number | null
  /** Rows of the piece so far, without the foundation. */
  readonly rows: (size: number) => number
  readonly rowsIn: (centimetres: number) => number | null
}

export type Trouble =
  | { readonly kind: 'unknown row'; readonly number: number | null }
  | { readonly kind: 'no row gauge' }
  | { readonly kind: 'too long' }
  /** A range that names another number of rows than its shaping takes. */
  | { readonly kind: 'rows differ'; readonly named: number; readonly shaped: number }

export interface Plan {
  readonly entries: readonly Entry[]
  readonly trouble: Trouble | null
  /** The sizes that it concerns. */
  readonly troubled: readonly number[]
}

/** The rows of one size, in order. */
interface SizePlan {
  readonly rows: readonly (readonly Step[])[]
  readonly trouble: Trouble | null
}

/** How many rows the label stands for; null when it leaves that to the words. */
function labelled(row: ReadRow, size: number): number | null {
  const numbers = row.label?.numbers
  if (numbers === undefined || numbers.kind === 'none' || numbers.kind === 'backwards') return null
  if (numbers.kind === 'next') return numbers.count === null ? null : (numbers.count[size] ?? 0)
  return numbers.items.filter((item) => item[size] !== null).length
}

function fromExtent(extent: Extent | null, cycle: number, size: number, before: Before): number | null {
  if (extent === null) return cycle
  switch (extent.kind) {
    case 'rows':
      return extent.count[size] ?? 0
    case 'times':
      return cycle * (extent.count[size] ?? 0)
    case 'length': {
      const centimetres = extent.centimetres[size] ?? null
      if (centimetres === null) return 0
      const rows = before.rowsIn(centimetres)
      if (rows === null) return null
      return Math.max(0, Math.round(rows) - (extent.wholePiece ? before.rows(size) : 0))
    }
  }
}

function cycled(cycle: readonly (readonly Step[])[], count: number): SizePlan {
  if (count > longestRange) return { rows: [], trouble: { kind: 'too long' } }
  if (count === cycle.length) return { rows: cycle, trouble: null }
  const rows = Array.from({ length: count }, (_, index) => cycle[index % cycle.length] ?? [])
  return { rows, trouble: null }
}

/** A single labelled row that is worked until something goes on as long as its words say. */
function howMany(row: ReadRow, extent: Extent | null, cycle: number, size: number, before: Before): number | null {
  const numbers = labelled(row, size)
  if (numbers !== null && !(numbers === 1 && extent !== null)) return numbers
  if (extent === null && numbers === null && row.label?.numbers.kind === 'next') return 1
  return fromExtent(extent, cycle, size, before)
}

function planReference(row: ReadRow, content: Content & { kind: 'reference' }, size: number, before: Before): SizePlan {
  const last = before.last(size) ?? 0
  const { rows } = content
  const numbers =
    'numbers' in rows
      ? (rows.numbers[size] ?? [])
      : Array.from({ length: Math.min(rows.back, 200) }, (_, index) => last - rows.back + 1 + index)
  const cycle: (readonly Step[])[] = []
  for (const number of numbers) {
    const steps = before.stepsOf(number, size)
    if (steps === null) {
      const shown = 'numbers' in rows ? number : null
      return { rows: [], trouble: { kind: 'unknown row', number: shown } }
    }
    cycle.push(steps)
  }
  if (cycle.length === 0) return { rows: [], trouble: null }
  const count = howMany(row, content.extent, cycle.length, size, before)
  const plan = cycled(cycle, count ?? cycle.length)
  return count === null && plan.trouble === null ? { ...plan, trouble: { kind: 'no row gauge' } } : plan
}

function planEven(row: ReadRow, content: Content & { kind: 'even' }, size: number, before: Before): SizePlan {
  const count = howMany(row, content.extent, 1, size, before)
  const plan = cycled([content.steps], count ?? 1)
  return count === null && plan.trouble === null ? { ...plan, trouble: { kind: 'no row gauge' } } : plan
}

/** Every shaped row is the last of its group: `every 4th row` is three plain rows and a shaped one. */
function planSchedule(row: ReadRow, content: Content & { kind: 'schedule' }, size: number): SizePlan {
  const rows: (readonly Step[])[] = []
  for (const leg of content.legs) {
    const every = leg.every[size] ?? 0
    const times = leg.times[size] ?? 0
    if (every * times > longestRange) return { rows: [], trouble: { kind: 'too long' } }
    for (let group = 0; group < times; group += 1) {
      for (let plain = 1; plain < every; plain += 1) rows.push(content.even)
      rows.push(leg.last)
    }
  }
  return fitted(rows, content.even, labelled(row, size) ?? 1)
}

/**
 * A range may begin with the first shaped row, without the plain ones before it, or go on with plain rows after the
 * last; a single number only says where the shaping starts.
 */
function fitted(rows: readonly (readonly Step[])[], even: readonly Step[], named: number): SizePlan {
  const shaped = rows.length
  if (named <= 1 || shaped === named) return { rows, trouble: null }
  const further = Array.from({ length: Math.max(0, named - shaped) }, () => even)
  const spare = shaped - named
  if (spare > 0 && rows.slice(0, spare).every((steps) => steps === even)) {
    return { rows: rows.slice(spare), trouble: null }
  }
  return { rows: [...rows, ...further], trouble: { kind: 'rows differ', named, shaped } }
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
      return planSchedule(row, content, size)
    case 'bySize': {
      const own = content.options[size] ?? null
      return own === null ? { rows: [], trouble: null } : planSize(row, own, size, before)
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
  if (numbers?.kind === 'none') return null
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
    return works ? planSize(row, content, size, before) : { rows: [], trouble: null }
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
  return { entries: split ? byNumber(entries, before.sizes) : entries, trouble, troubled }
}
