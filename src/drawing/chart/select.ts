import type { PlaceKind } from '../../rows/fabric.ts'
import type { Ledger } from '../../rows/ledger.ts'
import type { PlaceRef } from '../../rows/past.ts'
import { orderOf, positionOf } from '../../rows/past.ts'
import type { ChartRow } from './model.ts'

/** A label by its name and its number: `Edging rnd 2` is `edging rnd`, 2. */
function labelParts(label: string | null): { readonly name: string; readonly number: number } | null {
  const [, name = '', number = ''] = /^(.*?)\s*(\d+)$/.exec(label ?? '') ?? []
  return number === '' ? null : { name: plainName(name), number: Number(number) }
}

/** `Rows`, `Rnd`, `Round` and no word at all are one; any other name stays, without its plural. */
function plainName(name: string): string {
  return name
    .toLowerCase()
    .replace(/[.:#]/g, '')
    .trim()
    .replace(/\b(?:rounds?|rnds?|rows?|r)$/, '')
    .trim()
}

interface Range {
  readonly name: string
  readonly from: number
  readonly to: number
}

/** `1–4, 6`, `Rnds 1-3`, `Edging rnd 1`; null where it says something else. */
function rangesIn(text: string): readonly Range[] | null {
  const ranges: Range[] = []
  for (const item of text.split(/\s*(?:,|\band\b)\s*/)) {
    const [, name = '', from = '', to = from] = /^([\p{L}\s.]*?)\s*(\d+)(?:\s*[-–—]\s*(\d+))?$/u.exec(item.trim()) ?? []
    if (from === '') return null
    ranges.push({ name: plainName(name), from: Number(from), to: Number(to) })
  }
  return ranges
}

/** Of the rows of a piece those that are asked for, by their numbers; null where some of them are not there. */
export function rowsAsked(ledger: Ledger, entries: readonly number[], text: string): readonly number[] | null {
  const ranges = rangesIn(text)
  if (ranges === null) return null
  const found = ranges.map(({ name, from, to }) =>
    entries.filter((entry) => {
      const label = labelParts(ledger.rows[entry]?.label ?? null)
      return label !== null && label.name === name && label.number >= from && label.number <= to
    }),
  )
  if (found.some((each) => each.length === 0)) return null
  return [...new Set(found.flat())].sort((a, b) => a - b)
}

/** Rows of the ledger for a chart: those that the size works, without their foundation. */
export function chartRows(ledger: Ledger, entries: readonly number[], size: number): readonly ChartRow[] {
  return entries.flatMap((entry): ChartRow[] => {
    const row = ledger.fabric[entry]?.[size] ?? null
    const { label = null, side = null } = ledger.rows[entry] ?? {}
    if (row === null || row.row.foundation) return []
    const parts = labelParts(label)
    const own =
      parts === null || parts.name === ''
        ? String(parts?.number ?? '')
        : `${parts.name.charAt(0).toUpperCase()}${parts.number}`
    return [{ row, label: own, name: label ?? 'Row', side, places: null }]
  })
}

/** Names of rows in a caption: `Rnds 1–4`, `Rows 1–4 and Edging row 1`. */
export function namesOfRows(rows: readonly ChartRow[]): string {
  const runs: { readonly name: string; readonly from: number; to: number }[] = []
  for (const { name } of rows) {
    const parts = labelParts(name)
    const word = name.replace(/\s*\d+$/, '')
    const last = runs.at(-1)
    if (parts === null) continue
    if (last?.name === word && last.to + 1 === parts.number) last.to = parts.number
    else runs.push({ name: word, from: parts.number, to: parts.number })
  }
  const words = runs.map(({ name, from, to }) => (from === to ? `${name} ${from}` : `${name}s ${from}–${to}`))
  return [words.slice(0, -1).join(', '), words.at(-1) ?? ''].filter((part) => part !== '').join(' and ')
}

function isCounted(kind: PlaceKind | undefined): boolean {
  return kind?.what !== 'turning'
}

/** Positions of a row's places by how they are counted, from 1: an opening chain that does not count has no number. */
function numbered({ row }: ChartRow, kinds: readonly PlaceKind[], from: number, to: number): ReadonlySet<number> {
  const positions = new Set<number>()
  let last = 0
  row.row.places.forEach((number, at) => {
    const counted = isCounted(kinds[number])
    if (counted) last += 1
    // An opening chain goes with the stitch after it.
    const own = counted ? last : last + 1
    if (own >= from && own <= to) positions.add(at)
  })
  return positions
}

/** The longest run of neighbours: what a round goes into its own beginning with lies apart. */
function longestRun(
  positions: readonly number[],
  isNext: (before: number, after: number) => boolean,
): readonly number[] {
  const runs: number[][] = []
  for (const at of positions) {
    const run = runs.at(-1)
    const last = run?.at(-1)
    if (run !== undefined && last !== undefined && isNext(last, at)) run.push(at)
    else runs.push([at])
  }
  return runs.reduce((longest, run) => (run.length > longest.length ? run : longest), [])
}

/** Places of a row that go only into chosen ones, and the chains between two of them. */
function standingOn(
  { row }: ChartRow,
  kinds: readonly PlaceKind[],
  chosen: (ref: PlaceRef) => boolean,
): ReadonlySet<number> {
  const { into, again } = row.trace()
  const { places } = row.row
  const isSpace = (at: number): boolean => kinds[places[at] ?? -1]?.what === 'space'
  const stands = places.flatMap((_, at) => {
    const refs = [into[at] ?? -1, ...(again.get(at) ?? [])].filter((ref) => ref >= 0)
    return refs.length > 0 && refs.every(chosen) ? [at] : []
  })
  const run = longestRun(
    stands,
    (before, after) =>
      after === before + 1 || places.slice(before + 1, after).every((_, at) => isSpace(before + 1 + at)),
  )
  const [first, last] = [run[0] ?? 0, run.at(-1) ?? -1]
  return new Set(places.flatMap((_, at) => (at >= first && at <= last ? [at] : [])))
}

/**
 * Cuts rows to the stitches from one number to another of the first row, and to what is worked on those.
 *
 * @returns null where the first row has no such stitches
 */
export function cutToStitches(
  rows: readonly ChartRow[],
  kinds: readonly PlaceKind[],
  from: number,
  to: number,
): readonly ChartRow[] | null {
  const [first, ...rest] = rows
  if (first === undefined) return null
  const places = numbered(first, kinds, from, to)
  if (places.size === 0) return null
  const chosen = new Map([[first.row.order, places]])
  const cut = rest.map((row) => {
    const own = standingOn(row, kinds, (ref) => chosen.get(orderOf(ref))?.has(positionOf(ref)) ?? false)
    chosen.set(row.row.order, own)
    return { ...row, places: own }
  })
  return [{ ...first, places }, ...cut]
}
