import type { PerSize } from '../../measure/value.ts'
import type { LedgerRow } from '../../rows/ledger.ts'

/** What one line of the table of rows tells: a row, or rows of one passage that are alike. */
export interface Run {
  /** The first of the rows that it stands for. */
  readonly first: LedgerRow
  readonly piece: string
  readonly label: string | null
  /** What each size calls it; null for a size that does not work it. */
  readonly labels: PerSize<string | null>
  readonly status: LedgerRow['status']
  readonly total: PerSize<number | null>
  /** Chains, where the row makes nothing else: a foundation. */
  readonly chains: PerSize<number | null> | null
  /** What is worked of each kind that is stated; null where a kind was not counted. */
  readonly worked: Readonly<Record<string, PerSize<number | null> | null>>
  readonly stated: LedgerRow['stated']
  readonly agrees: boolean | null
}

/** `60 (72, 84)`, or one number where all sizes agree; a size that does not work the row has a dash. */
export function column(bySize: PerSize<number | null>): string {
  return inColumns(bySize.map((number) => (number === null ? '–' : String(number))))
}

/** The same for numbers that are words already. */
export function inColumns([first = '–', ...others]: PerSize<string>): string {
  return others.every((other) => other === first) ? first : `${first} (${others.join(', ')})`
}

interface Open {
  readonly first: LedgerRow
  last: LedgerRow
  /** Rows that some sizes each have under a number of their own. */
  readonly bySize: LedgerRow[]
}

function sameCounts(a: LedgerRow, b: LedgerRow): boolean {
  const said = ({ total, counts, stated, status, agrees }: LedgerRow): string =>
    JSON.stringify([total, stated, status, agrees, agrees === false ? counts : null])
  return said(a) === said(b)
}

/** `Row 49` for one size, `Row 51` for the next: the same row, numbered for each. */
function isForOtherSizes(rows: readonly LedgerRow[], next: LedgerRow): boolean {
  const taken = next.total.some((count, size) => count !== null && rows.some((row) => row.total[size] !== null))
  return !taken && rows.every((row) => row.agrees === next.agrees && row.status === next.status)
}

function gathered(rows: readonly LedgerRow[]): readonly Open[] {
  const open: Open[] = []
  for (const row of rows) {
    const before = open.at(-1)
    const together = before?.first.at.start === row.at.start && before.first.piece === row.piece
    if (before !== undefined && together && before.bySize.length === 1 && sameCounts(before.last, row))
      before.last = row
    else if (before !== undefined && together && before.first === before.last && isForOtherSizes(before.bySize, row))
      before.bySize.push(row)
    else open.push({ first: row, last: row, bySize: [row] })
  }
  return open
}

function merged(rows: readonly LedgerRow[], of: (row: LedgerRow) => PerSize<number | null>): PerSize<number | null> {
  return (rows[0]?.total ?? []).map((_, size) => {
    const own = rows.find((row) => row.total[size] !== null)
    return own === undefined ? null : (of(own)[size] ?? null)
  })
}

const number = /\d+$/

/** `Rnds 3–19`, `Row 49 (51, 53)` */
function labelOf({ first, last, bySize }: Open): string | null {
  if (first.label === null || last.label === null) return first.label
  if (bySize.length > 1) {
    const numbers = merged(bySize, ({ label, total }) => total.map(() => Number(number.exec(label ?? '')?.[0] ?? 0)))
    return first.label.replace(number, column(numbers))
  }
  const end = number.exec(last.label)?.[0]
  if (first === last || end === undefined) return first.label
  return `${first.label.replace(/^(Row|Rnd|Round)\b/, '$1s')}–${end}`
}

function labelsOf(open: Open): Run['labels'] {
  const { first, bySize } = open
  return first.total.map((_, size) => {
    const own = bySize.find(({ total }) => total[size] !== null)
    if (own === undefined) return null
    return bySize.length > 1 ? own.label : labelOf(open)
  })
}

function statedOf({ first, bySize }: Open): LedgerRow['stated'] {
  if (bySize.length === 1 || first.stated === null) return first.stated
  const kinds = Object.keys(first.stated)
  return Object.fromEntries(kinds.map((kind) => [kind, merged(bySize, ({ stated }) => stated?.[kind] ?? [])]))
}

function workedOf({ first, bySize }: Open): Run['worked'] {
  const kinds = Object.keys(first.stated ?? {}).filter((kind) => kind !== 'total')
  return Object.fromEntries(
    kinds.map((kind) => [
      kind,
      first.counts[kind] === undefined ? null : merged(bySize, ({ counts }) => counts[kind] ?? []),
    ]),
  )
}

function chainsOf({ total, counts: { ch } }: LedgerRow): Run['chains'] {
  const only = ch !== undefined && total.every((count) => count === null || count === 0)
  return only ? total.map((count, size) => (count === null ? null : (ch[size] ?? null))) : null
}

/** Rows that stand for one line: those of a range that are alike, and those that differ only in their number by size. */
export function runsOf(rows: readonly LedgerRow[]): readonly Run[] {
  return gathered(rows).map((open): Run => {
    const { first } = open
    const { piece, status, agrees } = first
    const total = merged(open.bySize, (row) => row.total)
    const counted = { total, chains: chainsOf(first), worked: { total, ...workedOf(open) }, stated: statedOf(open) }
    return { first, piece, label: labelOf(open), labels: labelsOf(open), status, agrees, ...counted }
  })
}
