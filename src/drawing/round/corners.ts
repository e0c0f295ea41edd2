import type { PlaceKind, Row } from '../../rows/fabric.ts'
import type { Round } from './rounds.ts'

/** Motifs have so many corners; groups around a flower or a doily are more. */
const [fewest, most] = [3, 8]

/** Positions of a round's corners: its longest spaces made within one place, else the middles of groups of three or more. */
export function cornersIn({ places, groups }: Row, kinds: readonly PlaceKind[]): readonly number[] {
  const spaces = places.flatMap((number, at) => {
    const kind = kinds[number]
    return kind?.what === 'space' && kind.grouped ? [{ at, chains: kind.chains }] : []
  })
  const longest = Math.max(0, ...spaces.map(({ chains }) => chains))
  const corners = spaces.filter(({ chains }) => chains === longest).map(({ at }) => at)
  return corners.length > 0 ? corners : middlesOf(groups)
}

function middlesOf(groups: readonly number[]): readonly number[] {
  const middles: number[] = []
  for (let at = 0; at < groups.length; ) {
    let end = at + 1
    while ((groups[at] ?? -1) >= 0 && groups[end] === groups[at]) end += 1
    if (end - at >= 3) middles.push((at + end - 1) >> 1)
    at = end
  }
  return middles
}

/** How many corners a motif has, by most of its outer rounds; 0 for a circle. */
export function cornerCount(rounds: readonly Round[], kinds: readonly PlaceKind[]): number {
  const outer = rounds.slice(Math.floor(rounds.length / 2))
  const counts = outer.map(({ row }) => cornersIn(row.row, kinds).length)
  const usual = counts.find((count) => counts.filter((each) => each === count).length * 2 > counts.length) ?? 0
  return usual >= fewest && usual <= most ? usual : 0
}
