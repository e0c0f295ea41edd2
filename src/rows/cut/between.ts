import type { Count } from '../count.ts'
import { everySize } from '../count.ts'
import type { ReadRow } from './row.ts'

/** One number for all sizes; null where they differ or there is none. */
function sameFor(count: Count | null | undefined): number | null {
  const [first = null, ...rest] = count ?? []
  return first !== null && rest.every((value) => value === first) ? first : null
}

function numbersOf(row: ReadRow): readonly number[] | null {
  if (row.label?.numbers.kind !== 'list' || row.only !== null) return null
  const numbers = row.label.numbers.items.map(sameFor)
  return numbers.every((number) => number !== null) ? numbers : null
}

/** The row as one of its numbers. */
function asNumber(row: ReadRow, number: number, again: boolean): ReadRow {
  const { label } = row
  if (label === null) return row
  const sizes = row.label?.numbers.kind === 'list' ? (row.label.numbers.items[0]?.length ?? 1) : sizesOf(row)
  const name = label.numbers.kind === 'every' ? (label.style === 'round' ? 'Rnd' : 'Row') : label.name
  return { ...row, label: { ...label, name, numbers: { kind: 'list', items: [everySize(number, sizes)] } }, again }
}

function sizesOf(row: ReadRow): number {
  const number = row.words.find((word) => word.kind === 'number')
  return number?.kind === 'number' ? number.count.length : 1
}

/** Rows of one count in order: their numbers go on from each other, none stands twice. */
interface Run {
  readonly rows: readonly ReadRow[]
  readonly name: string
}

/** Rows that follow each other with labels of one name, rows laid between others among them. */
function runsOf(rows: readonly ReadRow[]): readonly Run[] {
  const runs: { rows: ReadRow[]; name: string }[] = []
  for (const row of rows) {
    const every = row.label?.numbers.kind === 'every'
    const name = every ? (runs.at(-1)?.name ?? row.label?.name ?? '') : (row.label?.name ?? '')
    const last = runs.at(-1)
    // Rows laid between others may stand above all of them.
    if (last !== undefined && !every && last.rows.every((each) => each.label?.numbers.kind === 'every'))
      last.name = name
    const joins = every || numbersOf(row) !== null
    const same = last !== undefined && joins && last.rows.every((each) => isNumbered(each)) && alike(last.name, name)
    if (same) last.rows.push(row)
    else runs.push({ rows: [row], name })
  }
  return runs
}

function alike(first: string, second: string): boolean {
  const plain = (name: string): string => name.toLowerCase().replace(/^(?:rnd|rd)$/, 'round')
  return plain(first) === plain(second)
}

function isNumbered(row: ReadRow): boolean {
  return row.label?.numbers.kind === 'every' || numbersOf(row) !== null
}

interface Numbered {
  readonly number: number
  readonly row: ReadRow
}

/** The rows with numbers of their own, each number by itself. */
function numbered(run: Run): readonly Numbered[] {
  return run.rows.flatMap((row) => (numbersOf(row) ?? []).map((number) => ({ number, row })))
}

function fits(number: number, of: 'even' | 'odd' | 'RS' | 'WS' | 'other', first: number | null): boolean {
  if (first !== null) return number >= first && (number - first) % 2 === 0
  return number % 2 === (of === 'odd' || of === 'RS' ? 1 : 0)
}

/** `Row 2 and all WS rows`: its number and those between the others that have none. */
function laidBetween(row: ReadRow, taken: ReadonlySet<number>, last: number): readonly Numbered[] {
  if (row.label?.numbers.kind !== 'every') return []
  const { first, of } = row.label.numbers
  const numbers = Array.from({ length: last }, (_, index) => index + 1)
  return numbers
    .filter((number) => !taken.has(number) && fits(number, of, first) && (number < last || number === first))
    .map((number) => ({ number, row }))
}

/** Whether numbers go on by one each, from the first to the last. */
function goOn(found: readonly Numbered[]): boolean {
  return found.every(({ number }, index) => index === 0 || number === (found[index - 1]?.number ?? 0) + 1)
}

function ordered(run: Run): readonly ReadRow[] {
  const own = numbered(run)
  const taken = new Set(own.map(({ number }) => number))
  const every = run.rows.filter((row) => row.label?.numbers.kind === 'every')
  const apart = run.rows.some((row) => !goOn((numbersOf(row) ?? []).map((number) => ({ number, row }))))
  if ((every.length === 0 && !apart) || taken.size < own.length) return run.rows
  const last = Math.max(0, ...taken)
  const laid = every.flatMap((row) => laidBetween(row, taken, last))
  const all = [...own, ...laid].sort((first, second) => first.number - second.number)
  if (!goOn(all) || (every.length > 0 && laid.length === 0)) return run.rows
  const seen = new Set<ReadRow>()
  return all.map(({ number, row }) => {
    const again = seen.has(row)
    seen.add(row)
    return asNumber(row, number, again)
  })
}

/**
 * Rows that are written once for several places among others, put where they are worked: `Rows 2 and 4`, `All WS rows`.
 * Where the numbers do not come out, rows stand as they are written.
 */
export function interleaved(rows: readonly ReadRow[]): readonly ReadRow[] {
  return runsOf(rows).flatMap(ordered)
}
