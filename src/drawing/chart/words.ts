import type { PlaceKind } from '../../rows/fabric.ts'
import type { Followed, Worked } from '../../rows/follow.ts'
import { followRow } from '../../rows/follow.ts'
import { printPlace } from '../../rows/print.ts'
import type { Dictionary } from '../../rows/terms/dictionary.ts'
import type { ChartRow } from './model.ts'

function nameOf(kind: PlaceKind, dictionary: Dictionary): string {
  if (kind.what === 'turning') return 'turning chain'
  if (kind.what === 'space') return `ch ${kind.chains}`
  return printPlace(kind, dictionary) ?? 'st'
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
  return parts.map(({ name, count }) => (count === 1 ? name : `${count} ${name}`)).join(', ')
}

function runWords({ makes, into }: Worked, times: number, dictionary: Dictionary): string {
  const made = madeWords(makes, dictionary)
  if (into.length > 1)
    return times === 1 ? `${made} over ${into.length}` : `${made} over each ${into.length}, ${times} times`
  if (into.length === 0) return made
  return times === 1 ? `${made} in next` : `${made} in each of next ${times}`
}

function lineWords(line: Followed, dictionary: Dictionary): string {
  switch (line.kind) {
    case 'run':
      return runWords(line.first, line.times, dictionary)
    case 'passed':
      return `skip ${line.to - line.from + 1}`
    case 'again':
      return `the last ${line.lines} steps ${line.times} more times`
  }
}

/** A charted row in words, for readers who do not see it: what goes into each place, what repeats said once. */
export function rowWords({ row, name }: ChartRow, kinds: readonly PlaceKind[], dictionary: Dictionary): string {
  const lines = followRow(row, kinds).map((line) => lineWords(line, dictionary))
  return `${name}: ${lines.join('; ')}.`
}
