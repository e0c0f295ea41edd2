import type { PlaceKind } from '../rows/fabric.ts'
import type { Followed, Worked } from '../rows/follow.ts'
import { followRow } from '../rows/follow.ts'
import type { Ledger, LedgerRow } from '../rows/ledger.ts'
import { printPlace } from '../rows/print.ts'
import type { Dictionary } from '../rows/terms/dictionary.ts'

/** What is shown of one row for one size. */
export interface FollowedRow {
  readonly ledger: Ledger
  /** Its position among the ledger's rows. */
  readonly index: number
  readonly size: number
  readonly sizeName: string
  readonly dictionary: Dictionary
}

function placeName(kind: PlaceKind, dictionary: Dictionary): string {
  if (kind.what === 'turning') return 'ch that does not count'
  const name = printPlace(kind, dictionary) ?? 'st'
  return kind.what === 'stitch' && kind.turning ? `${name} (opening ch)` : name
}

/** `5 dc`, `2 dc, ch-2 sp, 2 dc` */
function madeWords(kinds: readonly PlaceKind[], dictionary: Dictionary): string {
  const parts: { name: string; count: number }[] = []
  for (const kind of kinds) {
    const name = placeName(kind, dictionary)
    const last = parts.at(-1)
    if (last?.name === name) last.count += 1
    else parts.push({ name, count: 1 })
  }
  return parts.map(({ name, count }) => (count === 1 ? name : `${count} ${name}`)).join(', ')
}

const loops = ['', ', back loop free', ', front loop free'] as const

/** `4`, `4–63`, `4+5` for stitches worked together */
function placesText(places: readonly number[], times: number): string {
  const [first] = places
  if (first === undefined) return ''
  if (times === 1) return places.join('+')
  return `${first}–${(places.at(-1) ?? first) + (times - 1) * places.length}`
}

function runCells(first: Worked, times: number, dictionary: Dictionary): readonly string[] {
  const [from, to] = first.made
  const last = to + (times - 1) * (to - from + 1)
  const what = madeWords(first.makes, dictionary) + (first.name === '' ? '' : `: ${first.name}`) + loops[first.loop]
  const wide = first.into.length > 1 ? `${first.into.length} as one: ` : ''
  const each = times > 1 ? (first.into.length > 1 ? ' each' : ' in each') : ''
  const counts = first.makes.some((kind) => kind.what !== 'turning')
  const made = counts ? (from === last ? String(from) : `${from}–${last}`) : ''
  return [made, placesText(first.into, times), wide + what + each]
}

function cells(line: Followed, dictionary: Dictionary): readonly string[] {
  switch (line.kind) {
    case 'run':
      return runCells(line.first, line.times, dictionary)
    case 'passed':
      return ['', line.from === line.to ? String(line.from) : `${line.from}–${line.to}`, 'left or skipped']
    case 'again':
      return ['', '', `the last ${line.lines} lines ${line.times} times more, up to ${line.upTo}`]
  }
}

function countsOf(row: LedgerRow, size: number): string {
  const counts = Object.entries(row.counts).flatMap(([kind, bySize]) => {
    const count = bySize[size] ?? 0
    return count > 0 ? [`${count} ${kind}`] : []
  })
  const total = row.total[size] ?? 0
  return `${total} ${total === 1 ? 'stitch' : 'stitches'}${counts.length > 0 ? `: ${counts.join(', ')}` : ''}.`
}

function statedOf(row: LedgerRow, size: number): string {
  const stated = Object.entries(row.stated ?? {}).flatMap(([kind, bySize]) => {
    const count = bySize[size] ?? null
    return count === null ? [] : [`${count} ${kind === 'total' ? 'in all' : kind}`]
  })
  return stated.length === 0 ? '' : ` Stated: ${stated.join(', ')}.`
}

function belowOf(ledger: Ledger, places: readonly number[], dictionary: Dictionary): string {
  const counts = new Map<string, number>()
  let all = 0
  for (const number of places) {
    const kind = ledger.kinds[number]
    if (kind === undefined || kind.what === 'turning') continue
    all += 1
    const name = placeName(kind, dictionary)
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  if (counts.size === 0) return 'into a ring, or on nothing'
  return `on ${all} places: ${[...counts].map(([name, count]) => `${count} ${name}`).join(', ')}`
}

function aligned(lines: readonly (readonly string[])[]): readonly string[] {
  const width = (column: number): number => Math.max(...lines.map((line) => line[column]?.length ?? 0))
  const [made, into] = [width(0), width(1)]
  return lines.map(([first = '', second = '', third = '']) =>
    `  ${first.padStart(made)}  ${second.padStart(into)}  ${third}`.trimEnd(),
  )
}

/** One row worked for one size, place by place, for a person who follows it with the hook. */
export function followText({ ledger, index, size, sizeName, dictionary }: FollowedRow): string {
  const row = ledger.rows[index]
  if (row === undefined) return ''
  const name = `${row.label ?? 'A row without a label'} of ${row.piece === '' ? 'the piece' : row.piece}, ${sizeName}`
  const made = ledger.fabric[index]?.[size] ?? null
  if (made === null || row.status !== 'worked') return `${name}: not worked. ${row.reason ?? ''}`.trimEnd()
  const head = ['made', 'into', 'what']
  const body = followRow(made, ledger.kinds).map((line) => cells(line, dictionary))
  return [
    `${name}, ${belowOf(ledger, made.trace().below.places, dictionary)}.`,
    ...aligned([head, ...body]),
    `  ${countsOf(row, size)}${statedOf(row, size)}`,
  ].join('\n')
}
