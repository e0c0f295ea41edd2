import type { Worked } from './attempt.ts'
import type { Count } from './count.ts'
import { everySize } from './count.ts'
import type { ReadRow } from './cut.ts'
import type { Departure } from './habits.ts'
import { labelText } from './label.ts'
import type { LedgerRow, SpecialNames } from './ledger.ts'
import { madeBy } from './made.ts'
import type { Entry } from './plan.ts'
import { printTally } from './print.ts'
import type { RowJob } from './readings.ts'
import { spellingsOf } from './special/known.ts'
import { verdictOn } from './stated/meaning.ts'
import type { Special } from './step.ts'
import type { Dictionary } from './terms/dictionary.ts'
import { besidesOf } from './work/tally.ts'

/** One entry of the ledger as it is made out, and what was found on the way. */
export interface EntryWork {
  readonly row: ReadRow
  readonly entry: Entry
  readonly worked: readonly (Worked | null)[]
  /** What was worked, to try it otherwise. */
  readonly job: RowJob
  /** Sizes for which the stated count belongs to this entry. */
  readonly checked: (size: number) => boolean
  readonly departures: readonly Departure[]
  readonly dictionary: Dictionary
  /** The special stitches of the draft, by every spelling. */
  readonly specials: ReadonlyMap<string, Special>
}

/** The label of an entry; null for a row without one. */
export function labelFor(row: ReadRow, number: Count | null): string | null {
  if (row.label === null) return null
  return labelText(row.label, row.label.numbers.kind === 'list' ? number : null)
}

function finished(result: Worked | null): result is Worked {
  return result !== null && result.stop === null
}

function countsOf(
  { worked, dictionary }: EntryWork,
  talliesOf: (result: Worked) => Iterable<readonly [key: string, count: number]>,
): LedgerRow['counts'] {
  const counts: Record<string, number[]> = {}
  const names = new Map<string, string>()
  worked.forEach((result, size) => {
    if (!finished(result)) return
    for (const [key, count] of talliesOf(result)) {
      if (count === 0) continue
      const shown = names.get(key) ?? printTally(key, dictionary)
      names.set(key, shown)
      const bySize = counts[shown] ?? new Array<number>(worked.length).fill(0)
      bySize[size] = (bySize[size] ?? 0) + count
      counts[shown] = bySize
    }
  })
  return counts
}

/** A foundation that is a row of its own is counted there. */
function uncounted({ tally, inside }: Worked): (readonly [string, number])[] {
  return [...inside].flatMap(([noted, count]) => {
    const key = besidesOf(noted)
    return key === null || (key === 'chain' && tally.has(key)) ? [] : [[key, count] as const]
  })
}

/** Spellings of the special stitches that a row makes, for those that ask for them. */
function namesIn({ worked, specials }: EntryWork): SpecialNames {
  const made = new Set<string>()
  for (const result of worked) {
    for (const key of result?.tally.keys() ?? []) if (key.startsWith(specialKey)) made.add(key.slice(specialKey.length))
  }
  if (made.size === 0) return noNames
  const own = [...new Set(specials.values())].filter(({ name }) => made.has(name))
  return Object.fromEntries(own.flatMap((special) => spellingsOf(special).map((spelling) => [spelling, special.name])))
}

const specialKey = 'special:'
const noNames: SpecialNames = {}

/** A row of which nothing has been worked. */
function blankRow(row: ReadRow, label: string | null, sizes: number): LedgerRow {
  return {
    piece: row.piece,
    label,
    side: row.label?.side ?? null,
    at: row.at,
    status: 'not-worked',
    reason: null,
    total: new Array<null>(sizes).fill(null),
    counts: {},
    besides: {},
    names: noNames,
    stated: null,
    agrees: null,
    left: everySize(0, sizes).map((value) => value ?? 0),
  }
}

/** Whether the stated count of the row holds for a size; for a size that was not worked, or has none, it is not known. */
function holds({ row, worked }: EntryWork, size: number): boolean | null {
  const result = worked[size] ?? null
  if (!finished(result) || row.stated === null) return null
  const { stated } = row
  const own = stated.items.filter(({ count }) => typeof count === 'function' || (count[size] ?? null) !== null)
  const verdicts = own.map((item) => verdictOn(item, stated, result, size))
  if (verdicts.includes('differs')) return false
  return verdicts.includes('agrees') ? true : null
}

function agreement(work: EntryWork): boolean | null {
  if (work.row.stated === null) return null
  // For the rows of a range before its last, only where the count holds there too.
  const each = work.worked.map((_, size) => (work.checked(size) ? holds(work, size) : holds(work, size) || null))
  if (each.includes(false)) return false
  return each.includes(true) ? true : null
}

/** For the rows of a range before its last the count is shown where it holds there too. */
function statedOf(work: EntryWork, done: LedgerRow): LedgerRow['stated'] {
  const { row, checked } = work
  if (row.stated === null) return null
  const made = madeBy(done)
  const found: Record<string, readonly (number | null)[]> = {}
  for (const item of row.stated.items) {
    const counts = typeof item.count === 'function' ? item.count(made) : item.count
    found[item.shown] = counts.map((count, size) => (checked(size) || holds(work, size) ? count : null))
  }
  const empty = Object.values(found).every((counts) => counts.every((count) => count === null))
  return empty ? null : found
}

function statusOf(
  work: EntryWork,
  broken: readonly boolean[],
  reason: string | null,
): Pick<LedgerRow, 'status' | 'reason'> {
  const stops = work.worked.flatMap((result) => result?.stop ?? [])
  if (stops.length > 0)
    return { status: stops.every((stop) => stop.why === 'unread') ? 'unread' : 'not-worked', reason }
  const waits = broken.some((stopped, size) => stopped && (work.entry.steps[size] ?? null) !== null)
  if (waits) return { status: 'not-worked', reason: afterBroken }
  return { status: 'worked', reason: null }
}

export const afterBroken = 'A row before it could not be worked.'
export const afterTrouble = 'A row before it does not come out.'

/** The ledger row of what has been worked. `broken` are the sizes that could not go on. */
export function ledgerRow(work: EntryWork, broken: readonly boolean[], reason: string | null): LedgerRow {
  const { row, worked } = work
  const done: LedgerRow = {
    ...blankRow(row, labelFor(row, work.entry.number), worked.length),
    ...statusOf(work, broken, reason),
    total: worked.map((result) => (finished(result) ? result.total : null)),
    counts: countsOf(work, ({ tally }) => tally),
    besides: countsOf(work, uncounted),
    names: namesIn(work),
    left: worked.map((result) => (finished(result) ? result.left : 0)),
    agrees: agreement(work),
  }
  return { ...done, stated: statedOf(work, done) }
}

/** The ledger row of what could not be read or not be reached. */
export function unworkedRow(
  row: ReadRow,
  number: Count | null,
  sizes: number,
  status: 'unread' | 'not-worked',
  reason: string,
): LedgerRow {
  const stated: Record<string, Count> = {}
  for (const item of row.stated?.items ?? []) if (typeof item.count !== 'function') stated[item.shown] = item.count
  const isStated = Object.keys(stated).length > 0
  return { ...blankRow(row, labelFor(row, number), sizes), status, reason, stated: isStated ? stated : null }
}
