import type { Diagnostic, Severity, Source } from '../../diagnostic/index.ts'
import { placeOf } from '../../diagnostic/index.ts'
import type { LedgerRow } from '../../rows/ledger.ts'

/** Findings that say the same, at every place where they do; told once. */
export interface Told {
  readonly first: Diagnostic
  readonly further: readonly Diagnostic[]
}

/** What was found in one row, or on one line outside of the rows. */
export interface Group {
  readonly row: LedgerRow | null
  readonly told: readonly Told[]
}

function inOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return [...diagnostics].sort((a, b) => a.at.start - b.at.start || (a.code < b.code ? -1 : Number(a.code > b.code)))
}

function sameWords(all: readonly Diagnostic[]): readonly Told[] {
  const found = new Map<string, { first: Diagnostic; further: Diagnostic[] }>()
  for (const each of all) {
    const key = [each.code, each.message, each.hint, each.sizes.join()].join('\n')
    const known = found.get(key)
    if (known === undefined) found.set(key, { first: each, further: [] })
    else known.further.push(each)
  }
  return [...found.values()]
}

/** Finds the row that holds a place: of those that stand for one range, the first. */
function rowAt(rows: readonly LedgerRow[]): (offset: number) => LedgerRow | null {
  const firsts = new Map<number, LedgerRow>()
  for (const row of rows) if (!firsts.has(row.at.start)) firsts.set(row.at.start, row)
  const byStart = [...firsts.values()].sort((a, b) => a.at.start - b.at.start)
  return (offset) => {
    let low = 0
    let high = byStart.length
    while (low < high) {
      const middle = (low + high) >> 1
      if ((byStart[middle]?.at.start ?? 0) <= offset) low = middle + 1
      else high = middle
    }
    const row = byStart[low - 1]
    return row !== undefined && offset < row.at.end ? row : null
  }
}

/** Findings in the order of the draft, those of one row or line together. */
export function groupsOf(
  source: Source,
  rows: readonly LedgerRow[],
  diagnostics: readonly Diagnostic[],
): readonly Group[] {
  const find = rowAt(rows)
  const groups = new Map<string, { row: LedgerRow | null; told: Told[] }>()
  for (const each of sameWords(inOrder(diagnostics))) {
    const row = find(each.first.at.start)
    const key = row === null ? `line ${placeOf(source, each.first.at.start).line}` : `row ${row.at.start}`
    const group = groups.get(key) ?? { row, told: [] }
    group.told.push(each)
    groups.set(key, group)
  }
  return [...groups.values()]
}

/** `Cowl, Rnd 2`; null for what stands outside of the rows. */
export function titleOf({ row }: Group): string | null {
  if (row === null) return null
  const label = row.label ?? 'a row without a label'
  return row.piece === '' ? label : `${row.piece}, ${label}`
}

/** Findings that are told in full; of more than these only the number is given. */
const mostTold = 60

/** As many groups as may be told in full, errors before all else where not all may. */
export function within(groups: readonly Group[]): {
  readonly shown: readonly Group[]
  readonly leftOut: readonly Told[]
} {
  const all = groups.flatMap((group) => group.told)
  if (all.length <= mostTold) return { shown: groups, leftOut: [] }
  const rank: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 }
  const kept = new Set([...all].sort((a, b) => rank[a.first.severity] - rank[b.first.severity]).slice(0, mostTold))
  const shown = groups
    .map((group) => ({ ...group, told: group.told.filter((told) => kept.has(told)) }))
    .filter(({ told }) => told.length > 0)
  return { shown, leftOut: all.filter((told) => !kept.has(told)) }
}
