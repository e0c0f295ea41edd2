import type { PlaceKind } from '../../rows/fabric.ts'
import type { Followed, Worked } from '../../rows/follow.ts'
import { followRow } from '../../rows/follow.ts'
import { printPlace } from '../../rows/print.ts'
import type { Dictionary } from '../../rows/terms/dictionary.ts'
import type { ChartRow } from './model.ts'
import { openingChains } from './place.ts'

/** A row that is told, and what is needed to name what it makes. */
interface Told {
  readonly row: ChartRow
  readonly kinds: readonly PlaceKind[]
  readonly dictionary: Dictionary
}

function isOpening(kind: PlaceKind | undefined): kind is PlaceKind {
  return kind?.what === 'turning' || (kind?.what === 'stitch' && kind.turning)
}

function nameOf(kind: PlaceKind, dictionary: Dictionary): string {
  if (kind.what === 'space') return `ch ${kind.chains}`
  return printPlace(kind, dictionary) ?? 'st'
}

function counted({ name, count }: { readonly name: string; readonly count: number }): string {
  if (count === 1) return name
  return name.startsWith('ch ') ? `${name} ${count} times` : `${count} ${name}`
}

/** `3 dc, ch 2, 3 dc` */
function madeWords(kinds: readonly PlaceKind[], dictionary: Dictionary): string {
  const parts: { readonly name: string; count: number }[] = []
  for (const kind of kinds) {
    const name = nameOf(kind, dictionary)
    const last = parts.at(-1)
    if (last?.name === name) last.count += 1
    else parts.push({ name, count: 1 })
  }
  return parts.map(counted).join(', ')
}

/** `ch 1`, `ch 3 as dc` */
function openingWords(kind: PlaceKind, chains: number, dictionary: Dictionary): string {
  return kind.what === 'turning' ? `ch ${chains}` : `ch ${chains} as ${nameOf(kind, dictionary)}`
}

const loops = { 0: '', 1: 'front loop of ', 2: 'back loop of ' } as const

function runWords({ makes, into, loop, end }: Worked, times: number, told: Told): string {
  const { row, kinds, dictionary } = told
  const [first, ...rest] = makes
  if (isOpening(first)) {
    const opening = openingWords(first, openingChains(row, end - makes.length, first, kinds), dictionary)
    return rest.length === 0 ? opening : `${opening}, ${madeWords(rest, dictionary)}`
  }
  const made = madeWords(makes, dictionary)
  if (into.length > 1) return `${made}${into.length}tog${times === 1 ? '' : `, ${times} times`}`
  if (into.length === 0) return made
  return `${made} in ${loops[loop]}${times === 1 ? 'next' : `each of next ${times}`}`
}

function lineWords(line: Followed, told: Told): string {
  switch (line.kind) {
    case 'run':
      return runWords(line.first, line.times, told)
    case 'passed':
      return `skip ${line.to - line.from + 1}`
    case 'again':
      return `the last ${line.lines} steps ${line.times} more times`
  }
}

/** A round around a ring: its stitches go into no place, but for its opening chain. */
export function isInRing({ row }: ChartRow, kinds: readonly PlaceKind[]): boolean {
  const { into } = row.trace()
  const stitches = row.row.places.flatMap((number, at) => {
    const kind = kinds[number]
    return kind?.what === 'stitch' && !isOpening(kind) ? [into[at] ?? -1] : []
  })
  return row.row.circular && stitches.length > 0 && stitches.every((ref) => ref < 0)
}

/** What has no place of its own in the row: slip stitches that hold its chains down, picots, where it is closed. */
function besides({ row }: ChartRow): readonly string[] {
  const { slips, picots, joined } = row.trace()
  const held = slips.filter(({ after }) => after > 0).length
  return [
    ...(held > 0 ? [`${held} slip ${held === 1 ? 'stitch' : 'stitches'} between the chains`] : []),
    ...(picots.length > 0 ? [`${picots.length} ${picots.length === 1 ? 'picot' : 'picots'}`] : []),
    ...(joined ? ['join'] : []),
  ]
}

/** Chains of a ring, and those at the end of a foundation that the row's opening chain is made of, are not skipped. */
function isTold(line: Followed, inRing: boolean, { row }: ChartRow, kinds: readonly PlaceKind[]): boolean {
  if (line.kind !== 'passed') return true
  const { below, opened } = row.trace()
  const onChain = below.places.every((number) => kinds[number]?.what === 'chain')
  return !inRing && !(onChain && opened > 0 && line.from === 1)
}

/** A charted row in words, for readers who do not see it: what goes into each place, what repeats said once. */
export function rowWords(row: ChartRow, kinds: readonly PlaceKind[], dictionary: Dictionary): string {
  const inRing = isInRing(row, kinds)
  const lines = followRow(row.row, kinds).filter((line) => isTold(line, inRing, row, kinds))
  const steps = lines.map((line) => lineWords(line, { row, kinds, dictionary }))
  return `${row.name}${inRing ? ' in the ring' : ''}: ${[...steps, ...besides(row)].join('; ')}.`
}
